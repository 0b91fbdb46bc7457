// A finger is brought to the nose: both eyes turn in, or not.

import { el, svg } from "../bedside/dom.js";
import { heightAt, lengthMs } from "./curve.js";
import { gazeEyes } from "./gaze-eyes.js";
import { captioned, irisOf, skinOf } from "./head-parts.js";
import { amountText, curvesOf } from "./latest.js";
import { Player } from "./player.js";
import { Trace } from "./trace.js";

const EYES = ["right", "left"];
const MOST = 25;

/** A pair of eyes with the finger before them, and what shows it at a moment. */
function before(probe, series, end) {
  const pair = gazeEyes({ skin: skinOf(probe), iris: irisOf(probe) });
  const finger = svg("path", { class: "finger" });
  pair.node.append(finger);
  const show = (ms) => {
    const near = Math.min(1, ms / (0.8 * end));
    for (const { side, curve } of series) pair[side].look(-heightAt(curve, ms), 0, { held: true });
    const half = 1 + 2.6 * near;
    finger.setAttribute("d", `M${-half} 16V${11 - 3 * near}a${half} ${half} 0 0 1 ${2 * half} 0V16Z`);
  };
  return { node: pair.node, show };
}

/** The finger far away, on its way, and before the nose. */
function stills(probe, series, end) {
  return el("div", { class: "head-row" }, ...[0, 0.4, 1].map((share) => {
    const drawn = before(probe, series, end);
    drawn.show(share * end);
    return captioned(`${amountText((share * end) / 1000)} s`, drawn.node);
  }));
}

export function eyesNear(host, { probes, fresh, still }) {
  const probe = fresh ?? probes.at(-1);
  const series = EYES.map((side) => ({ side, name: side, curve: curvesOf(probe).find(({ name }) => name.startsWith(side)) }));
  const end = lengthMs(series[0].curve);
  const { node, show } = before(probe, series, end);
  const box = el("div", { class: "traces" });
  const grows = el("p", { class: "quiet shown-side" }, "The finger grows as it comes nearer");
  host.append(still ? el("div", {}, stills(probe, series, end), grows, box) : el("div", { class: "stage gaze-stage" }, el("div", { class: "figure-box" }, node, grows), box));
  const trace = new Trace(box, { series, low: -5, high: MOST, from: "the start", short: true, watch: (ms) => (player.stop(), show(ms)) });
  box.append(el("p", { class: "trace-title" }, "Turned inwards, degrees"), trace.node);
  const player = new Player(0, end, (ms) => (show(ms), trace.at(ms)));
  show(end);
  if (!still) {
    host.append(el("div", { class: "actions" }, el("button", { type: "button", onclick: () => player.play() }, "Watch again")));
    if (fresh) player.play();
  }
  return `${series.map(({ side, curve }) => `${side} eye from ${amountText(curve.samples[0])} to ${amountText(curve.samples.at(-1))} degrees inwards`).join("; ")}.`;
}
