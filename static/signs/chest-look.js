// What is there to be seen of a chest without touching it: its shape, a scar, the lips, the neck and the spaces.

import { el, svg } from "../bedside/dom.js";
import { amountText, latestBySide, measuresOf, sideText } from "./latest.js";

const amounts = (probe) => measuresOf(probe).map(({ amount }) => amount);

const picture = (width, height, ...nodes) => svg("svg", { class: "look", viewBox: `0 0 ${width} ${height}`, width, height, "aria-hidden": "true" }, ...nodes);

const numbersOf = (probe) => measuresOf(probe).map(({ label, amount, unit }) => `${label} ${amountText(amount)} ${unit}`).join("; ");

const wordsOf = (probe) => [sideText(probe.side), numbersOf(probe)].filter(Boolean).join(": ");

const seen = (drawing) => (host, { probes }) => {
  const both = latestBySide(probes);
  host.append(el("div", { class: "marks-row" }, ...both.map((probe) => el("div", {}, sideText(probe.side) ? el("b", {}, sideText(probe.side)) : "", drawing(probe), el("p", { class: "quiet" }, `${numbersOf(probe)}.`)))));
  return `${both.map(wordsOf).join(". ")}.`;
};

/** A cut across the chest seen from below, as the examiner stands at the foot: the front is above, the right on the left. */
function crossSection(probe) {
  const [width, depth, stands, behind] = amounts(probe);
  const points = Array.from({ length: 121 }, (_, index) => {
    const angle = (index / 120) * 2 * Math.PI;
    const [across, forward] = [Math.sin(angle), Math.cos(angle)];
    const front = forward > 0 ? stands * Math.exp(-((across / 0.22) ** 2)) : 0;
    const shape = (part) => Math.sign(part) * Math.abs(part) ** 0.93;
    return [160 + shape(across) * width * 0.46, 166 - shape(forward) * depth * 0.46 - front + (forward < 0 ? -2 * across * forward * behind : 0)];
  });
  return picture(320, 320,
    svg("path", { class: "limb-inside limb-edge", d: `M${points.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join("L")}Z` }),
    svg("circle", { class: "outline", cx: 160, cy: 166 + depth * 0.38, r: 12 }),
    svg("text", { class: "tick", x: 160, y: 142 + depth * 0.38, "text-anchor": "middle" }, "spine"),
    svg("text", { class: "tick", x: 160, y: 12, "text-anchor": "middle" }, "front"),
    svg("text", { class: "tick", x: 2, y: 314 }, "right"),
    svg("text", { class: "tick", x: 318, y: 314, "text-anchor": "end" }, "left"));
}

const RIBS = [0, 1, 2, 3, 4, 5].map((row) => `M30 ${56 + row * 22}C80 ${40 + row * 22} 150 ${52 + row * 22} 196 ${88 + row * 20}`);

/** The side of the chest with the arm lifted, and a pale line along a rib where there is one. */
function flank(probe) {
  const [mm] = amounts(probe);
  const across = probe.side === "right" ? "" : "translate(220 0) scale(-1 1)";
  return picture(220, 210, svg("g", { transform: across },
    svg("path", { class: "outline", d: "M22 20C16 80 20 150 34 206M204 14C192 70 196 150 200 206" }),
    ...RIBS.map((d) => svg("path", { class: "grid", d })),
    svg("path", { class: "scar", d: RIBS[2], pathLength: 260, "stroke-dasharray": `${mm} 600`, visibility: mm > 0 ? "visible" : "hidden" })));
}

function mouth(probe) {
  const [width, opening] = amounts(probe);
  const [w, h] = [width * 1.6, opening * 1.6];
  return picture(200, 130,
    svg("path", { class: "outline", d: "M40 6C34 60 50 112 100 124C150 112 166 60 160 6M92 4C88 22 90 30 100 32C110 30 112 22 108 4" }),
    svg("path", { class: "limb-inside limb-edge", d: `M${100 - w / 2} 76C${100 - w / 4} ${66 - h} ${100 + w / 4} ${66 - h} ${100 + w / 2} 76C${100 + w / 4} ${88 + h} ${100 - w / 4} ${88 + h} ${100 - w / 2} 76Z` }),
    svg("ellipse", { class: "hole", cx: 100, cy: 76, rx: w / 3, ry: h / 2 }));
}

/** Neck and upper chest from the front: how far the muscles stand out and the spaces go in, as the breath goes in. */
function neckAndSpaces(probe) {
  const [muscle, hollow] = amounts(probe);
  const half = (transform) => svg("g", { transform },
    svg("path", { class: "outline", d: "M26 4C26 34 30 48 52 56C84 62 104 70 112 92C118 120 120 160 122 198" }),
    svg("path", { class: "muscle", "stroke-width": 1.5 + muscle * 1.4, d: "M24 8C20 28 12 44 5 60" }),
    svg("path", { class: "limb-edge thin", d: "M6 64C34 58 60 58 84 66" }),
    ...[0, 1, 2, 3].map((row) => svg("path", { class: "outline", d: `M8 ${92 + row * 28}C40 ${84 + row * 28} 72 ${92 + row * 28} 96 ${112 + row * 26}` })),
    ...[0, 1, 2].map((row) => svg("path", { class: "shade", "stroke-width": Math.max(0, hollow), visibility: hollow > 0 ? "visible" : "hidden", d: `M14 ${106 + row * 28}C42 ${100 + row * 28} 68 ${106 + row * 28} 88 ${122 + row * 26}` })));
  return picture(260, 222, half("translate(130 0)"), half("translate(130 0) scale(-1 1)"),
    svg("text", { class: "tick", x: 164, y: 24 }, "neck muscle"), svg("text", { class: "tick", x: 130, y: 217, "text-anchor": "middle" }, "ribs, with a space below each"));
}

export const chestShape = seen(crossSection);
export const chestScar = seen(flank);
export const lips = seen(mouth);
export const breathingEffort = seen(neckAndSpaces);
