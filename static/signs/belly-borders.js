// Borders and edges on the belly with a ruler beside them: liver, spleen, bladder, flank, and a border that wanders.

import { el, svg } from "../bedside/dom.js";
import { bellyFigure, cmDown, MIDLINE, NAVEL, NIPPLE_LINE, PUBIS, RIBS, wideBelly } from "./belly-figure.js";
import { amounts, frame, word } from "./frame.js";
import { amountText } from "./latest.js";
import { sidesBoard } from "./point-board.js";
import { ruler } from "./ruler.js";

const seenIf = (there) => (there ? "visible" : "hidden");
const CM = 10;
const LIVER_LINE = MIDLINE - NIPPLE_LINE;

const mark = (d, there = true) => svg("path", { class: "mark", visibility: seenIf(there), d });

/** An edge that crosses the line of the collar bone at a height. */
const liverCurve = (y) => `M${LIVER_LINE - 46} ${y + 30}Q${LIVER_LINE - 22} ${y + 16} ${LIVER_LINE} ${y}T${LIVER_LINE + 88} ${y - 62}`;

function liverEdge(probe) {
  const [breathIn, breathOut] = amounts(probe);
  return bellyFigure(mark(liverCurve(RIBS + breathIn * CM), breathIn > 0),
    svg("path", { class: "mark dashed", visibility: seenIf(breathOut > 0), d: liverCurve(RIBS + breathOut * CM) }), cmDown(LIVER_LINE, RIBS, 15));
}

function liverSpan(probe) {
  const [from, to] = amounts(probe);
  const [top, foot] = [RIBS + from * CM, RIBS + to * CM];
  return svg("svg", { class: "marks belly", viewBox: "-30 -160 420 560", width: 357, height: 476, "aria-hidden": "true" },
    ...bellyFigure().childNodes, mark(`M${LIVER_LINE - 30} ${top}h60M${LIVER_LINE - 30} ${foot}h60`), svg("path", { class: "turn", d: `M${LIVER_LINE} -150V${foot + 60}` }), cmDown(LIVER_LINE + 44, top, 20));
}

/** Edge and finger to one scale, px for a millimetre. */
const UNDER = 2.5;
const LIES_AT = 84;

/** Under the fingers: how much the edge gives, how uneven it is, and where it stands between two beats and in the beat. */
function liverFeel(probe) {
  const [met, gives, uneven, lifts] = amounts(probe);
  const edge = (up) => Array.from({ length: 61 }, (_, i) => `${30 + i * 4} ${(LIES_AT - UNDER * ((uneven / 2) * (1 + Math.sin(i / 3.1)) + up)).toFixed(1)}`).join("L");
  const tip = LIES_AT - 11 + UNDER * (met > 0 ? gives - lifts : 10);
  return frame(330, 172,
    svg("path", { class: "band", visibility: seenIf(met > 0), d: `M30 142L${edge(lifts)}V142Z` }),
    svg("path", { class: "mark dashed", visibility: seenIf(lifts > 0), d: `M${edge(0)}` }),
    svg("path", { class: "skin", d: `M136 4V${tip}A11 11 0 0 0 158 ${tip}V4` }),
    svg("g", { visibility: seenIf(lifts > 0) }, word(36, LIES_AT - UNDER * (lifts + uneven) - 8, "in the beat"), word(36, LIES_AT + 16, "between beats (dashed)")),
    word(164, 14, "finger"), word(36, 158, met > 0 ? "the edge under the finger" : "nothing meets the finger"), ruler({ at: 280, across: LIES_AT - 50, mm: 40, scale: UNDER, down: true }));
}

function spleenEdge(probe) {
  const [below, fromMidline] = amounts(probe);
  const reach = below * CM;
  const [x, y] = [MIDLINE + Math.max(-30, fromMidline * CM), RIBS + reach];
  return bellyFigure(mark(`M${x + 64} ${RIBS - 6}Q${x + 44} ${y} ${x} ${y}Q${x - 40} ${y} ${x - 34} ${RIBS + reach * 0.4 - 20}`, below > 0), cmDown(MIDLINE + NIPPLE_LINE, RIBS, 20));
}

function bladder(probe) {
  const [cm] = amounts(probe);
  // a curve drawn to its control points comes three quarters of the way
  const top = PUBIS - 8 - ((cm * CM - 8) * 4) / 3;
  const wide = 18 + cm * 3;
  return bellyFigure(mark(`M${MIDLINE - wide} ${PUBIS - 8}C${MIDLINE - wide} ${top} ${MIDLINE + wide} ${top} ${MIDLINE + wide} ${PUBIS - 8}`, cm > 0),
    svg("g", { transform: `translate(0 ${PUBIS}) scale(1 -1)` }, svg("path", { class: "gauge", d: Array.from({ length: 17 }, (_, i) => `M${MIDLINE + 70} ${i * CM}h${i % 5 ? 5 : 10}`).join("") })),
    ...[0, 5, 10, 15].map((i) => svg("text", { class: "tick", x: MIDLINE + 84, y: PUBIS - i * CM + 4 }, i)), svg("text", { class: "tick", x: MIDLINE + 104, y: PUBIS - 150 }, "cm"));
}

const across = (side, y) => {
  const way = side === "right" ? -1 : 1;
  const ticks = Array.from({ length: 16 }, (_, i) => `M${MIDLINE + way * i * CM} ${y}v${i % 5 ? 5 : 10}`).join("");
  return [svg("path", { class: "gauge", d: ticks }), ...[0, 5, 10, 15].map((i) => svg("text", { class: "tick", x: MIDLINE + way * i * CM, y: y + 23, "text-anchor": "middle" }, i))];
};

const upright = (side, cm, name) => {
  const x = MIDLINE + (side === "right" ? -1 : 1) * Math.min(cm, 16) * CM;
  return [mark(`M${x} ${NAVEL - 50}V${NAVEL + 50}`), svg("text", { class: "trace-name", x: x + 3, y: NAVEL - 56, "text-anchor": "end" }, name)];
};

/** From the navel outwards the note stays the same as far as a mark, which may be the flank itself. */
function flank(probe) {
  const [cm] = amounts(probe);
  const way = probe.side === "right" ? -1 : 1;
  return el("div", {}, wideBelly(...upright(probe.side, cm, ""), svg("path", { class: "gauge", d: `M${MIDLINE} ${NAVEL + 30}h${way * Math.min(cm, 16) * CM}l${-way * 8} -5m${way * 8} 5l${-way * 8} 5` }), ...across(probe.side, NAVEL + 58)),
    el("p", { class: "quiet" }, `Tapped from the navel outwards, the note stays the same for ${amountText(cm)} cm (arrow, to the blue mark). The ruler from the navel ends just short of the flank, at 15 cm.`));
}

/** The same, lying flat and turned away. */
function wandering(probe) {
  const [flat, turned] = amounts(probe);
  return el("div", {}, wideBelly(...upright("left", flat, "flat"), svg("path", { class: "mark dashed", d: `M${MIDLINE + Math.min(turned, 16) * CM} ${NAVEL - 40}V${NAVEL + 40}` }),
    svg("text", { class: "trace-name", x: MIDLINE + Math.min(turned, 15.4) * CM, y: NAVEL - 74, "text-anchor": "end" }, "turned"), ...across("left", NAVEL + 58)),
    el("p", { class: "quiet" }, `Tapped from the navel outwards, the note stays the same for ${amountText(flat)} cm lying flat (whole mark) and for ${amountText(turned)} cm turned away (dashed mark). The ruler from the navel ends just short of the flank, at 15 cm.`));
}

export const borders = {
  "liver-edge": sidesBoard(liverEdge),
  "liver-span": sidesBoard(liverSpan),
  "liver-feel": sidesBoard(liverFeel),
  "spleen-edge": sidesBoard(spleenEdge),
  "bladder-dullness": sidesBoard(bladder),
  "belly-border": sidesBoard(flank),
  "border-shift": sidesBoard(wandering),
};
