// The colour of a place of the body, beside the same place of a healthy person of the same skin. A screen changes colours:
// how light, red and yellow both are stands below on printed scales and in numbers.

import { el, svg } from "../bedside/dom.js";
import { colourScale, measured, measuresText } from "./colour-scale.js";
import { amounts, label, picture, sideBySide } from "./side-by-side.js";

const GAMMA = 2.2;

/** A fill from the shares of light thrown back, in per cent. */
export const fill = (lights) => `rgb(${lights.map((share) => Math.round(255 * (Math.max(0, share) / 100) ** (1 / GAMMA))).join(" ")})`;

const PALM = "M20 96C14 76 10 60 18 52C22 49 26 54 28 62L26 20C26 12 35 12 36 20L38 50L40 12C40 4 50 4 50 12L51 50L56 16C57 8 66 9 66 18L63 54L72 30C75 23 83 26 81 34L72 70C68 86 66 92 64 100H24C22 100 21 98 20 96Z";

const SHAPES = {
  "palm-colour": () => [svg("path", { class: "coloured", d: PALM }), svg("path", { class: "crease", d: "M26 66C38 56 54 58 66 62M24 76C36 66 50 72 58 86" })],
  "nail-bed-colour": () => [svg("path", { class: "limb-inside limb-edge thin", d: "M22 104V40C22 14 74 14 74 40V104" }), svg("path", { class: "coloured", d: "M31 66V40C31 24 65 24 65 40V66C60 74 36 74 31 66Z" })],
  "face-colour": () => [svg("path", { class: "coloured", d: "M48 8C76 8 82 34 78 58C75 80 62 100 48 100C34 100 21 80 18 58C14 34 20 8 48 8Z" }), svg("path", { class: "crease", d: "M32 44H42M54 44H64M48 46V62M38 78C44 82 52 82 58 78" })],
  "lid-colour": () => [svg("path", { class: "limb-inside limb-edge thin", d: "M6 46C26 18 70 18 90 46" }), svg("ellipse", { fill: "#efe9df", cx: 48, cy: 46, rx: 38, ry: 15 }), svg("circle", { fill: "#1c2733", cx: 48, cy: 42, r: 8 }), svg("path", { class: "coloured", d: "M8 50C26 66 70 66 88 50C80 84 16 84 8 50Z" })],
  "eye-white-colour": () => [svg("path", { class: "coloured", d: "M4 54C24 22 72 22 92 54C72 84 24 84 4 54Z" }), svg("circle", { fill: "#5b4636", cx: 48, cy: 53, r: 16 }), svg("circle", { fill: "#14181d", cx: 48, cy: 53, r: 7 })],
  "tongue-colour": () => [svg("path", { class: "limb-inside limb-edge thin", d: "M10 30C24 8 72 8 86 30C82 46 14 46 10 30Z" }), svg("path", { class: "coloured", d: "M24 32C24 70 34 102 48 102C62 102 72 70 72 32Z" }), svg("path", { class: "crease", d: "M48 36V84" })],
  "lip-colour": () => [svg("path", { class: "coloured", d: "M8 52C24 34 38 32 48 40C58 32 72 34 88 52C70 82 26 82 8 52Z" }), svg("path", { class: "crease", d: "M12 52C34 48 62 48 84 52" })],
};

function painted(manoeuvre, lights, across) {
  const shape = svg("g", { transform: `translate(${across} 0)`, fill: fill(lights) }, ...(SHAPES[manoeuvre.id] ?? SHAPES["palm-colour"])());
  return shape;
}

const both = (probe) => [amounts(probe).slice(0, 3), amounts(probe).slice(3)].map(measured).map((values) => values.map(Math.round));

export const skinColour = sideBySide(
  (probe, { manoeuvre }) => el("div", {}, picture(232, 128,
    painted(manoeuvre, amounts(probe).slice(0, 3), 6), painted(manoeuvre, amounts(probe).slice(3), 128),
    label(54, 122, "here"), label(176, 122, "beside")), colourScale(...both(probe), fill)),
  { text: (probe) => measuresText(...both(probe)), key: "Beside it, the same part of a healthy person of the same skin. On the printed scales the full mark above is here, the open mark below is beside; lightness runs from 0 to 100, red and yellow from nought for grey, and less than nought is green or blue. Screens change colours: trust the comparison and the numbers. Where the skin itself is dark, look at lids, whites of the eyes, tongue, nail beds and palms." },
);
