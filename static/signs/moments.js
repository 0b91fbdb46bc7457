// What the examiner does while the sign is watched: amounts in seconds say from when, the others hold throughout.

import { amountText, measuresOf } from "./latest.js";

const isMoment = ({ unit }) => unit === "s";

/** [{ms, text}] in order of time. */
export const moments = (probe) =>
  measuresOf(probe).filter(isMoment).map(({ label, amount }) => ({ ms: amount * 1000, text: label.replace(/ (from|at)$/, "") }));

/** What lies less than nothing above a mark lies below it. */
const heightText = ({ label, amount, unit }) =>
  amount < 0 && unit.includes(" above ") ? `${label} ${amountText(-amount)} ${unit.replace(" above ", " below ")}` : `${label} ${amountText(amount)} ${unit}`;

export const throughout = (probe) => measuresOf(probe).filter((measure) => !isMoment(measure)).map(heightText).join("; ");

/** What is being done at a time. */
export const nowDone = (all, ms) => all.filter((moment) => moment.ms <= ms).at(-1)?.text ?? "";
