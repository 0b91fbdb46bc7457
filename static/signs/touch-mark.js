// A point of the skin that was tried: a disc filled as far as the patient's number of ten goes, crossed out at nought. The last
// one has a ring about it.

import { el, svg } from "../bedside/dom.js";
import { measuresOf } from "./latest.js";

const TEN = 10;

export const numberOf = (probe) => measuresOf(probe)[0].amount;

/** The part of a disc below a level that is so much of its height. */
function filled(share, r) {
  const up = r - 2 * r * share;
  const half = Math.sqrt(Math.max(0, r * r - up * up));
  return share >= 1 ? `M${-r} 0A${r} ${r} 0 1 0 ${r} 0A${r} ${r} 0 1 0 ${-r} 0Z` : `M${(-half).toFixed(2)} ${up.toFixed(2)}A${r} ${r} 0 ${share > 0.5 ? 1 : 0} 0 ${half.toFixed(2)} ${up.toFixed(2)}Z`;
}

function mark(number, r) {
  const arm = r * 0.62;
  return [
    svg("circle", { class: "touch-ring", r }),
    svg("path", { class: "touch-part", d: number > 0 ? filled(number / TEN, r) : "" }),
    svg("path", { class: "touch-cross", d: number > 0 ? "" : `M${-arm} ${-arm}L${arm} ${arm}M${arm} ${-arm}L${-arm} ${arm}` }),
  ];
}

export const touchMark = (probe, [x, y], r, last) =>
  svg("g", { class: "touch-mark", transform: `translate(${x} ${y})`, "data-of-ten": numberOf(probe) }, ...mark(numberOf(probe), r), svg("circle", { class: "touch-last", r: r + 1.6, visibility: last ? "visible" : "hidden" }));

const sample = (number) => svg("svg", { class: "key-mark", viewBox: "-4 -4 8 8", width: 18, height: 18, "aria-hidden": "true" }, ...mark(number, 2.8));

/** One mark by itself, beside words. */
export const markAlone = (probe) => sample(numberOf(probe));

export const touchKey = () =>
  el("p", { class: "quiet touch-key" }, ...[[10, "10 of 10"], [5, "part of it"], [0, "0 of 10"]].map(([number, words]) => el("span", {}, sample(number), words)), el("span", {}, "ringed: the last"));
