// Skin that was pressed or lifted and goes back: colour into a finger, a fold of skin, the dent of a thumb. The stop-watch
// on the trace measures how long it takes.

import { svg } from "../bedside/dom.js";
import { heightAt, lengthMs } from "./curve.js";
import { amountText, curvesOf, measuresOf, sideText } from "./latest.js";
import { acted } from "./motion/acted.js";
import { seriesOf } from "./moving.js";
import { onAPartner } from "./partner.js";
import { ruler } from "./ruler.js";
import { atThisPlace, label, line, picture, placeName, sideBySide } from "./side-by-side.js";

const look = (width, height, ...nodes) => svg("svg", { class: "look", viewBox: `0 0 ${width} ${height}`, width, height, "aria-hidden": "true" }, ...nodes);

const heights = (curve, seconds) => seconds.map((second) => `${amountText(heightAt(curve, second * 1000))} ${curve.unit} after ${second} s`).join(", ");

/** Both sides of the place that was tried last, moving together, with their traces; as stills at the first three of the seconds. */
function timed(host, { probes, fresh, still, manoeuvre }, { figure, title, high, from, seconds }) {
  const both = atThisPlace(probes, fresh);
  const series = seriesOf(both);
  const make = (probe) => {
    const drawn = figure();
    return { node: drawn.node, show: (ms) => drawn.show(heightAt(curvesOf(probe)[0], Math.max(0, ms))) };
  };
  const stills = still ? [0, ...seconds.filter((second) => second > 0).slice(0, 2).map((second) => second * 1000)] : [0];
  acted(host, { probes: both, make, end: lengthMs(series[0].curve), stills, traces: [{ series, low: 0, high, title }], since: from, fresh, still });
  host.append(onAPartner());
  return both.map((probe) => `${[placeName(manoeuvre, probe), sideText(probe.side)].filter(Boolean).join(", ")} ${curvesOf(probe)[0].name}: ${heights(curvesOf(probe)[0], seconds)}.`.trim()).join(" ");
}

/** The pulp of a finger from in front, with a blanched patch that fills again. */
function pulp() {
  const patch = svg("ellipse", { class: "pale-part", cx: 60, cy: 66, rx: 24, ry: 28 });
  const node = look(120, 150, line("M16 148V62C16 -4 104 -4 104 62V148", "flushed"), line("M16 148V62C16 -4 104 -4 104 62V148"), patch);
  return { node, show: (percent) => patch.setAttribute("opacity", (1 - percent / 100).toFixed(2)) };
}

export const blanch = (host, view) =>
  timed(host, view, { figure: pulp, title: "Colour that is back since the finger was lifted", high: 100, from: "lifting the finger", seconds: [1, 2, 3, 5, 10] });

function fold() {
  const skin = line("", "limb-edge");
  const node = look(220, 110, skin, line("M10 100H156", "grid"), ruler({ at: 164, across: 84, from: -12, mm: 0, scale: 5, down: true }));
  return { node, show: (mm) => skin.setAttribute("d", `M10 84H84C96 84 98 ${84 - mm * 5} 110 ${84 - mm * 5}C122 ${84 - mm * 5} 124 84 136 84H156`) };
}

export const skinFold = (host, view) =>
  timed(host, view, { figure: fold, title: "The fold stands", high: 12, from: "letting go", seconds: [0.5, 1, 2, 4] });

/** A cut through skin over bone: the dent that the thumb left. */
function dent() {
  const skin = line("", "limb-edge");
  const node = look(240, 120, skin, line("M6 112H234", "outline"), label(120, 108, "bone"), ruler({ at: 180, across: 40, mm: 10, scale: 5, down: true }));
  return { node, show: (mm) => skin.setAttribute("d", `M6 40H76C92 40 92 ${40 + mm * 5} 118 ${40 + mm * 5}C144 ${40 + mm * 5} 144 40 160 40H172`) };
}

export const legPit = (host, view) =>
  timed(host, view, { figure: dent, title: "Depth of the dent since the thumb was lifted", high: 10, from: "lifting the thumb", seconds: [0, 5, 15, 60, 120] });

/** Behind the ankle bone, the front of the shin, the inner thigh: how far forwards and how far down. */
const DENTS = [[50, 286], [74, 208], [62, 84]];

/** A leg from its inner side with the dent at each of three places. */
function leg(probe) {
  const dents = measuresOf(probe).map(({ amount }, index) => {
    const [x, y] = DENTS[index];
    return { y, amount, mark: line(`M${x} ${y - 14}C${x - amount * 2.6} ${y - 10} ${x - amount * 2.6} ${y + 10} ${x} ${y + 14}`, "mark") };
  });
  const [mirror, x, anchor] = probe.side === "right" ? ["translate(190 0) scale(-1 1)", 190 - 92, "end"] : ["translate(0 0) scale(1 1)", 92, "start"];
  return picture(190, 340, svg("g", { transform: mirror }, line("M30 10C24 70 34 120 36 150C28 190 34 250 40 286C38 300 36 314 36 326H104C104 314 90 306 78 300C74 280 74 260 76 230C80 200 82 170 78 150C84 110 84 60 80 10", "outline"), ...dents.map(({ mark }) => mark)), ...dents.map(({ amount, y }) => label(x, y + 4, `${amountText(amount)} mm`, anchor)), label(95, 338, "inner side"));
}

export const pitsUpwards = sideBySide(leg, { felt: true });
