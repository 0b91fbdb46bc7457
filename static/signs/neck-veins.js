// The neck from the side, head up by the angle of the couch: the top of the column in the vein moves with the heart, and
// is measured with a ruler standing on the sternal angle.

import { el, freshId, svg } from "../bedside/dom.js";
import { heightAt, highest, lengthMs, lowest } from "./curve.js";
import { amountText, curvesOf, measuresOf } from "./latest.js";
import { Player } from "./player.js";
import { Trace } from "./trace.js";

const CM = 9;
const STERNAL = [86, 236];
const RULER_CM = 18;

// Along the body and across it, from the sternal angle: the head lies at positive x, the back at positive y.
const PROFILE = "M-78 -3C-44 -6 -20 -2 0 0C18 2 34 4 46 8C62 13 92 6 118 1C123 -10 124 -32 133 -40C141 -46 150 -43 156 -46C162 -51 166 -46 172 -48C178 -62 187 -66 193 -55C204 -50 216 -54 232 -50C268 -44 293 -18 291 12C288 45 262 62 234 60C214 58 200 49 184 47C150 41 122 45 104 51C84 59 70 72 40 80C0 88 -40 86 -78 88";
const FEATURES = "M135 -37C141 -18 155 6 177 14M184 10C188 0 202 0 202 10C202 18 192 22 186 18M206 -36 214 -33";
const COLLAR_BONE = "M45 9C50 22 53 38 62 58";
const VEIN = { from: [53, 34], to: [168, 14] };

const isAngle = ({ unit, label }) => /deg|°/.test(unit) || /angle/i.test(label);

/** How far the head end of the couch is up, in degrees, as the server tells it. */
const angleOf = (probe) => measuresOf(probe).find(isAngle)?.amount ?? 45;

function person(angle) {
  const vein = svg("path", { class: "vein" });
  const parts = [
    svg("path", { class: "furniture", d: "M-84 93H300" }),
    svg("path", { class: "skin", d: PROFILE }),
    svg("path", { class: "feature", d: FEATURES }),
    vein,
    svg("path", { class: "bone", d: COLLAR_BONE }),
  ];
  return { vein, node: svg("g", { transform: `translate(${STERNAL.join(" ")}) rotate(${-angle})` }, ...parts) };
}

/** Height of a point of the body above the sternal angle, in the units of the drawing, with the head up by an angle. */
function heightOf([along, across], angle) {
  const turn = (angle * Math.PI) / 180;
  return along * Math.sin(turn) - across * Math.cos(turn);
}

function ruler() {
  const ticks = Array.from({ length: RULER_CM + 1 }, (_, cm) => svg("path", { class: "gauge", d: `M0 ${-cm * CM}H${cm % 5 ? -5 : -10}` }));
  const numbers = [0, 5, 10, 15].map((cm) => svg("text", { class: "tick", x: -14, y: -cm * CM + 4, "text-anchor": "end" }, cm));
  return svg("g", { transform: `translate(${STERNAL[0] - 22} ${STERNAL[1]})` }, svg("path", { class: "gauge", d: `M0 0V${-RULER_CM * CM}` }), ...ticks, ...numbers,
    svg("text", { class: "tick", x: -4, y: -RULER_CM * CM - 8, "text-anchor": "middle" }, "cm"));
}

class Figure {
  constructor(angle) {
    this.ends = [heightOf(VEIN.from, angle), heightOf(VEIN.to, angle)];
    this.person = person(angle);
    this.level = svg("path", { class: "stop-watch", d: "" });
    this.node = svg("svg", { class: "neck", viewBox: "0 0 400 300", width: 400, height: 300, "aria-hidden": "true" },
      this.person.node, svg("circle", { class: "dot", cx: STERNAL[0], cy: STERNAL[1], r: 4 }), ruler(), this.level,
      svg("text", { class: "tick", x: 4, y: STERNAL[1] + 20 }, "sternal angle"));
  }

  /** Fills the vein up to a height above the sternal angle; only the part between collar bone and jaw can be seen. */
  column(mm) {
    const [low, high] = this.ends;
    const part = Math.min(Math.max(((mm / 10) * CM - low) / (high - low), 0), 1);
    const [x, y] = [0, 1].map((axis) => VEIN.from[axis] + (VEIN.to[axis] - VEIN.from[axis]) * part);
    this.person.vein.setAttribute("d", part > 0 ? `M${VEIN.from.join(" ")}L${x.toFixed(1)} ${y.toFixed(1)}` : "");
  }

  measure(cm) {
    this.level.setAttribute("d", `M${STERNAL[0] - 22} ${STERNAL[1] - cm * CM}H380`);
  }
}

function level(figure) {
  const id = freshId("ruler");
  const text = (cm) => `${amountText(Number(cm), 1)} cm above the sternal angle`;
  const output = el("output", { for: id, class: "watch-text" }, "Move the level to the top of the column.");
  const range = el("input", { id, type: "range", class: "watch wide", min: 0, max: RULER_CM, step: 0.5, "aria-valuetext": text(0), oninput: () => moved() });
  range.value = 0;
  const moved = () => {
    figure.measure(Number(range.value));
    output.textContent = text(range.value);
    range.setAttribute("aria-valuetext", text(range.value));
  };
  return el("div", { class: "level" }, el("label", { for: id }, "Level across from the ruler"), range, output);
}

export function neckVeins(host, { probes, fresh, still }) {
  const probe = fresh ?? probes.at(-1);
  const [curve] = curvesOf(probe);
  const figure = new Figure(angleOf(probe));
  const box = el("div", { class: "traces" });
  const amounts = measuresOf(probe).map(({ label, amount, unit }) => `${label} ${amountText(amount)} ${unit}`).join("; ");
  host.append(el("div", { class: "stage" }, el("div", { class: "figure-box" }, figure.node, el("p", { class: "quiet shown-side" }, amounts), level(figure)), box));
  const trace = new Trace(box, { series: [{ name: "top", side: "right", curve }], low: lowest(curve) - 5, high: highest(curve) + 5, from: "the start", watch: (ms) => (player.stop(), figure.column(heightAt(curve, ms))) });
  box.append(el("p", { class: "trace-title" }, "Top of the column above the sternal angle"), trace.node);
  const player = new Player(0, lengthMs(curve), (ms) => (figure.column(heightAt(curve, ms)), trace.at(ms)));
  if (!still) host.append(el("div", { class: "actions" }, el("button", { type: "button", onclick: () => player.play() }, "Watch again")));
  if (probe.shown.words) host.append(el("p", { class: "felt" }, probe.shown.words));
  figure.column(heightAt(curve, 0));
  if (fresh && !still) player.play();
  return `${amounts ? `${amounts}. ` : ""}The top of the column moves between ${amountText(lowest(curve))} and ${amountText(highest(curve))} mm above the sternal angle in ${amountText(lengthMs(curve) / 1000)} seconds. ${probe.shown.words ?? ""}`.trim();
}
