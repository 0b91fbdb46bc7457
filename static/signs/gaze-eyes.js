// A pair of eyes in millimetres as the examiner faces them, the patient's right on the left. Each eye can be turned, its
// lids set, its pupil and the ghost of a second place drawn.

import { freshId, svg } from "../bedside/dom.js";
import { blend, ink } from "./head-parts.js";

/** From the middle of the globe to the plane of the iris, in millimetres: how far the iris goes for an angle. */
export const GLOBE = 10;
const IRIS = 5.85;
const HALF = 15;
/** Where the lower lid lies below the middle of the eye. */
const LOWER = 5.2;

const place = (degrees) => GLOBE * Math.sin((degrees * Math.PI) / 180);
/** A disc that turns away is seen narrower. */
const narrower = (degrees) => Math.cos((degrees * Math.PI) / 180);

/** The light stays behind the turning pupil, a millimetre for some eleven degrees, as long as it falls on the cornea. */
const behind = (degrees) => Math.max(-2.5, Math.min(2.5, degrees / 11));

/** The rim between the lids: peaks of both margins, below the middle of the eye. */
const rim = (upper, lower) => `M${-HALF} 1C${-HALF + 7} ${upper / 0.75} ${HALF - 8} ${upper / 0.75} ${HALF} 0C${HALF - 8} ${lower / 0.75} ${-HALF + 7} ${lower / 0.75} ${-HALF} 1Z`;

class GazeEye {
  constructor(side, across, { skin, iris }) {
    const clip = freshId("between-lids");
    this.outwards = side === "right" ? -1 : 1;
    this.mask = svg("path");
    this.white = svg("path", { class: "eye-white" });
    this.margin = svg("path", { class: "eye-margin" });
    this.crease = svg("path", { class: "eye-crease" });
    this.pupil = svg("circle", { class: "eye-pupil", r: 2 });
    this.light = svg("circle", { class: "eye-light", r: 0.7 });
    this.ball = svg("g", { class: `eyeball ${side}` }, svg("circle", { class: "eye-iris", r: IRIS, fill: ink(iris) }), this.pupil);
    this.ghost = svg("circle", { class: "eye-ghost", r: IRIS, visibility: "hidden" });
    this.node = svg("g", { transform: `translate(${across} 0)` },
      svg("clipPath", { id: clip }, this.mask),
      svg("ellipse", { class: "eye-skin", rx: 21, ry: 15, fill: ink(skin) }),
      this.crease, this.white,
      svg("g", { "clip-path": `url(#${clip})` }, this.ghost, this.ball, this.light), this.margin);
    this.darker = ink(blend(skin, [0, 0, 0], 0.35));
    this.crease.setAttribute("stroke", this.darker);
    this.look(0, 0);
  }

  /** Turns the eye: degrees outwards (towards its own side) and upwards; lids follow as they do, or are held up. */
  look(outward, upward, { opening = 10, held = false, follow = 0.85 } = {}) {
    const [x, y] = [this.outwards * place(outward), -place(upward)];
    this.ball.setAttribute("transform", `translate(${x.toFixed(2)} ${y.toFixed(2)}) scale(${narrower(outward).toFixed(3)} ${narrower(upward).toFixed(3)})`);
    this.light.setAttribute("cx", (x - this.outwards * behind(outward)).toFixed(2));
    this.light.setAttribute("cy", (y + behind(upward)).toFixed(2));
    const lower = LOWER + (y > 0 ? 0.7 : 0.35) * y;
    this.lids(held ? Math.min(-7.2, y - 7.2 + 0.4 * Math.max(0, y)) : LOWER - opening + follow * y, held ? Math.max(LOWER, y + 1.8) : lower);
  }

  /** The margins by themselves, in millimetres below the middle of the eye. */
  lids(upper, lower = LOWER) {
    const d = rim(Math.min(upper, lower), lower);
    for (const path of [this.mask, this.white, this.margin]) path.setAttribute("d", d);
    const crease = Math.min(upper - 3, -5);
    this.crease.setAttribute("d", `M${-HALF} -1C${-HALF + 7} ${crease / 0.75} ${HALF - 8} ${crease / 0.75} ${HALF} -1.500`);
  }

  /** A second place of the iris, as an outline. */
  also(outward, upward) {
    this.ghost.setAttribute("visibility", "visible");
    this.ghost.setAttribute("transform", `translate(${(this.outwards * place(outward)).toFixed(2)} ${(-place(upward)).toFixed(2)}) scale(${narrower(outward).toFixed(3)} ${narrower(upward).toFixed(3)})`);
  }
}

/** {right, left, node}; {@code apart} is the distance between the eyes in millimetres, {@code aside} what is seen outside them. */
export function gazeEyes(tones, { apart = 62, width = 420, named = true, aside = 23 } = {}) {
  const [right, left] = [new GazeEye("right", -apart / 2, tones), new GazeEye("left", apart / 2, tones)];
  const half = apart / 2 + aside;
  const top = named ? -24 : -16;
  const height = 32 + (named ? 9 : 0);
  const names = named ? ["right", "left"].map((side) => svg("text", { class: "eye-name", x: side === "right" ? -apart / 2 : apart / 2, y: -18.5, "text-anchor": "middle" }, side)) : [];
  const node = svg("svg", { class: "head-picture gaze-eyes", viewBox: `${-half} ${top} ${2 * half} ${height}`, width, height: (width * height) / (2 * half), "aria-hidden": "true" },
    svg("path", { class: "eye-bridge", d: "M-5 -12C-3 -4 -4 4 -6 14M5 -12C3 -4 4 4 6 14" }), right.node, left.node, ...names);
  return { right, left, node };
}
