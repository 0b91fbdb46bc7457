// An open mouth in millimetres as the examiner looks into it, the patient's right on the left of the page.

import { svg } from "../bedside/dom.js";

export const names = (x, y) => ["right", "left"].map((side) => svg("text", { class: "eye-name", x: side === "right" ? -x : x, y, "text-anchor": "middle" }, side));

/** Lips and the dark behind them. */
export const openMouth = () => [
  svg("path", { class: "mouth-lips", d: "M-36 4C-32 -26 -12 -32 0 -28C12 -32 32 -26 36 4C32 30 16 40 0 40C-16 40 -32 30 -36 4Z" }),
  svg("path", { class: "mouth-dark", d: "M-31 4C-27 -20 -12 -25 0 -24C12 -25 27 -20 31 4C27 26 14 34 0 34C-14 34 -27 26 -31 4Z" }),
];

/** Lips that are parted only so far that the tongue comes out between them. */
export const partedLips = () => [
  svg("path", { class: "mouth-lips", d: "M-32 0C-27 -14 -11 -18 0 -14C11 -18 27 -14 32 0C27 15 14 20 0 20C-14 20 -27 15 -32 0Z" }),
  svg("path", { class: "mouth-dark", d: "M-27 0C-23 -8 -10 -9 0 -8C10 -9 23 -8 27 0C23 10 12 14 0 14C-12 14 -23 10 -27 0Z" }),
];

const MARKS = Array.from({ length: 31 }, (_, index) => index - 15);

/** A ruler across: nought in the middle, a tick for every millimetre. */
export const acrossRuler = (y) => [
  svg("path", { class: "gauge", d: `M-15 ${y}H15${MARKS.map((mm) => `M${mm} ${y}v${mm % 10 === 0 ? 3.5 : mm % 5 === 0 ? 2.6 : 1.5}`).join("")}` }),
  ...[-10, 0, 10].map((mm) => svg("text", { class: "tick small", x: mm, y: y + 7, "text-anchor": "middle" }, Math.abs(mm))),
];
