// What is seen, measured and asked before the hands are laid on.

import { el, svg } from "../bedside/dom.js";
import { heightAt } from "./curve.js";
import { amountText, curvesOf, measuresOf } from "./latest.js";
import { moving } from "./moving.js";
import { amounts, label, line, picture, sideBySide } from "./side-by-side.js";

/** What the patient answers. */
export function answer(host, { probes, fresh }) {
  const { words } = (fresh ?? probes.at(-1)).shown;
  host.append(el("p", { class: "felt" }, `“${words}”`));
  return words;
}

const MOST_WORDS = 14;

/** Someone on a couch, the shoulders the higher and the neck the tighter the fewer words a breath carries: how far the eyes are open, how many words come in one breath, how often there is a shift. */
function seenFromTheFoot(probe) {
  const [closed, words, shifts] = amounts(probe);
  const open = 6 * (1 - closed / 100);
  const works = Math.max(0, MOST_WORDS - words);
  const [y, side] = [118 - works * 1.2, 134 - works * 2.4];
  return picture(260, 170,
    line(`M60 168C64 ${side} 92 ${y + 4} 114 ${y}H146C168 ${y + 4} 196 ${side} 200 168Z`, "limb-inside limb-edge thin shoulders"),
    line(`M120 ${y + 2}L124 136M140 ${y + 2}L136 136`, "muscle", { "stroke-width": (0.6 + works * 0.2).toFixed(1) }),
    line("M96 60C96 20 164 20 164 60C164 88 150 104 130 104C110 104 96 88 96 60Z", "limb-inside limb-edge thin"),
    line("M130 62V76L134 77", "outline"), svg("ellipse", { class: "hole", cx: 130, cy: 89, rx: 8, ry: (0.8 + works * 0.35).toFixed(1) }),
    ...[114, 146].map((x) => svg("ellipse", { class: "hole", cx: x, cy: 62, rx: 6, ry: Math.max(0.6, open) })),
    ...Array.from({ length: 14 }, (_, index) => line(`M${186 + (index % 5) * 13} ${34 + Math.floor(index / 5) * 12}h8`, "mark", { visibility: index < words ? "visible" : "hidden" })),
    ...Array.from({ length: 10 }, (_, index) => line(`M${30 - (index % 2) * 6} ${60 + index * 9}q6 4 0 8`, "outline", { visibility: index < shifts ? "visible" : "hidden" })),
    label(216, 84, `${amountText(words)} words`), label(30, 52, `${amountText(shifts)} shifts`));
}

export const generalLook = sideBySide(seenFromTheFoot, { key: "Each short stroke at the right is a word in one breath; each bow at the left a shift or a guarded movement in a minute." });

function stem() {
  const column = svg("rect", { class: "column", x: 96, width: 10 });
  const ticks = Array.from({ length: 9 }, (_, index) => 34 + index);
  const y = (degrees) => 176 - Math.max(0, degrees - 33.5) * 18;
  const node = svg("svg", { class: "look", viewBox: "0 0 200 206", width: 200, height: 206, "aria-hidden": "true" },
    svg("rect", { class: "outline", x: 92, y: 6, width: 18, height: 176, rx: 9 }), svg("circle", { class: "column", cx: 101, cy: 186, r: 13 }), column,
    ...ticks.flatMap((degrees) => [line(`M112 ${y(degrees)}h10`, "gauge"), label(128, y(degrees) + 4, degrees, "start")]));
  return {
    node,
    show(degrees) {
      column.setAttribute("y", y(degrees));
      column.setAttribute("height", 180 - y(degrees));
    },
  };
}

export function thermometer(host, { probes, fresh, still }) {
  const probe = fresh ?? probes.at(-1);
  const [curve] = curvesOf(probe);
  const figure = stem();
  moving(host, { figure: { node: figure.node, show: (_, ms) => figure.show(heightAt(curve, ms)) }, traces: [{ series: [{ side: probe.side, name: "", curve }], low: 34, high: 42, title: "Below the tongue" }], from: "putting it in", fresh, still, again: "Watch again" });
  return `After a minute the thermometer stands at ${amountText(curve.samples.at(-1))} ${curve.unit}.`;
}

const probeOnFinger = (probe) => {
  const [{ amount, unit }] = measuresOf(probe);
  return picture(220, 100, line("M6 40H80M6 66H80", "limb-edge"), svg("rect", { class: "limb-inside limb-edge thin", x: 74, y: 24, width: 120, height: 58, rx: 10 }), svg("text", { class: "dial", x: 134, y: 62, "text-anchor": "middle" }, `${amountText(amount)} ${unit}`));
};

export const oximeter = sideBySide(probeOnFinger);

/** The outline of one half of someone who stands, from the neck down and up the inner leg: [across, how far it grows with the trunk], up, in hundredths of the height. */
const HALF = [[2.8, 0.4, 87], [3.4, 0.4, 84], [11, 0.35, 81.5], [12.8, 0.4, 77], [9.4, 0.7, 72], [8.4, 1, 62], [9.8, 0.9, 53], [9.6, 0.8, 44], [6.2, 0.6, 28], [6.4, 0.6, 21], [3.6, 0.35, 5], [6, 0.2, 0], [1, 0, 0], [1, 0, 28], [0.5, 0, 46]];
const ARM = [[12, 0.4, 80], [14.4, 0.5, 70], [14.8, 0.7, 62], [15.2, 0.7, 46]];
const USUAL_INDEX = 22;
const PIXELS_PER_CM = 1.1;
const FLOOR = 218;

/** Someone on the scales, as wide as the weight makes them at this height: a trunk that weighs twice as much is twice as wide. */
function standing(height, weight) {
  const wide = weight / (height / 100) ** 2 / USUAL_INDEX;
  const long = height * PIXELS_PER_CM;
  const at = ([across, grows, up]) => [(across * wide ** grows * long) / 100, FLOOR - (up * long) / 100];
  const half = (points, way) => points.map((point) => at(point)).map(([x, y]) => `${(110 + way * x).toFixed(1)} ${y.toFixed(1)}`);
  return svg("g", { class: "stands" }, line(`M${half(ARM, -1).join("L")}M${half(ARM, 1).join("L")}`, "limb-edge thin"),
    line(`M${[...half(HALF, 1), ...half(HALF, -1).reverse()].join("L")}Z`, "limb-inside limb-edge thin trunk"),
    svg("ellipse", { class: "limb-inside limb-edge thin", cx: 110, cy: FLOOR - 0.935 * long, rx: 0.05 * long, ry: 0.065 * long }));
}

const scalesAndRod = (probe) => {
  const [height, weight] = amounts(probe);
  const top = FLOOR - height * PIXELS_PER_CM;
  const marks = Array.from({ length: 11 }, (_, index) => index * 20);
  return picture(300, 242, line(`M30 ${FLOOR}V0M30 ${top}H112${marks.map((cm) => `M30 ${FLOOR - cm * PIXELS_PER_CM}h-6`).join("")}`, "gauge"), standing(height, weight),
    svg("rect", { class: "outline", x: 66, y: FLOOR, width: 88, height: 10 }), label(200, top + 16, `${amountText(height)} cm`, "start"), label(200, FLOOR + 8, `${amountText(weight)} kg`, "start"));
};

export const weighing = sideBySide(scalesAndRod, { key: "Work the index out: kilograms divided by metres, and by metres again. The rod has a mark for every 20 cm." });

const sideOfHead = (probe) => {
  const [hollow, girth] = amounts(probe);
  const arm = girth * 1.7;
  return picture(280, 150,
    line(`M40 130C36 110 34 96 38 80C34 50 50 14 90 14C126 14 138 40 134 70C138 96 122 120 100 126`, "limb-edge thin"), line(`M52 62C${60 + hollow * 2} ${56} ${60 + hollow * 2} ${80} 54 90`, "muscle", { "stroke-width": 1 + hollow * 0.3 }),
    line(`M${220 - arm / 2} 10C${216 - arm / 2} 60 ${222 - arm / 2} 100 ${224 - arm / 2} 144M${220 + arm / 2} 10C${224 + arm / 2} 60 ${218 + arm / 2} 100 ${216 + arm / 2} 144`, "limb-edge thin"));
};

export const temples = sideBySide(sideOfHead);
