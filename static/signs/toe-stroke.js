// The soles are stroked: the great toe and the spread of the other toes of both feet, from the side and from below, and traced.

import { el, svg } from "../bedside/dom.js";
import { heightAt, highest, lengthMs, lowest } from "./curve.js";
import { amountText, curvesOf, latestBySide, sideText, wordsText } from "./latest.js";
import { acted } from "./motion/acted.js";
import { seriesOf } from "./moving.js";

const STROKE_MS = 900;
/** Before the stroke, and when the toes have answered. */
const STILLS = [0, 1400];
const SOLE = "M60 150C44 150 40 132 43 112C46 92 34 78 33 58C32 42 44 36 62 36C84 36 92 46 90 64C88 84 80 96 80 116C80 138 74 150 60 150Z";
const STROKE = "M49 142C44 120 42 96 38 72C36 56 52 48 74 48";
const TOES = [[42, 34, -2], [51, 29, -1], [61, 26, 0], [71, 24, 1]];
const GREAT_TOE = [84, 26];
const FOOT = "M16 8C10 40 18 62 18 82C8 98 10 114 24 115L108 117C120 117 121 104 113 99C94 92 72 84 60 70C56 48 60 30 60 8";
const TOE = "M106 97C122 96 140 102 142 109C142 117 122 118 106 117C100 112 100 102 106 97Z";
const HINGE = [108, 107];

function sole() {
  const toes = TOES.map(([x, y]) => svg("ellipse", { class: "skin", cx: x, cy: y, rx: 5, ry: 8 }));
  const line = svg("path", { class: "stroke", d: STROKE, pathLength: 100, "stroke-dasharray": "100 200" });
  const node = svg("g", {}, svg("path", { class: "skin", d: SOLE }), ...toes,
    svg("ellipse", { class: "skin", cx: GREAT_TOE[0], cy: GREAT_TOE[1], rx: 8, ry: 12 }));
  return { node, toes, line };
}

/** The sole and the foot from its inner side; of the right foot the mirror image. */
function foot(probe) {
  const [toeCurve, fanCurve] = [toeOf(curvesOf(probe)), fanOf(curvesOf(probe))];
  const below = sole();
  const toe = svg("path", { class: "skin", d: TOE });
  const stroked = probe.rests ? [] : [below.line];
  const both = svg("g", probe.side === "right" ? { transform: "translate(250 0) scale(-1 1)" } : {},
    below.node, ...stroked, svg("g", { transform: "translate(104 24)" }, toe, svg("path", { class: "skin", d: FOOT })));
  const show = (ms) => {
    toe.setAttribute("transform", `rotate(${-heightAt(toeCurve, ms)} ${HINGE.join(" ")})`);
    const fan = fanCurve ? heightAt(fanCurve, ms) : 0;
    TOES.forEach(([x, , place], index) => below.toes[index].setAttribute("transform", `rotate(${fan * (place - 2) * 0.5} ${x + 12} 90)`));
    below.line.setAttribute("stroke-dashoffset", 100 - Math.min(Math.max(ms / STROKE_MS, 0), 1) * 100);
  };
  return { node: svg("svg", { class: "act-figure", viewBox: "0 0 250 170", width: 270, height: 184, "aria-hidden": "true" }, both), show };
}

const isFan = (curve) => /apart|fan|spread/i.test(curve.name);
const toeOf = (curves) => curves.find((curve) => !isFan(curve));
const fanOf = (curves) => curves.find(isFan);

export function toeStroke(host, { probes, fresh, still }) {
  const [toes, fans] = [seriesOf(probes, toeOf), seriesOf(probes, fanOf)];
  const traces = [{ series: toes, low: -20, high: 40, title: "Big toe, up from its rest" }];
  if (fans.length) traces.push({ series: fans, high: 20, title: "Spread of the other toes" });
  acted(host, { probes, make: foot, atRest: true, end: lengthMs(toes[0].curve), stills: still ? STILLS : [0], since: "the start of the stroke", fresh, still, traces });
  const words = wordsText(latestBySide(probes));
  if (words) host.append(el("p", { class: "felt" }, words));
  return `${latestBySide(probes).map(said).join(" ")} ${words}`.trim();
}

const said = (probe) =>
  `${sideText(probe.side)}: ${curvesOf(probe).map((curve) => `${curve.name} between ${amountText(lowest(curve))} and ${amountText(highest(curve))} ${curve.unit}`).join(", ")}.`;
