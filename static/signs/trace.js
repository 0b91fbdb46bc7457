// A trace of one or more curves over time with a stop-watch on it: drag it over the drawing, or move it with the keys.
// Right is a broad line and left a thin dashed one over it, so that both are seen where they lie on each other; a key says which
// is which.

import { el, freshId, svg } from "../bedside/dom.js";
import { heightAt, highest, lengthMs, lowest } from "./curve.js";
import { amountText } from "./latest.js";
import { between, roundStep, ticks } from "./scale.js";

const TALL = 220;
const SHORT = 120;
const PAD = { top: 26, right: 46, bottom: 26, left: 40 };
const LABEL_GAP = 15;
/** From here on, in milliseconds, time is written in seconds. */
const LONG = 3000;
const NARROWEST = 270;
const WIDEST = 640;

const path = (curve, x, y) =>
  curve.samples.map((height, index) => `${index ? "L" : "M"}${x(index * curve.stepMs).toFixed(1)} ${y(height).toFixed(1)}`).join("");

/** Names at the ends of the lines, pushed apart where they would lie on each other. */
function names(series, x, y, foot) {
  const ends = series.map(({ name, curve }) => ({ name, at: y(curve.samples.at(-1)) })).sort((one, other) => one.at - other.at);
  for (let i = 1; i < ends.length; i++) ends[i].at = Math.max(ends[i].at, ends[i - 1].at + LABEL_GAP);
  const over = Math.max(0, (ends.at(-1)?.at ?? 0) - (foot - 2));
  return ends.map(({ name, at }) => svg("text", { class: "trace-name", x: x + 6, y: at - over + 4 }, name));
}

/** At least two heights, so that a scale can be read off. */
function lineHeights(low, high, parts) {
  const step = roundStep(high - low, parts);
  const few = ticks(low, high, step);
  return few.length > 1 ? few : ticks(low, high, step / 2);
}

function grid(x, y, [from, to], [low, high], unit, { width, height, lines }) {
  const across = ticks(from, to, roundStep(to - from, width < 420 ? 4 : 8));
  const up = lineHeights(low, high, lines ?? (height < TALL ? 2 : 4));
  const inSeconds = to > LONG;
  const timeText = (ms) => (inSeconds ? amountText(ms / 1000) : amountText(ms));
  return [
    ...across.map((ms) => svg("path", { class: "grid", d: `M${x(ms)} ${PAD.top}V${height - PAD.bottom}` })),
    ...across.map((ms) => svg("text", { class: "tick", x: x(ms), y: height - 8, "text-anchor": "middle" }, timeText(ms))),
    ...up.map((height) => svg("path", { class: height === 0 ? "grid zero" : "grid", d: `M${PAD.left} ${y(height)}H${width - PAD.right}` })),
    ...up.map((height) => svg("text", { class: "tick", x: PAD.left - 6, y: y(height) + 4, "text-anchor": "end" }, amountText(height))),
    svg("text", { class: "tick", x: PAD.left - 34, y: 13 }, unit),
    svg("text", { class: "tick", x: width - 2, y: height - 8, "text-anchor": "end" }, inSeconds ? "s" : "ms"),
  ];
}

const momentText = (ms) => `${amountText(ms / 1000)} s`;

/** Moments stand as numbered lines; what is done at each is told below. */
const momentMarks = (marks, x, height) =>
  marks.flatMap(({ ms }, index) => [
    svg("path", { class: "moment", d: `M${x(ms)} ${PAD.top}V${height - PAD.bottom}` }),
    svg("text", { class: "tick moment-number", x: x(ms) + 4, y: height - PAD.bottom - 6 }, index + 1),
  ]);

const momentList = (marks) =>
  marks.length ? el("ol", { class: "quiet moment-list" }, ...marks.map(({ ms, text }) => el("li", {}, `${text}: from ${momentText(ms)}`))) : "";

/** Which line is which, where there are several. */
function key(series) {
  if (series.length < 2) return "";
  const sample = ({ side }) => svg("svg", { class: "key-line", viewBox: "0 0 32 8", width: 32, height: 8, "aria-hidden": "true" }, svg("path", { class: `curve of-several ${side}`, d: "M1 4H31" }));
  return el("p", { class: "quiet trace-key" }, ...series.map((one) => el("span", {}, sample(one), one.name)));
}

export class Trace {
  /**
   * @param series [{name, side, curve}] to be drawn on one pair of axes, all of one unit
   * @param low, high the heights that the axis shows at least
   * @param marks  [{ms, text}] moments at which something is done, numbered on the trace and listed below one with a stop-watch
   * @param ticks  moments, in milliseconds, at which something is heard
   * @param also   (ms) => what else the stop-watch says there
   * @param short  half as tall, for a curve that goes with another
   * @param lines  how many lines across there are at most
   * @param from   what the time runs from, such as "the tap"
   * @param watch  (ms) => the stop-watch was moved; false for a trace without a stop-watch
   */
  constructor(host, { series, low = 0, high = 1, from, watch, marks = [], ticks: sounds = [], short = false, lines, also }) {
    this.series = series;
    this.from = from;
    this.also = also ?? (() => "");
    this.height = short ? SHORT : TALL;
    this.end = Math.max(...series.map(({ curve }) => lengthMs(curve)));
    const [{ curve }] = series;
    const several = series.length > 1 ? "of-several " : "";
    this.unit = curve.unit;
    const width = Math.min(Math.max(host.clientWidth || WIDEST, NARROWEST), WIDEST);
    const span = [Math.min(low, ...series.map((one) => lowest(one.curve))), Math.max(high, ...series.map((one) => highest(one.curve)))];
    this.x = between(0, this.end, PAD.left, width - PAD.right);
    this.y = between(...span, this.height - PAD.bottom, PAD.top);
    const gaps = sounds.slice(1).map((ms, index) => this.x(ms) - this.x(sounds[index]));
    const thin = Math.min(2, ...gaps.map((gap) => gap * 0.4)).toFixed(2);
    this.cursor = svg("path", { class: "stop-watch", d: "", hidden: true });
    this.reading = svg("text", { class: "stop-watch-text", y: 14 });
    this.drawing = svg(
      "svg",
      { class: "trace", viewBox: `0 0 ${width} ${this.height}`, width, height: this.height, "aria-hidden": "true" },
      ...grid(this.x, this.y, [0, this.end], span, this.unit, { width, height: this.height, lines }),
      ...series.map((one) => svg("path", { class: `curve ${several}${one.side}`, d: path(one.curve, this.x, this.y) })),
      ...momentMarks(marks, this.x, this.height),
      ...sounds.map((ms) => svg("path", { class: "sound", "stroke-width": thin, d: `M${this.x(ms)} ${PAD.top}v12` })),
      ...names(series, width - PAD.right, this.y, this.height - PAD.bottom),
      this.cursor,
      this.reading,
    );
    this.width = width;
    this.node = el("div", { class: "trace-box" }, this.drawing, key(series), momentList(watch ? marks : []), watch ? this.#stopWatch(watch) : "");
  }

  #stopWatch(watch) {
    const id = freshId("watch");
    const step = Math.min(...this.series.map(({ curve }) => curve.stepMs));
    this.range = el("input", { id, type: "range", class: "watch", min: 0, max: this.end, step, oninput: () => this.#moved(watch) });
    this.range.value = 0;
    this.range.setAttribute("aria-valuetext", this.#text(0));
    this.output = el("output", { for: id, class: "watch-text" }, `Drag along the trace to measure from ${this.from}.`);
    this.drawing.addEventListener("pointerdown", (event) => this.#drag(event, watch));
    this.drawing.addEventListener("pointermove", (event) => event.buttons && this.#drag(event, watch));
    return el("div", { class: "watch-box" }, el("label", { for: id, class: "heard" }, "Stop-watch"), this.range, this.output);
  }

  #drag(event, watch) {
    const box = this.drawing.getBoundingClientRect();
    const along = ((event.clientX - box.left) / box.width) * this.width;
    this.range.value = between(PAD.left, this.width - PAD.right, 0, this.end)(along);
    this.#moved(watch);
  }

  #moved(watch) {
    const ms = Number(this.range.value);
    this.range.setAttribute("aria-valuetext", this.#text(ms));
    this.output.textContent = this.#text(ms);
    this.at(ms, true);
    watch(ms);
  }

  #text(ms) {
    const heights = this.series.map(({ name, curve }) => `${name} ${amountText(heightAt(curve, ms))}`.trim());
    const time = this.end > LONG ? `${(ms / 1000).toFixed(1)} s` : `${Math.round(ms)} ms`;
    return [`${time} from ${this.from}: ${heights.join(", ")} ${this.unit}`, this.also(ms)].filter(Boolean).join(", ");
  }

  /** Puts the cursor at a time; the number stands beside it when it was asked for. */
  at(ms, measured = false) {
    const x = this.x(Math.max(ms, 0));
    this.cursor.removeAttribute("hidden");
    this.cursor.setAttribute("d", `M${x} ${PAD.top - 6}V${this.height - PAD.bottom}`);
    this.reading.textContent = measured ? (this.end > LONG ? `${(ms / 1000).toFixed(1)} s` : `${Math.round(ms)} ms`) : "";
    const late = x > this.width - 110;
    this.reading.setAttribute("x", late ? x - 6 : x + 6);
    this.reading.setAttribute("text-anchor", late ? "end" : "start");
  }
}
