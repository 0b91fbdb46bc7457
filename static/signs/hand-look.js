// Hands: the nail from the side and from above, the palm with its cords, the skin of the fingers, the tendons.

import { svg } from "../bedside/dom.js";
import { amountText } from "./latest.js";
import { amounts, label, line, picture, sideBySide } from "./side-by-side.js";
import { ruler } from "./ruler.js";

const radians = (degrees) => (degrees * Math.PI) / 180;

const tip = ([x, y], degrees, length) => [x + Math.cos(radians(degrees)) * length, y - Math.sin(radians(degrees)) * length];

const at = ([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`;

/** A fingertip from the side: the skin of the fold comes from the left, the nail leaves it at the angle shown. */
function profile(probe) {
  const [angle, depth] = amounts(probe);
  const fold = [150, 70];
  const up = angle - 180;
  const [nailEnd, free] = [tip(fold, up, 66), tip(fold, up - 5, 76)];
  const floor = fold[1] + depth * 6;
  const arc = (length, degrees) => at(tip(fold, degrees, length));
  const marks = Array.from({ length: 9 }, (_, index) => index * 10 - 40);
  return picture(300, 190,
    line(`M10 64C60 56 110 64 ${at(fold)}C${at(tip(fold, up + 3, 26))} ${at(tip(fold, up + 3, 48))} ${at(nailEnd)}L${at(free)}C${at([free[0] + 6, free[1] + 20])} ${free[0] - 2} ${floor + 2} ${free[0] - 34} ${floor + 4}C150 ${floor + 8} 132 ${floor - 6} 104 ${floor}C70 ${floor + 6} 40 ${floor + 4} 10 ${floor + 6}`, "limb-inside limb-edge"),
    line(`M${at(fold)}L${at(nailEnd)}`, "mark"), line(`M${at(fold)}L44 70`, "mark"),
    ...marks.map((degrees) => line(`M${arc(92, degrees)}L${arc(degrees === 0 ? 106 : 98, degrees)}`, "gauge")),
    ...marks.filter((degrees) => degrees % 20 === 0).map((degrees) => label(...tip(fold, degrees, 120), `${180 + degrees}°`)));
}

export const nailProfile = sideBySide(profile, { key: "The two lines lie along the skin of the fold and along the nail; the ticks are a protractor round the fold." });

/** Evenly spread and the same each time, without a grid to be seen. */
const spread = (index) => [(index * 0.618034) % 1, (index * 0.754878) % 1];

function nailAbove(probe) {
  const [below, pits, white, streaks, lifted] = amounts(probe);
  const inside = (index, [w, h, x, y]) => [x + spread(index)[0] * w, y + spread(index)[1] * h];
  const dots = Array.from({ length: Math.round(pits) }, (_, index) => svg("circle", { class: "hole", cx: inside(index + 1, [64, 70, 48, 44])[0], cy: inside(index + 1, [64, 70, 48, 44])[1], r: 1.7 }));
  const splinters = Array.from({ length: Math.round(streaks) }, (_, index) => {
    const [x, y] = inside(index + 3, [60, 46, 50, 44]);
    return line(`M${x.toFixed(1)} ${y.toFixed(1)}v13`, "streak");
  });
  const bed = 128 - white * 0.88;
  return picture(290, 168,
    line("M26 164V52C26 4 134 4 134 52V164", "limb-inside limb-edge"),
    line("M40 124V52C40 22 120 22 120 52V124C112 138 48 138 40 124Z", "outline"),
    line(`M42 126V${bed.toFixed(1)}C60 ${(bed - 10).toFixed(1)} 100 ${(bed - 10).toFixed(1)} 118 ${bed.toFixed(1)}V126C110 136 50 136 42 126Z`, "pale-part"),
    line(`M44 ${40 + lifted}C60 ${34 + lifted * 2.4} 100 ${34 + lifted * 2.4} 116 ${40 + lifted}`, "outline", { visibility: lifted > 0 ? "visible" : "hidden" }),
    ...dots, ...splinters,
    line(`M170 100Q220 ${76 + below * 26} 270 100`, "mark"), line("M170 100H270", "grid"),
    label(220, 152, "cut across"), label(80, 162, "from above"));
}

export const nails = sideBySide(nailAbove, { key: "Everything found on the ten nails is drawn on one. Left from above, right a cut across the nail." });

const PALM_MM = 1.6;

/** The hand from the side, palm down on a table; the ring finger stays bent. */
function palm(probe) {
  const [bent, cord] = amounts(probe);
  const knuckle = [150, 60];
  const [middle, end] = [tip(knuckle, -bent * 0.6, 52), tip(tip(knuckle, -bent * 0.6, 52), -bent, 34)];
  return picture(290, 150,
    line("M8 132H282", "grid"),
    line(`M10 44H110C130 44 140 48 ${at(knuckle)}`, "limb-edge thin"), line("M10 84H100C120 84 134 84 150 80", "limb-edge thin"),
    line(`M${at(knuckle)}L${at(middle)}L${at(end)}`, "ray"),
    line(`M80 84C104 ${84 + (cord * PALM_MM) / 0.75} 128 ${84 + (cord * PALM_MM) / 0.75} 152 82`, "muscle", { "stroke-width": 2.5 }),
    line([0, 5, 10].map((mm) => `M62 ${84 + mm * PALM_MM}h${mm % 10 ? -4 : -7}`).join("") + `M62 84v${10 * PALM_MM}`, "gauge"), label(50, 84 + 10 * PALM_MM + 4, "10 mm", "end"),
    line("M150 60H238", "grid"), label(246, 52, "straight", "start"));
}

export const palmCord = sideBySide(palm, { felt: true });

const FOLD_MM = 4.4;

/** A fold of skin lifted off a finger from the side, as high as it can be by the ruler, and how far the finger stays bent. */
function pinch(probe) {
  const [fold, bent] = amounts(probe);
  const [upper, lower] = [tip([150, 54], -bent, 76), tip([150, 88], -bent, 70)];
  const top = 54 - (fold * FOLD_MM) / 0.75;
  return picture(260, 172,
    line(`M10 54H78C84 ${top} 92 ${top} 98 54H150L${at(upper)}Q${at(tip([150, 71], -bent, 88))} ${at(lower)}L150 88H10`, "limb-edge"),
    line([0, 5, 10].map((mm) => `M112 ${54 - mm * FOLD_MM}h${mm % 10 ? 6 : 9}`).join("") + `M112 54V${54 - 10 * FOLD_MM}`, "gauge"),
    ...[5, 10].map((mm) => label(126, 54 - mm * FOLD_MM + 4, mm === 10 ? "10 mm" : mm, "start")));
}

export const fingerSkin = sideBySide(pinch, { felt: true });

function tendon(probe) {
  const [thick] = amounts(probe);
  return picture(260, 90,
    line(`M10 ${46 - 10}C70 36 100 ${46 - thick * 2.2} 130 ${46 - thick * 2.2}C160 ${46 - thick * 2.2} 190 36 250 36M10 56C70 56 100 ${46 + thick * 1.4} 130 ${46 + thick * 1.4}C160 ${46 + thick * 1.4} 190 56 250 56`, "limb-edge"),
    label(130, 84, amountText(thick) + " mm"));
}

export const tendonLumps = sideBySide(tendon, { felt: true });
