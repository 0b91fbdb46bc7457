// The front of the neck on a swallow, and what the fingers meet of the thyroid.

import { el, svg } from "../bedside/dom.js";
import { heightAt, peak } from "./curve.js";
import { amounts, frame, line, word } from "./frame.js";
import { amountText, curvesOf, measuresOf } from "./latest.js";
import { moving, seriesOf } from "./moving.js";
import { phrase, sidesBoard } from "./point-board.js";
import { ruler } from "./ruler.js";

/** The neck from the side: chin, larynx, and a fullness below it that stands out by so many millimetres. */
function sideNeck(out) {
  const skin = svg("path", { class: "skin" });
  const draw = (larynx, full) => {
    const [l, f] = [92 - larynx * 1.2, 134 - full * 1.2];
    const swell = Math.min(46, out * 1.6);
    skin.setAttribute("d", `M230 6C228 60 232 120 246 204H60C84 190 100 176 ${104 - swell * 0.2} ${f + 22}C${98 - swell} ${f + 12} ${98 - swell} ${f - 12} ${104 - swell * 0.2} ${f - 20}L106 ${l + 14}L98 ${l}L108 ${l - 14}C112 62 100 58 70 58C56 56 54 44 58 34L52 20`);
  };
  draw(0, 0);
  return { node: svg("svg", { class: "look", viewBox: "0 0 260 210", width: 260, height: 210, "aria-hidden": "true" }, skin, word(60, 82, "larynx"), line("turn", "M60 92H98")), draw };
}

export function neckSwallow(host, { probes, fresh, still }) {
  const last = fresh ?? probes.at(-1);
  const [larynx, full] = curvesOf(last);
  const figure = sideNeck(measuresOf(last)[0].amount);
  moving(host, {
    figure: { node: figure.node, show: (side, ms) => figure.draw(heightAt(larynx, ms), heightAt(full, ms)) },
    traces: [{ series: seriesOf([last]), low: 0, high: 22, title: "The larynx rises" }, { series: [{ side: "left", name: "", curve: full }], low: 0, high: 22, short: true, title: "What stands out below it rises" }],
    from: "the word “swallow”", fresh, still, again: "Watch a swallow again",
  });
  return `${phrase(last)}; ${[larynx, full].map((curve) => `${curve.name}: ${amountText(peak(curve).height)} ${curve.unit}`).join(", ")}.`;
}

const PER_MM = 2;
const [MIDLINE, MIDDLE] = [150, 168];

/** A lobe so many millimetres high and wide beside the windpipe. */
function lobe(way, high, wide) {
  const [inner, outer] = [MIDLINE + way * 14, MIDLINE + way * (14 + (wide * PER_MM * 4) / 3)];
  const [top, foot] = [MIDDLE - (high * PER_MM) / 2, MIDDLE + (high * PER_MM) / 2];
  return line("band", `M${inner} ${foot}C${outer} ${foot} ${outer} ${top} ${inner} ${top}Z`, high > 0);
}

const FRONT = "M28 10C50 64 116 74 150 74C184 74 250 64 272 10M44 46C50 130 46 186 14 226M256 46C250 130 254 186 286 226M136 94L150 106L164 94M138 118H162M136 268Q150 284 164 268M12 258C62 238 112 250 136 268M288 258C238 238 188 250 164 268M132 126V248M168 126V248";
const RINGS = [0, 1, 2, 3, 4, 5, 6].map((ring) => `M132 ${140 + ring * 16}Q150 ${146 + ring * 16} 168 ${140 + ring * 16}`).join("");

const inMm = (mm) => `${amountText(mm, 0)} mm`;

/** The front of the neck, head level, twice life size: larynx and windpipe, and what of each lobe is felt. */
function sizes(probe) {
  const [rightHigh, rightWide, leftHigh, leftWide, out] = amounts(probe);
  return el("div", {}, frame(340, 322, line("outline", FRONT), line("grid", RINGS), lobe(-1, rightHigh, rightWide), lobe(1, leftHigh, leftWide),
    word(4, 40, "right"), word(296, 40, "left", "end"), ruler({ at: MIDLINE, across: 284, mm: 50, scale: PER_MM, from: -50 }), word(MIDLINE + 108, 318, "cm"), ruler({ at: 300, across: MIDDLE - 90, mm: 90, scale: PER_MM, down: true })),
    el("p", { class: "quiet" }, `Right lobe ${inMm(rightHigh)} high, ${inMm(rightWide)} wide; left lobe ${inMm(leftHigh)} high, ${inMm(leftWide)} wide. With the head level the front of the neck stands out by ${amountText(out)} mm.`),
    el("p", { class: "quiet" }, "What the fingers cannot tell from muscle and windpipe counts as 0 mm."));
}

/** One lobe under the fingers: how even it is, what stands out of it, how far it gives. */
function lobeFelt(probe) {
  const [cm, wide, lump, uneven, gives, rises] = amounts(probe);
  const long = Math.min(250, cm * 24);
  const top = (i) => 96 - 20 * Math.sin((Math.PI * i) / 40) - (uneven / 2) * (1 - Math.cos(i * 0.9)) - (lump / 2) * Math.exp(-(((i - 22) / 6) ** 2));
  const points = Array.from({ length: 41 }, (_, i) => `${(150 - long / 2 + (long * i) / 40).toFixed(1)} ${top(i).toFixed(1)}`);
  return el("div", {}, frame(320, 150, line("band", `M${points.join("L")}V112H${150 - long / 2}Z`, cm > 0), ruler({ at: 30, across: 114, mm: 100, scale: 2.4 }), word(286, 136, "cm"), word(20, 104, "top", "start"), word(300, 104, "foot", "end"), line("mark", `M270 24v${gives * 6}`), ruler({ at: 276, across: 24, mm: 10, scale: 6, down: true }), word(264, 20, "gives way", "end"), word(150, 60, cm > 0 ? "lobe" : "no lobe is told from the muscle", "middle")),
    el("p", { class: "quiet" }, `Lobe ${inMm(cm * 10)} from top to foot, ${inMm(wide * 10)} wide; a part that stands out ${inMm(lump)} across; uneven by ${amountText(uneven)} mm; gives way by ${amountText(gives)} mm; rises by ${inMm(rises)} on a swallow.`));
}

/** The face and neck before and after a minute with the arms up: how much redder and wider. */
function raised(probe) {
  const [red, wide] = amounts(probe);
  const head = (x, more, share) => svg("g", { transform: `translate(${x} 0)` },
    line("skin-tone", `M${-18 - more} 92C${-20 - more} 120 ${-24 - more} 132 -54 140H54C${24 + more} 132 ${20 + more} 120 ${18 + more} 92Z`),
    svg("path", { class: "neck-vein", d: `M${-9 - more} 106C${-9 - more} 118 -6 128 -4 138M${9 + more} 106C${9 + more} 118 6 128 4 138`, "stroke-width": (0.6 + more * 0.7).toFixed(1) }),
    svg("ellipse", { class: "skin-tone", cx: 0, cy: 66, rx: 30, ry: 38 }), svg("ellipse", { class: "flush", cx: 0, cy: 66, rx: 30, ry: 38, "fill-opacity": share / 60 }), svg("ellipse", { class: "outline", cx: 0, cy: 66, rx: 30, ry: 38 }),
    line("on-skin", "M-16 58h9M7 58h9M0 60V74L4 75M-8 86Q0 89 8 86"),
    line("outline", `M${-18 - more} 98C${-20 - more} 120 ${-24 - more} 132 -54 140M${18 + more} 98C${20 + more} 120 ${24 + more} 132 54 140M-54 140C-64 90 -52 30 -46 8M54 140C64 90 52 30 46 8`));
  return frame(300, 170, head(76, 0, 0), head(224, wide / 3, red), word(76, 164, "at once", "middle"), word(224, 164, "after a minute", "middle"));
}

function beat(probe) {
  const [mm] = amounts(probe);
  const points = Array.from({ length: 240 }, (_, i) => {
    const t = (i / 80) % 1;
    return `${10 + i * 1.15} ${(90 - mm * 30 * (Math.exp(-(((t - 0.16) / 0.07) ** 2)) + 0.45 * Math.exp(-(((t - 0.38) / 0.12) ** 2)))).toFixed(1)}`;
  });
  return frame(300, 110, line("grid zero", "M10 90H288"), line("curve thin", `M${points.join("L")}`), word(10, 106, "lift of one fingertip, 30 times life size, over three beats"));
}

export const thyroidSize = sidesBoard(sizes);
export const thyroidLobe = sidesBoard(lobeFelt);
export const armsRaised = sidesBoard(raised, false);
export const carotidBeat = sidesBoard(beat);
