// A movement that is repeated as quickly as possible for ten seconds: its figure and its trace, for rhythm, rate and size.

import { svg } from "../../bedside/dom.js";
import { heightAt, lengthMs } from "../curve.js";
import { amountText, curvesOf, latestBySide, measuresOf, sideText } from "../latest.js";
import { acted, eachSide } from "./acted.js";
import { at, flesh, FOOT, ofSide, picture } from "./flesh.js";

const PX = 7;
const degrees = (cm, length) => (Math.asin(Math.min(0.95, cm / length)) * 180) / Math.PI;
const tickRow = (x, y, count, px) => svg("path", { class: "gauge", d: Array.from({ length: count }, (_, i) => `M${x} ${y - i * px}h${i % 5 ? 5 : 10}`).join("") });

/** Finger and thumb of a hand from the side; the finger turns about its knuckle. */
function fingerAndThumb(curve, side) {
  const finger = svg("path", { class: "skin", d: "M0 -8C30 -12 60 -4 78 18C80 24 72 28 68 22C54 8 30 8 0 8Z" });
  const [end, beside] = side === "right" ? ["end", (x) => 220 - x] : ["start", (x) => x];
  const node = picture(220, 180, "taps", ofSide(side, 220, svg("path", { class: "skin", d: "M6 58C40 50 76 48 104 56C112 74 108 92 96 104C70 116 40 112 6 108Z" }),
    svg("path", { class: "skin", d: "M84 100C110 104 138 100 160 90C167 88 170 96 164 100C142 116 108 120 82 114Z" }), finger, tickRow(186, 92, 8, PX)), svg("text", { class: "tick", x: beside(200), y: 62, "text-anchor": end }, "5"), svg("text", { class: "tick", x: beside(186), y: 112, "text-anchor": end }, "cm"));
  const show = (ms) => {
    const cm = heightAt(curve, ms);
    finger.setAttribute("transform", at(96, 64, -degrees(cm * PX, 80)));
    finger.dataset.open = cm;
  };
  return { node, show };
}

/** A hand from its fingertips, turned over about the middle finger; the palm is marked with its lines. */
function turnedOver(curve, side) {
  const hand = svg("g", {}, svg("path", { class: "skin", d: "M-40 4C-42 -10 -30 -14 0 -14C30 -14 42 -10 40 4C38 16 20 18 0 18C-20 18 -38 16 -40 4Z" }), svg("path", { class: "skin", d: "M34 -2C42 -10 58 -12 62 -4C64 6 52 12 40 10Z" }),
    ...[-28, -10, 9, 27].map((x) => svg("ellipse", { class: "skin", cx: x, cy: 1, rx: 9, ry: 10 })), ...[-28, -10, 9, 27].map((x) => svg("path", { class: "outline", d: `M${x - 5} -7q5 -4 10 0` })));
  const node = picture(220, 180, "taps", svg("path", { class: "outline", d: "M40 134C80 128 140 128 180 134M40 144H180" }), ofSide(side === "left" ? "right" : "left", 220, hand), svg("text", { class: "tick", x: 110, y: 166, "text-anchor": "middle" }, "on the other hand"), svg("text", { class: "tick", x: 4, y: 14 }, "seen from the fingertips"));
  const show = (ms) => {
    const turn = heightAt(curve, ms);
    hand.setAttribute("transform", `translate(110 ${(108 - 44 * Math.sin((Math.min(180, Math.max(0, turn)) * Math.PI) / 180)).toFixed(1)}) rotate(${(-turn).toFixed(1)})`);
    hand.dataset.open = turn;
  };
  return { node, show };
}

const TIPS = [[98, 36], [118, 28], [138, 34], [156, 50]];

/** A palm from the front: the thumb goes to one fingertip after the other. */
function thumbToFingers(curve, side) {
  const thumb = svg("path", { class: "skin", d: "M0 -7C20 -9 42 -8 58 -5C64 0 62 6 56 7C40 8 20 9 0 8Z" });
  const node = picture(220, 180, "taps", ofSide(side, 220, svg("path", { class: "skin", d: "M88 92C84 128 90 160 100 172H146C158 150 168 120 166 96C150 82 110 82 88 92Z" }),
    ...TIPS.map(([x, y], index) => flesh(13, [[96 + index * 20, 92 - (index % 3 ? 3 : 0)], [x, y + 20]])), thumb));
  const turns = curve.samples.reduce((found, cm, index) => (index && curve.samples[index - 1] > cm && cm <= (curve.samples[index + 1] ?? 99) ? [...found, index * curve.stepMs] : found), []);
  const show = (ms) => {
    const next = turns.findIndex((one) => one >= ms - 60);
    const [x, y] = TIPS[(next < 0 ? 0 : next) % 4];
    const cm = heightAt(curve, ms);
    const [tx, ty] = [x - 8 - cm * PX * 0.7, y + 26 + cm * PX];
    const [dx, dy] = [tx - 92, ty - 142];
    thumb.setAttribute("transform", `${at(92, 142, (Math.atan2(dy, dx) * 180) / Math.PI)} scale(${(Math.hypot(dx, dy) / 60).toFixed(3)} 1)`);
    thumb.dataset.open = cm;
  };
  return { node, show };
}

/** A foot from the side that taps with its ball, the heel on the floor. */
function footTaps(curve) {
  const foot = svg("g", {}, svg("path", { class: "skin", d: FOOT, transform: "scale(5) translate(6 -8)" }));
  const node = picture(220, 180, "taps", svg("path", { class: "grid zero", d: "M10 156H210" }), flesh(30, [[66, 0], [66, 112]]), foot, tickRow(196, 156, 9, PX * 0.7), svg("text", { class: "tick", x: 192, y: 110, "text-anchor": "end" }, "cm"));
  const show = (ms) => {
    const cm = heightAt(curve, ms);
    foot.setAttribute("transform", at(36, 156, -degrees(cm, 21)));
    foot.dataset.open = cm;
  };
  return { node, show };
}

/** How far the axis reaches, so that it is the same for everybody. */
const MOST = { turn: 220, "thumb-to-fingers": 6, "foot-tapping": 8 };
const figureOf = (id) => (id.startsWith("foot") ? footTaps : id.startsWith("rapid") ? turnedOver : id.startsWith("thumb") ? thumbToFingers : fingerAndThumb);

/** The largest opening in each half second span of beats: one height for each beat. */
export function beatHeights({ samples }) {
  return samples.filter((cm, index) => index && index < samples.length - 1 && cm > samples[index - 1] && cm >= samples[index + 1]);
}

export function tapping(host, { manoeuvre, probes, fresh, still }) {
  const figure = figureOf(manoeuvre.id);
  const [curve] = curvesOf(probes.at(-1));
  acted(host, { probes, make: (probe) => figure(curvesOf(probe)[0], probe.side), end: lengthMs(curve), stills: still ? [500, 5000, 9400] : [120], fresh, still,
    traces: eachSide(probes, curve.name, { low: 0, high: MOST[curve.unit === "degrees" ? "turn" : manoeuvre.id] ?? 10, short: true }) });
  const said = (probe) => {
    const heights = beatHeights(curvesOf(probe)[0]);
    const [first, last] = [heights.slice(0, 3), heights.slice(-3)].map((part) => part.reduce((sum, one) => sum + one, 0) / Math.max(1, part.length));
    return `${sideText(probe.side)}: ${amountText(measuresOf(probe)[0].amount)} beats in ten seconds, the first three ${amountText(first)} ${curve.unit}, the last three ${amountText(last)} ${curve.unit}`;
  };
  return `${curve.name}. ${latestBySide(probes).map(said).join(". ")}.`;
}
