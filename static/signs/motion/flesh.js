// Parts of a drawn body: limbs as lines with flesh on them, heads, feet and hands. Lengths in the units of the drawing.

import { svg } from "../../bedside/dom.js";

export const picture = (width, height, className, ...nodes) =>
  svg("svg", { class: `act-figure ${className}`, viewBox: `0 0 ${width} ${height}`, width, height, "aria-hidden": "true" }, ...nodes);

export const line = (points) => `M${points.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join("L")}`;

/** A limb along some points, outlined; what is far from the eye is drawn fainter. */
export class Flesh {
  constructor(width, far = false) {
    this.edge = svg("path", { class: far ? "flesh-edge far" : "flesh-edge", "stroke-width": width + 3 });
    this.inside = svg("path", { class: "flesh", "stroke-width": width });
    this.node = svg("g", {}, this.edge, this.inside);
  }

  set(points) {
    for (const part of [this.edge, this.inside]) part.setAttribute("d", line(points));
    return this;
  }
}

export const flesh = (width, points, far) => new Flesh(width, far).set(points).node;

const radians = Math.PI / 180;

/** A point so far from another in a direction; 0 is straight down, positive to the right. */
export const hang = ([x, y], length, degrees) => [x + length * Math.sin(degrees * radians), y + length * Math.cos(degrees * radians)];

/** A point given in a frame that is turned about its origin; positive turns clockwise on the screen. */
export const turned = ([x, y], [dx, dy], degrees) => {
  const [s, c] = [Math.sin(degrees * radians), Math.cos(degrees * radians)];
  return [x + dx * c - dy * s, y + dx * s + dy * c];
};

export const at = (x, y, degrees = 0, flip = 1) => `translate(${x.toFixed(2)} ${y.toFixed(2)}) rotate(${degrees.toFixed(2)}) scale(${flip} 1)`;

/** A drawing of a left limb, so wide, turned into one of the right where the side asks for it. */
export const ofSide = (side, width, ...nodes) => svg("g", { class: "of-side", transform: side === "right" ? `translate(${width} 0) scale(-1 1)` : "translate(0 0) scale(1 1)" }, ...nodes);

/** A head from the side, looking to the right, with its chin's corner near 0, 0. */
export const headAside = (size = 1) =>
  svg("g", { transform: `scale(${size})` },
    svg("path", { class: "skin", d: "M-9 4C-15 -4 -14 -20 -1 -22C9 -23 13 -16 12 -9C12 -8 16 -4 15 -3C14 -2 12 -3 12 -1C12 3 9 5 4 5C2 5 1 7 0 9" }),
    svg("circle", { class: "hole", cx: 8, cy: -9, r: 1.2 }),
    svg("path", { class: "outline", d: "M-3 -9C-6 -11 -7 -5 -3 -5" }));

/** A head from the front, its chin at 0, 0. */
export const headOn = (size = 1) =>
  svg("g", { transform: `scale(${size})` },
    svg("path", { class: "skin", d: "M0 0C-7 -1 -10 -9 -9 -16C-8 -23 8 -23 9 -16C10 -9 7 -1 0 0Z" }),
    svg("path", { class: "outline", d: "M0 -13V-8L2 -7M-3 -4H3" }));

/** Eyes of a head from the front, open or shut. */
export const eyes = (open, size = 1) =>
  svg("g", { transform: `scale(${size})` },
    ...[-4, 4].map((x) => svg("path", { class: "eye-line", d: open ? `M${x - 2} -13.500a2 1.600 0 1 1 4 0a2 1.600 0 1 1 -4 0` : `M${x - 2.2} -13.500q2.200 1.800 4.400 0` })));

/** A shoe-less foot from the side: ankle at 0, 0, toes to the right, sole 8 below. */
export const FOOT = "M-6 -3C-9 2 -9 8 -5 8L16 8C20 8 20 3 16 2C10 1 7 -1 5 -4Z";

/** A foot from above, heel at 0, 0, toes up, 24 long; the great toe is on the right. */
export const PRINT = "M0 0C-4 0 -4 -5 -3.500 -9C-3 -13 -5 -16 -5 -19C-5 -23 -1 -23.500 1 -24C4 -24.500 5 -22 4.500 -19C4 -15 3.500 -13 3.500 -9C4 -5 4 0 0 0Z";

/** A mitten of a hand hanging from a wrist at 0, 0, with the thumb to the right. */
export const HAND = "M-3 0C-4 4 -4 9 -2 12C0 14 3 13 3 9L3 6C5 8 7 7 6 5L3 0Z";

/** An arrow of some length from 0, 0 to the right. */
export const arrow = (length) => `M0 0H${length.toFixed(1)}M${length.toFixed(1)} 0l-7 -4M${length.toFixed(1)} 0l-7 4`;
