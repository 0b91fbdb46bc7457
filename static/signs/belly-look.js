// What is seen of a belly: its outline from the side and from the foot, its veins and its scars, and how it moves.

import { el, svg } from "../bedside/dom.js";
import { bellyFigure, MIDLINE, NAVEL, spotOf } from "./belly-figure.js";
import { heightAt, lengthMs, peak } from "./curve.js";
import { amounts, frame, line, word } from "./frame.js";
import { amountText, curvesOf } from "./latest.js";
import { acted } from "./motion/acted.js";
import { seriesOf } from "./moving.js";
import { phrase, sidesBoard } from "./point-board.js";

const LEVEL = 84;

/** Someone who lies flat, seen from the right side and from the foot of the bed; one unit is two millimetres. */
function shape(probe) {
  const [above, flanks, bladder, navel] = amounts(probe);
  const top = LEVEL - above / 2;
  const low = top - Math.min(30, bladder * 2.2) + 8;
  const side = `M4 ${LEVEL}C30 ${LEVEL - 10} 60 ${LEVEL - 12} 92 ${LEVEL}C116 ${LEVEL} 124 ${top} 152 ${top}h10v${-navel / 2}h8v${navel / 2}C190 ${top} 196 ${low} 214 ${low}C232 ${low} 238 ${LEVEL + 8} 252 ${LEVEL + 12}L292 ${LEVEL + 8}`;
  const half = 78 + flanks / 2;
  const foot = `M80 ${LEVEL + 46}C${98 - half} ${LEVEL + 50} ${92 - half} ${LEVEL + 12} ${110 - half} ${LEVEL - 4}C${128 - half} ${top - 8} ${90} ${top} 100 ${top}C110 ${top} ${72 + half} ${top - 8} ${90 + half} ${LEVEL - 4}C${108 + half} ${LEVEL + 12} ${102 + half} ${LEVEL + 50} 120 ${LEVEL + 46}Z`;
  return el("div", { class: "both-views" },
    el("div", {}, frame(300, 140, line("skin", `${side}V136H4Z`), line("turn", `M4 ${LEVEL}H292`)), el("p", { class: "quiet" }, "From the side, head on the left")),
    el("div", {}, frame(240, 140, svg("g", { transform: "translate(20 0)" }, line("skin", foot), line("turn", `M-20 ${LEVEL}H220`))), el("p", { class: "quiet" }, "From the foot")));
}

const WAYS = [[-1, -1], [1, -1], [-1, 1], [1, 1], [0, 1], [0, -1]];

/** Veins as wide as they are, and how fast an emptied one fills from each end. */
function veins(probe) {
  const [width, above, below] = amounts(probe);
  const vein = ([x, y]) => `M${MIDLINE + x * 14} ${NAVEL + y * 14}C${MIDLINE + x * 40} ${NAVEL + y * 30} ${MIDLINE + x * 34} ${NAVEL + y * 76} ${MIDLINE + x * 62} ${NAVEL + y * 130}`;
  const speed = (y, mm, way) => line("gauge", `M${MIDLINE + 178} ${y}v${way * (6 + mm * 2.2)}l-5 ${-way * 8}m5 ${way * 8}l5 ${-way * 8}`, mm > 0);
  return el("div", {}, bellyFigure(...WAYS.map((way) => svg("path", { class: "vessel", "stroke-width": Math.max(0.4, width * 1.5), d: vein(way) })), speed(NAVEL + 14, above, 1), speed(NAVEL + 170, below, -1)),
    el("p", { class: "quiet" }, `Veins ${amountText(width)} mm wide. Below the navel a vein that was emptied between two fingers fills from above (upper arrow at the edge) by ${amountText(above)} mm and from below (lower arrow) by ${amountText(below)} mm in a second.`));
}

const REGIONS = [["upper", "right"], ["middle", "right"], ["lower", "right"], ["upper", "none"], ["navel", "none"], ["lower", "none"], ["upper", "left"], ["middle", "left"], ["lower", "left"]];

/** Cuts run down the midline, along the ribs and the groins. */
const SLANT = { upper: 0.62, middle: 0.3, lower: -0.55 };

function scars(probe) {
  return bellyFigure(...amounts(probe).map((mm, index) => {
    const [place, side] = REGIONS[index];
    const [x, y] = spotOf({ place, side });
    const way = side === "right" ? 1 : -1;
    const [dx, dy] = side === "none" ? [0, 1] : [Math.cos(SLANT[place]), -way * Math.sin(SLANT[place])];
    return line("scar", `M${x - (dx * mm) / 2} ${y - (dy * mm) / 2}L${x + (dx * mm) / 2} ${y + (dy * mm) / 2}`, mm > 0);
  }));
}

function wall() {
  const skin = svg("path", { class: "skin" });
  const draw = (navel, left, right) => skin.setAttribute("d", `M6 92C40 88 60 76 84 ${66 - right * 1.4}C104 ${58 - right * 2} 112 ${58 - navel * 1.4} 130 ${58 - navel * 1.4}C148 ${58 - navel * 1.4} 156 ${58 - left * 2} 176 ${66 - left * 1.4}C200 76 220 88 254 92V124H6Z`);
  draw(0, 0, 0);
  return { node: svg("svg", { class: "look", viewBox: "0 0 260 128", width: 260, height: 128, "aria-hidden": "true" }, skin, word(8, 14, "right"), word(252, 14, "left", "end"), word(130, 14, "seen from the foot", "middle")), draw };
}

/** Flat, with a wave on each side in turn, and at the top of the breath. */
const STILLS = [0, 650, 1480, 2000];

/** The wall seen from the foot, as it breathes and as waves pass over it. */
export function bellyMovement(host, { probes, fresh, still }) {
  const last = fresh ?? probes.at(-1);
  const [navel, left, right] = curvesOf(last);
  acted(host, {
    probes: [last], end: lengthMs(navel), stills: STILLS,
    make: () => {
      const { node, draw } = wall();
      return { node, show: (ms) => draw(heightAt(navel, ms), heightAt(left, ms), heightAt(right, ms)) };
    },
    traces: [
      { series: seriesOf([last]), low: 0, high: 18, title: "The navel, upwards is outwards" },
      { series: [{ side: "right", name: "right", curve: right }, { side: "left", name: "left", curve: left }], low: 0, high: 8, short: true, title: "Beside the navel" },
    ],
    since: "the start of the breath in", fresh, still,
  });
  return `${phrase(last)}; ${[navel, left, right].map((curve) => `${curve.name}: ${amountText(peak(curve).height)} ${curve.unit}`).join(", ")}.`;
}

export const bellyShape = sidesBoard(shape, false);
export const bellyVeins = sidesBoard(veins);
export const bellyScars = sidesBoard(scars, false);
