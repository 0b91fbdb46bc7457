// Arms held out: seen from the front at the height of the shoulders, and for two minutes from the side.

import { el, svg } from "../../bedside/dom.js";
import { heightAt, lengthMs } from "../curve.js";
import { amountText, curvesOf, latestBySide } from "../latest.js";
import { seriesOf } from "../moving.js";
import { acted } from "./acted.js";
import { at, eyes, Flesh, flesh, headAside, headOn, hang, picture } from "./flesh.js";
import { sidesText } from "./steps.js";

const SHOULDER = 96;
const PX = 4;
const LEVEL = 118;

/**
 * The patient from the front, the hands held out towards the eye. The palm is up at the start: the thumb points outwards,
 * and turns up and inwards with the palm. A ruler in centimetres stands beside each hand.
 */
function hand(probe) {
  const way = probe.side === "right" ? -1 : 1;
  const [sinks, turns] = curvesOf(probe);
  const [shoulderX, handX] = [170 + way * 40, 170 + way * 76];
  const arm = svg("path", { class: "skin", d: "" });
  const end = svg("g", { class: "end-on" },
    svg("path", { class: "skin", d: "M20 -2C24 -9 34 -12 38 -7C40 -2 34 5 28 5Z" }),
    svg("path", { class: "skin", d: "M-25 2C-26 -7 -18 -9 0 -9C18 -9 26 -7 25 2C24 10 14 11 0 11C-14 11 -24 10 -25 2Z" }),
    ...[-17, -6, 6, 17].map((x) => svg("ellipse", { class: "skin", cx: x, cy: 0, rx: 5.6, ry: 6.5 })),
    svg("path", { class: "palm-line", d: "M0 -13V-28M-5 -22L0 -28L5 -22" }));
  const ticks = Array.from({ length: 12 }, (_, index) => index * 5 - 10);
  const scale = svg("g", {}, svg("path", { class: "stop-watch", d: `M${170 + way * 44} ${LEVEL}H${170 + way * 150}` }),
    svg("path", { class: "gauge", d: ticks.map((cm) => `M${170 + way * 132} ${LEVEL + cm * PX}h${way * (cm % 10 ? 6 : 11)}`).join("") }),
    ...ticks.filter((cm) => cm % 10 === 0).map((cm) => svg("text", { class: "tick", x: 170 + way * 147, y: LEVEL + cm * PX + 4, "text-anchor": way < 0 ? "end" : "start" }, cm)));
  const show = (ms) => {
    const [down, turn] = [heightAt(sinks, ms), heightAt(turns, ms)];
    const y = LEVEL + down * PX;
    arm.setAttribute("d", `M${shoulderX - way * 9} ${LEVEL - 12}L${handX - way * 13} ${y - 8}L${handX + way * 13} ${y + 8}L${shoulderX + way * 7} ${LEVEL + 14}Z`);
    end.setAttribute("transform", `${at(handX, y)} scale(${way} 1) rotate(${(-turn).toFixed(2)})`);
    end.dataset.down = down;
    end.dataset.turned = turn;
  };
  return { node: svg("g", {}, scale, arm, end), show };
}

function heldOut(probes) {
  const hands = probes.map(hand);
  const node = picture(340, 320, "held-out",
    svg("path", { class: "skin", d: "M122 128Q124 96 158 92H182Q216 96 218 128L212 262H128Z" }),
    svg("g", { transform: "translate(170 90) scale(1.600)" }, headOn(), eyes(false)), ...hands.map((one) => one.node),
    svg("text", { class: "tick", x: 2, y: 316 }, "right"), svg("text", { class: "tick", x: 338, y: 316, "text-anchor": "end" }, "left"));
  return { node, show: (ms) => hands.forEach((one) => one.show(ms)) };
}

export function armDrift(host, { probes, fresh, still }) {
  const end = lengthMs(curvesOf(probes.at(-1))[0]);
  const traces = [{ title: "Hand below its place", series: seriesOf(probes), low: -10, high: 50, short: true }, { title: "Palm turned in", series: seriesOf(probes, (curves) => curves[1]), low: 0, high: 60, short: true }];
  acted(host, { probes, make: heldOut, together: true, end, stills: still ? [0, 8000, end] : [end], pace: 4, traces, fresh, still });
  host.append(el("p", { class: "quiet" }, "Each ruler: centimetres below the start. Each arrow points out of the palm."));
  return `Eyes shut, twenty seconds. ${sidesText(probes)}`;
}

/** From the side: the arm held out level. */
function heldLong(probe) {
  const [below] = curvesOf(probe);
  const arm = new Flesh(11);
  const hand = svg("path", { class: "skin", d: "M0 -4C8 -6 22 -6 24 -2C26 3 10 5 0 4Z" });
  const ray = (degrees) => svg("path", { class: "grid", d: `M${hang([70, SHOULDER], 84, 90 - degrees).join(" ")}L${hang([70, SHOULDER], 118, 90 - degrees).join(" ")}` });
  const node = picture(230, 220, "held-long", ...[0, 30, 60].map(ray), ...[0, 30, 60].map((d) => svg("text", { class: "tick", x: hang([70, SHOULDER], 122, 90 - d)[0], y: hang([70, SHOULDER], 122, 90 - d)[1] + 5 }, `${d}°`)),
    flesh(40, [[66, 112], [64, 200]]), svg("g", { transform: "translate(66 74)" }, headAside(1.3)), arm.node, hand);
  const show = (ms) => {
    const down = heightAt(below, ms);
    const wrist = hang([70, SHOULDER], 76, 90 - down);
    arm.set([[70, SHOULDER], wrist]);
    hand.setAttribute("transform", at(...wrist, down));
    hand.dataset.down = down;
  };
  return { node, show };
}

export function armsHeld(host, { probes, fresh, still }) {
  const end = lengthMs(curvesOf(probes.at(-1))[0]);
  acted(host, { probes, make: heldLong, end, stills: still ? [0, 40000, 60000, end] : [end], pace: 20, traces: [{ title: "Arm below level", series: seriesOf(probes), low: 0, high: 80, short: true }], fresh, still });
  const ends = latestBySide(probes).map((probe) => `${probe.side} ${amountText(curvesOf(probe)[0].samples.at(-1))} degrees below level at the end`);
  return `${sidesText(probes)} ${ends.join(", ")}.`;
}
