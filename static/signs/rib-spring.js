// The ribs of one side sprung between two hands, and how the patient answers.

import { el } from "../bedside/dom.js";
import { flinch } from "./flinch.js";
import { frame, line, word } from "./frame.js";
import { sidesBoard } from "./point-board.js";

/** A cut across the chest seen from the feet: one hand on the breast bone, one behind the side that is sprung. */
function hands(probe) {
  const way = probe.side === "right" ? -1 : 1;
  const behind = 80 + way * 26;
  return el("div", { class: "struck" }, frame(160, 190, line("limb-edge thin", "M80 40C124 38 146 60 146 88C146 116 122 134 80 132C38 134 14 116 14 88C14 60 36 38 80 40Z"), line("outline", "M80 116A8 8 0 1 0 80.1 116Z"),
    line("stroke", "M80 10V34l-6 -9m6 9l6 -9"), line("stroke", `M${behind} 164V138l-6 9m6 -9l6 9`), word(2, 14, "right"), word(158, 14, "left", "end"), word(80, 184, "seen from the feet", "middle")), flinch(probe));
}

export const ribSpring = sidesBoard(hands);
