// Limbs as seen from the side, in a frame of 200 by 170: the part that rests and the part that moves, both as outlines
// open where the body goes on; the joint; which way a positive angle turns (1 is clockwise); and the hammer: where it
// falls, the direction in which it strikes (degrees, 0 is to the right, 90 down), and on which side the handle is.

const UPPER_ARM = "M46 6C44 38 55 64 60 90A12 12 0 0 0 84 92C86 66 86 36 84 6";
const FOREARM = "M72 80C98 82 126 88 146 95C152 88 164 90 168 97C176 101 183 107 183 113C182 118 174 118 166 116C158 117 150 116 143 112C122 112 96 110 70 104A12 12 0 0 1 72 80Z";
const ARM = { rest: UPPER_ARM, moving: FOREARM, joint: [72, 92] };

const THIGH = "M6 22C50 20 88 28 112 33A14 14 0 0 1 113 61C84 68 44 74 6 72";
const SHANK = "M127 48C129 72 123 100 121 120C126 128 144 132 152 139C155 146 150 149 142 149L108 149C102 147 104 136 105 124C97 104 93 72 99 46A14 14 0 0 1 127 48Z";
const LEG = { rest: THIGH, moving: SHANK, joint: [113, 47] };

const LOWER_LEG = "M56 4C48 36 64 74 69 106A13 13 0 0 0 95 110C95 78 102 40 100 4";
const FOOT = "M69 106C63 118 63 130 72 134L142 139C153 139 153 128 144 125C124 119 106 113 95 104A13 13 0 0 0 69 106Z";

const HAND = "M16 64C48 60 80 64 104 72A11 11 0 0 1 104 94C80 100 48 102 16 100";
const FINGERS = "M104 72C120 70 140 76 156 90C160 97 152 101 146 97C132 90 118 92 104 94A11 11 0 0 1 104 72Z";

const TRUNK = "M10 8C36 8 56 14 70 24A14 14 0 0 0 72 52C64 88 66 124 66 168";
const HANGING_ARM = "M70 24C90 22 98 38 99 58C102 92 106 114 110 138C112 154 98 160 92 148C84 116 76 84 72 52A14 14 0 0 1 70 24Z";
const SHOULDER = { rest: TRUNK, moving: HANGING_ARM, joint: [79, 38] };

const LIMBS = {
  biceps: { ...ARM, turn: -1, tap: [86, 80], strike: 195, handle: 1 },
  brachioradialis: { ...ARM, turn: -1, tap: [132, 90], strike: 100, handle: -1 },
  triceps: { ...ARM, turn: 1, tap: [57, 78], strike: 8, handle: 1 },
  deltoid: { ...SHOULDER, turn: -1, tap: [101, 78], strike: 180, handle: 1 },
  pectoral: { ...SHOULDER, turn: 1, tap: [72, 50], strike: 330, handle: -1 },
  finger: { rest: HAND, moving: FINGERS, joint: [104, 83], turn: 1, tap: [138, 95], strike: 270, handle: 1 },
  knee: { ...LEG, turn: -1, tap: [127, 64], strike: 180, handle: 1 },
  hamstring: { ...LEG, turn: 1, tap: [97, 68], strike: -5, handle: 1 },
  adductor: { ...LEG, turn: -1, tap: [88, 26], strike: 90, handle: -1 },
  ankle: { rest: LOWER_LEG, moving: FOOT, joint: [82, 110], turn: 1, tap: [66, 96], strike: 5, handle: 1 },
};

const ALSO = { supinator: "brachioradialis", patellar: "knee", achilles: "ankle", quadriceps: "knee", fingers: "finger", clonus: "ankle", foot: "ankle" };

/** The limb a manoeuvre moves, by the words of its id. */
export function limbFor(manoeuvre) {
  const words = manoeuvre.id.split("-").map((word) => ALSO[word] ?? word);
  return LIMBS[words.find((word) => word in LIMBS) ?? "knee"];
}
