// The belly from the front, a millimetre to a unit: ribs, navel, hip bones and groins. The patient's right is on the left
// of the drawing.

import { svg } from "../bedside/dom.js";

export const MIDLINE = 180;
export const NAVEL = 212;
export const PUBIS = 372;
/** Where the line of the middle of the collar bone meets the ribs. */
export const RIBS = 118;
export const NIPPLE_LINE = 80;

const HALF = "M0 34C28 58 66 92 116 168M152 20C140 90 128 150 132 220C138 262 150 300 158 390M124 236C132 230 140 232 146 240M116 262C90 316 56 352 14 372M14 372H0";
/** Sides that lie farther out than a ruler from the navel ends. */
const WIDE = "M156 20C152 90 160 140 166 212C168 262 166 300 162 390M0 34C28 58 66 92 116 168M138 236C146 230 154 232 160 240M130 262C100 316 60 352 14 372M14 372H0";
const REGIONS = "M-78 128V352M78 128V352M-134 168H134M-134 256H134";

/** Across from the midline and down; right of the patient is negative. */
const SPOTS = { upper: [92, 136], middle: [106, 212], lower: [98, 300] };
const MIDDLE = { upper: 128, navel: NAVEL, lower: 318, aorta: 150, liver: 128, scar: 262 };
/** The bony knob at the inner end of the groin, from which hernias are told. */
const TUBERCLE = 27;
const GROIN = { inguinal: [15, 356], femoral: [44, 389] };

const half = (transform, d) => svg("path", { class: "outline", transform, d });

export const bellyFigure = (...nodes) => figure(HALF, ...nodes);

/** As wide as fifteen centimetres from the navel need. */
export const wideBelly = (...nodes) => figure(WIDE, ...nodes);

function figure(outline, ...nodes) {
  return svg("svg", { class: "marks belly", viewBox: "-30 0 420 400", width: 357, height: 340, "aria-hidden": "true" },
    half(`translate(${MIDLINE} 0)`, outline), half(`translate(${MIDLINE} 0) scale(-1 1)`, outline),
    svg("circle", { class: "outline", cx: MIDLINE, cy: NAVEL, r: 4 }),
    svg("text", { class: "tick", x: 4, y: 14 }, "right"), svg("text", { class: "tick", x: 356, y: 14, "text-anchor": "end" }, "left"),
    ...[-TUBERCLE, TUBERCLE].map((across) => svg("circle", { class: "outline", cx: MIDLINE + across, cy: PUBIS - 1, r: 3 })),
    ...nodes);
}

/** A ruler down the belly from a place on, a tick for each centimetre, a number for every fifth. */
export const cmDown = (x, y, cm) =>
  svg("g", {}, svg("path", { class: "gauge", d: `M${x} ${y}v${cm * 10}${Array.from({ length: cm + 1 }, (_, i) => `M${x} ${y + i * 10}h${i % 5 ? 6 : 11}`).join("")}` }),
    ...Array.from({ length: Math.floor(cm / 5) + 1 }, (_, i) => svg("text", { class: "tick", x: x + 15, y: y + i * 50 + 4 }, i * 5)), svg("text", { class: "tick", x: x - 4, y: y + cm * 10 + 4, "text-anchor": "end" }, "cm"));

/** Where a probe lies: [x, y] in the drawing. */
export function spotOf({ place, side }) {
  if (side !== "right" && side !== "left") return [place === "liver" ? MIDLINE - 70 : MIDLINE, MIDDLE[place] ?? NAVEL];
  const [across, down] = SPOTS[place] ?? GROIN[place] ?? SPOTS.middle;
  return [MIDLINE + (side === "right" ? -across : across), down];
}

/** The nine regions with a dot where a hand has been. */
export const bellyMap = (tried, shown) =>
  bellyFigure(svg("path", { class: "grid", transform: `translate(${MIDLINE} 0)`, d: REGIONS }),
    ...tried.map((probe) => {
      const [cx, cy] = spotOf(probe);
      return svg("circle", { class: probe === shown ? "dot last" : "dot", cx, cy, r: probe === shown ? 10 : 6 });
    }));
