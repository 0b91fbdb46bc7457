// A voice as it comes through the chest: "ninety-nine" spoken, "one, two, three" whispered, a long E. Formants and edges
// only; no one is imitated. Pure builders, as in breath-audio.

import { chain, filter, following, gain, gainOf, noise } from "./audio.js";
import { measuresOf } from "./latest.js";

const PITCH = 115;
const LOUDER = 10;
// Each syllable: begins at, lasts (s), and where its two bands begin and end (Hz).
const NINETY_NINE = [[0, 0.32, [720, 1250], [380, 2000]], [0.34, 0.2, [330, 2100], [300, 2200]], [0.62, 0.42, [720, 1250], [380, 2000]]];
const ONE_TWO_THREE = [[0, 0.35, [500, 900], [650, 1200]], [0.6, 0.35, [400, 1100], [320, 900]], [1.2, 0.4, [500, 1500], [300, 2200]]];

export const voiceOf = (probe) => {
  const [level, to] = measuresOf(probe).map(({ amount }) => amount);
  return { level, to };
};

export const vowelOf = (probe) => {
  const [level, lower, upper, ratio] = measuresOf(probe).map(({ amount }) => amount);
  return { level, lower, upper, ratio };
};

const STEPS = 40;

/** Rises from nothing and falls to nothing. */
const SWELL = Array.from({ length: STEPS }, (_, index) => Math.sin((Math.PI * index) / (STEPS - 1)) ** 0.5);

const swelling = (context, at, lasts) => following(context, SWELL, (lasts * 1000) / STEPS, at);

function syllable(context, source, out, at, [begins, lasts, first, last]) {
  const start = at + begins;
  const shaped = swelling(context, start, lasts);
  first.forEach((hertz, band) => {
    const formant = filter(context, "bandpass", hertz, 5);
    formant.frequency.setValueAtTime(hertz, start);
    formant.frequency.linearRampToValueAtTime(last[band], start + lasts);
    chain(source, formant, gain(context, band === 0 ? 2.2 : 1.6), shaped);
  });
  shaped.connect(out);
}

function voiced(context, at, seconds) {
  const source = context.createOscillator();
  source.type = "sawtooth";
  source.frequency.setValueAtTime(PITCH * 1.06, at);
  source.frequency.linearRampToValueAtTime(PITCH * 0.94, at + seconds);
  source.start(at);
  source.stop(at + seconds);
  return source;
}

/** Chest and lung take the high notes away above the edge. */
function chest(context, out, { level, to }) {
  const wall = filter(context, "lowpass", to);
  chain(wall, filter(context, "lowpass", to * 1.4), gain(context, gainOf(level + LOUDER)), out);
  return wall;
}

export function spokenSound(probe) {
  return (context, out, at) => {
    const wall = chest(context, out, voiceOf(probe));
    const source = voiced(context, at, 1.1);
    chain(source, filter(context, "lowpass", PITCH * 2), gain(context, 0.5), swelling(context, at, 1.1), wall);
    for (const one of NINETY_NINE) syllable(context, source, wall, at, one);
    return 1.15;
  };
}

export function whisperedSound(probe) {
  return (context, out, at) => {
    const wall = chest(context, out, voiceOf(probe));
    const source = noise(context, 1.7, 31);
    source.start(at);
    for (const one of ONE_TWO_THREE) syllable(context, source, wall, at, one);
    return 1.75;
  };
}

export function vowelSound(probe) {
  const { level, lower, upper, ratio } = vowelOf(probe);
  return (context, out, at) => {
    const source = voiced(context, at, 1);
    const shaped = swelling(context, at, 1);
    chain(shaped, gain(context, gainOf(level + LOUDER)), out);
    chain(source, filter(context, "bandpass", lower, 4), gain(context, 2.5), shaped);
    chain(source, filter(context, "bandpass", upper, 6), gain(context, 2.5 * 10 ** (ratio / 20)), shaped);
    return 1.05;
  };
}
