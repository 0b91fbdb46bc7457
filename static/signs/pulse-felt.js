// Pulses under the fingers: how far each lifts the finger, right and left on one scale, and two places felt at once.

import { el } from "../bedside/dom.js";
import { highest } from "./curve.js";
import { amountText, curvesOf, sideText } from "./latest.js";
import { onAPartner } from "./partner.js";
import { stacked } from "./pulse-wave.js";
import { upstrokes } from "./pulse.js";
import { atThisPlace, placeName, said } from "./side-by-side.js";
import { Trace } from "./trace.js";

const MOST_MM = 2.4;

function traced(host, title, series, also) {
  const box = el("div", { class: "traces wide" });
  host.append(box);
  box.append(el("p", { class: "trace-title" }, title), new Trace(box, { series, low: 0, high: MOST_MM, from: "the start", watch: () => {}, also }).node);
}

export function pulseFelt(host, { manoeuvre, probes, fresh }) {
  const both = atThisPlace(probes, fresh);
  const series = both.map((probe) => ({ side: probe.side, name: sideText(probe.side), curve: curvesOf(probe)[0] }));
  traced(host, [placeName(manoeuvre, both[0]), "the artery lifts the finger"].filter(Boolean).join(": "), series);
  host.append(onAPartner());
  return both.map((probe) => said(manoeuvre, probe, `lifts the finger by ${amountText(highest(curvesOf(probe)[0]), 2)} mm`)).join(" ");
}

/** The first full beat of a curve, in milliseconds; none where nothing is felt. */
const firstBeat = (curve) => (highest(curve) > 0.02 ? upstrokes(curve)[0] : undefined);

export function twoPulses(host, { manoeuvre, probes, fresh }) {
  const probe = fresh ?? probes.at(-1);
  const curves = curvesOf(probe);
  const named = (curve) => [sideText(probe.side), `${curve.name}, both felt at once`].filter(Boolean).join(": ");
  stacked(host, curves.map((curve) => ({ name: named(curve), curve })), MOST_MM);
  host.append(onAPartner());
  const beats = curves.map((curve) => {
    const ms = firstBeat(curve);
    return `${curve.name} ${ms === undefined ? "no beat" : `first beat at ${Math.round(ms)} ms`}, ${amountText(highest(curve), 2)} mm`;
  });
  return said(manoeuvre, probe, beats.join("; "));
}
