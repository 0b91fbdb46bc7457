// What a finger in the rectum meets, how the ring holds it, and the colour on the glove.

import { svg } from "../bedside/dom.js";
import { amounts, frame, line, word } from "./frame.js";
import { sidesBoard } from "./point-board.js";

const FINGER = "M10 86H170A16 16 0 0 1 170 118H10";

function finger(probe) {
  const [fills, gives, fixed] = amounts(probe);
  return frame(320, 200, line("outline", "M30 56C90 52 150 30 300 20M30 148C90 152 150 172 300 182"), line("skin", FINGER),
    line("band", `M196 102A${fills / 2} ${fills / 2} 0 0 1 ${196 + fills} 102A${fills / 2} ${fills / 2} 0 0 1 196 102Z`, fills > 0),
    line("mark", `M${196} ${102 - Math.min(gives, 10)}v${Math.min(gives, 10) * 2}`, fills > 0), line("limb-edge thin", `M${180 - fixed / 2} 166C${180 - fixed / 3} ${166 - fixed} ${180 + fixed / 3} ${166 - fixed} ${180 + fixed / 2} 170`, fixed > 0));
}

/** A stain in the colour given by its light, and the same in numbers beside it. */
function glove(probe) {
  const rgb = amounts(probe).map(Math.round);
  const bar = (value, index) => [line("outline", `M160 ${30 + index * 34}h130v16h-130Z`), line("band", `M160 ${30 + index * 34}h${(value / 255) * 130}v16h-${(value / 255) * 130}Z`)];
  return frame(310, 140, line("skin", "M20 20H84A30 30 0 0 1 84 118H20"), svg("path", { class: "smear", fill: `rgb(${rgb.join(" ")})`, d: "M64 40C100 36 112 60 104 84C96 104 66 100 58 84C52 68 54 46 64 40Z" }), ...rgb.flatMap(bar),
    ...["long waves", "middle waves", "short waves"].map((name, index) => word(160, 26 + index * 34, name)));
}

function grip(probe) {
  const [newtons] = amounts(probe);
  const arrow = (y, way) => line("gauge", `M96 ${y}v${way * newtons * 5}l-5 ${-way * 7}m5 ${way * 7}l5 ${-way * 7}`);
  return frame(240, 200, line("skin", FINGER), arrow(84 - newtons * 5, 1), arrow(120 + newtons * 5, -1), word(112, 40, "6 N is this long:"), line("gauge", "M112 50h30"));
}

export const rectum = {
  "rectum-finger": sidesBoard(finger),
  "rectum-glove": sidesBoard(glove, false),
  "rectum-grip": sidesBoard(grip),
};
