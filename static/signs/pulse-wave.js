// The shape of the pulse under the finger over a few beats; in the groin beside the wrist where two are felt. And a cuff let
// down slowly through the breath.

import { el } from "../bedside/dom.js";
import { highest, lengthMs } from "./curve.js";
import { amountText, curvesOf, measuresOf } from "./latest.js";
import { onAPartner } from "./partner.js";
import { Player } from "./player.js";
import { Trace } from "./trace.js";

/** Each beat: when it begins and ends its rise, in ms, and how high it comes. */
export function beatsOf({ samples, stepMs }) {
  const beats = [];
  for (let i = 1; i + 1 < samples.length; i++) {
    const top = samples[i] > samples[i - 1] && samples[i] >= samples[i + 1] && samples[i] > highest({ samples }) * 0.4;
    if (!top) continue;
    let from = i;
    while (from > 0 && samples[from - 1] < samples[from]) from--;
    beats.push({ ms: from * stepMs, rise: (i - from) * stepMs, height: samples[i] });
  }
  return beats;
}

const beatText = ({ ms, rise, height }) => `at ${amountText(ms / 1000)} s up to ${amountText(height, 2)} mm in ${rise} ms`;

export function pulseWave(host, { probes, fresh, still }) {
  const probe = fresh ?? probes.at(-1);
  const [first, second] = curvesOf(probe);
  const both = second.name === "groin";
  const box = el("div", { class: "traces wide" });
  host.append(box);
  const series = both
    ? [{ name: "wrist", side: "right", curve: first }, { name: "groin", side: "left", curve: second }]
    : [{ name: "", side: "right", curve: first }];
  const trace = new Trace(box, { series, from: "the start", high: 2, watch: () => player.stop() });
  box.append(el("p", { class: "trace-title" }, both ? "Wrist (line) and groin (dashes)" : "Movement of the artery"), trace.node);
  const player = new Player(0, lengthMs(first), (ms) => trace.at(ms));
  if (!still) host.append(el("div", { class: "actions" }, el("button", { type: "button", onclick: () => player.play() }, "Feel again, at true speed")));
  host.append(onAPartner());
  if (fresh && !still) player.play();
  const said = (curve) => beatsOf(curve).map(beatText).join("; ");
  return both ? `Wrist ${said(first)}. Groin ${said(second)}.` : `Beats ${said(first)}.`;
}

export function breathCuff(host, { probes, fresh }) {
  const [top, every] = measuresOf(fresh ?? probes.at(-1));
  const line = ({ label, amount, unit }) => el("tr", {}, el("th", { scope: "row" }, label), el("td", { class: "figure" }, `${amountText(amount)} ${unit}`));
  host.append(el("table", { class: "measures" }, el("tbody", {}, line(top), line(every))));
  return `${top.label} ${amountText(top.amount)} ${top.unit}; ${every.label} ${amountText(every.amount)} ${every.unit}.`;
}
