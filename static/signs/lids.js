// The opening between the lids, both eyes to scale, with a ruler beside each.

import { el, svg } from "../bedside/dom.js";
import { eyes, MM } from "./eyes.js";
import { amountText, curvesOf } from "./latest.js";

const PUPIL_MM = 4;
const RULER_MM = 14;
const FOOT = 26;

function ruler() {
  const ticks = Array.from({ length: RULER_MM + 1 }, (_, mm) => svg("path", { class: "gauge", d: `M0 ${-mm * MM}H${mm % 5 ? 5 : 9}` }));
  const numbers = [0, 5, 10].map((mm) => svg("text", { class: "tick", x: 13, y: -mm * MM + 4 }, mm));
  return svg("g", { transform: `translate(70 ${FOOT})` }, svg("path", { class: "gauge", d: `M0 0V${-RULER_MM * MM}` }), ...ticks, ...numbers);
}

export function lids(host, { probes }) {
  const probe = probes.at(-1);
  const pair = eyes({ gauged: false });
  for (const { name, samples } of curvesOf(probe)) {
    pair[name].set(PUPIL_MM);
    pair[name].open(samples[0]);
    pair[name].node.append(ruler());
  }
  pair.node.setAttribute("viewBox", "0 0 390 150");
  host.append(el("div", { class: "stage eyes-stage" }, el("div", { class: "figure-box" }, pair.node, el("p", { class: "quiet shown-side" }, "Ruler in millimetres"))));
  return `${curvesOf(probe).map(({ name, samples }) => `${name}: ${amountText(samples[0])} mm between the lids`).join("; ")}.`;
}
