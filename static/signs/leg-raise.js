// Angles and lengths of moving back, neck and leg, with a protractor or a ruler.

import { svg } from "../bedside/dom.js";
import { cmDown } from "./belly-figure.js";
import { amounts, frame, line, word } from "./frame.js";
import { sidesBoard } from "./point-board.js";
import { ruler } from "./ruler.js";

const RADIANS = Math.PI / 180;

const on = ([x, y], length, degrees) => `${(x + length * Math.cos(degrees * RADIANS)).toFixed(1)} ${(y - length * Math.sin(degrees * RADIANS)).toFixed(1)}`;

/** A tick every ten degrees round a centre, a number every thirty. */
function protractor(centre, radius, from, to, straight = 0) {
  const all = Array.from({ length: Math.floor((to - from) / 10) + 1 }, (_, i) => from + i * 10);
  return [svg("path", { class: "gauge", d: all.map((a) => `M${on(centre, radius, a)}L${on(centre, radius + (a % 30 ? 5 : 10), a)}`).join("") }),
    ...all.filter((a) => a % 30 === 0).map((a) => { const [x, y] = on(centre, radius + 22, a).split(" "); return word(x, Number(y) + 4, `${Math.abs(a - straight)}°`, "middle"); })];
}

const HIP = [110, 216];

function leg(probe) {
  const [degrees] = amounts(probe);
  return frame(340, 250, line("furniture", "M4 232H330"), line("skin", "M8 222C30 202 70 202 110 206V230H8Z"), line("limb-ghost", `M${HIP.join(" ")}L${on(HIP, 190, 0)}`),
    svg("path", { class: "limb-edge thick", d: `M${HIP.join(" ")}L${on(HIP, 160, degrees)}l${degrees > 45 ? "-10 -8" : "0 -12"}` }), ...protractor(HIP, 168, 0, 90));
}

const KNEE = [150, 120];

function thigh(probe) {
  const [degrees] = amounts(probe);
  return frame(320, 190, line("furniture", "M4 142H316"), line("skin", "M300 140C280 112 230 106 200 112L150 108V136H300Z"), line("limb-edge thick", `M${KNEE.join(" ")}L${on(KNEE, 104, 180 - degrees)}`), ...protractor(KNEE, 110, 50, 180).slice(0, 1), word(20, 184, `knee bends to ${Math.round(degrees)}°`));
}

const CROWN = [140, 130];

/** The head from above: the nose turns from straight ahead to one side. */
function head(probe) {
  const [degrees] = amounts(probe);
  const way = probe.side === "right" ? 1 : -1;
  const nose = 90 - way * degrees;
  return frame(280, 200, line("outline", "M30 158C60 132 220 132 250 158"), svg("circle", { class: "skin", cx: CROWN[0], cy: CROWN[1], r: 46 }), line("limb-ghost", `M${CROWN.join(" ")}L${on(CROWN, 70, 90)}`), line("limb-edge", `M${on(CROWN, 46, nose)}L${on(CROWN, 62, nose)}`),
    ...protractor(CROWN, 78, 0, 180, 90), word(20, 194, "left"), word(260, 194, "right", "end"));
}

/** Two marks on the loins, standing and bent, with a ruler from the lower one. */
function marks(probe) {
  const [stand, bent] = amounts(probe);
  const pair = (x, cm, name) => [line("limb-edge thin", `M${x} 210C${x - 6} 150 ${x + 6} 90 ${x} 10`), line("mark", `M${x - 14} 200h28M${x - 14} ${200 - cm * 8}h28`), word(x, 226, name, "middle")];
  const ticks = Array.from({ length: 24 }, (_, i) => `M160 ${200 - i * 8}h${i % 5 ? 5 : 10}`).join("");
  return frame(280, 232, ...pair(90, stand, "standing"), ...pair(230, bent, "bent"), line("gauge", ticks), ...[0, 5, 10, 15, 20].map((cm) => word(150, 204 - cm * 8, cm, "end")), word(150, 16, "cm", "end"));
}

function slide(probe) {
  const [cm] = amounts(probe);
  return frame(200, 300, line("outline", "M60 10C56 100 64 200 70 296"), line("limb-ghost", "M44 30H78"), line("mark", `M44 ${30 + cm * 10}H78`), cmDown(92, 30, 25));
}

function gap(probe) {
  const [cm] = amounts(probe);
  const back = 60 + cm * 10;
  return frame(260, 230, line("furniture", "M60 4V226"), svg("circle", { class: "skin", cx: back + 26, cy: 40, r: 26 }), line("limb-edge", `M${back + 20} 66C${back + 16} 90 62 96 64 130C66 160 62 180 64 224`), line("mark", `M60 40H${back}`), line("gauge", Array.from({ length: 16 }, (_, i) => `M${60 + i * 10} 76v${i % 5 ? 5 : 10}`).join("")), ...[0, 5, 10, 15].map((i) => word(60 + i * 10, 99, i, "middle")), word(232, 99, "cm"));
}

/** A thumb on the skin and the dent it leaves, three times life size. */
const dent = (at) => (probe) => {
  const mm = Math.min(24, at(amounts(probe)));
  return frame(312, 130, line("limb-edge thin", `M20 50H100C118 50 120 ${50 + mm * 3} 140 ${50 + mm * 3}C160 ${50 + mm * 3} 162 50 180 50H260`), ruler({ at: 262, across: 50, mm: 20, scale: 3, down: true }));
};

export const legRaise = sidesBoard(leg);
export const femoralStretch = sidesBoard(thigh);
export const neckTurn = sidesBoard(head, false);
export const loinsOpening = sidesBoard(marks, false);
export const sideBend = sidesBoard(slide, false);
export const wallGap = sidesBoard(gap, false);
export const pit = sidesBoard(dent(([mm]) => mm));
