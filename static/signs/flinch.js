// How a patient answers a touch, before a word is said: the face at the worst moment, and how far the body draws away.

import { svg } from "../bedside/dom.js";
import { amounts, frame, line, word } from "./frame.js";
import { curvesOf } from "./latest.js";

const MOST_MM = 50;
const [LEFT, RIGHT, FOOT, TALL] = [150, 318, 130, 100];

/** A face whose eyes and brow are drawn together by so many per cent. */
function face(percent) {
  const share = Math.min(100, percent) / 100;
  const eye = (x) => svg("ellipse", { class: "hole", cx: x, cy: 70, rx: 7, ry: Math.max(0.8, 5.5 * (1 - share)) });
  const brow = (way) => line("limb-edge thin", `M${58 + way * 26} ${57 - share * 1}L${58 + way * (8 - 2 * share)} ${56 + share * 9}`);
  return svg("g", { class: "pained" },
    line("outline", "M58 20C86 20 94 46 90 78C87 102 74 124 58 124C42 124 29 102 26 78C22 46 30 20 58 20Z"), eye(42), eye(74), brow(-1), brow(1),
    line("outline", "M58 74V90"), line("limb-edge thin", `M44 ${106 + share * 4}Q58 ${108 - share * 8} 72 ${106 + share * 4}`));
}

const y = (mm) => FOOT - (mm / MOST_MM) * TALL;

/** The face, and beside it how far the body draws away over time. */
export function flinch(probe) {
  const [percent] = amounts(probe);
  const [{ samples }] = curvesOf(probe);
  const x = (index) => LEFT + (index / (samples.length - 1)) * (RIGHT - LEFT);
  return frame(330, 172, face(percent), word(58, 144, "face", "middle"),
    ...[0, 25, 50].flatMap((mm) => [line(mm ? "grid" : "grid zero", `M${LEFT} ${y(mm)}H${RIGHT}`), word(LEFT - 6, y(mm) + 4, mm === 50 ? "50 mm" : mm, "end")]),
    ...[0, 1, 2].map((second) => word(x((second / 2) * (samples.length - 1)), FOOT + 16, `${second} s`, "middle")),
    line("curve away", `M${samples.map((mm, index) => `${x(index).toFixed(1)} ${y(mm).toFixed(1)}`).join("L")}`), word((LEFT + RIGHT) / 2, FOOT + 34, "draws away from the hand", "middle"));
}
