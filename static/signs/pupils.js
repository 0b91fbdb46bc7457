// Both pupils over time, to scale beside a gauge, with what the examiner does: torch, near target, light or dark. Where motion
// is not wanted they stand at moments told by what is done alone, so that the same ones are compared in everybody.

import { el, put } from "../bedside/dom.js";
import { heightAt, lengthMs, peak } from "./curve.js";
import { eyes } from "./eyes.js";
import { amountText, curvesOf, latest, latestBySide, sideText } from "./latest.js";
import { moments as momentsOf, nowDone, throughout } from "./moments.js";
import { Player } from "./player.js";
import { Trace } from "./trace.js";

const EYES = ["right", "left"];
const NARROWEST_MM = 1;
const WIDEST_MM = 8;
/** A change is drawn on its own axis: here a tenth of a millimetre is some five pixels high. */
const CHANGE_MM = { low: -3, high: 0.5 };
const WIDENING_MM = { low: -0.5, high: 4 };
/** The torch is still where it was so long before the next moment. */
const BEFORE_MS = 300;
const AFTER_MS = 1000;
/** What goes on for long is also looked at on its way. */
const LATER_MS = 5000;
const LONG_MS = 6000;

const litEye = (text) => EYES.find((side) => text.includes(`torch on the ${side}`));

const seriesOf = (probe) => EYES.map((side) => ({ side, name: side, curve: curvesOf(probe).find(({ name }) => name === side) })).filter(({ curve }) => curve);

const changed = ({ curve, ...rest }) => ({ ...rest, curve: { ...curve, samples: curve.samples.map((mm) => mm - curve.samples[0]) } });

const sizesText = (series, ms) => series.map(({ name, curve }) => `${name} ${heightAt(curve, ms).toFixed(1)} mm`).join(", ");

const atText = (ms) => (ms < 0 ? "" : `${amountText(ms / 1000)} s, `);

/** Just before each thing that is done, a second after it, and the end; by the numbers that the moments have on the traces. */
function stillMoments(moments, end) {
  const at = (ms, what) => ({ ms, when: `${atText(ms)}${what}` });
  const each = moments.flatMap(({ ms }, index) => [
    at(ms - BEFORE_MS, `just before ${index + 1}`),
    at(ms + AFTER_MS, `1 s after ${index + 1}`),
    ...((moments[index + 1]?.ms ?? end) - ms > LONG_MS ? [at(ms + LATER_MS, `5 s after ${index + 1}`)] : []),
  ]);
  return moments.length ? [...each, at(end, "the end")] : [{ ms: 0, when: "" }];
}

function drawAt(pair, series, moments, ms) {
  const done = nowDone(moments, ms);
  for (const { side, curve } of series) pair[side].set(heightAt(curve, ms));
  for (const side of EYES) pair[side].light(litEye(done) === side);
  return done;
}

/** Pairs of eyes beside each other, each at its moment. */
function sheet(series, moments, end, throughoutText) {
  return el("div", { class: "pupil-stills" }, ...stillMoments(moments, end).map(({ ms, when }) => {
    const pair = eyes();
    const done = drawAt(pair, series, moments, ms);
    return el("figure", { class: "pupil-still" }, pair.node,
      el("figcaption", { class: "quiet" }, el("b", {}, when || throughoutText), el("br"), [done, sizesText(series, Math.max(0, ms))].filter(Boolean).join(": ")));
  }));
}

/** One probe on the stage. Returns a function that plays it. */
function stage(host, probe, still) {
  const [series, moments] = [seriesOf(probe), momentsOf(probe)];
  const end = Math.max(...series.map(({ curve }) => lengthMs(curve)));
  const pair = eyes();
  const caption = el("p", { class: "quiet shown-side" });
  const box = el("div", { class: "traces" });
  const figure = still ? sheet(series, moments, end, throughout(probe)) : el("div", { class: "figure-box" }, pair.node, caption);
  host.classList.toggle("stills", still);
  put(host, figure, box);
  const show = (ms) => {
    const done = drawAt(pair, series, moments, ms);
    caption.textContent = [done, throughout(probe)].filter(Boolean).join("; ");
  };
  const watch = (ms) => {
    player.stop();
    show(ms);
    for (const trace of drawn.slice(1)) trace.at(ms);
  };
  const widening = !moments.some(({ text }) => /torch|finger/.test(text));
  const change = { title: "Change from the start", series: series.map(changed), lines: 9, ...(widening ? WIDENING_MM : CHANGE_MM) };
  const ways = [{ title: "Width of the pupils", series, lines: 8, low: NARROWEST_MM, high: WIDEST_MM }, ...(moments.length ? [change] : [])];
  const drawn = ways.map(({ title, ...axis }, index) => {
    const trace = new Trace(box, { ...axis, from: "the start", marks: moments, watch: index === 0 && watch });
    box.append(el("p", { class: "trace-title" }, title), trace.node);
    return trace;
  });
  const player = new Player(0, end, (ms) => {
    show(ms);
    for (const trace of drawn) trace.at(ms);
  });
  show(0);
  return () => player.play();
}

/** Everything that was done in another way, one below the other. */
function allStills(host, sides) {
  const different = latest(sides, (probe) => momentsOf(probe).map(({ text }) => text).join());
  for (const probe of different) {
    const box = el("div", { class: "stage eyes-stage" });
    host.append(different.length > 1 ? el("b", { class: "pupil-side" }, sideText(probe.side)) : "", box);
    stage(box, probe, true);
  }
}

export function pupils(host, { probes, fresh, still }) {
  const sides = latestBySide(probes);
  if (still) {
    allStills(host, sides);
    return said(fresh ?? probes.at(-1));
  }
  const box = el("div", { class: "stage eyes-stage" });
  host.append(box);
  const begin = (probe) => stage(box, probe, false)();
  const label = (side) => ["Watch again", sideText(side)].filter(Boolean).join(": ");
  const again = sides.filter((probe) => momentsOf(probe).length > 0 || sides.length > 1);
  const last = fresh ?? probes.at(-1);
  const play = stage(box, last, false);
  if (again.length) host.append(el("div", { class: "actions" }, ...again.map((probe) => el("button", { type: "button", onclick: () => begin(probe) }, label(probe.side)))));
  if (fresh) play();
  return said(last);
}

function said(probe) {
  const moments = momentsOf(probe).map(({ ms, text }) => `${text} at ${amountText(ms / 1000)} s`);
  const sizes = seriesOf(probe).map(({ name, curve }) => `${name} ${curve.samples[0].toFixed(1)} mm to ${peak(curve).height.toFixed(1)} mm, at the end ${curve.samples.at(-1).toFixed(1)} mm`);
  return `${[throughout(probe), ...moments, ...sizes].filter(Boolean).join("; ")}. ${probe.shown.words ?? ""}`.trim();
}
