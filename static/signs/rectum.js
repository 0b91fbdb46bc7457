// What a finger in the rectum meets, how the ring holds it, and the colour on the glove.

import { el, svg } from "../bedside/dom.js";
import { colourScale, measured, ROWS } from "./colour-scale.js";
import { amounts, frame, line, word } from "./frame.js";
import { amountText } from "./latest.js";
import { sidesBoard } from "./point-board.js";
import { fill } from "./skin-colour.js";

const FINGER = "M10 86H170A16 16 0 0 1 170 118H10";

/** A finger in the canal, and what fills it, by its width in millimetres; the marks beside it say how far it gives. */
function finger(probe) {
  const [fills, gives, fixed] = amounts(probe);
  return el("div", {}, frame(320, 200, line("outline", "M30 56C90 52 150 30 300 20M30 148C90 152 150 172 300 182"), line("skin", FINGER), word(24, 107, "finger"), word(312, 36, "wall", "end"),
    line("band", `M196 102A${fills / 2} ${fills / 2} 0 0 1 ${196 + fills} 102A${fills / 2} ${fills / 2} 0 0 1 196 102Z`, fills > 0), line("limb-edge thin", `M${180 - fixed / 2} 166C${180 - fixed / 3} ${166 - fixed} ${180 + fixed / 3} ${166 - fixed} ${180 + fixed / 2} 170`, fixed > 0)),
    el("p", { class: "quiet" }, `Beyond the fingertip: ${amountText(fills)} mm across, gives way by ${amountText(gives)} mm. Fixed in the wall: ${amountText(fixed)} mm across.`));
}

/** A screen's number for a light, 0 to 255, as the share of light thrown back, in per cent. */
const shareOf = (value) => 100 * (value / 255) ** 2.2;
const CLEAN = [84, 82, 76];

/** A stain in the colour given by its light, and where it stands on printed scales beside the clean glove. */
function glove(probe) {
  const stain = amounts(probe).map(shareOf);
  const [here, beside] = [measured(stain), measured(CLEAN)];
  return el("div", {}, frame(310, 140, line("skin", "M20 20H84A30 30 0 0 1 84 118H20"), svg("path", { class: "smear", fill: fill(stain), d: "M64 40C100 36 112 60 104 84C96 104 66 100 58 84C52 68 54 46 64 40Z" }), word(142, 74, "the stain on the glove")),
    colourScale(here, beside, fill), el("p", { class: "quiet" }, `Full mark above: the stain, ${measuresText(here)}. Open mark below: the clean glove. Screens change colours: trust the numbers.`));
}

const measuresText = (here) => ROWS.map(({ name }, index) => `${name} ${amountText(here[index], 0)}`).join(", ");

const MOST_N = 8;

/** How hard the ring holds the finger: a filled part of a bar. */
function grip(probe) {
  const [newtons] = amounts(probe);
  const long = (n) => (Math.min(n, MOST_N) / MOST_N) * 220;
  return frame(270, 210, line("skin", FINGER), line("limb-edge thin", "M96 62a12 12 0 0 1 0 24a12 12 0 0 1 0 -24M96 118a12 12 0 0 1 0 24a12 12 0 0 1 0 -24"), word(96, 54, "the ring", "middle"),
    line("outline", "M14 162h220v16h-220Z"), line("band", `M14 162h${long(newtons)}v16h-${long(newtons)}Z`),
    ...[0, 2, 4, 6, 8].map((n) => word(14 + long(n), 194, n === MOST_N ? "8 N" : n, "middle")), word(14, 156, `holds with ${amountText(newtons)} N`));
}

export const rectum = {
  "rectum-finger": sidesBoard(finger),
  "rectum-glove": sidesBoard(glove, false),
  "rectum-grip": sidesBoard(grip),
};
