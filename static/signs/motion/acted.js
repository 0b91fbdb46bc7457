// Figures that act: both sides beside each other and together, their traces below. Where motion is not wanted each figure
// stands still at some chosen times; a slider moves all of them by hand.

import { el, freshId } from "../../bedside/dom.js";
import { amountText, latestBySide, sideText } from "../latest.js";
import { seriesOf } from "../moving.js";
import { Player } from "../player.js";
import { Trace } from "../trace.js";

const timeText = (ms) => `${amountText(ms / 1000)} s`;
/** What lasts less is told in milliseconds. */
const SHORT_MS = 3000;
const stillText = (ms, end) => (end >= SHORT_MS ? timeText(ms) : `${Math.round(ms)} ms`);

function figures(probe, make, times, end) {
  return times.map((ms) => {
    const figure = make(probe);
    figure.show(ms ?? 0);
    return { ...figure, node: el("div", { class: "act-still" }, figure.node, ms === undefined ? "" : el("span", { class: "quiet" }, stillText(ms, end))) };
  });
}

function withRest(sides, atRest) {
  const [one] = sides;
  if (!atRest || sides.length !== 1 || one.side === "none") return sides;
  const curves = one.shown.curves.map((curve) => ({ ...curve, samples: curve.samples.map(() => curve.samples[0]) }));
  const other = { side: one.side === "right" ? "left" : "right", rests: true, shown: { curves } };
  return one.side === "right" ? [one, other] : [other, one];
}

/**
 * @param make   (probe) => {node, show(ms)}: one figure; with {@code together} one figure for all sides, of [probe]
 * @param from, end  milliseconds between which it acts
 * @param pace   how many times faster than life it is played
 * @param stills moments that are shown where motion is not wanted, as a rule told by what is done and the same for everybody; the last is also shown before it is played
 * @param traces [{title, series, low, high, short?}]
 * @param atRest beside one side that was examined the other stands as it is at rest
 */
export function acted(host, { probes, make, atRest = false, from = 0, end, pace = 1, stills, traces = [], since = "the start", together = false, fresh, still, again = "Watch again" }) {
  const sides = together ? [{ side: "none", all: latestBySide(probes) }] : withRest(latestBySide(probes), atRest);
  const rows = sides.map((probe) => ({ probe, acts: figures(probe.all ?? probe, make, still ? stills : [undefined], end) }));
  host.append(el("div", { class: still ? "acts stills" : "acts", "data-figures": rows.length }, ...rows.map(({ probe, acts }) =>
    el("div", { class: "act" }, sideText(probe.side) ? el("b", { class: "act-side" }, sideText(probe.side), probe.rests ? ", at rest: not examined" : "") : "", el("div", { class: "act-row" }, ...acts.map(({ node }) => node))))));
  const show = (ms) => rows.forEach(({ acts }) => acts.forEach((act) => act.show(ms)));
  const player = new Player(from / pace, end / pace, (at) => moved(at * pace));
  const id = freshId("moment");
  const slider = el("input", { id, type: "range", class: "watch", min: from, max: end, step: Math.max(1, Math.round((end - from) / 200)), "aria-valuetext": timeText(from), oninput: () => (player.stop(), moved(Number(slider.value))) });
  const box = el("div", { class: "traces" });
  if (traces.length) host.append(box);
  const watched = (ms) => {
    player.stop();
    moved(ms, true);
  };
  const drawn = traces.map((trace, index) => new Trace(box, { ...trace, from: since, watch: index === 0 && watched }));
  drawn.forEach(({ node }, index) => box.append(el("p", { class: "trace-title" }, traces[index].title), node));
  function moved(ms, measured = false) {
    if (!still) show(ms);
    for (const trace of drawn.slice(measured ? 1 : 0)) trace.at(ms);
    slider.value = ms;
    slider.setAttribute("aria-valuetext", timeText(ms));
  }
  if (!still) {
    const text = pace === 1 ? again : `${again}, ${amountText(pace)} times as fast`;
    host.append(el("div", { class: "actions" }, el("button", { type: "button", onclick: () => player.play() }, text),
      ...(traces.length ? [] : [el("label", { class: "moment-label", for: id }, "Moment"), slider])));
    show(stills.at(-1));
    slider.value = stills.at(-1);
    if (fresh) player.play();
  }
}

/** A trace for each side, where two on the same axes would hide each other. */
export const eachSide = (probes, what, axis) =>
  seriesOf(probes).map((one) => ({ title: [sideText(one.side), what].filter(Boolean).join(": "), series: [{ ...one, side: "right" }], ...axis }));

/** One picture for each side, beside each other, for what does not move. */
export function beside(host, probes, draw) {
  host.append(el("div", { class: "acts", "data-figures": latestBySide(probes).length }, ...latestBySide(probes).map((probe) =>
    el("div", { class: "act" }, sideText(probe.side) ? el("b", { class: "act-side" }, sideText(probe.side)) : "", el("div", { class: "act-row" }, draw(probe))))));
}
