// The neck from the side: the top of the column in the vein moves with the heart, the breath and a hand on the belly; it
// is measured with a ruler standing on the sternal angle.

import { el, freshId } from "../bedside/dom.js";
import { heightAt, highest, lengthMs, lowest } from "./curve.js";
import { amountText, curvesOf, measuresOf } from "./latest.js";
import { moments, nowDone, throughout } from "./moments.js";
import { NeckFigure, RULER_CM } from "./neck-figure.js";
import { Player } from "./player.js";
import { Trace } from "./trace.js";

const USUAL_ANGLE = 45;
const TITLES = { column: "Top of the column; nought is the sternal angle, up is above it. A top level with the clavicle is not seen", carotid: "Skin over the carotid of the other side", "breath in": "Breath, in is up" };

/** How far the head end of the couch is up, in degrees, as the server tells it. */
const angleOf = (probe) => measuresOf(probe).find(({ unit }) => unit === "degrees")?.amount ?? USUAL_ANGLE;

function level(figure) {
  const id = freshId("ruler");
  const text = (cm) => `${amountText(Math.abs(Number(cm)))} cm ${Number(cm) < 0 ? "below" : "above"} the sternal angle`;
  const output = el("output", { for: id, class: "watch-text" }, "Move the level to the top of the column.");
  const moved = () => {
    figure.measure(Number(range.value));
    output.textContent = text(range.value);
    range.setAttribute("aria-valuetext", text(range.value));
  };
  const range = el("input", { id, type: "range", class: "watch", min: -5, max: RULER_CM, step: 0.5, oninput: moved });
  range.value = 0;
  range.setAttribute("aria-valuetext", text(0));
  return el("div", { class: "level" }, el("label", { for: id }, "Level across from the ruler"), range, output);
}

export function neckVeins(host, { probes, fresh, still }) {
  const probe = fresh ?? probes.at(-1);
  const [column] = curvesOf(probe);
  const [figure, done, box] = [new NeckFigure(angleOf(probe)), moments(probe), el("div", { class: "traces" })];
  const caption = el("p", { class: "quiet shown-side" });
  host.append(el("div", { class: "stage" }, el("div", { class: "figure-box" }, figure.node, el("p", { class: "quiet" }, "The dot, level with the nought of the ruler: the sternal angle"), caption, level(figure)), box));
  const show = (ms) => {
    figure.column(heightAt(column, ms));
    caption.textContent = [nowDone(done, ms), throughout(probe)].filter(Boolean).join("; ");
  };
  const watch = (ms) => {
    player.stop();
    show(ms);
    for (const trace of traces.slice(1)) trace.at(ms);
  };
  const traces = curvesOf(probe).map((curve, index) => {
    const scale = index === 0 ? { low: lowest(curve) - 5, high: highest(curve) + 5 } : {};
    return new Trace(box, { series: [{ name: "", side: "right", curve }], from: "the start", marks: done, watch: index === 0 && watch, short: index > 0, ...scale });
  });
  for (const [index, { node }] of traces.entries()) box.append(el("p", { class: "trace-title" }, TITLES[curvesOf(probe)[index].name] ?? curvesOf(probe)[index].name), node);
  const player = new Player(0, lengthMs(column), (ms) => {
    show(ms);
    for (const trace of traces) trace.at(ms);
  });
  if (!still) host.append(el("div", { class: "actions" }, el("button", { type: "button", onclick: () => player.play() }, "Watch again")));
  if (probe.shown.words) host.append(el("p", { class: "felt" }, probe.shown.words));
  show(0);
  if (fresh && !still) player.play();
  return said(probe, column, done);
}

/** Millimetres above or below, never less than nought. */
const heightText = (mm) => `${amountText(Math.abs(mm))} mm ${mm < 0 ? "below" : "above"}`;

function said(probe, column, done) {
  const steps = done.map(({ ms, text }) => `${text} at ${amountText(ms / 1000)} s`);
  const range = `The top of the column moves between ${heightText(lowest(column))} and ${heightText(highest(column))} the sternal angle in ${amountText(lengthMs(column) / 1000)} seconds`;
  return `${[throughout(probe), ...steps, range].filter(Boolean).join("; ")}. ${probe.shown.words ?? ""}`.trim();
}
