// A face with a mark on every point that was tried, filled by what the patient puts it at.

import { svg } from "../bedside/dom.js";
import { touchMark } from "./touch-mark.js";

// Where the points lie on the half that is on the patient's left: [across from the midline, down].
const SPOTS = { forehead: [10, 22], temple: [39, 46], cheek: [19, 56], mouth: [15, 70], chin: [7, 84], "jaw-angle": [33, 80] };

const HALF = "M0 2C24 2 42 18 43 44C43 60 40 74 32 84C24 94 12 100 0 100M8 40C14 36 24 36 30 40C24 45 14 45 8 40M3 44C3 52 4 58 7 60C8 63 4 64 0 64M0 73C6 72 12 73 16 74C12 79 6 80 0 80M6 33C14 29 24 29 32 33";

function dot(probe, last) {
  const at = SPOTS[probe.place];
  return at ? touchMark(probe, [probe.side === "right" ? -at[0] : at[0], at[1]], 2.8, probe === last) : "";
}

export function faceMap(probes, last) {
  return svg("svg", { class: "body-map face-map", viewBox: "-56 -8 112 112", width: 230, height: 230, "aria-hidden": "true" },
    svg("path", { class: "outline", d: HALF }), svg("path", { class: "outline", d: HALF, transform: "scale(-1 1)" }),
    svg("text", { class: "tick small", x: -44, y: 0, "text-anchor": "middle" }, "right"),
    svg("text", { class: "tick small", x: 44, y: 0, "text-anchor": "middle" }, "left"),
    ...probes.filter((probe) => probe !== last).map((probe) => dot(probe, last)), dot(last, last));
}
