// A printed scale of patches beside a coloured place: how light it is, and how far it leans to red and to yellow, in the
// units in which printers measure colour (CIE 1976: lightness 0 to 100, nought is grey for the other two).

import { svg } from "../bedside/dom.js";
import { amountText } from "./latest.js";

const WHITE = [0.9505, 1, 1.089];
const TO_XYZ = [[0.4124, 0.3576, 0.1805], [0.2126, 0.7152, 0.0722], [0.0193, 0.1192, 0.9505]];
const FROM_XYZ = [[3.2406, -1.5372, -0.4986], [-0.9689, 1.8758, 0.0415], [0.0557, -0.204, 1.057]];
const LINEAR_TO = 6 / 29;

const times = (matrix, vector) => matrix.map((row) => row.reduce((sum, factor, index) => sum + factor * vector[index], 0));
const root = (share) => (share > LINEAR_TO ** 3 ? Math.cbrt(share) : share / (3 * LINEAR_TO ** 2) + 4 / 29);
const cube = (value) => (value > LINEAR_TO ? value ** 3 : 3 * LINEAR_TO ** 2 * (value - 4 / 29));

/** Lightness, red (less is green) and yellow (less is blue) from the shares of red, green and blue thrown back, in per cent. */
export function measured(lights) {
  const [x, y, z] = times(TO_XYZ, lights.map((share) => Math.max(0, share) / 100)).map((amount, index) => root(amount / WHITE[index]));
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

/** The other way. */
export function lightsOf([lightness, red, yellow]) {
  const middle = (lightness + 16) / 116;
  const xyz = [middle + red / 500, middle, middle - yellow / 200].map((value, index) => cube(value) * WHITE[index]);
  return times(FROM_XYZ, xyz).map((share) => Math.min(100, Math.max(0, share * 100)));
}

export const ROWS = [
  { name: "lightness", from: 0, to: 100, ends: ["dark", "light"] },
  { name: "red", from: -10, to: 60, ends: ["less red", "more red"] },
  { name: "yellow", from: -30, to: 60, ends: ["blue", "yellow"] },
];
const PATCHES = 9;
const [LEFT, WIDE, TALL, STEP] = [8, 300, 18, 62];

/**
 * One row of patches for each measure, the other two measures as beside; a full mark above for here, an open one below for
 * beside it.
 */
export function colourScale(here, beside, fill) {
  const rows = ROWS.flatMap(({ from, to, ends }, index) => {
    const top = 24 + index * STEP;
    const x = (value) => LEFT + (Math.min(to, Math.max(from, value)) - from) / (to - from) * WIDE;
    const patch = (i) => {
      const colour = [...beside];
      colour[index] = from + ((i + 0.5) / PATCHES) * (to - from);
      return svg("rect", { class: "patch", x: LEFT + (i * WIDE) / PATCHES, y: top, width: WIDE / PATCHES, height: TALL, fill: fill(lightsOf(colour)) });
    };
    return [
      ...Array.from({ length: PATCHES }, (_, i) => patch(i)),
      svg("path", { class: "here-mark", d: `M${x(here[index]).toFixed(1)} ${top - 1}l-5 -9h10Z` }),
      svg("path", { class: "beside-mark", d: `M${x(beside[index]).toFixed(1)} ${top + TALL + 1}l-5 9h10Z` }),
      svg("text", { class: "tick", x: LEFT, y: top + TALL + 24 }, `${ends[0]}`),
      svg("text", { class: "tick", x: LEFT + WIDE, y: top + TALL + 24, "text-anchor": "end" }, `${ends[1]}`),
    ];
  });
  return svg("svg", { class: "look", viewBox: "0 0 316 196", width: 316, height: 196, "aria-hidden": "true" }, ...rows);
}

/** The three measures in words and numbers. */
export const measuresText = (here, beside) =>
  ROWS.map(({ name }, index) => `${name} ${amountText(here[index], 0)}, beside ${amountText(beside[index], 0)}`).join("; ");
