// The spine from the side and from behind, drawn from its angles. From behind the patient's left is on the left.

import { el, svg } from "../bedside/dom.js";
import { flinch } from "./flinch.js";
import { amounts, frame, line, word } from "./frame.js";
import { pointBoard, sidesBoard } from "./point-board.js";
import { ruler } from "./ruler.js";

const TOP = 26;
const STEPS = 60;
const LONG_CM = 62;
const PIXELS = 4.2;
const RADIANS = Math.PI / 180;
const PELVIS = 12;
/** Where the sacrum lies across, seen from the side and from behind. */
const SIDE = 100;
const BEHIND = 350;

/** The side view, from the sacrum up: leaning changes along the chest and loins by their angles, at one place sharply. */
function leaning(round, sharp, where, hollow) {
  const points = [];
  let [x, y] = [SIDE, TOP + LONG_CM * PIXELS];
  for (let i = 0; i <= STEPS; i++) {
    const up = i / STEPS;
    const cm = (1 - up) * LONG_CM;
    const loins = PELVIS - (hollow * Math.min(up, 0.34)) / 0.34;
    const chest = (round * Math.min(Math.max(up - 0.34, 0), 0.46)) / 0.46;
    const neck = (-34 * Math.max(up - 0.8, 0)) / 0.2;
    const bend = cm < where ? sharp : 0;
    const lean = (loins + chest + neck + bend) * RADIANS;
    points.push([x, y]);
    x += (Math.sin(lean) * LONG_CM * PIXELS) / STEPS;
    y -= (Math.cos(lean) * LONG_CM * PIXELS) / STEPS;
  }
  return points;
}

/** Whatever the angles, the neck is held above the sacrum, as somebody who stands does; the front is on the right. */
function sideSpine(...angles) {
  const points = leaning(...angles);
  const off = points[0][0] - points[STEPS][0];
  return points.map(([x, y], i) => [x + (off * i) / STEPS, y]);
}

const joined = (points) => `M${points.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join("L")}`;

/** From behind: a bow whose two half-angles add up to the angle measured. */
function backSpine(right, left) {
  const deep = ((right - left) / 2) * RADIANS * 70;
  return Array.from({ length: STEPS + 1 }, (_, i) => [BEHIND + deep * Math.sin((Math.PI * i) / STEPS), TOP + (i / STEPS) * LONG_CM * PIXELS]);
}

function spine(probe) {
  const [round, sharp, where, hollow, right, left] = amounts(probe);
  const side = sideSpine(round, sharp, where, hollow);
  const behind = backSpine(right, left);
  const beads = (points) => points.filter((_, i) => i % 3 === 0).map(([cx, cy]) => svg("circle", { class: "dot", cx, cy, r: 2.6 }));
  return frame(420, 324, line("turn", `M${SIDE} ${TOP}V${TOP + LONG_CM * PIXELS}M${BEHIND} ${TOP}V${TOP + LONG_CM * PIXELS}`), line("limb-edge", joined(side)), line("limb-edge", joined(behind)), ...beads(behind),
    svg("g", { transform: "translate(20 0)" }, line("outline", `M276 44C290 40 306 36 312 26M384 44C370 40 354 36 348 26M276 44C270 130 286 200 288 250C286 276 282 290 284 306M384 44C390 130 374 200 372 250C374 276 378 290 376 306`)),
    word(8, 320, "back"), word(SIDE, 320, "from the side", "middle"), word(232, 320, "front", "end"), word(BEHIND, 320, "from behind", "middle"), word(284, 14, "left"), word(416, 14, "right", "end"));
}

/**
 * Someone bent forwards, seen from behind: the ribs of the side looked along, higher by so much; a unit is half a
 * millimetre. The top of such a curve follows its handles by 0.72.
 */
function hump(probe) {
  const [mm] = amounts(probe);
  const way = probe.side === "right" ? 1 : -1;
  const up = (mm * 2) / 0.72;
  return frame(380, 174, svg("g", { transform: "translate(40 0)" }, word(150, 168, "bent forwards, seen from behind", "middle"), line("turn", "M20 70H280"), line("skin", `M150 74C${150 + way * 30} ${64 - up} ${150 + way * 84} ${62 - up} ${150 + way * 118} 130H150Z`), word(150 - way * 10, 104, "other side", way > 0 ? "end" : "start"),
    line("mark", `M${150 + way * 45} 70v${-mm * 2}`), word(30, 150, "left"), word(270, 150, "right", "end"), ruler({ at: way > 0 ? 286 : -34, across: 70 - mm * 2, mm: 20, scale: 2, down: true })));
}

/** Five spines under two fingers, three times life size: one may stand out, or those above it may have slipped forwards. */
function spines(probe) {
  const [behind, front] = amounts(probe);
  const bump = (x, out) => `M${x - 18} ${100 - out * 3}C${x - 12} ${84 - out * 3} ${x + 12} ${84 - out * 3} ${x + 18} ${100 - out * 3}`;
  return frame(340, 172, ...[40, 96, 152, 208, 264].map((x, i) => line("limb-edge thin", bump(x, i === 2 ? behind : i < 2 ? -front : 0))), line("turn", "M20 88H292"),
    ruler({ at: 296, across: 88, mm: 20, scale: 3, down: true, from: -5 }), word(20, 166, "neck end"), word(262, 166, "seat end", "end"));
}

const DOWN = { neck: 40, chest: 120, loins: 222 };

const BACK = "M26 44C40 40 56 36 62 26M134 44C120 40 104 36 98 26M26 44C20 130 36 200 38 250C36 276 32 290 34 306M134 44C140 130 124 200 122 250C124 276 128 290 126 306";

const backMap = (tried, shown) => frame(160, 320, line("outline", BACK), line("turn", "M80 24V290"),
  ...tried.map((probe) => svg("circle", { class: probe === shown ? "dot last" : "dot", cx: 80, cy: DOWN[probe.place] ?? 200, r: probe === shown ? 8 : 5 })), word(4, 20, "left"), word(156, 20, "right", "end"));

/** Where the loin and the joint of the sacrum are tapped and pressed, from behind: across from the midline and down. */
const TOUCHED = { "loin-tap": [24, 196], "sacroiliac-press": [16, 268] };

/** The back, the place under the hand, and how the patient answers. */
function struckAt(probe) {
  const [across, down] = TOUCHED[probe.shown.sign];
  const cx = 80 + (probe.side === "right" ? across : -across);
  return el("div", { class: "struck" }, frame(160, 320, line("outline", BACK), line("turn", "M80 24V290"), svg("circle", { class: "dot last", cx, cy: down, r: 8 }), word(4, 20, "left"), word(156, 20, "right", "end")), flinch(probe));
}

export const spineLook = sidesBoard(spine, false);
export const ribHump = sidesBoard(hump, false);
export const spineFingers = (host, view) => pointBoard(host, view, { map: backMap, figure: spines });
export const spineTap = (host, view) => pointBoard(host, view, { map: backMap, figure: flinch });
export const struck = sidesBoard(struckAt);
