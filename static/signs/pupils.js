// Both pupils over time, to scale beside a gauge, with what the examiner does: torch, near target, light or dark.

import { el, put } from "../bedside/dom.js";
import { heightAt, lengthMs, peak } from "./curve.js";
import { eyes } from "./eyes.js";
import { amountText, curvesOf, latestBySide, sideText } from "./latest.js";
import { moments as momentsOf, nowDone, throughout } from "./moments.js";
import { Player } from "./player.js";
import { Trace } from "./trace.js";

const EYES = ["right", "left"];
const WIDEST_MM = 8;

const litEye = (text) => EYES.find((side) => text.includes(`torch on the ${side}`));

const seriesOf = (probe) => EYES.map((side) => ({ side, name: side, curve: curvesOf(probe).find(({ name }) => name === side) })).filter(({ curve }) => curve);

/** One probe on the stage. Returns a function that plays it. */
function stage(host, probe, still) {
  const pair = eyes();
  const caption = el("p", { class: "quiet shown-side" });
  const box = el("div", { class: "traces" });
  put(host, el("div", { class: "figure-box" }, pair.node, caption), box);
  const [series, moments] = [seriesOf(probe), momentsOf(probe)];
  const show = (ms) => {
    for (const { side, curve } of series) pair[side].set(heightAt(curve, ms));
    const done = nowDone(moments, ms);
    caption.textContent = [done, throughout(probe)].filter(Boolean).join("; ");
    for (const side of EYES) pair[side].light(litEye(done) === side);
  };
  const trace = new Trace(box, { series, low: 0, high: WIDEST_MM, from: "the start", marks: moments, watch: (ms) => (player.stop(), show(ms)) });
  box.append(trace.node);
  const player = new Player(0, Math.max(...series.map(({ curve }) => lengthMs(curve))), (ms) => (show(ms), trace.at(ms)));
  show(0);
  return () => (still ? show(Math.max(...series.map(({ curve }) => peak(curve).ms))) : player.play());
}

export function pupils(host, { probes, fresh, still }) {
  const sides = latestBySide(probes);
  const box = el("div", { class: "stage eyes-stage" });
  host.append(box);
  const begin = (probe) => stage(box, probe, still)();
  const label = (side) => [still ? "Show" : "Watch again", sideText(side)].filter(Boolean).join(": ");
  const again = sides.filter((probe) => momentsOf(probe).length > 0 || sides.length > 1);
  const last = fresh ?? probes.at(-1);
  const play = stage(box, last, still);
  if (again.length) host.append(el("div", { class: "actions" }, ...again.map((probe) => el("button", { type: "button", onclick: () => begin(probe) }, label(probe.side)))));
  if (fresh || still) play();
  return said(last);
}

function said(probe) {
  const moments = momentsOf(probe).map(({ ms, text }) => `${text} at ${amountText(ms / 1000)} s`);
  const sizes = seriesOf(probe).map(({ name, curve }) => `${name} ${curve.samples[0].toFixed(1)} mm to ${peak(curve).height.toFixed(1)} mm, at the end ${curve.samples.at(-1).toFixed(1)} mm`);
  return `${[throughout(probe), ...moments, ...sizes].filter(Boolean).join("; ")}. ${probe.shown.words ?? ""}`.trim();
}
