// The eyes in their orbits seen from below, the nose upwards, with a ruler from the outer rim to the front of the cornea.

import { el, svg } from "../bedside/dom.js";
import { picture, saidOf, seen } from "./head-parts.js";

const GLOBE = 12;
const MOST = 30;

/** One orbit in millimetres: the outer rim at 0, forwards upwards; drawn for the left, mirrored for the right. */
function orbit(side, mm) {
  const ticks = Array.from({ length: MOST + 1 }, (_, at) => `M28 ${-at}h${at % 10 === 0 ? 5 : at % 5 === 0 ? 3.5 : 2}`).join("");
  const flip = side === "right" ? -1 : 1;
  return svg("g", { transform: `translate(${flip * 33} 0) scale(${flip} 1)` },
    svg("path", { class: "bone-cut", d: "M-20 34C-16 14 -16 0 -22 -14M24 30C30 16 30 6 26 0" }),
    svg("g", { class: `globe ${side}`, transform: `translate(2 ${-mm + GLOBE})` },
      svg("path", { class: "optic", d: "M-5 11C-8 22 -12 30 -16 36" }),
      svg("circle", { class: "globe-wall", r: GLOBE - 1 }),
      svg("path", { class: "cornea", d: `M-6 -9C-4 ${-GLOBE - 1} 4 ${-GLOBE - 1} 6 -9` })),
    svg("path", { class: "lid-cut", d: `M-22 -13C-14 ${-mm - 1} -8 ${-mm - 2} 2 ${-mm - 1.5}C12 ${-mm - 1} 20 -8 27 0` }),
    svg("path", { class: "gauge", d: ticks }),
    svg("path", { class: "gauge-edge", d: `M2 ${-mm}H34` }),
    ...[0, 10, 20, 30].map((at) => svg("text", { class: "tick small", x: flip * 35.500, y: -at + 1.500, transform: flip < 0 ? "scale(-1 1)" : "", "text-anchor": flip < 0 ? "end" : "start" }, at)));
}

export function orbitView(host, { probes, fresh }) {
  const probe = fresh ?? probes.at(-1);
  const label = (side) => `${side} eye in front of the rim by`;
  const nose = svg("path", { class: "bone-cut", d: "M-11 -14C-8 -22 -5 -30 0 -31C5 -30 8 -22 11 -14" });
  host.append(el("figure", { class: "head-figure" },
    picture([-82, -40, 164, 82], 3, nose, orbit("right", seen(probe, label("right"))), orbit("left", seen(probe, label("left"))),
      svg("text", { class: "eye-name", x: -60, y: 38, "text-anchor": "middle" }, "right"), svg("text", { class: "eye-name", x: 60, y: 38, "text-anchor": "middle" }, "left")),
    el("figcaption", { class: "quiet" }, "Seen from below, the nose at the top. Ruler in millimetres from the outer rim of the orbit; the dashed line lies on the cornea.")));
  return saidOf([probe]).replace(/^(right|left): /, "");
}
