// The right side of the head and neck, as somebody at the right of the couch sees it; the couch up by an angle, with the
// vein from collar bone to jaw and a ruler that stands on the sternal angle. Along the body and across it are measured
// from the sternal angle, in centimetres: the vein comes up 5 along and 3 behind, runs for 11 and, the neck being bent a
// little on its pillow, 15 degrees more upright than the trunk. The heights that the server gives for collar bone and jaw come from the same figures.

import { svg } from "../bedside/dom.js";

const CM = 9;
const STERNAL = [314, 236];
export const RULER_CM = 18;

const RADIANS = Math.PI / 180;
const FOOT = [5, 3];
const NECK_CM = 11;
const PILLOW = 15;
const JAW = [FOOT[0] + NECK_CM * Math.cos(PILLOW * RADIANS), FOOT[1] - NECK_CM * Math.sin(PILLOW * RADIANS)];

const PROFILE = "M-78 -3C-44 -6 -20 -2 0 0C18 2 34 4 46 8C62 13 92 6 118 1C123 -10 124 -32 133 -40C141 -46 150 -43 156 -46C162 -51 166 -46 172 -48C178 -62 187 -66 193 -55C204 -50 216 -54 232 -50C268 -44 293 -18 291 12C288 45 262 62 234 60C214 58 200 49 184 47C150 41 122 45 104 51C84 59 70 72 40 80C0 88 -40 86 -78 88";
const FEATURES = "M135 -37C139 -20 148 -4 158 2C166 7 172 10 177 14M184 10C188 0 202 0 202 10C202 18 192 22 186 18M206 -36 214 -33";
const COLLAR_BONE = "M40 8C42 20 46 34 54 50";

const at = ([along, across]) => `${(along * CM).toFixed(1)} ${(across * CM).toFixed(1)}`;

/** Nearly upright the face would lie on the ruler, and the head above the picture. */
const STEEP = 55;
const besideOf = (angle) => (angle > STEEP ? 96 : 22);
const viewOf = (angle) => (angle > STEEP ? "0 -64 440 364" : "0 0 400 300");

function ruler(aside) {
  const ticks = Array.from({ length: RULER_CM + 1 }, (_, cm) => svg("path", { class: "gauge", d: `M0 ${-cm * CM}H${cm % 5 ? 5 : 10}` }));
  const numbers = [0, 5, 10, 15].map((cm) => svg("text", { class: "tick", x: 14, y: -cm * CM + 4 }, cm));
  return svg("g", { transform: `translate(${STERNAL[0] + aside} ${STERNAL[1]})` }, svg("path", { class: "gauge", d: `M0 0V${-RULER_CM * CM}` }), ...ticks, ...numbers,
    svg("text", { class: "tick", x: 4, y: -RULER_CM * CM - 8, "text-anchor": "middle" }, "cm"));
}

/** Height of a point of the body above the sternal angle in centimetres, the head up by an angle in degrees. */
export const heightOf = ([along, across], angle) => along * Math.sin(angle * RADIANS) - across * Math.cos(angle * RADIANS);

export class NeckFigure {
  constructor(angle) {
    this.aside = besideOf(angle);
    this.ends = [heightOf(FOOT, angle), heightOf(JAW, angle)];
    this.vein = svg("path", { class: "vein" });
    this.level = svg("path", { class: "stop-watch", d: "" });
    const person = [["furniture", "M-84 93H300"], ["skin", PROFILE], ["feature", FEATURES]].map(([name, d]) => svg("path", { class: name, d }));
    this.node = svg("svg", { class: "neck", viewBox: viewOf(angle), width: 400, height: 300, "aria-hidden": "true" },
      svg("g", { transform: `translate(${STERNAL.join(" ")}) scale(-1 1) rotate(${-angle})` }, ...person, this.vein, svg("path", { class: "bone", d: COLLAR_BONE })),
      svg("circle", { class: "dot", cx: STERNAL[0], cy: STERNAL[1], r: 4 }), ruler(this.aside), this.level);
  }

  /** Fills the vein up to a height in millimetres; only the part between collar bone and jaw can be seen. */
  column(mm) {
    const [low, high] = this.ends;
    const part = Math.min(Math.max((mm / 10 - low) / (high - low), 0), 1);
    const top = [0, 1].map((axis) => FOOT[axis] + (JAW[axis] - FOOT[axis]) * part);
    this.vein.setAttribute("d", part > 0.01 ? `M${at(FOOT)}L${at(top)}` : "");
  }

  /** Lays a level across from the ruler at a height in centimetres. */
  measure(cm) {
    this.level.setAttribute("d", `M${STERNAL[0] + this.aside} ${STERNAL[1] - cm * CM}H20`);
  }
}
