// Axes with round steps.

const STEPS = [1, 2, 5];

/** The smallest round step that cuts the span into at most so many parts. */
export function roundStep(span, parts) {
  const decade = 10 ** Math.floor(Math.log10(span / parts));
  const step = [...STEPS, 10].find((one) => one * decade * parts >= span - 1e-9);
  return step * decade;
}

/** Ticks on whole steps from the lower to the upper end. */
export function ticks(from, to, step) {
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) => Number(((first + index) * step).toPrecision(12)));
}

/** A function from one span to another. */
export const between = (from, to, low, high) => (given) => low + ((given - from) / (to - from)) * (high - low);
