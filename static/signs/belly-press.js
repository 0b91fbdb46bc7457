// A hand on one region of the belly: how deep the fingers sink, how hard they must push, what lies under them.

import { svg } from "../bedside/dom.js";
import { bellyMap } from "./belly-figure.js";
import { flinch } from "./flinch.js";
import { amounts, frame as wide } from "./frame.js";
import { pointBoard } from "./point-board.js";
import { ruler } from "./ruler.js";

const DEEP_MM = 40;
const SCALE = 2.6;
const SKIN = 50;
const NEWTON = 3.2;

const frame = (...nodes) => wide(300, 200, ...nodes);

const fingers = (x, depth) => svg("path", { class: "skin", d: `M${x - 34} ${depth - 46}V${depth - 10}A10 10 0 0 0 ${x - 12} ${depth - 8}A10 10 0 0 0 ${x + 10} ${depth - 6}A10 10 0 0 0 ${x + 32} ${depth - 10}V${depth - 46}` });

/** A push in newtons as the length of an arrow, a tick every five. */
function push(newtons) {
  const end = 190 - newtons * NEWTON;
  return svg("g", {}, svg("path", { class: "gauge", d: `M286 190V${end}l-4 7m4 -7l4 7` }), ...[0, 5, 10, 15, 20, 25, 30].map((n) => svg("path", { class: "gauge", d: `M281 ${190 - n * NEWTON}h10` })),
    svg("text", { class: "tick", x: 274, y: 194, "text-anchor": "end" }, "0 N"), svg("text", { class: "tick", x: 276, y: 190 - 30 * NEWTON + 4, "text-anchor": "end" }, "30 N"));
}

const wall = (x, mm) => svg("path", { class: "limb-edge thin", d: `M40 ${SKIN}H${x - 60}C${x - 46} ${SKIN} ${x - 44} ${SKIN + mm * SCALE} ${x - 30} ${SKIN + mm * SCALE}H${x + 30}C${x + 44} ${SKIN + mm * SCALE} ${x + 46} ${SKIN} ${x + 60} ${SKIN}H250` });

const depths = ruler({ at: 24, across: SKIN, mm: DEEP_MM, scale: SCALE, down: true });

function light(probe) {
  const [mm, newtons] = amounts(probe);
  return frame(depths.cloneNode(true), wall(140, mm), fingers(140, SKIN + mm * SCALE), push(newtons));
}

/** Under a deep hand something round or long may lie, as wide as it is felt. */
function deep(probe) {
  const [across, dents, newtons] = amounts(probe);
  const radius = Math.min(across, 110) / 2;
  return frame(depths.cloneNode(true), wall(140, 30), fingers(140, SKIN + 30 * SCALE),
    svg("path", { class: "band", visibility: across > 0 ? "visible" : "hidden", d: `M${140 - radius} 172A${radius} ${26 - Math.min(dents, 14)} 0 0 1 ${140 + radius} 172Z` }), push(newtons));
}

const board = (figure) => (host, view) => pointBoard(host, view, { map: bellyMap, figure });

export const bellyPress = board(light);
export const bellyDeep = board(deep);
export const bellyTap = board(flinch);
export const bellyRelease = board(flinch);
