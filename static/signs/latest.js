// Of several probes of the same thing the last one counts.

const ORDER = ["right", "left", "none"];

export const curvesOf = (probe) => probe.shown.curves ?? [];
export const measuresOf = (probe) => probe.shown.measures ?? [];

/** The last probe for each name given by the function, in the order in which the names first came. */
export function latest(probes, nameOf) {
  const last = new Map();
  for (const probe of probes) last.set(nameOf(probe), probe);
  return [...last.values()];
}

/** The last probe of each side: right, left. */
export const latestBySide = (probes) =>
  latest(probes, (probe) => probe.side).sort((one, other) => ORDER.indexOf(one.side) - ORDER.indexOf(other.side));

export const sideText = (side) => (side === "none" ? "" : side);

/** A number as it is written on the sheet: no more digits than are meant. */
export const amountText = (amount, digits = 1) =>
  Number(amount).toFixed(Number.isInteger(amount) ? 0 : digits).replace("-", "−");

/** The patient's words and what the hand feels, side by side. */
export const wordsText = (probes) =>
  probes.filter((probe) => probe.shown.words).map((probe) => [sideText(probe.side), probe.shown.words].filter(Boolean).join(": ")).join(" ");
