// What the bell hears over an artery: loudness over time, drawn as it sounds; nothing sounds until it is asked for.

import { el } from "../bedside/dom.js";
import { chain, filter, following, gain, noise } from "./audio.js";
import { highest } from "./curve.js";
import { amountText, curvesOf, sideText } from "./latest.js";
import { play, stop } from "./sound-desk.js";
import { atThisPlace } from "./side-by-side.js";
import { Trace } from "./trace.js";

/** A rough rushing of low and middle pitch that follows the loudness. */
export const rush = (curve) => (context, out, at) => {
  const seconds = (curve.samples.length * curve.stepMs) / 1000;
  const source = noise(context, seconds, 5);
  chain(source, filter(context, "bandpass", 260, 0.8), following(context, curve.samples.map((share) => share / 100), curve.stepMs, at), gain(context, 0.5), out);
  source.start(at);
  return seconds;
};

export function arterySound(host, { probes, fresh }) {
  const both = atThisPlace(probes, fresh);
  for (const probe of both) {
    const [curve] = curvesOf(probe);
    const box = el("div", { class: "traces wide" });
    host.append(box);
    const trace = new Trace(box, { series: [{ side: probe.side, name: sideText(probe.side), curve }], low: 0, high: 100, from: "the start", watch: stop, short: true });
    box.append(el("p", { class: "trace-title" }, `Loudness: ${sideText(probe.side)}`), trace.node,
      el("div", { class: "actions" },
        el("button", { type: "button", onclick: () => play(rush(curve), (seconds) => trace.at(seconds * 1000)) }, `Listen: ${sideText(probe.side)}`),
        el("button", { type: "button", onclick: stop }, "Stop")));
  }
  return both.map((probe) => `${sideText(probe.side)}: loudness up to ${amountText(highest(curvesOf(probe)[0]))} % with each beat.`).join(" ");
}
