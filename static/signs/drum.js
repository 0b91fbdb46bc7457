// An ear drum through the otoscope, in millimetres: the canal, the handle of the hammer, the cone of light, and what is in
// front of it, in it and behind it. Both ears side by side, the front of the head towards the middle of the page.

import { el, freshId, svg } from "../bedside/dom.js";
import { blend, discs, ink, picture, saidOf, seen, strewn } from "./head-parts.js";
import { latestBySide } from "./latest.js";

const RADIUS = 4.5;
const AREA = Math.PI * RADIUS * RADIUS;
const PEARL = [206, 208, 200];
const RED = [190, 38, 40];
const AMBER = [206, 150, 62];

const share = (probe, label) => seen(probe, label) / 100;

/** How high a level of fluid stands that fills so much of the space, millimetres below the middle. */
const level = (filled) => RADIUS - 2 * RADIUS * filled;

/** Drawn for the right ear, its front to the right of the page; the left is its mirror image. */
export function drumColour(probe) {
  return blend(blend(PEARL, AMBER, 0.45 * share(probe, "space behind filled")), RED, share(probe, "redness"));
}

function patches(probe) {
  const chance = strewn(41);
  const area = share(probe, "white patches") * AREA;
  const each = Math.sqrt(area / 3 / Math.PI);
  return discs([[-1.9, 1.6], [1.7, -0.4], [-0.6, 2.9]].map(([x, y]) => [x + 0.3 * chance(), y, each]));
}

/** Light on the drum: a wedge from the tip of the hammer forwards and down. */
function cone(long) {
  const [x, y] = [Math.sin(2.35), -Math.cos(2.35)];
  const wide = 0.32 * long;
  return `M0.150 0.600L${(x * long - y * wide).toFixed(2)} ${(0.6 + y * long + x * wide).toFixed(2)}L${(x * long + y * wide).toFixed(2)} ${(0.6 + y * long - x * wide).toFixed(2)}Z`;
}

/** The hammer: its handle, which stands out from a drum drawn in and sinks into one that bulges. */
function hammer(stands) {
  const up = -0.5 * stands;
  return { d: `M-1.100 -3.100L${0.1 - 0.35 * up} 0.600`, knob: discs([[-1.25, -3.1, 0.42 + 0.14 * Math.max(0, up * 2)]]), width: 0.42 + 0.12 * up };
}

/** The shade under a drum that stands out, and the shine on it; of one drawn in, the hollow. */
const BULGE = "M-4.300 0.800A4.400 4.400 0 0 0 4.300 0.800A5.600 5.600 0 0 1 -4.300 0.800Z";
const HOLLOW = "M-3 -0.600A3.400 3.400 0 0 1 3 -0.600A4.600 4.600 0 0 0 -3 -0.600Z";

class Drum {
  constructor(probe) {
    const clip = freshId("drum");
    const { side } = probe;
    const stands = seen(probe, "stands out by");
    const filled = share(probe, "space behind filled");
    const hole = Math.sqrt((share(probe, "gap in the drum") * AREA) / Math.PI);
    const wax = share(probe, "canal filled");
    const { d, knob, width } = hammer(stands);
    const colour = drumColour(probe);
    const dark = ink(blend(colour, [40, 20, 16], 0.55));
    this.node = picture([-7.2, -7.2, 14.4, 14.4], 17,
      svg("clipPath", { id: clip }, svg("circle", { r: RADIUS })), svg("clipPath", { id: `${clip}-canal` }, svg("circle", { r: 6.8 })),
      svg("g", { class: `ear-drum ${side}`, transform: side === "left" ? "scale(-1 1)" : "" },
        svg("circle", { class: "canal", r: 6.8 }),
        svg("circle", { class: "drum", r: RADIUS, fill: ink(colour) }),
        svg("g", { "clip-path": `url(#${clip})` },
          svg("path", { class: "drum-fluid", d: `M-5 ${level(filled).toFixed(2)}C-2 ${(level(filled) + 0.35).toFixed(2)} 2 ${(level(filled) + 0.35).toFixed(2)} 5 ${level(filled).toFixed(2)}V6H-5Z`, opacity: (0.55 * Math.min(1, filled * 4)).toFixed(2) }),
          svg("path", { class: "drum-vessels", d: "M-1.600 -4.300C-1.200 -2.400 -0.400 -0.800 0.400 0.600M-3.900 -2C-3 -1.700 -2.300 -1.500 -1.700 -1.100M3.900 -2C3 -1.500 2.200 -1 1.500 -0.700M-3.900 2.200C-2.900 1.800 -2 1.500 -1.200 1.300M2.900 3.300C2.400 2.600 1.800 2 1.200 1.500", stroke: ink(RED), opacity: share(probe, "redness").toFixed(2) }),
          svg("path", { class: "drum-shade", d: BULGE, fill: dark, opacity: Math.min(0.8, Math.max(0, stands) * 0.7).toFixed(2) }),
          svg("path", { class: "drum-shade", d: HOLLOW, fill: dark, opacity: Math.min(0.5, Math.max(0, -stands) * 0.5).toFixed(2) }),
          svg("ellipse", { class: "drum-shine", cx: -1.3, cy: -1.5, rx: 1.5, ry: 0.9, opacity: Math.min(0.5, Math.max(0, stands) * 0.45).toFixed(2) }),
          svg("path", { class: "drum-chalk", d: patches(probe) }),
          svg("path", { class: "drum-cone", d: cone(seen(probe, "light reflected along")) }),
          svg("path", { class: "drum-fold", d: "M-4 -2.600L-1.250 -3.100L2.600 -3.400", stroke: dark }),
          svg("path", { class: "drum-handle", d, "stroke-width": Math.max(0.12, width * Math.max(0.2, 1 - Math.max(0, stands))).toFixed(2), stroke: dark }),
          svg("path", { class: "drum-knob", d: knob, fill: dark, opacity: Math.max(0.15, 1 - Math.max(0, stands)).toFixed(2) }),
          svg("path", { class: "drum-hole", d: discs([[-0.5, 1.9, hole]]) })),
        svg("g", { "clip-path": `url(#${clip}-canal)` }, svg("path", { class: "ear-wax", d: waxed(wax) }))),
      svg("circle", { class: "speculum", r: 6.9 }));
  }
}

/** Wax from the floor and the walls of the canal inwards, over so much of it. */
function waxed(filled) {
  const top = 6.8 - 13.6 * filled;
  return `M-6.800 ${top.toFixed(2)}C-4.500 ${(top + 1.2).toFixed(2)} -3 ${(top - 0.9).toFixed(2)} -0.600 ${(top + 0.3).toFixed(2)}C1.800 ${(top + 1.5).toFixed(2)} 4 ${(top - 0.6).toFixed(2)} 6.800 ${(top + 0.4).toFixed(2)}V8H-6.800Z`;
}

export function drum(host, { probes }) {
  const both = latestBySide(probes);
  host.append(el("div", { class: "head-row pair" }, ...both.map((probe) => el("figure", { class: "head-figure" }, new Drum(probe).node,
    el("figcaption", {}, el("b", {}, `${probe.side} ear`), el("span", { class: "quiet" }, `, the front of the head to the ${probe.side === "right" ? "right" : "left"} of the picture`))))),
  el("p", { class: "quiet" }, "Through the otoscope: the handle of the hammer runs down to the middle, the bright wedge is the light it throws back. A dark round place is a gap, a line across it is a level."));
  return saidOf(both);
}
