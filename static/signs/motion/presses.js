// What a leg does on asking and by itself, with both hands of the examiner; and a field of vision at two distances.

import { el, svg } from "../../bedside/dom.js";
import { heightAt, highest, lengthMs } from "../curve.js";
import { amountText, curvesOf, measuresOf } from "../latest.js";
import { seriesOf } from "../moving.js";
import { onAPartner } from "../partner.js";
import { acted } from "./acted.js";
import { arrow, at, flesh, Flesh, FOOT, picture } from "./flesh.js";
import { sidesText } from "./steps.js";

const NEWTON = 0.32;

/** Lying, from the side: the heel on the examiner's hand; in the second picture the other leg is lifted. */
function heel(curve, liftsOther, title) {
  const force = svg("path", { class: "force", d: "" });
  const number = svg("text", { class: "trace-name", x: 188, y: 150, "text-anchor": "end" });
  const other = new Flesh(20, true);
  const node = picture(250, 170, "heels", svg("text", { class: "tick", x: 2, y: 14 }, title), svg("path", { class: "couch", d: "M0 112H186V122H0Z" }), svg("path", { class: "couch", d: "M186 126H250V132H186Z" }),
    other.node, flesh(24, [[6, 96], [90, 96], [194, 98]]), svg("g", { transform: "translate(200 96) rotate(-90) scale(1.700)" }, svg("path", { class: "skin", d: FOOT })),
    svg("path", { class: "helper", d: "M172 116C184 110 214 110 226 116C226 124 212 126 200 126C188 126 172 124 172 116Z" }), force, number);
  const show = (ms) => {
    const newton = heightAt(curve, ms);
    other.set([[6, 92], liftsOther ? [92, 70] : [90, 92], liftsOther ? [188, 40] : [190, 92]]);
    force.setAttribute("d", arrow(newton * NEWTON));
    force.setAttribute("transform", at(200, 116, 90));
    number.textContent = `${amountText(newton, 0)} N`;
    number.dataset.newton = newton;
  };
  return { node, show };
}

/** Lying, from above: hands outside both ankles; in the second picture the other leg pushes out. */
function outwards(curve, otherPushes, title, side) {
  const way = side === "right" ? -1 : 1;
  const force = svg("path", { class: "force", d: "" });
  const number = svg("text", { class: "trace-name", x: 125 + way * 96, y: 148, "text-anchor": "middle" });
  const leg = new Flesh(20);
  const [own, across] = [125 + way * 28, 125 - way * 28];
  const hand = (x, out) => svg("path", { class: "helper", d: `M${x} 122c${out * 10} -6 ${out * 20} -4 ${out * 22} 6c0 10 ${out * -10} 14 ${out * -22} 10Z` });
  const node = picture(250, 170, "ankles", svg("text", { class: "tick", x: 2, y: 14 }, title), flesh(20, [[across, 30], [across, 148]]), leg.node, hand(own + way * 12, way), hand(across - way * 12, -way),
    svg("path", { class: "force", d: arrow(otherPushes ? 44 : 0), transform: at(across - way * 12, 112, way > 0 ? 180 : 0), visibility: otherPushes ? "visible" : "hidden" }), force, number,
    svg("text", { class: "tick", x: 2, y: 166 }, "right"), svg("text", { class: "tick", x: 248, y: 166, "text-anchor": "end" }, "left"));
  const show = (ms) => {
    const newton = heightAt(curve, ms);
    const given = otherPushes ? Math.max(0, 1 - newton / 120) * 18 : 0;
    leg.set([[own, 30], [own - way * given, 148]]);
    force.setAttribute("d", arrow(newton * NEWTON));
    force.setAttribute("transform", at(own + way * 12, 104, way > 0 ? 0 : 180));
    number.textContent = `${amountText(newton, 0)} N`;
    number.dataset.newton = newton;
  };
  return { node, show };
}

export function twoPresses(host, { manoeuvre, probes, fresh, still }) {
  const draw = manoeuvre.id.startsWith("hoover") ? heel : outwards;
  const make = (probe) => {
    const parts = curvesOf(probe).map((curve, index) => draw(curve, index === 1, index ? "while the other leg works" : "on asking", probe.side));
    return { node: el("div", { class: "sway" }, ...parts.map((part) => part.node)), show: (ms) => parts.forEach((part) => part.show(ms)) };
  };
  const end = lengthMs(curvesOf(probes.at(-1))[0]);
  const most = Math.max(...probes.flatMap((probe) => curvesOf(probe).map(highest)), 180);
  const traces = curvesOf(probes.at(-1)).map(({ name }, index) => ({ title: name, series: seriesOf(probes, (curves) => curves[index]), low: 0, high: most, short: true }));
  acted(host, { probes, make, end, stills: [end], traces, fresh, still });
  host.append(onAPartner());
  return sidesText(probes);
}

/** From above: the head at the left, a screen at one and at two metres, and how much of each is seen. */
export function fieldByDistance(host, { probes, fresh }) {
  const last = fresh ?? probes.at(-1);
  const [near, far] = measuresOf(last).map(({ amount }) => amount);
  const px = 0.95;
  const [x, y] = [40, 130];
  const screen = (metres, cm) => {
    const at0 = x + metres * 100 * px;
    const half = (cm / 2) * px;
    return [svg("path", { class: "grid zero", d: `M${at0} 12V248` }), svg("path", { class: "seen", d: `M${at0} ${y - half}V${y + half}`, "data-cm": cm }), svg("path", { class: "gauge-edge", d: `M${at0 - 8} ${y - half}h16M${at0 - 8} ${y + half}h16` }),
      svg("text", { class: "trace-name", x: at0 + 8, y: y + 4 }, `${amountText(cm)} cm`), svg("text", { class: "tick", x: at0, y: 264, "text-anchor": "middle" }, `${metres} m`)];
  };
  host.append(picture(320, 270, "field", svg("path", { class: "trail shut", d: `M${x} ${y}L${x + 100 * px} ${y - (near / 2) * px}L${x + 200 * px} ${y - (far / 2) * px}M${x} ${y}L${x + 100 * px} ${y + (near / 2) * px}L${x + 200 * px} ${y + (far / 2) * px}` }),
    ...screen(1, near), ...screen(2, far), svg("ellipse", { class: "skin", cx: 24, cy: y, rx: 18, ry: 15 }), svg("path", { class: "skin", d: `M41 ${y - 4}l7 4l-7 4Z` })));
  return sidesText([last]);
}

