// The chest watched for a minute: it rises and falls at true speed; breaths are counted with the stop-watch.

import { el, svg } from "../bedside/dom.js";
import { heightAt, highest, lengthMs } from "./curve.js";
import { amountText, curvesOf } from "./latest.js";
import { Player } from "./player.js";
import { Trace } from "./trace.js";

const MOST_MM = 16;

/** The moments at which the curve is at a top, in ms, and how high it is there. */
export function tops({ samples, stepMs }) {
  return samples.flatMap((height, index) =>
    index > 0 && index < samples.length - 1 && height > 0.3 && height >= samples[index - 1] && height > samples[index + 1] ? [{ ms: index * stepMs, height }] : [],
  );
}

/** The chest of someone who lies, from the side. */
function lying() {
  const front = svg("path", { class: "skin", d: "" });
  const rise = (mm) => front.setAttribute("d", `M4 66C20 62 34 58 48 ${54 - mm * 0.5}C90 ${34 - mm * 1.6} 130 ${34 - mm * 1.6} 170 ${48 - mm * 0.6}C190 56 210 60 236 62V84H4Z`);
  rise(0);
  return { node: svg("svg", { class: "lying", viewBox: "0 0 240 88", width: 240, height: 88, "aria-hidden": "true" }, front), rise };
}

export function breathingWatch(host, { probes, fresh, still }) {
  const [curve] = curvesOf(fresh ?? probes.at(-1));
  const figure = lying();
  const box = el("div", { class: "traces wide" });
  host.append(el("div", {}, figure.node), box);
  const at = (ms) => figure.rise(heightAt(curve, ms));
  const trace = new Trace(box, { series: [{ name: "", side: "right", curve }], low: 0, high: MOST_MM, from: "the start", watch: (ms) => (player.stop(), at(ms)), short: true });
  box.append(el("p", { class: "trace-title" }, `The chest rises, ${amountText(lengthMs(curve) / 1000, 0)} seconds`), trace.node);
  const player = new Player(0, lengthMs(curve), (ms) => (trace.at(ms), at(ms)));
  if (!still) {
    host.append(el("div", { class: "actions" }, el("button", { type: "button", onclick: () => player.play() }, "Watch again, at true speed"), el("button", { type: "button", onclick: () => player.stop() }, "Stop")));
    if (fresh) player.play();
  }
  const breaths = tops(curve);
  return `The chest is highest at ${breaths.map(({ ms }) => amountText(ms / 1000)).join(", ")} seconds; it rises by ${amountText(highest(curve))} mm at most and ${amountText(Math.min(...breaths.map(({ height }) => height)))} mm at least.`;
}
