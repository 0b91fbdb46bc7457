// The chest from the front or the back, with a dot where it was tried. Seen from the front the patient's right is on the
// left of the drawing, seen from the back on the right.

import { svg } from "../bedside/dom.js";

const HALF = "M0 6H13C13 16 14 21 22 25C38 31 58 32 66 44C74 58 80 84 83 112M58 66C57 84 58 104 60 122C61 140 58 156 57 168";
const FRONT = ["M4 34C14 31 30 31 52 36", "M0 36V92", "M0 92C14 98 30 108 44 126"];
const BACK = ["M0 20V168", "M18 46C34 44 46 48 50 56C46 72 36 88 28 92C22 78 18 60 18 46Z"];

// Across from the midline and down.
const SPOTS = {
  apex: [22, 27], "upper-front": [30, 56], "lower-front": [28, 88], axilla: [52, 92],
  "upper-back": [11, 66], "lower-back": [30, 116], upper: [24, 56], lower: [30, 104],
};

const fromBehind = (manoeuvre) => manoeuvre.id.endsWith("-back");

function dot(manoeuvre, probe, picked) {
  const [across, down] = SPOTS[probe.place] ?? [0, 0];
  const onTheLeft = (probe.side === "right") !== fromBehind(manoeuvre);
  return svg("circle", { class: picked ? "dot last" : "dot", cx: onTheLeft ? -across : across, cy: down, r: picked ? 5 : 3.5 });
}

/** @param picked the probes that are shown just now */
export function chestMap(manoeuvre, probes, picked) {
  const behind = fromBehind(manoeuvre);
  const lines = [HALF, ...(behind ? BACK : FRONT)];
  const half = (transform) => svg("g", { transform }, ...lines.map((d) => svg("path", { class: "outline", d })));
  const [leftmost, rightmost] = behind ? ["left", "right"] : ["right", "left"];
  return svg(
    "svg",
    { class: "body-map chest-map", viewBox: "-90 0 180 172", width: 225, height: 215, "aria-hidden": "true" },
    half("scale(1 1)"),
    half("scale(-1 1)"),
    svg("text", { class: "tick", x: -62, y: 16, "text-anchor": "middle" }, leftmost),
    svg("text", { class: "tick", x: 62, y: 16, "text-anchor": "middle" }, rightmost),
    ...probes.map((probe) => dot(manoeuvre, probe, picked.includes(probe))),
  );
}
