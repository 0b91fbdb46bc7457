// What the drawings of the head share: amounts by their label, tones of skin and iris, spots strewn the same each time.

import { el, svg } from "../bedside/dom.js";
import { amountText, latestBySide, measuresOf, sideText } from "./latest.js";
import { Player } from "./player.js";

/** The amount of that label; nought where the sign has none. */
export const seen = (probe, label) => measuresOf(probe).find((measure) => measure.label === label)?.amount ?? 0;

const COMPLEXION = / reflects$/;

/** Amounts as they are read out. What only the drawing needs is left out. */
export const said = (probe, wanted = () => true) =>
  [
    sideText(probe.side),
    [...measuresOf(probe).filter(({ label }) => !COMPLEXION.test(label) && wanted(label)).map(({ label, amount, unit }) => `${label} ${amountText(amount)} ${unit}`), probe.shown.words && `“${probe.shown.words}”`].filter(Boolean).join("; "),
  ].filter(Boolean).join(": ");

export const saidOf = (probes, wanted) => `${latestBySide(probes).map((probe) => said(probe, wanted)).join(". ")}.`;

/** A picture in units of its own; it is never wider than its place. */
export const picture = ([x, y, width, height], scale, ...nodes) =>
  svg("svg", { class: "head-picture", viewBox: `${x} ${y} ${width} ${height}`, width: width * scale, height: height * scale, "aria-hidden": "true" }, ...nodes);

export const captioned = (text, ...nodes) => el("figure", { class: "head-figure" }, ...nodes, el("figcaption", { class: "quiet" }, text));

export const mix = (from, to, share) => from + (to - from) * share;

function ramp(stops, at) {
  const last = stops.findIndex(([place]) => place >= at);
  if (last <= 0) return last === 0 ? stops[0][1] : stops.at(-1)[1];
  const [[low, from], [high, to]] = [stops[last - 1], stops[last]];
  return from.map((part, index) => Math.round(mix(part, to[index], (at - low) / (high - low))));
}

/** A colour between two others, each [red, green, blue]. */
export const blend = (from, to, share) => from.map((part, index) => Math.round(mix(part, to[index], Math.min(1, Math.max(0, share)))));

export const ink = (colour) => `rgb(${colour.join(" ")})`;

const SKIN = [[8, [68, 43, 32]], [24, [132, 88, 62]], [40, [190, 141, 106]], [56, [226, 182, 150]], [70, [240, 208, 184]]];
const IRIS = [[2, [44, 26, 16]], [10, [92, 60, 36]], [16, [116, 108, 72]], [22, [112, 138, 132]], [30, [134, 168, 196]]];

export const skinOf = (probe) => ramp(SKIN, seen(probe, "skin reflects") || 38);
export const irisOf = (probe) => ramp(IRIS, seen(probe, "iris reflects") || 15);

/** Numbers between 0 and 1, the same each time for a seed. */
export function strewn(seed) {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Discs as one path, so that none and many are one element: [[x, y, r]]. */
export const discs = (all) => all.map(([x, y, r]) => `M${(x - r).toFixed(2)} ${y.toFixed(2)}a${r.toFixed(2)} ${r.toFixed(2)} 0 1 0 ${(2 * r).toFixed(2)} 0a${r.toFixed(2)} ${r.toFixed(2)} 0 1 0 ${(-2 * r).toFixed(2)} 0Z`).join("");

const RISE_MS = 700;
const LASTS_MS = 2600;
const ease = (along) => along * along * (3 - 2 * along);

/**
 * Something the patient is asked to do: from rest to the end of it, where it stays.
 * @param draw (share, ms) => draws so much of it, 0..1
 */
export function acted(host, draw, { fresh, still, again = "Watch again", lasts = LASTS_MS }) {
  draw(1, lasts);
  const player = new Player(-400, lasts, (ms) => draw(ease(Math.min(1, Math.max(0, ms / RISE_MS))), Math.max(0, ms)));
  if (still) return;
  host.append(el("div", { class: "actions" }, el("button", { type: "button", onclick: () => player.play() }, again)));
  if (fresh) player.play();
}

/** A bar with its number, for what a hand feels. */
export const amountBar = (amount, most, unit) =>
  el("div", { class: "bar" },
    svg("svg", { viewBox: "0 0 160 12", width: 160, height: 12, "aria-hidden": "true" }, svg("path", { class: "bar-whole", d: "M0 11.500H160" }),
      svg("rect", { class: "bar-part", x: 0, y: 1, width: Math.max(1, (amount / most) * 160), height: 10 })),
    el("span", { class: "number" }, `${amountText(amount)} ${unit}`));

export const force = (probe, label, most) => amountBar(seen(probe, label), most, "N");
