// A finger struck on the chest: a short click and three rings that die away. A pure builder, as in breath-audio.

import { chain, filter, gain, gainOf, noise, ring } from "./audio.js";
import { measuresOf } from "./latest.js";

const PARTS = [[1, 1], [1.62, 0.45], [2.35, 0.2]];
const STRIKE = 0.005;
const LOUDER = 16;

export const noteOf = (probe) => {
  const [hertz, ms, level] = measuresOf(probe).map(({ amount }) => amount);
  return { hertz, ms, level };
};

/** The movement of the air so many ms after the strike, against the resonant note's largest. */
export const swing = ({ hertz, ms, level }, t) =>
  10 ** (level / 20) * PARTS.reduce((sum, [step, part]) => sum + part * Math.sin((2 * Math.PI * hertz * step * t) / 1000) * 10 ** (-t / ms), 0);

export function percussionSound(probe) {
  const { hertz, ms, level } = noteOf(probe);
  return (context, out, at) => {
    for (const [step, part] of PARTS) ring(context, hertz * step, ms / step ** 0.5, at, part * gainOf(level + LOUDER)).connect(out);
    const strike = noise(context, STRIKE, 7);
    chain(strike, filter(context, "bandpass", 600, 0.7), gain(context, gainOf(0)), out);
    strike.start(at);
    return Math.max(0.25, (ms * 2.5) / 1000);
  };
}
