// A lymph node under a moving finger: how wide, how far it gives and slides, and whether others go along with it. Only the
// group that was felt is known here. Drag or use the slider to roll the skin.

import { el, freshId, svg } from "../bedside/dom.js";
import { amounts, frame, line, word } from "./frame.js";
import { amountText } from "./latest.js";
import { spotOnNeck } from "./neck-map.js";
import { pointBoard, sidesBoard } from "./point-board.js";
import { ruler } from "./ruler.js";

const SCALE = 3;
const [MIDDLE, FLOOR] = [150, 118];
const REACH = 60;
/** Where the bars of what is felt begin, across. */
const BAR = 176;

/** A lump of so many millimetres on the floor of the drawing; it lies flatter the more it gives. */
function lumpAt(x, mm, gives) {
  const [half, tall] = [(mm * SCALE) / 2, mm * SCALE * (0.62 - gives * 0.06)];
  return `M${x - half} ${FLOOR}C${x - half} ${FLOOR - tall} ${x + half} ${FLOOR - tall} ${x + half} ${FLOOR}Z`;
}

/** What the fingers feel of it, in the drawing's own millimetres: how far it slides and gives, and how many others lie near. */
function felt(slides, gives, others, joined) {
  const bar = (y, name, mm) => [
    word(20, y, name), line("felt-bar", `M${BAR} ${y - 4}h${Math.max(0.5, mm * SCALE)}`), word(BAR + mm * SCALE + 8, y, `${amountText(mm)} mm`)];
  return [
    ...bar(174, "slides under the skin by", slides), ...bar(194, "gives way by", gives),
    word(20, 214, `others within 20 mm: ${others}; moving along with it: ${joined}`)];
}

export function nodeUnderFinger(probe) {
  const [mm, slides, gives, others, joined] = amounts(probe);
  const lump = line("band", "", mm > 0);
  const neighbours = Array.from({ length: 6 }, () => line("band faint", ""));
  const finger = svg("path", { class: "skin" });
  const id = freshId("finger");
  const slider = el("input", { id, type: "range", class: "watch", min: -REACH, max: REACH, step: 2, oninput: () => roll(Number(slider.value)) });
  const said = el("output", { for: id, class: "watch-text" });

  /** Where the finger lies across, in units of the drawing; under it the lump is pushed as far as it slides. */
  function roll(across) {
    const over = mm > 0 && Math.abs(across) < (mm * SCALE) / 2 + 20;
    const pushed = over ? Math.sign(across || 1) * Math.min(Math.abs(across), slides * SCALE) * -0.5 : 0;
    lump.setAttribute("d", lumpAt(MIDDLE + pushed, mm, gives));
    neighbours.forEach((path, i) => {
      const along = i < joined ? pushed : 0;
      path.setAttribute("d", i < others ? lumpAt(MIDDLE + along + (i % 2 ? 1 : -1) * (mm * SCALE * 0.7 + 14 * (1 + Math.floor(i / 2))), Math.max(5, mm * 0.55), gives) : "");
    });
    const lift = over ? mm * SCALE * (0.5 - gives * 0.06) * Math.max(0, 1 - (Math.abs(across) / ((mm * SCALE) / 2 + 20)) ** 2) : 0;
    finger.setAttribute("d", `M${MIDDLE + across - 24} 10V${FLOOR - 22 - lift}A24 20 0 0 0 ${MIDDLE + across + 24} ${FLOOR - 22 - lift}V10`);
    said.textContent = `Finger ${Math.round(Math.abs(across) / SCALE)} mm ${across < 0 ? "behind" : "in front of"} the middle: lifted ${(lift / SCALE).toFixed(1)} mm.`;
    slider.setAttribute("aria-valuetext", said.textContent);
  }
  slider.value = 0;
  roll(0);
  return el("div", {}, frame(300, 224, line("outline", `M20 ${FLOOR}H280`), ...neighbours, lump, finger, ruler({ at: MIDDLE - (mm * SCALE) / 2, across: 126, mm: 40, scale: SCALE }), word(20, 14, "3 times life size"), ...felt(slides, gives, others, joined)),
    el("div", { class: "watch-box" }, el("label", { for: id, class: "heard" }, "Roll the finger"), slider, said));
}

export const nodes = (host, view) =>
  (view.manoeuvre.places?.length ? pointBoard(host, view, { map: spotOnNeck, figure: nodeUnderFinger }) : sidesBoard(nodeUnderFinger)(host, view));
