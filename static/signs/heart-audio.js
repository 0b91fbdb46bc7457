// The sound of a heart through a stethoscope, from what the server tells of it: short rings for the sounds of valves and of
// filling, bands of noise for what rushes. A pure builder: it draws on any context, so that a test can render it to memory.

import { chain, filter, following, gain, noise, ring } from "./audio.js";
import { curvesOf, measuresOf } from "./latest.js";

/** The height of a healthy first sound, and how much of a noise of the same told height is let through. */
const LOUDEST = 0.4;
const NOISE = 0.9;

/** What is told of a clip, by short names. Hz, ms; heights, and the faintest that an ear hears, are shares of a healthy first sound at the apex. */
export function clipOf(probe) {
  const [breath, thumps, thuds, snaps, empties, fills, scratches] = curvesOf(probe);
  const told = measuresOf(probe);
  const [thump, thud, snap, emptiesFrom, emptiesTo, fillsFrom, fillsTo, faintest] = told.map(({ amount }) => amount);
  return {
    seconds: (breath.samples.length * breath.stepMs) / 1000,
    breath,
    faintest: 10 ** (faintest / 20),
    shorts: [
      { name: "thump", curve: thumps, hertz: thump, ms: 60 },
      { name: "low thud", curve: thuds, hertz: thud, ms: 55 },
      { name: "snap", curve: snaps, hertz: snap, ms: 14 },
    ],
    noises: [
      { name: "noise while the heart empties", curve: empties, from: emptiesFrom, to: emptiesTo, seed: 31 },
      { name: "noise while it fills", curve: fills, from: fillsFrom, to: fillsTo, seed: 47 },
      { name: "scratches", curve: scratches, from: 250, to: 900, seed: 61 },
    ],
    moments: told.filter(({ unit }) => unit === "s").map(({ label, amount }) => ({ label, seconds: amount })),
  };
}

/** When each short sound comes, in ms, and how high it stands; those too faint for an ear are left out. */
export const shortsOf = ({ curve }, least) =>
  curve.samples.flatMap((height, index) => (height > 0 && height >= least ? [{ ms: index * curve.stepMs, height }] : []));

/** A small loudspeaker gives nothing of a very low sound: an overtone, as of a chest wall, makes it audible. */
function low(context, out, { hertz, ms }, at, height) {
  ring(context, hertz, ms, at, height).connect(out);
  ring(context, hertz * 2, ms * 0.8, at, height * 0.5).connect(out);
}

function rush(context, out, at, clip, { curve, from, to, seed }) {
  if (!curve.samples.some((height) => height >= clip.faintest)) return;
  const source = noise(context, clip.seconds, seed);
  const share = Math.sqrt(context.sampleRate / 2 / Math.max(60, to - from));
  chain(source, filter(context, "highpass", from), filter(context, "highpass", from * 0.8), filter(context, "lowpass", to), filter(context, "lowpass", to),
    following(context, curve.samples, curve.stepMs, at), gain(context, LOUDEST * NOISE * 0.35 * share), out);
  source.start(at);
}

/** Builds the clip from a time on and returns how many seconds it lasts. */
export function heartAudio(probe) {
  const clip = clipOf(probe);
  return (context, out, at) => {
    for (const kind of clip.shorts) {
      for (const { ms, height } of shortsOf(kind, clip.faintest)) low(context, out, kind, at + ms / 1000, Math.min(height, 2) * LOUDEST);
    }
    for (const band of clip.noises) rush(context, out, at, clip, band);
    return clip.seconds;
  };
}
