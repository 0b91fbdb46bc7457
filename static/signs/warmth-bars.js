// Temperatures of skin as columns beside each other, and the pressures from which the ankle index is worked out.

import { svg } from "../bedside/dom.js";
import { amountText, measuresOf } from "./latest.js";
import { label, line, picture, sideBySide } from "./side-by-side.js";

const GAP = 84;
const LEFT = 56;

/** A column for each measure, on one scale for every patient. */
const columns = (from, to, step) => (probe) => {
  const measures = measuresOf(probe);
  const y = (amount) => 150 - ((Math.min(Math.max(amount, from), to) - from) / (to - from)) * 130;
  const ticks = Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) => from + index * step);
  const width = LEFT + 6 + measures.length * GAP;
  return picture(width, 196,
    ...ticks.flatMap((at) => [line(`M34 ${y(at)}H${width - 4}`, "grid"), label(30, y(at) + 4, at, "end")]),
    ...measures.flatMap(({ label: name, amount, unit }, index) => {
      const x = LEFT + index * GAP;
      return [svg("rect", { class: "column", x, y: y(amount), width: 34, height: Math.max(1, 150 - y(amount)) }), svg("text", { class: "tick on-lines", x: x + 17, y: y(amount) - 5, "text-anchor": "middle" }, `${amountText(amount)} ${unit}`), ...wrapped(name).map((part, row) => label(x + 17, 166 + row * 14, part))];
    }));
};

/** A name in two lines where it is long. */
function wrapped(name) {
  const words = name.split(" ");
  if (name.length < 13) return [name];
  const half = Math.ceil(words.length / 2);
  return [words.slice(0, half).join(" "), words.slice(half).join(" ")];
}

export const skinWarmth = sideBySide(columns(20, 40, 4), { felt: true });
export const jointWarmth = sideBySide(columns(28, 36, 2), { felt: true });
export const fourPressures = sideBySide(columns(0, 240, 40), { key: "Divide the higher of the two at the ankle by the higher of the two arms." });
