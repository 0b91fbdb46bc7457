// Hands that shake or are restless, at rest, held out, near a mark or beside a hand that beats time; and the arm let go.

import { svg } from "../../bedside/dom.js";
import { heightAt, highest, lengthMs, lowest } from "../curve.js";
import { amountText, curvesOf, latestBySide, sideText } from "../latest.js";
import { seriesOf } from "../moving.js";
import { acted, eachSide } from "./acted.js";
import { at, flesh, Flesh, hang, headAside, line, picture } from "./flesh.js";
import { sidesText } from "./steps.js";

const POINTING = "M0 -7C12 -11 26 -10 34 -6L62 -4C67 -3 67 3 62 3L40 4C36 12 20 16 8 12C2 10 0 6 0 0Z";
const HANGING = "M-8 -2C4 -10 20 -8 26 2C32 10 34 24 28 30C24 34 20 28 20 20C14 24 4 22 -4 14Z";
const MM = 2;

// Where the hand is: what it lies on or points at, the wrist, and the hand itself.
const SCENES = {
  rest: { wrist: [128, 82], hand: HANGING, back: () => [flesh(40, [[6, 128], [206, 128]]), svg("text", { class: "tick", x: 178, y: 172 }, "thigh"), flesh(20, [[10, 60], [126, 80]])] },
  held: { wrist: [120, 84], hand: POINTING, back: () => [flesh(20, [[0, 84], [118, 84]])] },
  target: { wrist: [104, 84], hand: POINTING, back: () => [flesh(20, [[0, 108], [102, 86]]), svg("path", { class: "helper", d: "M176 78C168 78 168 90 176 90H218V78Z" })] },
};
const sceneOf = (id) => (id.includes("rest") ? SCENES.rest : id.includes("target") ? SCENES.target : SCENES.held);

const scaleOf = (x, y) => svg("g", {}, svg("path", { class: "gauge", d: [-20, -10, 0, 10, 20].map((mm) => `M${x} ${y + mm * MM}h${mm % 20 ? 6 : 10}`).join("") }), svg("text", { class: "tick", x: x - 4, y: y - 20 * MM + 4, "text-anchor": "end" }, "20 mm"), svg("text", { class: "tick", x: x - 4, y: y + 20 * MM + 4, "text-anchor": "end" }, "20"));

function shaking(scene) {
  return (probe) => {
    const [curve] = curvesOf(probe);
    const [x, y] = scene.wrist;
    const hand = svg("path", { class: "skin", d: scene.hand });
    const node = picture(220, 184, "shaking", ...scene.back(), svg("path", { class: "limb-ghost", d: scene.hand, transform: at(x, y) }), hand, scaleOf(206, 84));
    const show = (ms) => {
      const mm = heightAt(curve, ms);
      hand.setAttribute("transform", at(x, y - mm * MM));
      hand.dataset.mm = mm;
    };
    return { node, show };
  };
}

export function tremor(host, { manoeuvre, probes, fresh, still }) {
  const [curve] = curvesOf(probes.at(-1));
  acted(host, { probes, make: shaking(sceneOf(manoeuvre.id)), end: lengthMs(curve), stills: still ? [1200, 2200, 3400] : [0], fresh, still, traces: eachSide(probes, "movement of the finger", { low: -12, high: 12 }) });
  return `${latestBySide(probes).map((probe) => `${sideText(probe.side)}: ${swings(curvesOf(probe)[0])}`).join(". ")}.`;
}

/** How often and how far a curve goes to and fro, early and late. */
function swings({ samples, stepMs }) {
  const count = upward(samples);
  const half = Math.floor(samples.length / 2);
  const far = (part) => amountText(Math.max(...part.map(Math.abs)));
  return `shakes ${count} times in ${amountText(((samples.length - 1) * stepMs) / 1000)} seconds, by up to ${far(samples.slice(0, half))} mm in the first half and ${far(samples.slice(half))} mm in the second`;
}

/** How often the curve goes up through nothing. */
export const upward = (samples) => samples.filter((mm, index) => index && samples[index - 1] <= 0 && mm > 0).length;

function copying(probe) {
  const [other, own] = curvesOf(probe);
  const hands = [[other, 48, ["other hand,", "beats time"]], [own, 164, [`${probe.side} hand`]]].map(([curve, y, names]) => {
    const hand = svg("path", { class: "skin", d: POINTING });
    const arm = new Flesh(18);
    return { y, curve, hand, arm, node: svg("g", {}, arm.node, hand, ...names.map((name, line) => svg("text", { class: "tick", x: 2, y: y + 62 + 15 * line }, name))) };
  });
  const show = (ms) => hands.forEach(({ hand, arm, curve, y }) => {
    const wrist = [78, y - heightAt(curve, ms) * 1.2];
    arm.set([[-20, y], wrist]);
    hand.setAttribute("transform", at(...wrist));
  });
  return { node: picture(200, 232, "shaking", ...hands.map(({ node }) => node)), show };
}

export function tremorCopying(host, { probes, fresh, still }) {
  const end = lengthMs(curvesOf(probes.at(-1))[0]);
  const traces = [{ title: "The other hand", series: seriesOf(probes), low: -20, high: 20, short: true }, { title: "This hand", series: seriesOf(probes, (curves) => curves[1]), low: -12, high: 12, short: true }];
  acted(host, { probes, make: copying, end, stills: still ? [0, 900, 2100] : [0], traces, fresh, still });
  return `${latestBySide(probes).map((probe) => `${sideText(probe.side)}: the other hand beats ${upward(curvesOf(probe)[0].samples)} times in four seconds; this hand ${swings(curvesOf(probe)[1])}`).join(". ")}.`;
}

/** Shoulder, elbow and wrist of an arm whose hand has moved by itself, from the front; the hand also turns a little late. */
function restlessArm(curve, way, ms) {
  const cm = heightAt(curve, ms);
  const shoulder = [100 - way * 22, 56];
  const elbow = hang(shoulder, 52, way * (12 + cm * 1.6));
  return { cm, points: [shoulder, elbow, hang(elbow, 50, way * (18 + cm * 3.6 + heightAt(curve, ms + 300)))] };
}

/** An arm that moves by itself; the line is the way of the hand up to now. */
function restless(probe) {
  const [curve] = curvesOf(probe);
  const way = probe.side === "right" ? -1 : 1;
  const arm = new Flesh(12);
  const hand = svg("circle", { class: "skin", r: 8 });
  const trail = svg("path", { class: "trail hand-way", d: "" });
  const x = 100 - way * 30;
  const node = picture(200, 200, "restless", svg("path", { class: "outline", d: `M${x - way * 20} 40Q${x + way * 8} 40 ${x + way * 12} 58L${x + way * 6} 190` }), arm.node, hand, trail);
  const show = (ms) => {
    const { cm, points } = restlessArm(curve, way, ms);
    arm.set(points);
    hand.setAttribute("transform", at(...points.at(-1)));
    hand.dataset.cm = cm;
    const count = Math.max(1, Math.ceil(ms / curve.stepMs));
    trail.setAttribute("d", line(Array.from({ length: count + 1 }, (_, index) => restlessArm(curve, way, (index / count) * ms).points.at(-1))));
  };
  return { node, show };
}

export function unrest(host, { probes, fresh, still }) {
  const [curve] = curvesOf(probes.at(-1));
  const end = lengthMs(curve);
  acted(host, { probes, make: restless, end, stills: still ? [1200, 4000, end] : [2400], fresh, still, traces: eachSide(probes, "movement of the hand", { low: -10, high: 10 }) });
  return `${sidesText(probes)} ${latestBySide(probes).map((probe) => `${probe.side} hand between ${amountText(lowest(curvesOf(probe)[0]))} and ${amountText(highest(curvesOf(probe)[0]))} cm`).join(", ")}.`;
}

/** The bent arm is let go by the hand that pulled it: it stays or flies towards the face. */
function letGo(probe) {
  const [curve] = curvesOf(probe);
  const fore = new Flesh(15);
  const fist = svg("circle", { class: "skin", r: 11 });
  const helper = svg("path", { class: "helper", d: "M-8 -10C4 -14 16 -12 18 -2C18 10 6 14 -6 12Z" });
  const elbow = [104, 150];
  const node = picture(230, 200, "let-go", svg("g", { transform: "translate(62 66) scale(1.700)" }, headAside()), flesh(44, [[56, 104], [52, 200]]), flesh(20, [[58, 98], elbow]), fore.node, fist, helper,
    svg("path", { class: "gauge", d: [0, 5, 10, 15, 20].map((cm) => `M${150 - cm * 2.6} ${84 - cm * 0.6}v${cm % 10 ? 6 : 10}`).join("") }), svg("text", { class: "tick", x: 158, y: 84 }, "0"), svg("text", { class: "tick", x: 94, y: 66 }, "20 cm"));
  const show = (ms) => {
    const cm = heightAt(curve, ms);
    const wrist = hang(elbow, 66, 148 + cm * 2.4);
    fore.set([elbow, wrist]);
    fist.setAttribute("transform", at(...wrist));
    const gone = Math.min(1, Math.max(0, (ms - 60) / 160));
    helper.setAttribute("transform", at(146 + gone * 44, 96 + gone * 8));
    fist.dataset.cm = cm;
  };
  return { node, show };
}

export function rebound(host, { probes, fresh, still }) {
  const end = lengthMs(curvesOf(probes.at(-1))[0]);
  acted(host, { probes, make: letGo, end, stills: still ? [0, 350, end] : [350], fresh, still, traces: [{ title: "Arm beyond its place, after it is let go", series: seriesOf(probes), low: 0, high: 20, short: true }] });
  return sidesText(probes);
}
