// A curve is {name, unit, stepMs, samples}, sampled from the stimulus on.

export const lengthMs = (curve) => (curve.samples.length - 1) * curve.stepMs;

/** The height of the curve at a time, on the straight line between two samples; flat before and after. */
export function heightAt(curve, ms) {
  const place = Math.min(Math.max(ms / curve.stepMs, 0), curve.samples.length - 1);
  const before = Math.floor(place);
  const after = Math.min(before + 1, curve.samples.length - 1);
  return curve.samples[before] + (curve.samples[after] - curve.samples[before]) * (place - before);
}

/** Where the curve is farthest from where it began: {ms, height}. */
export function peak(curve) {
  const [rest] = curve.samples;
  const far = curve.samples.reduce((best, height, index) => (Math.abs(height - rest) > Math.abs(curve.samples[best] - rest) ? index : best), 0);
  return { ms: far * curve.stepMs, height: curve.samples[far] };
}

export const lowest = (curve) => Math.min(...curve.samples);
export const highest = (curve) => Math.max(...curve.samples);
