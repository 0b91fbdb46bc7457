// What is seen of a mouth with a torch: its lining, the surface of the tongue, the teeth and the gums.

import { svg } from "../bedside/dom.js";
import { blend, captioned, discs, ink, picture, saidOf, seen, strewn } from "./head-parts.js";
import { amountText } from "./latest.js";
import { openMouth } from "./mouth-parts.js";

const PINK = [205, 120, 116];

/** Places inside an ellipse, strewn the same each time. */
function inside(count, seed, [cx, cy, rx, ry]) {
  const chance = strewn(seed);
  return Array.from({ length: count }, () => {
    const [angle, far] = [chance() * 2 * Math.PI, Math.sqrt(chance())];
    return [cx + rx * far * Math.cos(angle), cy + ry * far * Math.sin(angle), 0.6 + 0.9 * chance()];
  });
}

const CHEEKS = [[-22, 2, 6, 14], [22, 2, 6, 14], [0, -16, 16, 5]];
const PLAQUES = 150;

/** The mouth with the lips drawn back: cheeks, palate, tongue lifted. A ruler lies beside it. */
export function mouthLining(host, { probes }) {
  const probe = probes.at(-1);
  const dry = seen(probe, "spatula sticks") / 100;
  const plaques = discs(CHEEKS.flatMap((where, index) => inside(Math.round((PLAQUES / 3) * (seen(probe, "surface under white, loose") / 100)), 5 + index, where)).map(([x, y, r]) => [x, y, r * 1.5]));
  const [patch, raw] = [seen(probe, "white, held fast, across") / 2, seen(probe, "raw, across") / 2];
  const blob = (x, y, r, class_) => svg("path", { class: class_, d: `M${x - r} ${y}C${x - r} ${y - r * 0.7} ${x - r * 0.2} ${y - r * 0.9} ${x + r * 0.4} ${y - r * 0.7}C${x + r} ${y - r * 0.5} ${x + r * 1.1} ${y + r * 0.3} ${x + r * 0.5} ${y + r * 0.7}C${x} ${y + r} ${x - r} ${y + r * 0.7} ${x - r} ${y}Z` });
  const wet = inside(30, 3, [0, 4, 25, 24]).slice(0, Math.round(30 * (1 - dry))).map(([x, y, r]) => `M${x.toFixed(1)} ${y.toFixed(1)}q${r.toFixed(1)} ${(-r).toFixed(1)} ${(2.6 * r).toFixed(1)} 0`).join("") || "M0 0";
  const cracks = "M-20 -6l3 4l-2 4l3 3M-10 -18l2 4l4 1M12 -17l-2 5l3 3M20 8l-3 3l1 5M-6 14l2 5l-2 4M8 12l-2 4l3 5";
  const ticks = Array.from({ length: 41 }, (_, mm) => `M${mm - 20} 46v${mm % 10 === 0 ? 3.5 : mm % 5 === 0 ? 2.6 : 1.5}`).join("");
  host.append(captioned(`Lips drawn back; the cheeks to both sides, the palate above, the underside of the lifted tongue below. The spatula sticks to the lining over ${amountText(seen(probe, "spatula sticks"))} % of its way; thin bright arcs are wet. What is flecked comes away on the spatula; what has an edge does not. Ruler in millimetres.`,
    picture([-44, -36, 88, 96], 4, ...openMouth(),
      svg("path", { class: "lining", fill: ink(blend(PINK, [176, 128, 116], dry)), d: "M-30 4C-26 -19 -12 -24 0 -23C12 -24 26 -19 30 4C26 25 14 33 0 33C-14 33 -26 25 -30 4Z" }),
      svg("path", { class: "mouth-line", d: "M-15 24C-14 6 -8 2 0 2C8 2 14 6 15 24M0 4V26M-14 -8C-6 -14 6 -14 14 -8" }),
      svg("path", { class: "plaque", d: plaques }), blob(22, 0, patch, "fixed-patch"), blob(-8, 24, raw, "raw-patch"), svg("path", { class: "wet", d: wet }), svg("path", { class: "mouth-line", d: cracks, opacity: Math.max(0, dry * 1.6 - 0.5).toFixed(2) }),
      svg("path", { class: "gauge", d: `M-20 46H20${ticks}` }), ...[0, 10, 20, 30, 40].map((mm) => svg("text", { class: "tick small", x: mm - 20, y: 53, "text-anchor": "middle" }, mm)))));
  return saidOf([probe]);
}

const PAPILLAE = 320;

export function tongueSurface(host, { probes }) {
  const probe = probes.at(-1);
  const [bare, fur] = [seen(probe, "without papillae") / 100, seen(probe, "under fur") / 100];
  const body = "M-24 -26C-12 -32 12 -32 24 -26C30 -8 28 22 16 34C8 41 -8 41 -16 34C-28 22 -30 -8 -24 -26Z";
  const papillae = inside(PAPILLAE, 17, [0, 4, 25, 33]).slice(0, Math.round(PAPILLAE * (1 - bare))).map(([x, y, r]) => [x, y, r * 0.75]);
  const coat = inside(900, 29, [0, 2, 24, 32]).sort((one, other) => Math.hypot(one[0], one[1] + 12) - Math.hypot(other[0], other[1] + 12)).slice(0, Math.round(900 * fur));
  host.append(captioned("The tongue from above: small rings are papillae, pale grey is fur.", picture([-34, -36, 68, 78], 4.4,
    svg("path", { class: "tongue-edge", d: body, fill: ink(blend([214, 132, 128], [192, 62, 62], bare)) }),
    svg("path", { class: "papillae", d: discs(papillae) }), svg("path", { class: "fur", d: discs(coat) }), svg("path", { class: "tongue-middle", d: "M0 -24C1 -6 0 14 0 32" }))));
  return saidOf([probe]);
}

const WIDTHS = [4.3, 3.3, 3.7, 3.5, 3.5, 5, 4.6, 4.2];
// Which teeth go first, by their number from the midline of each quarter: the molars.
const ORDER = [[5, 0], [5, 2], [6, 1], [5, 3], [4, 0], [6, 2], [7, 1], [5, 1], [6, 3], [4, 2], [7, 3], [6, 0], [3, 1], [7, 0], [7, 2], [4, 1], [3, 3], [4, 3], [3, 0], [3, 2], [2, 1], [2, 0], [1, 2], [1, 0], [1, 3], [1, 1], [2, 2], [2, 3], [0, 0], [0, 1], [0, 2], [0, 3]];

/** The place of a tooth on its arch: quarters 0 upper right of the patient, 1 upper left, 2 lower left, 3 lower right. */
function place(number, quarter) {
  const along = WIDTHS.slice(0, number).reduce((sum, width) => sum + width, 0) + WIDTHS[number] / 2;
  const angle = (along / 33) * 1.42;
  const [x, y] = [26 * Math.sin(angle), 5 + 34 * Math.cos(angle)];
  return [quarter === 0 || quarter === 3 ? -x : x, quarter < 2 ? -y : y, WIDTHS[number] * 0.56];
}

export function teeth(host, { probes }) {
  const probe = probes.at(-1);
  const count = (label) => Math.round(seen(probe, label));
  const gums = seen(probe, "edge of the gum swollen") / 100;
  const gone = ORDER.slice(0, count("gaps")).map(String);
  const there = ORDER.filter((one) => !gone.includes(String(one)));
  const bad = there.slice(0, count("teeth with a hole"));
  const rim = (thick, way) => svg("path", { class: "gum", "stroke-width": thick, d: `M-29 ${way * 8}C-27 ${way * 34} -14 ${way * 45} 0 ${way * 45}C14 ${way * 45} 27 ${way * 34} 29 ${way * 8}` });
  const thick = 5 + 5 * gums;
  const colour = ink(blend([222, 150, 144], [188, 44, 52], gums));
  const gum = [-1, 1].map((way) => rim(thick, way));
  for (const one of gum) one.setAttribute("stroke", colour);
  host.append(captioned(`Both rows, the mouth wide open, the upper one above. Dark spots are holes; the gum swells over ${amountText(seen(probe, "edge of the gum swollen"))} % of its edge.`,
    picture([-42, -54, 84, 108], 3.6, ...gum, svg("path", { class: "tooth", d: discs(there.map(([number, quarter]) => place(number, quarter))) }),
      svg("path", { class: "tooth-hole", d: discs(bad.map(([number, quarter]) => place(number, quarter)).map(([x, y, r]) => [x, y, r * 0.45])) }),
      svg("path", { class: "socket", d: discs(ORDER.filter((one) => gone.includes(String(one))).map(([number, quarter]) => place(number, quarter)).map(([x, y, r]) => [x, y, r * 0.7])) }))));
  return saidOf([probe]);
}
