// The soft palate: both arches and the uvula, from rest to a long "ah", or drawn up as the throat is touched.

import { el, svg } from "../bedside/dom.js";
import { acted, captioned, picture, saidOf, seen } from "./head-parts.js";
import { latestBySide } from "./latest.js";
import { acrossRuler, names, openMouth } from "./mouth-parts.js";

const REST = 4;

/** Where the palate hangs, in millimetres down the picture, with each arch raised by so much. */
function soft(right, left, uvula) {
  const [r, l] = [REST - right, REST - left];
  const mid = REST + 1 - (right + left) / 2;
  return {
    velum: `M-29 -4C-27 -20 -12 -25 0 -24C12 -25 27 -20 29 -4L27 20C24 ${l + 8} 22 ${l} 15 ${l - 2}C9 ${l - 3} 5 ${mid - 2} 0 ${mid}C-5 ${mid - 2} -9 ${r - 3} -15 ${r - 2}C-22 ${r} -24 ${r + 8} -27 20Z`,
    uvula: `M${-3 + uvula * 0.4} ${mid - 2}C${-3 + uvula * 0.8} ${mid + 5} ${-2.6 + uvula} ${mid + 9} ${uvula} ${mid + 10}C${2.6 + uvula} ${mid + 9} ${3 + uvula * 0.8} ${mid + 5} ${3 + uvula * 0.4} ${mid - 2}Z`
  };
}

class Palate {
  constructor() {
    this.velum = svg("path", { class: "mouth-lining" });
    this.ghost = svg("path", { class: "mouth-ghost", d: soft(0, 0, 0).velum });
    this.uvula = svg("path", { class: "mouth-uvula" });
    this.plumb = svg("path", { class: "gauge-edge", d: "M0 -26V38" });
    this.stick = svg("path", { class: "stick" });
    this.node = picture([-48, -38, 96, 92], 3.2, ...openMouth(),
      svg("path", { class: "tongue-body", d: "M-24 34C-24 22 -12 19 0 19C12 19 24 22 24 34C16 36 -16 36 -24 34Z" }),
      this.velum, this.ghost, this.uvula, this.plumb, this.stick, ...acrossRuler(42), ...names(41, -31));
  }

  /** @param uvula where its tip lies, millimetres to the right of the page */
  set(right, left, uvula) {
    const drawn = soft(right, left, uvula);
    this.velum.setAttribute("d", drawn.velum);
    this.uvula.setAttribute("d", drawn.uvula);
  }

  touch(side) {
    const sign = side === "right" ? -1 : 1;
    this.stick.setAttribute("d", `M${sign * 18} 12L${sign * 40} 34`);
  }
}

const KEY = "The dashed line is the middle of the mouth, the thin one the palate at rest; ruler in millimetres.";

export function palate(host, { probes, fresh, still }) {
  const probe = fresh ?? probes.at(-1);
  const of = (label) => seen(probe, label);
  const [rest, said] = [new Palate(), new Palate()];
  rest.set(0, 0, 0);
  host.append(el("div", { class: "head-row pair" }, captioned("At rest", rest.node), captioned(`Saying a long “ah”. ${KEY}`, said.node)));
  acted(host, (share) => said.set(share * of("right arch rises by"), share * of("left arch rises by"), -share * of("uvula moves to the right by")), { fresh, still });
  return saidOf([probe]);
}

export function throatTouch(host, { probes, fresh, still }) {
  const both = latestBySide(probes);
  const row = el("div", { class: "head-row pair" });
  host.append(row);
  const drawn = both.map((probe) => {
    const one = new Palate();
    one.touch(probe.side);
    row.append(captioned(`Throat touched on the ${probe.side}. ${KEY}`, one.node));
    return { one, right: seen(probe, "right arch drawn up by"), left: seen(probe, "left arch drawn up by") };
  });
  acted(host, (share) => {
    for (const { one, right, left } of drawn) one.set(share * right, share * left, (share * (left - right)) / 3);
  }, { fresh, still });
  return saidOf(both);
}
