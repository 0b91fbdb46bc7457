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

/** One above the other on the same seconds, so that what comes later stands further to the right. */
export function stacked(host, panes, high) {
  const box = el("div", { class: "traces wide" });
  host.append(box);
  let moved = () => {};
  const drawn = panes.map(({ name, curve }, index) =>
    new Trace(box, { series: [{ name: "", side: "right", curve }], from: "the start", high, watch: index === 0 && ((ms) => moved(ms)), short: panes.length > 1 }));
  const show = (ms) => drawn.forEach((trace) => trace.at(ms));
  for (const [index, { node }] of drawn.entries()) box.append(el("p", { class: "trace-title" }, panes[index].name), node);
  return { show, onMove: (then) => (moved = (ms) => (then(), drawn.slice(1).forEach((trace) => trace.at(ms, true)))) };
}

export function pulseWave(host, { probes, fresh, still }) {
  const probe = fresh ?? probes.at(-1);
  const [first, second] = curvesOf(probe);
  const both = second.name === "groin";
  const panes = both ? [{ name: "Wrist", curve: first }, { name: "Groin, felt at the same time", curve: second }] : [{ name: "Movement of the artery", curve: first }];
  const traces = stacked(host, panes, 2);
  const player = new Player(0, lengthMs(first), traces.show);
  traces.onMove(() => player.stop());
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
