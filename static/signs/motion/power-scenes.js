// What is seen when one movement is tried: the part that is fixed, the part that moves, the joint, the way it turns (1 is
// clockwise), where the examiner presses, the way the patient pushes, and where the working muscle lies. A frame of 150.

import { OUTLINES, placed, smooth } from "./outline.js";

export const PARTS = { palm: "M2 -15C10 -17 15 -12 15 0C15 12 10 17 2 15C-1 8 -1 -8 2 -15Z" };

const SIZE = 0.72;
const part = (name, at, degrees, size = SIZE) => smooth(placed(OUTLINES[name], at, degrees, size));

/**
 * @param moves  an outline that turns about the joint; it begins in this direction (0 right, 90 down)
 * @param reach  where along it the hand presses
 * @param belly  where the muscle is seen to tighten
 */
function scene({ rest, moves, joint, begins, turn, reach, belly, size = SIZE, over = false, seen = "" }) {
  const push = begins + 90 * turn;
  const [grip] = placed([[reach / SIZE, turn * 8]], joint, begins, size);
  return { rest: rest.map(([name, at, degrees, big]) => part(name, at, degrees, big)).join(""), moving: part(moves, joint, begins, size), joint, turn, grip, push, belly, over, seen };
}

const upper = [["upperArm", [52, 12], 90]];
const elbow = { moves: "forearm", joint: [52, 68], reach: 40, rest: upper };
const lower = [["forearm", [4, 82], 0, 0.86]];
const wrist = { rest: [["upperArm", [8, 84], 0, 0.86]], moves: "hand", joint: [76, 84], begins: 0, reach: 26, belly: [36, 74] };
const palm = [["finger", [64, 88], -94, 0.95], ["finger", [78, 85], -90, 1], ["finger", [91, 90], -84, 0.9], ["palm", [76, 142], -90, 1]];
const fistTurns = { rest: [["forearm", [75, 190], -90, 0.5]], moves: "fist", joint: [75, 78], begins: -90, reach: 30, belly: [75, 116], size: 1.1 };
const fist = { rest: [["upperArm", [6, 84], 0, 0.6], ["hand", [54, 84], 0, 0.8]], moves: "tip", joint: [98, 82], size: 1, begins: 0, turn: 1, reach: 16, belly: [28, 76] };
const lying = [["trunk", [70, 96], 180]];
const hip = { rest: lying, moves: "leg", joint: [64, 100], reach: 48, belly: [52, 86] };
const above = [["fist", [62, 84], 0, 1.3], ["footFront", [62, 70], -90, 0.8]];
const thigh = [["thigh", [12, 50], 0]];
const shin = [["shin", [62, 12], 90, 0.86]];
const toes = { rest: [["footRest", [50, 96], 0, 1.1]], moves: "toe", joint: [100, 110], begins: 0, size: 1, reach: 14, belly: [54, 66] };
const front = [["trunk", [50, 140], -90, 1], ["head", [50, 58], -90, 0.8]];
const thumbFront = { rest: palm, moves: "tip", joint: [60, 122], size: 1.15, reach: 22, belly: [66, 118], over: false };

const SCENES = {
  "elbow-flexion": { ...elbow, begins: 90, turn: -1, belly: [62, 42] },
  "elbow-extension": { ...elbow, begins: -30, turn: 1, belly: [42, 42] },
  "wrist-extension": { ...wrist, turn: -1 },
  "wrist-flexion": { ...wrist, turn: 1, belly: [36, 94] },
  "finger-extension": { rest: lower, moves: "fingers", joint: [74, 80], begins: 45, turn: -1, reach: 16, size: 1, belly: [30, 72] },
  "finger-flexion": { rest: lower, moves: "fingers", joint: [74, 80], begins: 0, turn: 1, reach: 22, size: 1, belly: [30, 92] },
  "tip-flexion": fist,
  "index-finger-abduction": { rest: palm, moves: "finger", joint: [57, 96], begins: -98, turn: -1, reach: 24, belly: [58, 116], size: 1 },
  "little-finger-abduction": { rest: palm, moves: "finger", joint: [97, 100], begins: -80, turn: 1, reach: 20, belly: [94, 118], size: 0.9 },
  "finger-adduction": { rest: palm, moves: "finger", joint: [56, 96], begins: -120, turn: 1, reach: 24, belly: [62, 112], size: 1 },
  "thumb-abduction": { rest: [["forearm", [6, 104], 0, 1]], moves: "tip", joint: [66, 98], begins: -6, turn: -1, reach: 20, belly: [66, 96], size: 1.1 },
  "thumb-opposition": { ...thumbFront, begins: -150, turn: 1 },
  "thumb-adduction": { ...thumbFront, begins: -170, turn: 1 },
  "thumb-extension": { ...thumbFront, begins: -110, turn: -1, belly: [62, 136] },
  "shoulder-abduction": { rest: front, moves: "arm", joint: [66, 70], begins: 84, turn: -1, reach: 40, belly: [66, 66], over: true, size: 0.56 },
  "shoulder-adduction": { rest: front, moves: "arm", joint: [66, 70], begins: 0, turn: 1, reach: 40, belly: [56, 84], over: true, size: 0.56 },
  "external-rotation": { rest: above, seen: "from above", moves: "forearm", joint: [100, 88], begins: -90, turn: 1, reach: 40, belly: [72, 84] },
  "internal-rotation": { rest: above, seen: "from above", moves: "forearm", joint: [100, 88], begins: -60, turn: -1, reach: 40, belly: [72, 84] },
  "blade-retraction": { rest: above, seen: "from above", moves: "upperArm", joint: [94, 84], begins: 10, turn: 1, reach: 36, belly: [76, 90] },
  "blade-protraction": { rest: above, seen: "from above", moves: "arm", joint: [94, 84], begins: -60, turn: -1, reach: 50, belly: [86, 84], size: 0.6 },
  "forearm-pronation": { ...fistTurns, turn: 1 },
  "forearm-supination": { ...fistTurns, turn: -1 },
  "hip-flexion": { ...hip, begins: 0, turn: -1 },
  "hip-extension": { ...hip, begins: -20, turn: 1, belly: [56, 112] },
  "hip-abduction": { rest: [["trunk", [75, 52], -90, 0.6], ["legAbove", [68, 54], 92, 0.68]], moves: "legAbove", joint: [84, 54], begins: 84, turn: -1, reach: 44, belly: [92, 56], size: 0.68 },
  "hip-adduction": { rest: [["trunk", [75, 52], -90, 0.6], ["legAbove", [66, 54], 92, 0.68]], moves: "legAbove", joint: [84, 54], begins: 62, turn: 1, reach: 44, belly: [84, 74], size: 0.68 },
  "knee-extension": { rest: thigh, moves: "shank", joint: [70, 52], begins: 90, turn: -1, reach: 40, belly: [44, 38] },
  "knee-flexion": { rest: thigh, moves: "shank", joint: [70, 52], begins: 10, turn: 1, reach: 40, belly: [44, 62] },
  "ankle-dorsiflexion": { rest: shin, moves: "foot", joint: [62, 84], begins: 24, turn: -1, reach: 36, belly: [72, 40], size: 0.95 },
  "ankle-plantar-flexion": { rest: shin, moves: "foot", joint: [62, 84], begins: -8, turn: 1, reach: 36, belly: [48, 36], size: 0.95 },
  "foot-inversion": { rest: [["shin", [75, 10], 90, 0.9]], moves: "footFront", joint: [75, 84], begins: 90, turn: 1, reach: 28, belly: [64, 50], size: 1 },
  "foot-eversion": { rest: [["shin", [75, 10], 90, 0.9]], moves: "footFront", joint: [75, 84], begins: 90, turn: -1, reach: 28, belly: [86, 50], size: 1 },
  "toe-extension": { ...toes, turn: -1 },
  "toe-flexion": { ...toes, begins: -20, turn: 1 },
  "toe-spread": { rest: [["legAbove", [75, 150], -90, 0.6], ["toe", [62, 80], -95, 1], ["toe", [75, 76], -90, 0.9]], moves: "toe", joint: [88, 84], begins: -80, turn: 1, reach: 16, belly: [88, 100], size: 0.9 },
  "neck-flexion": { rest: [["trunk", [140, 104], 180]], moves: "head", joint: [80, 102], begins: 180, turn: 1, reach: 40, belly: [84, 90], size: 0.9 },
  "neck-extension": { rest: [["trunk", [70, 146], -90]], moves: "head", joint: [70, 82], begins: -60, turn: -1, reach: 38, belly: [58, 84], size: 0.9 },
  "sit-up": { rest: [["leg", [84, 106], 0, 0.5]], moves: "trunk", joint: [84, 106], begins: 180, turn: 1, reach: 64, belly: [66, 92], size: 0.8 },
};

/** The scene of a movement, by its id or the end of it. */
export function sceneFor(id) {
  const name = Object.keys(SCENES).find((one) => id === one) ?? Object.keys(SCENES).find((one) => id.includes(one)) ?? "elbow-flexion";
  return scene(SCENES[name]);
}

