// A tuning fork and a whisper, made on the spot. Pure builders: (context, destination, at) => seconds they last.

import { chain, filter, following, gain, noise } from "./audio.js";

const FORK_SECONDS = 4;
/** A fork struck and held falls to a tenth in so many seconds. */
const FALLS = 3.2;

export const forkSound = (hertz) => (context, out, at) => {
  const tone = context.createOscillator();
  tone.frequency.value = hertz;
  tone.start(at);
  tone.stop(at + FORK_SECONDS);
  const steps = 60;
  const heights = Array.from({ length: steps }, (_, index) => Math.min(1, index / 2) * 10 ** (-((index / steps) * FORK_SECONDS) / FALLS));
  chain(tone, gain(context, 0.25), following(context, heights, (FORK_SECONDS * 1000) / steps, at), out);
  return FORK_SECONDS;
};

export const EACH = 0.62;
// Two bands for each of the six, Hz: no voice below them.
const BANDS = [[700, 1700], [420, 2300], [520, 1100], [650, 1900], [380, 2600], [560, 1400]];

export const whisperSound = (items) => (context, out, at) => {
  items.forEach((_, index) => {
    const start = at + index * EACH;
    const source = noise(context, EACH, 71 + index);
    source.start(start);
    const heights = Array.from({ length: 24 }, (_, step) => Math.sin((Math.PI * Math.min(1, step / 17))) ** 0.7);
    const swell = following(context, heights, (EACH * 1000) / 24, start);
    for (const hertz of BANDS[index % BANDS.length]) chain(source, filter(context, "bandpass", hertz, 3), gain(context, 0.05), swell);
    chain(swell, filter(context, "highpass", 320), filter(context, "highpass", 320), out);
  });
  return items.length * EACH;
};
