// The pulse under three fingers: its movement over time, to be counted with the stop-watch and judged for its evenness.

import { el } from "../bedside/dom.js";
import { lengthMs } from "./curve.js";
import { amountText, curvesOf } from "./latest.js";
import { onAPartner } from "./partner.js";
import { Player } from "./player.js";
import { Trace } from "./trace.js";

/** The moments at which the curve rises through half of its height, in milliseconds. */
export function upstrokes({ samples, stepMs }) {
  const half = (Math.max(...samples) + Math.min(...samples)) / 2;
  return samples.flatMap((height, index) => (index > 0 && samples[index - 1] < half && height >= half ? [index * stepMs] : []));
}

export function pulse(host, { probes, fresh, still }) {
  const probe = fresh ?? probes.at(-1);
  const [curve] = curvesOf(probe);
  const box = el("div", { class: "traces wide" });
  host.append(box);
  const trace = new Trace(box, { series: [{ name: "", side: "right", curve }], from: "the start", watch: () => player.stop(), short: true });
  box.append(el("p", { class: "trace-title" }, `Pulse at the wrist, ${amountText(lengthMs(curve) / 1000, 0)} seconds`), trace.node);
  const player = new Player(0, lengthMs(curve), (ms) => trace.at(ms));
  if (!still) host.append(el("div", { class: "actions" }, el("button", { type: "button", onclick: () => player.play() }, "Feel again, at true speed")));
  host.append(onAPartner());
  if (fresh && !still) player.play();
  const beats = upstrokes(curve).map((ms) => amountText(ms / 1000));
  return `Beats at ${beats.join(", ")} seconds.`;
}
