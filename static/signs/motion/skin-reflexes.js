// The skin is stroked and a muscle beneath draws together; and the navel while the patient sits up.

import { svg } from "../../bedside/dom.js";
import { heightAt, highest, lengthMs } from "../curve.js";
import { amountText, curvesOf, latestBySide, sideText } from "../latest.js";
import { seriesOf } from "../moving.js";
import { acted } from "./acted.js";
import { picture } from "./flesh.js";
import { sidesText } from "./steps.js";

const STROKE_MS = 450;
const MM = 2.2;

const belly = () => [
  svg("path", { class: "outline", d: "M48 4C42 40 52 80 46 120C44 150 40 170 44 196M172 4C178 40 168 80 174 120C176 150 180 170 176 196" }),
  svg("path", { class: "outline", d: "M60 34C76 60 92 34 110 30C128 34 144 60 160 34M70 172Q110 196 150 172" }),
];
const SQUEEZES = "M-12 -42V-10C-12 2 12 2 12 -10V-42Z";
const navelAt = [110, 104];
const navel = () => svg("g", {}, svg("ellipse", { class: "skin", rx: 5, ry: 7 }), svg("path", { class: "outline", d: "M0 -4V4" }));
const cross = ([x, y]) => svg("path", { class: "gauge-edge", d: `M${x - 14} ${y}h28M${x} ${y - 14}v28` });
const scaleMm = (x, y) => svg("g", {}, svg("path", { class: "gauge", d: [0, 5, 10].map((mm) => `M${x + mm * MM} ${y}v${mm % 10 ? 6 : 9}`).join("") + `M${x} ${y}h${10 * MM}` }), svg("text", { class: "tick", x: x + 10 * MM + 6, y: y + 9 }, "10 mm"));

/** A belly with a stroke towards the navel, which is drawn that way by so many millimetres. */
function bellyStroked(probe, low) {
  const way = probe.side === "right" ? -1 : 1;
  const y = low ? 148 : 62;
  const stroke = svg("path", { class: "stroke", d: `M${110 + way * 58} ${y}L${110 + way * 20} ${low ? y - 18 : y + 18}`, pathLength: 100, "stroke-dasharray": "100 200" });
  const dot = navel();
  const node = picture(220, 206, "belly-stroke", ...belly(), cross(navelAt), stroke, dot, scaleMm(8, 186), svg("text", { class: "tick", x: 4, y: 14 }, "right"), svg("text", { class: "tick", x: 216, y: 14, "text-anchor": "end" }, "left"));
  return { node, stroke, move: (mm) => { dot.setAttribute("transform", `translate(${(navelAt[0] + way * mm * MM).toFixed(1)} ${(navelAt[1] + (low ? 0.35 : -0.35) * mm * MM).toFixed(1)})`); dot.dataset.mm = mm; } };
}

/** The upper inner thigh is stroked; the skin fold above it draws up. */
function thighStroked(probe) {
  const way = probe.side === "right" ? -1 : 1;
  const stroke = svg("path", { class: "stroke", d: `M${110 + way * 20} 104L${110 + way * 24} 150`, pathLength: 100, "stroke-dasharray": "100 200" });
  const fold = svg("path", { class: "skin", d: "M-13 -10C-4 -14 6 -13 12 -8C14 2 12 12 4 15C-6 16 -14 8 -13 -10Z" });
  const node = picture(220, 206, "belly-stroke", svg("path", { class: "outline", d: "M40 8C36 40 24 60 26 200M180 8C184 40 196 60 194 200M106 96L98 200M114 96L122 200M62 20Q110 60 158 20" }), stroke, fold, scaleMm(8, 190), svg("text", { class: "tick", x: 4, y: 14 }, "right"), svg("text", { class: "tick", x: 216, y: 14, "text-anchor": "end" }, "left"));
  return { node, stroke, move: (mm) => { fold.setAttribute("transform", `translate(${110 + way * 14} ${(82 - mm * MM).toFixed(1)})`); fold.dataset.mm = mm; } };
}

/** The skin round the anus is touched with a pin and draws together. */
function ringTouched() {
  const stroke = svg("path", { class: "stroke", d: "M178 62L142 88", pathLength: 100, "stroke-dasharray": "100 200" });
  const folds = svg("g", {}, ...Array.from({ length: 12 }, (_, index) => svg("path", { class: "outline", d: "M0 -14V-44", transform: `rotate(${index * 30})` })), svg("circle", { class: "skin", r: 14 }));
  const names = [svg("text", { class: "tick", x: 182, y: 60 }, "pin"), svg("text", { class: "tick", x: 110, y: 176, "text-anchor": "middle" }, "skin round the anus")];
  const node = picture(220, 206, "belly-stroke", folds, stroke, ...names, scaleMm(8, 196));
  return { node, stroke, move: (mm) => { folds.setAttribute("transform", `translate(110 104) scale(${(1 - mm * 0.045).toFixed(3)})`); folds.dataset.mm = mm; } };
}

/** The glans or clitoris is squeezed between two fingers, while a gloved finger feels the sphincter, seen cut through. */
function squeezed() {
  const [above, below] = [svg("path", { class: "helper", d: SQUEEZES }), svg("path", { class: "helper", d: SQUEEZES })];
  const walls = [-1, 1].map((way) => svg("g", { class: "sphincter" }, svg("ellipse", { class: "skin", cx: 160, cy: 104 + way * 46, rx: 13, ry: 14 })));
  const stroke = svg("path", { class: "stroke", d: "M0 0" });
  const node = picture(220, 224, "belly-stroke squeeze", svg("circle", { class: "skin", cx: 46, cy: 104, r: 15 }), above, below,
    svg("path", { class: "outline", d: "M122 24C124 44 132 66 142 78M122 184C124 164 132 142 142 130M178 78C190 70 200 58 208 36M178 130C190 138 200 150 208 172" }), ...walls,
    svg("path", { class: "helper", d: "M220 92H146C134 92 134 116 146 116H220Z" }), stroke, scaleMm(8, 206),
    svg("text", { class: "tick", x: 48, y: 20, "text-anchor": "middle" }, "squeeze of"), svg("text", { class: "tick", x: 48, y: 188, "text-anchor": "middle" }, "glans or clitoris"), svg("text", { class: "tick", x: 162, y: 20, "text-anchor": "middle" }, "sphincter"), svg("text", { class: "tick", x: 218, y: 216, "text-anchor": "end" }, "gloved finger"));
  const show = (ms) => {
    const gap = 17 + 10 * (1 - Math.min(Math.max(ms / STROKE_MS, 0), 1));
    above.setAttribute("transform", `translate(46 ${(104 - gap).toFixed(1)})`);
    below.setAttribute("transform", `translate(46 ${(104 + gap).toFixed(1)}) scale(1 -1)`);
  };
  const move = (mm) => walls.forEach((wall, index) => {
    wall.setAttribute("transform", `translate(0 ${((index ? -1 : 1) * mm * MM).toFixed(1)})`);
    wall.dataset.mm = mm;
  });
  return { node, stroke, move, show };
}

/** A buttock whose skin is stroked and puckers. */
function buttockStroked(probe) {
  const way = probe.side === "right" ? 1 : -1;
  const stroke = svg("path", { class: "stroke", d: `M${110 + way * 66} 84L${110 + way * 36} 118`, pathLength: 100, "stroke-dasharray": "100 200" });
  const pucker = svg("g", {}, ...[-14, 0, 14].map((x) => svg("path", { class: "outline", d: `M${x} -16Q${x * 0.4} 0 ${x} 16` })));
  const node = picture(220, 206, "belly-stroke", svg("path", { class: "outline", d: "M40 20C24 70 22 130 60 160C80 172 102 166 110 150C118 166 140 172 160 160C198 130 196 70 180 20M110 60V150" }), stroke, pucker, scaleMm(8, 186), svg("text", { class: "tick", x: 4, y: 14 }, "left"), svg("text", { class: "tick", x: 216, y: 14, "text-anchor": "end" }, "right"));
  return { node, stroke, move: (mm) => { pucker.setAttribute("transform", `translate(${110 + way * 44} 110) scale(${(1 - mm * 0.05).toFixed(3)} 1)`); pucker.dataset.mm = mm; } };
}

function figureOf(id, probe) {
  if (id.startsWith("abdominal")) return bellyStroked(probe, id.endsWith("lower"));
  if (id.startsWith("bulbo")) return squeezed();
  if (id.startsWith("cremasteric")) return thighStroked(probe);
  return id.startsWith("gluteal") ? buttockStroked(probe) : ringTouched();
}

/** What is done, what answers, and where to. */
function wordsOf(id) {
  if (id.startsWith("bulbo")) return { done: "the squeeze", moved: "Each wall of the sphincter moves", towards: "each wall of the sphincter moves in on the finger by" };
  if (id.startsWith("anal")) return { done: "the touch", moved: "The skin draws in", towards: "the skin round the anus draws in by" };
  return { done: "the stroke", moved: "Skin or muscle moves", towards: "skin or muscle moves towards the stroke by" };
}

export function skinStroke(host, { manoeuvre, probes, fresh, still }) {
  const { done, moved, towards } = wordsOf(manoeuvre.id);
  const make = (probe) => {
    const [curve] = curvesOf(probe);
    const { node, stroke, move, show: besides = () => {} } = figureOf(manoeuvre.id, probe);
    const show = (ms) => {
      besides(ms);
      stroke.setAttribute("stroke-dashoffset", 100 - Math.min(Math.max(ms / STROKE_MS, 0), 1) * 100);
      move(heightAt(curve, ms));
    };
    return { node, show };
  };
  acted(host, { probes, make, end: lengthMs(curvesOf(probes.at(-1))[0]), stills: still ? [0, 450, 1400] : [450], fresh, still, since: done, traces: [{ title: moved, series: seriesOf(probes), low: 0, high: 10, short: true }] });
  return `${latestBySide(probes).map((probe) => [sideText(probe.side), `${towards} ${amountText(highest(curvesOf(probe)[0]))} mm`].filter(Boolean).join(": ")).join(". ")}.`;
}

/** The navel of somebody who lifts head and shoulders off the couch. */
export function navelMoves(host, { probes, fresh, still }) {
  const last = fresh ?? probes.at(-1);
  const [curve] = curvesOf(last);
  const make = () => {
    const dot = navel();
    const node = picture(220, 206, "belly-stroke", ...belly(), cross(navelAt), dot, svg("path", { class: "gauge", d: [-4, -2, 0, 2, 4].map((cm) => `M184 ${104 + cm * 14}h${cm % 4 ? 6 : 10}`).join("") }), svg("text", { class: "tick", x: 198, y: 52 }, "4"), svg("text", { class: "tick", x: 198, y: 108 }, "0"), svg("text", { class: "tick", x: 198, y: 164 }, "cm"), svg("text", { class: "tick", x: 110, y: 14, "text-anchor": "middle" }, "head"));
    const show = (ms) => {
      dot.setAttribute("transform", `translate(110 ${(104 - heightAt(curve, ms) * 14).toFixed(1)})`);
      dot.dataset.cm = heightAt(curve, ms);
    };
    return { node, show };
  };
  acted(host, { probes: [last], make, end: lengthMs(curve), stills: still ? [0, 2000] : [2000], fresh, still });
  return sidesText([last]);
}
