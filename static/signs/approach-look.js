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

/** Someone on a couch: how far the eyes are open, how many words come in one breath, how often there is a shift. */
function seenFromTheFoot(probe) {
  const [closed, words, shifts] = amounts(probe);
  const open = 6 * (1 - closed / 100);
  return picture(260, 170,
    line("M96 60C96 20 164 20 164 60C164 88 150 104 130 104C110 104 96 88 96 60ZM60 168C64 130 92 116 114 112H146C168 116 196 130 200 168", "limb-inside limb-edge thin"),
    ...[114, 146].map((x) => svg("ellipse", { class: "hole", cx: x, cy: 62, rx: 6, ry: Math.max(0.6, open) })),
    ...Array.from({ length: 14 }, (_, index) => line(`M${186 + (index % 5) * 13} ${34 + Math.floor(index / 5) * 12}h8`, "mark", { visibility: index < words ? "visible" : "hidden" })),
    ...Array.from({ length: 10 }, (_, index) => line(`M${30 - (index % 2) * 6} ${60 + index * 9}q6 4 0 8`, "outline", { visibility: index < shifts ? "visible" : "hidden" })));
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

const scalesAndRod = (probe) => {
  const [height, weight] = amounts(probe);
  return picture(220, 150, line("M60 140V10M60 20H92", "gauge"), line(`M84 ${140 - height * 0.6}V138M74 ${152 - height * 0.6}H94M84 110L76 138M84 110L92 138`, "limb-edge thin"), svg("rect", { class: "outline", x: 66, y: 138, width: 40, height: 8 }), label(150, 40, `${amountText(height)} cm`), label(150, 138, `${amountText(weight)} kg`));
};

export const weighing = sideBySide(scalesAndRod, { key: "Work the index out: kilograms divided by metres, and by metres again." });

const sideOfHead = (probe) => {
  const [hollow, girth] = amounts(probe);
  const arm = girth * 1.7;
  return picture(280, 150,
    line(`M40 130C36 110 34 96 38 80C34 50 50 14 90 14C126 14 138 40 134 70C138 96 122 120 100 126`, "limb-edge thin"), line(`M52 62C${60 + hollow * 2} ${56} ${60 + hollow * 2} ${80} 54 90`, "muscle", { "stroke-width": 1 + hollow * 0.3 }),
    line(`M${220 - arm / 2} 10C${216 - arm / 2} 60 ${222 - arm / 2} 100 ${224 - arm / 2} 144M${220 + arm / 2} 10C${224 + arm / 2} 60 ${218 + arm / 2} 100 ${216 + arm / 2} 144`, "limb-edge thin"));
};

export const temples = sideBySide(sideOfHead);
