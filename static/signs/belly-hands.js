// Two hands on the belly: a kidney between them, the beat of the aorta, a knock across fluid, a lump on a cough.

import { svg } from "../bedside/dom.js";
import { bellyMap } from "./belly-figure.js";
import { amounts, frame, line, word } from "./frame.js";
import { amountText } from "./latest.js";
import { pointBoard, sidesBoard } from "./point-board.js";
import { ruler } from "./ruler.js";

const hand = (x, y, way) => line("skin", `M${x - 70} ${y}C${x - 30} ${y - way * 10} ${x + 30} ${y - way * 10} ${x + 62} ${y}C${x + 70} ${y + way * 6} ${x + 62} ${y + way * 14} ${x + 50} ${y + way * 13}L${x - 70} ${y + way * 22}Z`);

/** The loin cut across: one hand behind, one in front, and how far the front one is met. */
function kidney(probe) {
  const [meets, below, uneven] = amounts(probe);
  const scale = 3;
  const top = 92 - meets * scale;
  return frame(314, 214, hand(140, 162, 1), hand(140, 74 - meets * scale, -1), line("turn", `M30 92H250`), line("band", `M78 150C78 ${top + 14} 100 ${top - uneven} 140 ${top}C180 ${top - uneven} 206 ${top + 14} 206 150Z`, meets > 0),
    ruler({ at: 262, across: 32, mm: 20, scale, down: true }), word(30, 208, meets > 0 ? `lower end ${below.toFixed(1)} cm below the ribs` : "nothing is met"));
}

/** Two fingertips above the navel, their inner edges on the beat; arrows say how far each beat parts and lifts them. */
function aorta(probe) {
  const [width, part, rise] = amounts(probe);
  const [left, right] = [150 - width * 10, 150 + width * 10];
  const off = 12;
  const tip = (x) => line("skin", `M${x - 12} 14V84A12 12 0 0 0 ${x + 12} 84V14`);
  const arrows = (x, way) => line("gauge", `M${x} 104h${way * part * 4}M${x} 104v${-rise * 4}`, width > 0);
  return frame(300, 180, tip(left - off), tip(right + off), arrows(left - off, -1), arrows(right + off, 1), line("mark", `M${left} 116H${right}`, width > 0),
    ruler({ at: left, across: 128, mm: 70, scale: 2 }), word(left + 70, 168, "cm", "middle"), word(10, 174, width > 0 ? "" : "no beat is met"));
}

function thrill(probe) {
  const [mm] = amounts(probe);
  const half = (transform, moved) => svg("g", { transform }, line("skin", `M96 66C112 60 120 70 ${118 - moved} 96C116 120 104 132 90 128Z`));
  return frame(360, 170, line("outline", "M40 130C30 60 80 40 160 40C240 40 290 60 280 130Z"), half("translate(162 0)", -mm * 12), half("translate(158 0) scale(-1 1)", 0),
    line("limb-edge thin", "M160 20V60"), line("mark", `M286 84v24M286 96h${mm * 40}`), ...[0, 1].flatMap((n) => [line("gauge", `M${286 + n * 40} 112v8`), word(286 + n * 40, 134, n ? "1 mm" : "0", "middle")]), word(160, 16, "edge of a hand", "middle"), word(20, 164, "flick"), word(356, 164, `hand feels ${amountText(mm)} mm`, "end"));
}

/** A lump from the side at rest, on a cough and while a hand presses on it; a millimetre is a unit and a half. */
function lump(probe) {
  const [rest, cough, left] = amounts(probe);
  const bump = (x, mm) => line("limb-edge thin", `M${x - 50} 100H${x - mm * 0.75}C${x - mm * 0.6} ${100 - mm * 1.1} ${x + mm * 0.6} ${100 - mm * 1.1} ${x + mm * 0.75} 100H${x + 50}`);
  return frame(360, 130, ...[["at rest", rest], ["on a cough", rest + cough], ["pressed on", left]].flatMap(([name, mm], index) => [bump(60 + index * 120, Math.min(mm, 62)), word(60 + index * 120, 122, name, "middle")]));
}

/** How far a breath in gets under the hand: a filled part of a whole breath. */
function breath(probe) {
  const [ml] = amounts(probe);
  return frame(300, 106, word(20, 18, `breath drawn in under the hand: ${amountText(ml, 0)} ml`), line("outline", "M20 30H260V60H20Z"), line("band", `M20 30h${(ml / 2200) * 240}v30H20Z`), word(20, 82, "0 ml"), word(260, 82, "2200 ml", "end"));
}

/** The patient lies on the other side, seen from the front; the straight leg is drawn back behind the body. */
function drawnBack(probe) {
  const mirrored = probe.side === "left" ? "translate(300 0) scale(-1 1)" : "";
  return frame(300, 130, svg("g", { transform: mirrored }, line("outline", "M10 104H290"), line("limb-edge thin", "M40 60a16 16 0 1 0 0.1 0ZM60 66C90 52 130 56 152 66L150 100H62C56 90 56 76 60 66Z"),
    line("limb-ghost", "M150 70H276V92H150"), line("skin", "M150 66L262 20L270 40L150 96Z"), line("gauge", "M236 62A100 100 0 0 0 226 44M226 44l-2 10M226 44l10 3")),
    word(150, 124, "the thigh drawn back, the knee straight", "middle"));
}

export const hands = {
  "kidney-between-hands": sidesBoard(kidney),
  aorta: sidesBoard(aorta),
  "fluid-thrill": sidesBoard(thrill),
  hernia: (host, view) => pointBoard(host, view, { map: bellyMap, figure: lump }),
  murphy: sidesBoard(breath),
  "psoas-stretch": sidesBoard(drawnBack),
};
