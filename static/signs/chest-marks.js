// What is measured on the skin with a ruler or a finger: from the larynx to the breast bone, the two lower edges of the
// lung, and the gap on each side of the windpipe.

import { el, svg } from "../bedside/dom.js";
import { amountText, latestBySide, measuresOf, sideText } from "./latest.js";
import { onAPartner } from "./partner.js";
import { ruler } from "./ruler.js";

const SCALE = 2;

const heading = (probe) => (sideText(probe.side) ? el("b", {}, sideText(probe.side)) : "");

const frame = (width, height, ...nodes) => svg("svg", { class: "marks", viewBox: `0 0 ${width} ${height}`, width, height, "aria-hidden": "true" }, ...nodes);

const edge = (y, text) => [svg("path", { class: "mark", d: `M22 ${y}H110` }), svg("text", { class: "trace-name", x: 152, y: y + 4 }, text)];

/** Two pen marks below one another beside a ruler whose zero lies on the first. */
const pair = (from, to, names) =>
  frame(250, 210, svg("path", { class: "outline", d: "M24 2V208M108 2V208" }), ...edge(24 + from * SCALE, names[0]), ...edge(24 + to * SCALE, names[1]), ruler({ at: 122, across: 24 + from * SCALE, mm: 70 - from, scale: SCALE, down: true }));

function beside(host, probes, drawing, key = "") {
  host.append(el("div", { class: "marks-row" }, ...latestBySide(probes).map((probe) => el("div", {}, heading(probe), drawing(probe)))), key ? el("p", { class: "quiet" }, key) : "", onAPartner());
  return latestBySide(probes).map((probe) => [sideText(probe.side), measuresOf(probe).map(({ label, amount, unit }) => `${label} ${amountText(amount)} ${unit}`).join("; ")].filter(Boolean).join(": ")).join(". ") + ".";
}

function necks(probe) {
  const [{ amount }] = measuresOf(probe);
  return frame(230, 200,
    svg("path", { class: "skin", d: "M60 4C62 20 58 24 62 34C68 40 92 40 98 34C102 24 98 20 100 4" }),
    svg("path", { class: "outline", d: "M70 40V160M90 40V160" }),
    svg("path", { class: "mark", d: `M56 40H104M40 ${40 + amount * SCALE}H120` }),
    svg("text", { class: "trace-name", x: 4, y: 34 }, "larynx"),
    svg("path", { class: "skin", d: `M34 ${40 + amount * SCALE}C60 ${50 + amount * SCALE} 100 ${50 + amount * SCALE} 126 ${40 + amount * SCALE}V198H34Z` }),
    ruler({ at: 136, across: 40, mm: 75, scale: SCALE, down: true }));
}

const lungEdges = (probe) => {
  const [out, into] = measuresOf(probe).map(({ amount }) => amount);
  return pair(out - 40, into - 40, ["breath out", "breath in"]);
};

/** The finger is 16 mm wide; the windpipe lies toward the midline of the drawing. */
function gap(probe) {
  const [{ amount }] = measuresOf(probe);
  const way = probe.side === "right" ? -1 : 1;
  const scale = 4;
  const muscle = 120 + way * 72;
  const wall = muscle - way * amount * scale;
  const finger = muscle - way * (amount * scale) / 2;
  const word = (x, text) => svg("text", { class: "tick", x, y: 142, "text-anchor": "middle" }, text);
  return frame(240, 150,
    word(Math.min(Math.max(wall - way * 35, 30), 210), "windpipe"), word(Math.min(Math.max(muscle + way * 10, 44), 196), "neck muscle"),
    svg("path", { class: "skin", d: `M${wall} 4V100H${wall - way * 70}V4Z` }),
    svg("path", { class: "grid", d: [18, 34, 50, 66, 82].map((y) => `M${wall} ${y}H${wall - way * 70}`).join("") }),
    svg("path", { class: "skin", d: `M${muscle} 4L${muscle - way * 4} 100H${muscle + way * 22}V4Z` }),
    svg("ellipse", { class: "gauge", cx: finger, cy: 104, rx: Math.max(2, (Math.min(amount, 16) * scale) / 2), ry: 18 }),
    svg("path", { class: "mark", d: `M${wall} 60H${muscle}` }));
}

export const neckLength = (host, { probes }) => beside(host, probes, necks);
export const diaphragmMarks = (host, { probes }) => beside(host, probes, lungEdges);
export const windpipeGap = (host, { probes }) => beside(host, probes, gap, "Above the breast bone, one fingertip in the gap between the windpipe and the neck muscle; the line is the gap.");
