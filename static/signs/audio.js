// Building blocks of every sound, on whatever context they are given: a loudspeaker's or one that renders to memory.

const LOUDNESS_AT_0_DB = 0.09;

/** The gain for a level in dB against a healthy breath in. */
export const gainOf = (decibel) => LOUDNESS_AT_0_DB * 10 ** (decibel / 20);

/** The same numbers between 0 and 1 each time, from a seed. */
function chance(seed) {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** White noise of that many seconds, root mean square 1. */
export function noise(context, seconds, seed = 1) {
  const buffer = context.createBuffer(1, Math.ceil(seconds * context.sampleRate), context.sampleRate);
  const next = chance(seed);
  buffer.getChannelData(0).forEach((_, index, samples) => (samples[index] = (next() * 2 - 1) * Math.sqrt(3)));
  const source = context.createBufferSource();
  source.buffer = buffer;
  return source;
}

export function filter(context, type, hertz, q = 0.707) {
  const node = context.createBiquadFilter();
  node.type = type;
  node.frequency.value = hertz;
  node.Q.value = q;
  return node;
}

export function gain(context, amount) {
  const node = context.createGain();
  node.gain.value = amount;
  return node;
}

/** Connects nodes one after the other and returns the last. */
export const chain = (...nodes) => nodes.reduce((before, after) => (before.connect(after), after));

/** A gain that follows the heights given every stepMs from a time on. */
export function following(context, heights, stepMs, at) {
  const node = gain(context, 0);
  node.gain.setValueCurveAtTime(Float32Array.from(heights), at, (heights.length * stepMs) / 1000);
  return node;
}

/** A short burst that rings at one pitch: it has fallen by 20 dB after so many milliseconds. */
export function ring(context, hertz, ms, at, height) {
  const length = Math.ceil(context.sampleRate * (ms / 1000) * 2.5);
  const buffer = context.createBuffer(1, Math.max(length, 1), context.sampleRate);
  const fall = ms / 1000 / Math.LN10;
  buffer.getChannelData(0).forEach((_, index, samples) => {
    const t = index / context.sampleRate;
    samples[index] = Math.sin(2 * Math.PI * hertz * t) * Math.exp(-t / fall) * Math.min(1, t / 0.0004);
  });
  const source = context.createBufferSource();
  source.buffer = buffer;
  source.start(at);
  const node = gain(context, height);
  source.connect(node);
  return node;
}
