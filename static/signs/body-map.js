// An outline of the body from the front, with a mark on every point that was tried, filled by what the patient puts it at.

import { svg } from "../bedside/dom.js";
import { touchMark } from "./touch-mark.js";

// Half the outline, right of the midline of the drawing; the other half is its mirror image.
const HALF = "M0 6C8 6 12 13 11 22C10 29 6 33 6 37C7 41 22 41 27 46C32 52 33 76 36 92C38 104 42 118 43 128C43 134 38 136 36 131C33 118 26 98 23 78C21 92 22 108 23 122C25 148 22 168 20 184C19 200 18 216 16 226C17 232 23 236 21 239H9C8 224 8 206 7 188C6 168 3 148 0 136";

// Where the points lie, by segment: [across from the midline, down], on the limb that is on the patient's left.
const SPOTS = {
  C2: [9, 12], C3: [10, 39], C4: [22, 44], C5: [31, 72], C6: [41, 126], C7: [42, 133], C8: [36, 131], T1: [25, 82], T2: [23, 60],
  T3: [11, 58], T4: [11, 66], T5: [11, 73], T6: [11, 80], T7: [11, 87], T8: [11, 94], T9: [11, 100], T10: [11, 106], T11: [11, 113], T12: [13, 121],
  L1: [15, 132], L2: [14, 150], L3: [12, 172], L4: [11, 226], L5: [15, 234], S1: [20, 236], S2: [15, 178], S3: [8, 142], S4: [4, 142], S5: [3, 142],
};

// Patches of nerves, and joints, by a word of their id; the first that fits counts.
const PATCHES = [
  ["lateral-upper-arm", [31, 60]], ["medial-upper-arm", [25, 70]], ["lateral-forearm", [36, 98]], ["medial-forearm", [30, 100]], ["forearm", [33, 104]],
  ["first-dorsal-web", [41, 122]], ["thenar", [39, 124]], ["index", [42, 134]], ["little", [37, 133]], ["ulnar", [36, 126]], ["thumb", [42, 126]], ["finger", [41, 134]],
  ["lateral-thigh", [20, 140]], ["medial-thigh", [8, 156]], ["thigh", [14, 160]], ["medial-leg", [10, 216]], ["calf", [18, 196]],
  ["toe", [12, 238]], ["lateral-foot", [20, 235]], ["heel", [12, 232]], ["foot", [15, 234]], ["sole", [15, 238]],
  ["ankle", [13, 226]], ["knee", [13, 182]], ["hip", [18, 124]], ["wrist", [39, 117]], ["elbow", [31, 84]], ["shoulder", [28, 52]], ["shin", [13, 204]], ["tibia", [13, 204]], ["cheek", [7, 22]], ["face", [7, 20]],
];

/** Where a place lies: by the segment in its id or, for a patch of a nerve or a joint, by its name. */
export function spot(place) {
  const segment = place.toUpperCase().match(/(?:^|[^A-Z0-9])([CTLS]\d{1,2})(?![A-Z0-9])/)?.[1];
  return SPOTS[segment] ?? PATCHES.find(([word]) => place.toLowerCase().includes(word))?.[1];
}

function dot(probe, last) {
  const at = spot(probe.place ?? "");
  if (!at) return "";
  const across = probe.side === "right" ? -at[0] : at[0];
  return touchMark(probe, [across, at[1]], 2.6, probe === last);
}

export function bodyMap(probes, last) {
  return svg(
    "svg",
    { class: "body-map", viewBox: "-60 -2 120 252", width: 252, height: 529, "aria-hidden": "true" },
    svg("path", { class: "outline", d: HALF }),
    svg("path", { class: "outline", d: HALF, transform: "scale(-1 1)" }),
    svg("text", { class: "tick", x: -46, y: 8, "text-anchor": "middle" }, "right"),
    svg("text", { class: "tick", x: 46, y: 8, "text-anchor": "middle" }, "left"),
    ...probes.filter((probe) => probe !== last).map((probe) => dot(probe, last)),
    dot(last, last),
  );
}
