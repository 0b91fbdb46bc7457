// A small line drawing for every position of the patient: the couch or the floor in quiet ink, the patient in ink.
// One row each: furniture, head [x, y], body.

import { svg } from "./dom.js";

const COUCH = "M3 25H45";
const FLOOR = "M8 29H40";
const BACK_REST = "M9 9 21 25H45";

const DRAWN = {
  flat: [COUCH, [8, 20], "M13 21H40V17M15 21.500 26 18.500"],
  reclining: [BACK_REST, [12, 6.5], "M15 10 23 21H41V17M17 13 26 17"],
  side: [COUCH, [8, 20], "M13 21H25L32 14 38 21M15 20 23 16"],
  forward: ["M5 9V25H45", [26, 7], "M23 10.500C17 12 14 16 15 21H40V17M22 12 32 17"],
  sitting: ["M10 7V25H45", [17, 5], "M16 9V21H40V17M16 12 26 17"],
  edge: ["M3 18H27M6 18V29", [20, 4], "M20 8V15H31V27H34M20 10 25 14"],
  kneeling: ["M3 25H33M7 25V30", [16, 4], "M17 8V15L15 22H34L38 26M17 10 24 14"],
  squatting: [FLOOR, [23, 8], "M21 12 15 22 27 18 24 28H28M21 13 29 15"],
  prone: [COUCH, [8, 21], "M13 21H39L41 25M14 21 8 25"],
  standing: [FLOOR, [24, 4], "M24 8V17L22 29M24 17 26 29M24 10 20 17M24 10 28 17"],
  walking: [FLOOR, [24, 4], "M24 8V17L17 24 16 29M24 17 29 22 32 29H34M24 10 19 16M24 10 30 15"],
};

// What a position is called in the tables, by the words in its id; the first that fits counts.
const BY_WORD = [
  ["45", "reclining"], ["reclin", "reclining"], ["semi", "reclining"],
  ["edge", "edge"], ["legs", "edge"], ["side", "side"], ["lateral", "side"],
  ["forward", "forward"], ["sit", "sitting"], ["kneel", "kneeling"], ["squat", "squatting"],
  ["prone", "prone"], ["stand", "standing"], ["walk", "walking"],
  ["flat", "flat"], ["supine", "flat"], ["lying", "flat"],
];

/** The drawing for a position id; a position without one is drawn lying. */
export function figure(position) {
  const [, kind] = BY_WORD.find(([word]) => position.includes(word)) ?? [position, "flat"];
  const [furniture, [x, y], body] = DRAWN[kind];
  return svg(
    "svg",
    { class: "figure", viewBox: "0 0 48 32", width: 48, height: 32, "aria-hidden": "true", focusable: "false" },
    svg("path", { class: "furniture", d: furniture }),
    svg("path", { class: "body", d: body }),
    svg("circle", { class: "body", cx: x, cy: y, r: 3 }),
  );
}
