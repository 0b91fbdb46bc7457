// What a stethoscope hears of a heart, drawn: the breath above, below it a phonocardiogram that can be hidden. Strokes are
// short sounds, as tall as they are loud; hatching is noise, the closer the higher.

import { svg } from "../bedside/dom.js";
import { clipOf, shortsOf } from "./heart-audio.js";
import { amountText } from "./latest.js";
import { strip } from "./strip.js";

const QUIET = 0.05;
const FULL = 1.2;

/** Ears and eyes do not count evenly: a drawing of decibels shows what is faint as well. */
const tall = (height) => Math.max(0, Math.min(1, 1 + Math.log10(Math.max(height, 1e-4) / FULL) / 1.6));

function breathLine(clip, x, middle, half) {
  const { samples, stepMs } = clip.breath;
  const d = samples.map((share, index) => `${index ? "L" : "M"}${x((index * stepMs) / 1000).toFixed(1)} ${(middle + half - share * half * 2).toFixed(1)}`).join("");
  return svg("path", { class: "curve thin", d });
}

export const breathStrip = (clip) =>
  strip({
    seconds: clip.seconds,
    height: 58,
    draw: (x, middle, half) => [breathLine(clip, x, middle, half * 0.8), svg("text", { class: "trace-name", x: x(0) + 4, y: 12 }, "breath, in is up"),
      ...clip.moments.map(({ seconds }) => svg("path", { class: "turn", d: `M${x(seconds)} 2V${middle * 2}` }))],
  });

function hatch({ curve, to }, x, middle, half) {
  const step = Math.min(0.03, Math.max(0.006, 3 / to));
  const lines = [];
  for (let t = 0; t < (curve.samples.length * curve.stepMs) / 1000; t += step) {
    const height = curve.samples[Math.floor((t * 1000) / curve.stepMs)];
    const reach = height > QUIET ? tall(height) * half : 0;
    if (reach > 0.6) lines.push(`M${x(t).toFixed(1)} ${(middle - reach).toFixed(1)}V${(middle + reach).toFixed(1)}`);
  }
  return svg("path", { class: "hatch", d: lines.join("") });
}

const WIDTHS = { thump: 3, "low thud": 5, snap: 1.5 };

const stroke = (kind, { ms, height }, x, middle, half) => {
  const reach = tall(height) * half;
  return svg("path", { class: kind.name === "low thud" ? "click soft" : "click", "stroke-width": WIDTHS[kind.name], d: `M${x(ms / 1000)} ${middle - reach}V${middle + reach}` });
};

export const soundStrip = (clip) =>
  strip({
    seconds: clip.seconds,
    height: 108,
    draw: (x, middle, half) => [
      svg("path", { class: "grid zero", d: `M${x(0)} ${middle}H${x(clip.seconds)}` }),
      ...clip.noises.map((band) => hatch(band, x, middle, half)),
      ...clip.shorts.flatMap((kind) => shortsOf(kind, QUIET).map((sound) => stroke(kind, sound, x, middle, half))),
      ...clip.moments.map(({ seconds }) => svg("path", { class: "turn", d: `M${x(seconds)} 2V${middle * 2}` })),
    ],
  });

const decibel = (height) => amountText(Math.round(20 * Math.log10(height)));

/** The sounds of one beat in the middle of a stretch, counted from the tallest thump before it. */
function beatText(clip, from, to) {
  const all = clip.shorts.flatMap((kind) => shortsOf(kind, QUIET).map((sound) => ({ ...sound, name: kind.name }))).sort((one, other) => one.ms - other.ms);
  const [thumps] = clip.shorts;
  const firsts = starts(shortsOf(thumps, QUIET)).filter((ms) => ms >= from && ms <= to);
  const start = firsts[Math.max(0, Math.floor(firsts.length / 2) - 1)] ?? 0;
  const next = firsts.find((ms) => ms > start) ?? start + 900;
  const within = all.filter(({ ms }) => ms >= start && ms < next);
  return within.map(({ name, ms, height }) => `${name} at ${Math.round(ms - start)} ms, ${decibel(height)} dB`).concat(noiseTexts(clip, start, next)).join("; ") || "nothing but the noise of the room";
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
    const heard = curve.samples.map((height, index) => ({ height, ms: index * curve.stepMs })).filter(({ height, ms }) => height > QUIET && ms >= start && ms < next);
    if (!heard.length) return [];
    const loudest = heard.reduce((best, one) => (one.height > best.height ? one : best));
    return [`${name} of ${from} to ${to} Hz between ${Math.round(heard[0].ms - start)} and ${Math.round(heard.at(-1).ms - start)} ms, loudest at ${Math.round(loudest.ms - start)} ms with ${decibel(loudest.height)} dB`];
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
