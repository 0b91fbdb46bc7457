// A movement against the examiner's hand: how far the part moves, and the force held, as bars with their numbers.

import { el, svg } from "../bedside/dom.js";
import { amountText, latestBySide, measuresOf, sideText, wordsText } from "./latest.js";
import { onAPartner } from "./partner.js";

const WIDTH = 160;
const WHOLE = { degrees: 90, N: 100, newtons: 100 };

/** The length of a full bar: the usual one of the unit, or the largest amount where that is larger. */
function wholes(probes) {
  const all = { ...WHOLE };
  for (const { unit, amount } of probes.flatMap(measuresOf)) all[unit] = Math.max(all[unit] ?? 1, amount);
  return all;
}

function bar({ amount, unit }, whole) {
  const length = Math.max((amount / whole) * WIDTH, 1);
  return el("div", { class: "bar" },
    svg("svg", { viewBox: `0 0 ${WIDTH} 12`, width: WIDTH, height: 12, "aria-hidden": "true" },
      svg("path", { class: "bar-whole", d: `M0 11.500H${WIDTH}` }), svg("rect", { class: "bar-part", x: 0, y: 1, width: length, height: 10 })),
    el("span", { class: "number" }, `${amountText(amount)} ${unit}`));
}

export function resistedMovement(host, { probes }) {
  const sides = latestBySide(probes);
  const whole = wholes(sides);
  const labels = [...new Set(sides.flatMap((probe) => measuresOf(probe).map((measure) => measure.label)))];
  const cell = (probe, label) => {
    const measure = measuresOf(probe).find((one) => one.label === label);
    return el("td", {}, measure ? bar(measure, whole[measure.unit]) : "");
  };
  const head = el("tr", {}, el("th", { scope: "col" }, "Movement"), ...sides.map((probe) => el("th", { scope: "col" }, sideText(probe.side) || "seen")));
  const rows = labels.map((label) => el("tr", {}, el("th", { scope: "row" }, label), ...sides.map((probe) => cell(probe, label))));
  const words = wordsText(sides);
  host.append(el("table", { class: "measures" }, el("thead", {}, head), el("tbody", {}, ...rows)));
  if (words) host.append(el("p", { class: "felt" }, words));
  host.append(onAPartner());
  return `${sides.map(said).join(" ")} ${words}`.trim();
}

export const said = (probe) =>
  `${sideText(probe.side) || "seen"}: ${measuresOf(probe).map(({ label, amount, unit }) => `${label} ${amountText(amount)} ${unit}`).join(", ")}.`;
