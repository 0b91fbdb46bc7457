// Prints of the feet from above with a ruler of ten centimetres to the mark.

import { svg } from "../../bedside/dom.js";
import { PRINT, at, picture } from "./flesh.js";

const WIDTH = 480;
const SCALE = 1.42;
const MIDDLE = 62;

const print = ({ side, along, across }, out) => {
  const way = side === "right" ? 1 : -1;
  return svg("path", { class: `skin print ${side}`, d: PRINT, transform: `${at(34 + along * SCALE, MIDDLE + across * SCALE, 90 + way * out, -way)} scale(${SCALE})` });
};

/** Five steps; the way goes to the right. */
export function footprints(walker) {
  const prints = walker.prints(5);
  const from = prints[0].along;
  const ticks = Array.from({ length: 31 }, (_, index) => index);
  return picture(WIDTH, 132, "footprints",
    svg("path", { class: "grid", d: `M0 ${MIDDLE}H${WIDTH}` }),
    ...prints.map((one) => print({ ...one, along: one.along - from }, walker.out)),
    svg("path", { class: "gauge", d: ticks.map((i) => `M${34 + i * 10 * SCALE} 112v${i % 5 ? 4 : 8}`).join("") }),
    ...ticks.filter((i) => i % 5 === 0).map((i) => svg("text", { class: "tick", x: 34 + i * 10 * SCALE, y: 130, "text-anchor": "middle" }, i * 10)),
    svg("text", { class: "tick", x: WIDTH - 2, y: 106, "text-anchor": "end" }, "cm"),
    svg("text", { class: "tick", x: 2, y: 12 }, "left"),
    svg("text", { class: "tick", x: 2, y: 104 }, "right"));
}
