// The front of the chest with the places where a stethoscope stands. The patient's right is on the left of the drawing.

import { svg } from "../bedside/dom.js";

const HALF = "M0 6H13C13 16 14 21 22 25C38 31 58 32 66 44C74 58 80 84 83 112M58 66C57 84 58 104 60 122C61 140 58 156 57 168";
const BONES = ["M4 34C14 31 30 31 52 36", "M0 36V92", "M0 92C14 98 30 108 44 126"];

// Across from the midline, to the patient's left, and down.
export const SPOTS = {
  aortic: [-9, 50], pulmonary: [9, 50], tricuspid: [8, 84], mitral: [34, 92], infraclavicular: [26, 44],
  axilla: [56, 88], clavicle: [-28, 32], neck: [-11, 17], back: [0, 70],
};

/** A place that can be tried is a button of the map when there is something to be done about it. */
function dot({ id, name }, { standing, tried, pick }) {
  const [across, down] = SPOTS[id];
  const act = pick && {
    role: "button", tabindex: 0, "aria-label": `Listen: ${name}`, onclick: () => pick(id),
    onkeydown: (event) => (event.key === "Enter" || event.key === " ") && (event.preventDefault(), pick(id)),
  };
  return svg("g", { class: "heart-place", ...act }, svg("circle", { class: "reach", cx: across, cy: down, r: 9 }),
    svg("circle", { class: id === standing ? "dot last" : tried.includes(id) ? "dot" : "dot free", cx: across, cy: down, r: id === standing ? 6 : 4 }));
}

/**
 * @param places  [{id, name}] the places that can be tried
 * @param tried   ids of those that were
 * @param standing the id of the one that is shown
 * @param pick    (id) => moves the stethoscope there; left out where it cannot be moved
 * @param more    further nodes
 */
export function heartMap({ places, tried, standing, pick }, ...more) {
  const half = (transform) => svg("g", { transform }, ...[HALF, ...BONES].map((d) => svg("path", { class: "outline", d })));
  return svg(
    "svg",
    { class: "body-map chest-map", viewBox: "-90 0 180 172", width: 225, height: 215, "aria-hidden": pick ? undefined : "true" },
    half("scale(1 1)"),
    half("scale(-1 1)"),
    svg("text", { class: "tick", x: -62, y: 16, "text-anchor": "middle" }, "right"),
    svg("text", { class: "tick", x: 62, y: 16, "text-anchor": "middle" }, "left"),
    ...places.filter(({ id }) => SPOTS[id]).map((place) => dot(place, { standing, tried, pick })),
    ...more,
  );
}
