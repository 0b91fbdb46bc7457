// A sign without a drawing of its own: its amounts as a table, its curves as traces, and its words.

import { el } from "../bedside/dom.js";
import { highest, lowest } from "./curve.js";
import { amountText, curvesOf, latestBySide, measuresOf, sideText, wordsText } from "./latest.js";
import { seriesOf } from "./moving.js";
import { Trace } from "./trace.js";

function amounts(probes) {
  const rows = probes.flatMap((probe) => measuresOf(probe).map(({ label, amount, unit }) =>
    el("tr", {}, el("th", { scope: "row" }, [sideText(probe.side), label].filter(Boolean).join(", ")), el("td", { class: "figure" }, `${amountText(amount)} ${unit}`))));
  return rows.length ? el("table", { class: "measures" }, el("tbody", {}, ...rows)) : "";
}

function said(probe) {
  const parts = [
    ...measuresOf(probe).map(({ label, amount, unit }) => `${label} ${amountText(amount)} ${unit}`),
    ...curvesOf(probe).map((curve) => `${curve.name} between ${amountText(lowest(curve))} and ${amountText(highest(curve))} ${curve.unit}`),
  ];
  return parts.length ? `${[sideText(probe.side), parts.join(", ")].filter(Boolean).join(": ")}.` : "";
}

export function table(host, { probes }) {
  const sides = latestBySide(probes);
  host.append(amounts(sides));
  const names = [...new Set(sides.flatMap((probe) => curvesOf(probe).map(({ name }) => name)))];
  for (const name of names) {
    const box = el("div", { class: "traces" });
    host.append(box);
    box.append(new Trace(box, { series: seriesOf(sides, (curves) => curves.find((curve) => curve.name === name)), from: "the start", watch: () => {} }).node);
  }
  const words = wordsText(sides);
  if (words) host.append(el("p", { class: "felt" }, words));
  return `${sides.map(said).join(" ")} ${words}`.trim();
}

export const drawings = { table };
