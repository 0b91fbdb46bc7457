// A ruler in the drawing: a tick for every millimetre, a number for every centimetre, and the unit where it has room.

import { svg } from "../bedside/dom.js";

/**
 * @param at, across where its zero lies
 * @param mm     how long it is
 * @param scale  pixels for one millimetre
 * @param down   whether it runs downwards instead of to the right
 */
export function ruler({ at, across, mm, scale, down = false, from = 0 }) {
  const ticks = [];
  for (let i = from; i <= mm; i++) {
    const length = i % 10 === 0 ? 9 : i % 5 === 0 ? 6 : 3;
    const place = (down ? across : at) + i * scale;
    ticks.push(down ? `M${at} ${place}h${length}` : `M${place} ${across}v${length}`);
  }
  const numbers = Array.from({ length: Math.floor((mm - from) / 10) + 1 }, (_, index) => Math.ceil(from / 10) + index).filter((cm) => cm * 10 <= mm);
  return svg(
    "g",
    { class: "ruler" },
    svg("path", { class: "gauge", d: ticks.join("") }),
    ...numbers.map((cm, index) => (down
      ? svg("text", { class: "tick", x: at + 13, y: across + cm * 10 * scale + 4 }, index === numbers.length - 1 ? `${Math.abs(cm)} cm` : Math.abs(cm))
      : svg("text", { class: "tick", x: at + cm * 10 * scale, y: across + 22, "text-anchor": "middle" }, Math.abs(cm)))),
  );
}
