// Pulse and pressure: numbers, each with the time and the position in which it was taken.

import { el } from "../bedside/dom.js";
import { clockText } from "../bedside/words.js";
import { amountText, measuresOf, sideText, wordsText } from "./latest.js";

const takenAt = (probe) => (probe.clock ? `${clockText(probe.clock.bedside)}, ${probe.clock.position.replaceAll("-", " ")}` : "");

export function pulsePressure(host, { probes }) {
  const labels = [...new Set(probes.flatMap((probe) => measuresOf(probe).map(({ label }) => label)))];
  const cell = (probe, label) => {
    const measure = measuresOf(probe).find((one) => one.label === label);
    return el("td", { class: "figure" }, measure ? `${amountText(measure.amount)} ${measure.unit}` : "");
  };
  const head = el("tr", {}, el("th", { scope: "col" }, "Taken at"), ...labels.map((label) => el("th", { scope: "col", class: "figure" }, label)));
  const rows = probes.map((probe) =>
    el("tr", {}, el("th", { scope: "row" }, [takenAt(probe), sideText(probe.side)].filter(Boolean).join(", ")), ...labels.map((label) => cell(probe, label))));
  host.append(el("table", { class: "measures" }, el("thead", {}, head), el("tbody", {}, ...rows)));
  const last = probes.at(-1);
  const words = wordsText([last]);
  if (words) host.append(el("p", { class: "felt" }, words));
  return `${measuresOf(last).map(({ label, amount, unit }) => `${label} ${amountText(amount)} ${unit}`).join(", ")}. ${words}`.trim();
}
