// A pair of eyes as the examiner faces them, the patient's right on the left of the page, to scale, with a gauge.

import { freshId, svg } from "../bedside/dom.js";

/** Units of the drawing in a millimetre. */
export const MM = 8;
const IRIS_MM = 11.7;
const USUAL_OPENING_MM = 9.5;
const GAUGE_MM = 9;

/** The rim of the lids at an opening in millimetres: the upper lid moves, the lower one hardly. */
function lids(opening) {
  const up = 36 * (opening / USUAL_OPENING_MM) * 2 - 36;
  return `M-66 4C-44 ${-up} 40 ${-up - 4} 66 2C40 34 -40 36 -66 4Z`;
}

/** Its nought is put under the one edge of the pupil, so that the other edge is read off; a tick for each half millimetre. */
function gauge() {
  const ticks = Array.from({ length: 2 * GAUGE_MM + 1 }, (_, half) => `M${(half * MM) / 2} 0v${half % 4 === 0 ? 9 : half % 2 === 0 ? 6.5 : 4}`).join("");
  const numbers = [0, 4, 8].map((mm) => svg("text", { class: "tick", x: mm * MM, y: 22, "text-anchor": "middle" }, mm));
  return svg("g", {}, svg("path", { class: "gauge", d: `M0 0H${GAUGE_MM * MM}${ticks}` }), ...numbers,
    svg("text", { class: "tick", x: GAUGE_MM * MM + 3, y: 22 }, "mm"));
}

/** Two lines that carry the edges of the pupil down to the gauge. */
const edges = (r) => `M${-r} 0V58M${r} 0V58`;

class Eye {
  constructor(side, x, gauged) {
    const clip = freshId("lids");
    this.pupil = svg("circle", { class: "pupil" });
    this.edges = svg("path", { class: "gauge-edge" });
    this.gauge = gauge();
    this.torch = svg("path", { class: "torch", d: "M-16 -58 0 -30 16 -58M-8 -44 8 -44", hidden: true });
    this.rims = ["white", "lid"].map((name) => svg("path", { class: name }));
    this.mask = svg("path");
    const [white, lid] = this.rims;
    const iris = svg("circle", { class: "iris", r: (IRIS_MM / 2) * MM });
    this.node = svg("g", { transform: `translate(${x} 78)` }, svg("clipPath", { id: clip }, this.mask), white,
      svg("g", { "clip-path": `url(#${clip})` }, iris, this.pupil), lid, ...(gauged ? [this.edges, this.gauge] : []), this.torch,
      svg("text", { class: "trace-name", y: -64, "text-anchor": "middle" }, side));
    this.open(USUAL_OPENING_MM);
  }

  /** The width of the pupil in millimetres. */
  set(mm) {
    const r = (mm / 2) * MM;
    this.pupil.setAttribute("r", r);
    this.edges.setAttribute("d", edges(r));
    this.gauge.setAttribute("transform", `translate(${-r} 58)`);
  }

  open(mm) {
    for (const path of [...this.rims, this.mask]) path.setAttribute("d", lids(mm));
  }

  light(on) {
    if (on) this.torch.removeAttribute("hidden");
    else this.torch.setAttribute("hidden", "");
  }
}

/** {right, left, node}: each eye can be set, opened and lit; with a gauge for the width of the pupil or without. */
export function eyes({ gauged = true } = {}) {
  const [right, left] = [new Eye("right", 84, gauged), new Eye("left", 256, gauged)];
  return { right, left, node: svg("svg", { class: "eyes", viewBox: "0 -10 360 186", width: 420, height: 217, "aria-hidden": "true" }, right.node, left.node) };
}
