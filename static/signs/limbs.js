// Limbs as seen by whoever taps them, in a frame of 200 by 170: the part that rests and the part that moves, both as
// outlines; the joint; which way a positive angle turns (1 is clockwise); what stands behind; names; and the hammer: where it
// falls, the direction in which it strikes (degrees, 0 is to the right, 90 down), and on which side the handle is.

import { OUTLINES, placed, smooth } from "./motion/outline.js";

const part = (name, at, degrees, size = 1) => smooth(placed(OUTLINES[name], at, degrees, size));
const parts = (...all) => all.map((one) => part(...one)).join("");

const LAP = "M30 132H192";
const ARM = { rest: part("upperArm", [52, 12], 86, 1), moving: part("forearm", [58, 94], 8, 1.2), joint: [58, 94], behind: LAP, names: [["elbow", 20, 116], ["lap", 160, 148]] };
const HUNG = { rest: parts(["trunk", [182, 168], -90, 1.3], ["head", [182, 56], -90, 1], ["upperArm", [156, 62], 174, 1.15]), moving: part("forearm", [66, 72], 94, 1.05), joint: [66, 72], behind: "M120 84H162", names: [["elbow", 20, 62], ["shoulder", 100, 36]] };
const BODY = parts(["trunk", [46, 176], -90, 1.3], ["head", [46, 62], -90, 1.1]);
const SHOULDER = { rest: BODY, moving: part("arm", [84, 76], 84, 0.78), joint: [84, 76], behind: "", names: [["arm", 106, 150]] };
const LEG = { rest: part("thigh", [14, 46], 4, 1.25), moving: part("shank", [112, 54], 90, 1.12), joint: [112, 54], behind: "M-10 74H86V84H-10Z", names: [["thigh", 30, 16], ["couch", 20, 100]] };
const LYING = { ...LEG, rest: part("thigh", [14, 84], -28, 1.25), moving: part("shank", [106, 40], 62, 1.1), joint: [106, 40], behind: "M-10 150H192", names: [["thigh", 4, 40]] };
const APART = { rest: parts(["legAbove", [56, 34], 96, 1.08], ["trunk", [78, 34], -90, 1.1]), moving: part("legAbove", [100, 34], 66, 1.08), joint: [100, 34], behind: "", names: [["knee", 134, 96]] };

const LIMBS = {
  biceps: { ...ARM, turn: -1, tap: [80, 80], strike: 205, handle: 1 },
  brachioradialis: { ...ARM, turn: -1, tap: [128, 90], strike: 100, handle: -1 },
  triceps: { ...HUNG, turn: 1, tap: [84, 54], strike: 90, handle: 1 },
  deltoid: { ...SHOULDER, turn: -1, tap: [99, 108], strike: 180, handle: 1 },
  pectoral: { ...SHOULDER, turn: 1, tap: [72, 84], strike: 250, handle: 1, names: [["front of the armpit", 92, 60]] },
  finger: { rest: part("forearm", [-90, 78], 0, 1.25), moving: parts(["fingers", [42, 76], 22, 1.7]), joint: [42, 76], behind: "M70 118C60 112 64 98 78 98H118C128 100 128 114 118 116Z", names: [["fingers", 96, 66], ["examiner's fingers", 84, 160]], turn: 1, tap: [98, 120], strike: 270, handle: 1 },
  knee: { ...LEG, turn: -1, tap: [128, 74], strike: 180, handle: 1 },
  hamstring: { ...LYING, turn: 1, tap: [84, 78], strike: -60, handle: 1 },
  adductor: { ...APART, turn: 1, tap: [124, 116], strike: -30, handle: 1 },
  ankle: { rest: part("shin", [74, -6], 88, 1.3), moving: part("foot", [76, 110], 0, 1.2), joint: [76, 110], behind: "", names: [["heel", 26, 150], ["toes", 150, 148]], turn: 1, tap: [60, 96], strike: 5, handle: 1 },
};

const ALSO = { supinator: "brachioradialis", patellar: "knee", achilles: "ankle", quadriceps: "knee", fingers: "finger", clonus: "ankle", foot: "ankle" };

/** The limb a manoeuvre moves, by the words of its id. */
export function limbFor(manoeuvre) {
  const words = manoeuvre.id.split("-").map((word) => ALSO[word] ?? word);
  return LIMBS[words.find((word) => word in LIMBS) ?? "knee"];
}
