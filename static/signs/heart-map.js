// The front of the chest with the places where a stethoscope stands. The patient's right is on the left of the drawing.

import { svg } from "../bedside/dom.js";

const HALF = "M0 6H13C13 16 14 21 22 25C38 31 58 32 66 44C74 58 80 84 83 112M58 66C57 84 58 104 60 122C61 140 58 156 57 168";
const BONES = ["M4 34C14 31 30 31 52 36", "M0 36V92", "M0 92C14 98 30 108 44 126"];

// Across from the midline, to the patient's left, and down.
export const SPOTS = {
  aortic: [-9, 50], pulmonary: [9, 50], tricuspid: [8, 84], mitral: [34, 92], infraclavicular: [26, 44],
  axilla: [56, 88], clavicle: [-28, 32], neck: [-11, 17], back: [0, 70],
};

const dot = (name, [across, down], standing, tried) =>
  svg("circle", { class: standing ? "dot last" : tried ? "dot" : "dot empty", cx: across, cy: down, r: standing ? 6 : 4 }, svg("title", {}, name));

/**
 * @param places  [{id, name}] the places that can be tried
 * @param tried   ids of those that were
 * @param standing the id of the one that is shown
 * @param more    further nodes
 */
export function heartMap({ places, tried, standing }, ...more) {
  const half = (transform) => svg("g", { transform }, ...[HALF, ...BONES].map((d) => svg("path", { class: "outline", d })));
  return svg(
    "svg",
    { class: "body-map chest-map", viewBox: "-90 0 180 172", width: 225, height: 215, "aria-hidden": "true" },
    half("scale(1 1)"),
    half("scale(-1 1)"),
    svg("text", { class: "tick", x: -62, y: 16, "text-anchor": "middle" }, "right"),
    svg("text", { class: "tick", x: 62, y: 16, "text-anchor": "middle" }, "left"),
    ...places.filter(({ id }) => SPOTS[id]).map(({ id, name }) => dot(name, SPOTS[id], id === standing, tried.includes(id))),
    ...more,
  );
}
