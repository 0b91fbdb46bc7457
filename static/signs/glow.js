// Light and colour judged by an eye: how red a cap looks to it, and the glow in its pupil.

import { el, freshId, svg } from "../bedside/dom.js";
import { blend, captioned, discs, ink, irisOf, picture, saidOf, seen, strewn } from "./head-parts.js";
import { latestBySide } from "./latest.js";

const RED = [196, 26, 34];
const GREY = [168, 158, 150];
const GLOW = [232, 108, 44];
const BLACK = [16, 12, 12];
const PARTS = "if it is ten parts red to the better eye, to this one";

export function redTarget(host, { probes }) {
  const both = latestBySide(probes);
  host.append(el("div", { class: "head-row pair" }, ...both.map((probe) => {
    const parts = seen(probe, PARTS);
    return captioned(`To the ${probe.side} eye: ${parts} parts of ten`, picture([-50, -46, 100, 100], 1.9,
      svg("path", { class: "cap", fill: ink(blend(GREY, RED, parts / 10)), d: "M-26 -24C-26 -38 26 -38 26 -24V20C26 34 -26 34 -26 20ZM-26 -24C-26 -12 26 -12 26 -24" }),
      ...Array.from({ length: 10 }, (_, index) => svg("rect", { class: "pip", x: -45 + index * 9, y: 40, width: 7.5, height: 9, "fill-opacity": index < Math.round(parts) ? 1 : 0 }))));
  })), el("p", { class: "quiet" }, "The cap as the patient says it looks; the squares count its parts of red."));
  return saidOf(both);
}

/** The pupil lit from an arm away: glow, and shadows that lie in it. */
function lit(probe) {
  const [stopped, shadows] = [seen(probe, "light stopped") / 100, seen(probe, "shadows over") / 100];
  const clip = freshId("glow");
  const chance = strewn(probe.side === "right" ? 3 : 9);
  const places = Array.from({ length: 9 }, () => [24 * (chance() - 0.5), 24 * (chance() - 0.5)]);
  const each = Math.sqrt((shadows * 20 * 20) / 9) * 1.25;
  return picture([-50, -40, 100, 80], 2.4,
    svg("rect", { class: "dim-room", x: -50, y: -40, width: 100, height: 80 }),
    svg("path", { class: "dim-white", d: "M-46 2C-30 -34 30 -34 46 0C30 34 -30 34 -46 2Z" }),
    svg("circle", { r: 27, fill: ink(blend(irisOf(probe), BLACK, 0.55)) }),
    svg("clipPath", { id: clip }, svg("circle", { r: 20 })),
    svg("circle", { class: "glow", r: 20, fill: ink(blend(GLOW, BLACK, stopped)) }),
    svg("path", { class: "shadow", "clip-path": `url(#${clip})`, d: discs(places.map(([x, y]) => [x, y, each])) }),
    svg("circle", { class: "eye-light", cx: 4, cy: -4, r: 1.6 }));
}

export function redReflex(host, { probes }) {
  const both = latestBySide(probes);
  host.append(el("div", { class: "head-row pair" }, ...both.map((probe) => captioned(`${probe.side} eye, from an arm away in a dim room`, lit(probe)))));
  return saidOf(both);
}
