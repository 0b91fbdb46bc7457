// The front of the neck on a swallow, and what the fingers meet of the thyroid.

import { svg } from "../bedside/dom.js";
import { heightAt, peak } from "./curve.js";
import { cmDown } from "./belly-figure.js";
import { amounts, frame, line, word } from "./frame.js";
import { amountText, curvesOf, measuresOf } from "./latest.js";
import { moving, seriesOf } from "./moving.js";
import { phrase, sidesBoard } from "./point-board.js";
import { neckFigure } from "./neck-map.js";
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

const lobe = (way, cm) => `M${way * 10} 178C${way * (14 + cm * 5)} ${178 - cm * 2} ${way * (14 + cm * 6)} ${178 - cm * 10} ${way * 14} ${176 - cm * 10}Z`;

function sizes(probe) {
  const [right, left, out] = amounts(probe);
  return neckFigure(line("band", lobe(-1, right), right > 0), line("band", lobe(1, left), left > 0), word(-128, 214, `stands out ${amountText(out)} mm`), cmDown(92, 110, 10));
}

/** One lobe under the fingers, four times life size: how even it is, what stands out of it, how far it gives. */
function lobeFelt(probe) {
  const [cm, lump, uneven, gives] = amounts(probe);
  const long = Math.min(250, cm * 24);
  const top = (i) => 96 - 20 * Math.sin((Math.PI * i) / 40) - (uneven / 2) * (1 - Math.cos(i * 0.9)) - (lump / 2) * Math.exp(-(((i - 22) / 6) ** 2));
  const points = Array.from({ length: 41 }, (_, i) => `${(150 - long / 2 + (long * i) / 40).toFixed(1)} ${top(i).toFixed(1)}`);
  return frame(300, 170, line("band", `M${points.join("L")}V112H${150 - long / 2}Z`, cm > 0), line("mark", `M276 60v${gives * 6}`), word(268, 54, "gives", "end"),
    svg("g", { transform: "translate(0 118)" }, ruler({ at: 30, across: 0, mm: 100, scale: 2.4 })));
}

/** The face and neck before and after a minute with the arms up: how much redder and wider. */
function raised(probe) {
  const [red, wide] = amounts(probe);
  const head = (x, more, share) => svg("g", { transform: `translate(${x} 0)` },
    svg("ellipse", { class: "flush", cx: 0, cy: 66, rx: 30, ry: 38, "fill-opacity": share / 60 }), svg("ellipse", { class: "outline", cx: 0, cy: 66, rx: 30, ry: 38 }),
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
