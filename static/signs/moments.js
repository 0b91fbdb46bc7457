// What the examiner does while the sign is watched: amounts in seconds say from when, the others hold throughout.

import { amountText, measuresOf } from "./latest.js";

const isMoment = ({ unit }) => unit === "s";

/** [{ms, text}] in order of time. */
export const moments = (probe) =>
  measuresOf(probe).filter(isMoment).map(({ label, amount }) => ({ ms: amount * 1000, text: label.replace(/ (from|at)$/, "") }));

export const throughout = (probe) =>
  measuresOf(probe).filter((measure) => !isMoment(measure)).map(({ label, amount, unit }) => `${label} ${amountText(amount)} ${unit}`).join("; ");

/** What is being done at a time. */
export const nowDone = (all, ms) => all.filter((moment) => moment.ms <= ms).at(-1)?.text ?? "";
