// What a stethoscope hears of a heart, drawn: the breath above, below it a phonocardiogram that can be hidden. Strokes are
// short sounds, as tall as they are loud; hatching is noise, the closer the higher.

import { svg } from "../bedside/dom.js";
import { clipOf, shortsOf } from "./heart-audio.js";
import { amountText } from "./latest.js";
import { strip } from "./strip.js";

/** The top of the scale of loudness, against a healthy first sound. */
const FULL = 4;
const LINES = [1, 2, 3, 5, 10, 20, 30];
const NUMBERED = [1, 3, 10, 30];
const LEFT = 40;
const HEIGHT = 206;

/** Ears count by factors, not by steps: how tall a sound stands, from the faintest that is heard to the loudest. */
const tallness = ({ faintest }) => (height) => Math.max(0, Math.min(1, Math.log(Math.max(height, 1e-4) / faintest) / Math.log(FULL / faintest)));

/** How many times the faintest that is heard. */
const times = ({ faintest }, height) => height / faintest;

/** Lines of equal loudness, and dashed that of a healthy first sound at the apex. */
function loudness(clip, middle, half, x) {
  const tall = tallness(clip);
  const y = (height) => middle - tall(height) * half;
  return [
    ...LINES.map((factor) => svg("path", { class: "grid", d: `M${x(0)} ${y(factor * clip.faintest)}H${x(clip.seconds)}` })),
    ...NUMBERED.map((factor) => svg("text", { class: "tick", x: LEFT - 6, y: y(factor * clip.faintest) + 5, "text-anchor": "end" }, `${factor}×`)),
    svg("path", { class: "gauge-edge healthy-first", d: `M${x(0)} ${y(1)}H${x(clip.seconds)}` }),
  ];
}

function breathLine(clip, x, middle, half) {
  const { samples, stepMs } = clip.breath;
  const d = samples.map((share, index) => `${index ? "L" : "M"}${x((index * stepMs) / 1000).toFixed(1)} ${(middle + half - share * half * 2).toFixed(1)}`).join("");
  return svg("path", { class: "curve thin", d });
}

export const breathStrip = (clip) =>
  strip({
    seconds: clip.seconds,
    height: 58,
    left: LEFT,
    draw: (x, middle, half) => [breathLine(clip, x, middle, half * 0.8),
      ...clip.moments.map(({ seconds }) => svg("path", { class: "turn", d: `M${x(seconds)} 2V${middle * 2}` }))],
  });

function hatch(clip, { curve, to }, x, middle, half) {
  const tall = tallness(clip);
  const step = Math.min(0.03, Math.max(0.006, 3 / to));
  const lines = [];
  for (let t = 0; t < (curve.samples.length * curve.stepMs) / 1000; t += step) {
    const height = curve.samples[Math.floor((t * 1000) / curve.stepMs)];
    const reach = tall(height) * half;
    if (reach > 0.6) lines.push(`M${x(t).toFixed(1)} ${(middle - reach).toFixed(1)}V${(middle + reach).toFixed(1)}`);
  }
  return svg("path", { class: "hatch", d: lines.join("") });
}

const WIDTHS = { thump: 3, "low thud": 5, snap: 1.5 };

const stroke = (clip, kind, { ms, height }, x, middle, half) => {
  const reach = tallness(clip)(height) * half;
  return svg("path", { class: kind.name === "low thud" ? "click soft" : "click", "stroke-width": WIDTHS[kind.name], d: `M${x(ms / 1000)} ${middle - reach}V${middle + reach}` });
};

export const soundStrip = (clip) =>
  strip({
    seconds: clip.seconds,
    height: HEIGHT,
    left: LEFT,
    draw: (x, middle, half) => [
      ...loudness(clip, middle, half, x),
      svg("path", { class: "grid zero", d: `M${x(0)} ${middle}H${x(clip.seconds)}` }),
      ...clip.noises.map((band) => hatch(clip, band, x, middle, half)),
      ...clip.shorts.flatMap((kind) => shortsOf(kind, clip.faintest).map((sound) => stroke(clip, kind, sound, x, middle, half))),
      ...clip.moments.map(({ seconds }) => svg("path", { class: "turn", d: `M${x(seconds)} 2V${middle * 2}` })),
    ],
  });

/** A loudness in words: how many times the faintest that is heard. */
const loudText = (clip, height) => `${amountText(Number(times(clip, height).toPrecision(2)))} times the faintest`;

/** The sounds of one beat in the middle of a stretch, counted from the tallest thump before it. */
function beatText(clip, from, to) {
  const all = clip.shorts.flatMap((kind) => shortsOf(kind, clip.faintest).map((sound) => ({ ...sound, name: kind.name }))).sort((one, other) => one.ms - other.ms);
  const [thumps] = clip.shorts;
  const firsts = starts(shortsOf(thumps, 0)).filter((ms) => ms >= from && ms <= to);
  const start = firsts[Math.max(0, Math.floor(firsts.length / 2) - 1)] ?? 0;
  const next = firsts.find((ms) => ms > start) ?? start + 900;
  const within = all.filter(({ ms }) => ms >= start && ms < next);
  return within.map(({ name, ms, height }) => `${name} at ${Math.round(ms - start)} ms, ${loudText(clip, height)}`).concat(noiseTexts(clip, start, next)).join("; ") || "nothing but the noise of the room";
}

/** The thumps that begin a beat: those after the longer of two gaps. */
export function starts(thumps) {
  const merged = thumps.filter(({ ms }, index) => index === 0 || ms - thumps[index - 1].ms > 110);
  return merged.filter((one, index) => {
    const before = index ? one.ms - merged[index - 1].ms : Infinity;
    const after = merged[index + 1] ? merged[index + 1].ms - one.ms : 0;
    return before > after;
  }).map(({ ms }) => ms);
}

function noiseTexts(clip, start, next) {
  return clip.noises.flatMap(({ name, curve, from, to }) => {
    const heard = curve.samples.map((height, index) => ({ height, ms: index * curve.stepMs })).filter(({ height, ms }) => height >= clip.faintest && ms >= start && ms < next);
    if (!heard.length) return [];
    const loudest = heard.reduce((best, one) => (one.height > best.height ? one : best));
    return [`${name} of ${from} to ${to} Hz between ${Math.round(heard[0].ms - start)} and ${Math.round(heard.at(-1).ms - start)} ms, loudest at ${Math.round(loudest.ms - start)} ms with ${loudText(clip, loudest.height)}`];
  });
}

/** The clip in words: one beat, or one before and one after what the patient is asked to do. */
export function clipText(probe) {
  const clip = clipOf(probe);
  const end = clip.seconds * 1000;
  if (!clip.moments.length) return `one beat: ${beatText(clip, 0, end)}`;
  const [{ label, seconds }] = clip.moments;
  return `one beat before: ${beatText(clip, 0, seconds * 1000)}. ${label} ${seconds} s: ${beatText(clip, seconds * 1000, end)}`;
}
