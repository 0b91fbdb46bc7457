// Standing: the sway with open and with shut eyes, standing on one leg seen from behind, and rising from a chair.

import { el, svg } from "../../bedside/dom.js";
import { heightAt, highest, lengthMs, lowest } from "../curve.js";
import { amountText, curvesOf, measuresOf } from "../latest.js";
import { acted } from "./acted.js";
import { arrow, at, eyes, Flesh, flesh, FOOT, HAND, hang, headAside, headOn, line, picture } from "./flesh.js";
import { measuresText, sidesText } from "./steps.js";

const FLOOR = 236;
const PX = 1.3;
const PLAN = 3;

/** Somebody with the feet together, from the front, who can lean. */
function stander(open) {
  const body = svg("g", {},
    flesh(13, [[-8, 0], [-8, -50], [-9, -104]]), flesh(13, [[8, 0], [8, -50], [9, -104]]),
    svg("path", { class: "skin", d: "M-24 -178Q0 -190 24 -178L18 -106Q0 -96 -18 -106Z" }),
    flesh(8, [[-25, -174], [-27, -134], [-26, -102]]), flesh(8, [[25, -174], [27, -134], [26, -102]]),
    svg("g", { transform: "translate(0 -186)" }, headOn(1.25), eyes(open, 1.25)));
  const feet = [-8, 8].map((x) => svg("ellipse", { class: "skin", cx: 80 + x, cy: FLOOR - 5, rx: 7.5, ry: 5 }));
  const node = picture(160, 256, "stander", svg("path", { class: "grid zero", d: `M0 ${FLOOR}H160` }), ...feet, body,
    svg("text", { class: "tick", x: 2, y: 252 }, "right"), svg("text", { class: "tick", x: 158, y: 252, "text-anchor": "end" }, "left"));
  const lean = (cm) => {
    const degrees = (Math.asin(-cm / 100) * 180) / Math.PI;
    body.setAttribute("transform", `translate(80 ${FLOOR - 10}) rotate(${degrees.toFixed(2)})`);
    body.dataset.cm = cm;
  };
  return { node, lean };
}

/** The way of the middle of the body from above, the front upwards, with a ring for every five centimetres. */
function plan(right, front, title) {
  const trail = svg("path", { class: "trail", d: "" });
  const now = svg("circle", { class: "dot", r: 3 });
  const x = (ms) => 75 - heightAt(right, ms) * PLAN;
  const y = (ms) => 80 - heightAt(front, ms) * PLAN;
  const show = (ms) => {
    const count = Math.max(1, Math.round(ms / 100));
    trail.setAttribute("d", line(Array.from({ length: count + 1 }, (_, index) => [x((index / count) * ms), y((index / count) * ms)])));
    now.setAttribute("cx", x(ms).toFixed(1));
    now.setAttribute("cy", y(ms).toFixed(1));
  };
  const rings = [5, 10, 15, 20].map((cm) => svg("circle", { class: "ring", cx: 75, cy: 80, r: cm * PLAN }));
  const node = picture(150, 182, "plan", ...rings, svg("text", { class: "tick", x: 75, y: 12, "text-anchor": "middle" }, title),
    trail, now, svg("text", { class: "tick", x: 75, y: 160, "text-anchor": "middle" }, "rings 5 cm apart,"), svg("text", { class: "tick", x: 75, y: 176, "text-anchor": "middle" }, "the outer one 20 cm"));
  return { node, show };
}

function swaying(probe) {
  const [openRight, openFront, shutRight, shutFront] = curvesOf(probe);
  const parts = [[true, openRight, openFront, "eyes open"], [false, shutRight, shutFront, "eyes shut"]].map(([open, right, front, title]) => {
    const [body, above] = [stander(open), plan(right, front, title)];
    return { node: el("div", { class: "sway" }, body.node, above.node), show: (ms) => (body.lean(heightAt(right, ms)), above.show(ms)) };
  });
  return { node: el("div", { class: "walk" }, ...parts.map(({ node }) => node)), show: (ms) => parts.forEach((part) => part.show(ms)) };
}

export function sway(host, { probes, fresh, still }) {
  const last = fresh ?? probes.at(-1);
  const [openRight, openFront, shutRight, shutFront] = curvesOf(last);
  const end = lengthMs(openRight);
  const pair = (open, shut) => [{ name: "open", side: "right", curve: open }, { name: "shut", side: "left", curve: shut }];
  const traces = [["Sway to the right", pair(openRight, shutRight)], ["Sway to the front", pair(openFront, shutFront)]]
    .map(([title, series]) => ({ title, series, low: -20, high: 20, short: true }));
  acted(host, { probes: [last], make: swaying, end, stills: still ? [6000, 13000, end] : [end], traces, fresh, still });
  const range = (curve) => `${amountText(-lowest(curve))} cm one way and ${amountText(highest(curve))} cm the other`;
  return `${measuresText(last)}. Sideways with eyes open ${range(openRight)}, with eyes shut ${range(shutRight)}; to the back and front with eyes open ${range(openFront)}, with eyes shut ${range(shutFront)}.`;
}

/** From behind: the right is on the right. The named leg stands; the other is lifted with its knee bent. */
function oneLeg(probe) {
  const way = probe.side === "right" ? 1 : -1;
  const [curve] = curvesOf(probe);
  const pelvis = svg("g", {},
    svg("path", { class: "skin", d: "M-26 -4C-28 -20 -18 -26 0 -22C18 -26 28 -20 26 -4C22 12 8 18 0 18C-8 18 -22 12 -26 -4Z" }),
    svg("path", { class: "gauge crest", d: "M-30 -20H30" }));
  const swung = new Flesh(17);
  const stands = flesh(17, [[100 + way * 12, 152], [100 + way * 11, 196], [100 + way * 10, 242]]);
  const trunk = svg("path", { class: "skin", d: "M66 46Q100 34 134 46L122 124Q100 130 78 124Z" });
  const show = (ms) => {
    const down = heightAt(curve, ms);
    pelvis.setAttribute("transform", `translate(100 136) rotate(${(-way * down).toFixed(2)} ${way * 14} 8)`);
    pelvis.dataset.down = down;
    const hip = [100 - way * 12, 152 + Math.sin((down * Math.PI) / 180) * 26];
    swung.set([hip, [hip[0] - way * 4, hip[1] + 42], [hip[0] - way * 8, hip[1] + 54]]);
  };
  const node = picture(200, 276, "one-leg", svg("path", { class: "grid zero", d: "M0 252H200" }), swung.node, stands, svg("ellipse", { class: "skin", cx: 100 + way * 10, cy: 247, rx: 9, ry: 6 }),
    trunk, svg("path", { class: "skin", d: "M90 38C82 30 82 8 100 6C118 8 118 30 110 38Z" }), pelvis, svg("path", { class: "gauge-edge", d: "M52 116H148" }),
    svg("text", { class: "tick", x: 2, y: 16 }, "from"), svg("text", { class: "tick", x: 2, y: 34 }, "behind"), svg("text", { class: "tick", x: 2, y: 270 }, "left"), svg("text", { class: "tick", x: 198, y: 270, "text-anchor": "end" }, "right"));
  return { node, show };
}

export function oneLegStand(host, { probes, fresh, still }) {
  acted(host, { probes, make: oneLeg, end: lengthMs(curvesOf(probes.at(-1))[0]), stills: still ? [0, 3000] : [3000], fresh, still });
  return `Standing on that leg. ${sidesText(probes)}`;
}

const SEAT = 45;
const LEG = 42;

/** The knee of a bent leg: before the line from the ankle to the hip. */
function knee([ax, ay], [hx, hy]) {
  const apart = Math.min(Math.hypot(hx - ax, hy - ay), 2 * LEG - 0.01);
  const off = Math.sqrt(LEG * LEG - (apart / 2) ** 2);
  const [ux, uy] = [(hx - ax) / apart, (hy - ay) / apart];
  return [(ax + hx) / 2 + uy * off, (ay + hy) / 2 - ux * off];
}

function rising(probe) {
  const [height, bend, push] = curvesOf(probe);
  const place = ([x, y]) => [150 + x * PX, FLOOR - y * PX];
  const [leg, trunk, arm] = [new Flesh(15), new Flesh(24), new Flesh(9)];
  const head = svg("g", {}, headAside(1.15));
  const hand = svg("path", { class: "skin", d: HAND });
  const force = svg("path", { class: "force", d: "" });
  const [seatX, seatY] = place([-58, SEAT - 6]);
  const chair = svg("path", { class: "couch", d: `M${seatX} ${seatY}h62v6h-4V${FLOOR}h-5V${seatY + 6}H${seatX + 6}V${FLOOR}h-5ZM${seatX} ${seatY}l-8 -78h5l8 78Z` });
  const rest = svg("path", { class: "couch", d: `M${seatX - 2} ${seatY - 28}h48v5h-48Z` });
  const show = (ms) => {
    const up = heightAt(height, ms);
    const part = up / 45;
    const hip = [-40 * (1 - part), SEAT + 2 + up];
    const ankle = [0, 8];
    leg.set([hip, knee(ankle, hip), ankle].map(place));
    const bent = heightAt(bend, ms);
    const shoulder = hang(place(hip), -50 * PX, -bent);
    trunk.set([place(hip), shoulder]);
    head.setAttribute("transform", at(...hang(shoulder, -16, -bent), bent * 0.6));
    const weight = heightAt(push, ms);
    const pressed = Math.min(1, weight / 12);
    const wrist = [shoulder[0] + 22 - pressed * (shoulder[0] + 22 - seatX - 40), shoulder[1] + 22 + pressed * (seatY - 30 - shoulder[1] - 22)];
    arm.set([shoulder, [(shoulder[0] + wrist[0]) / 2 - 12 * pressed - 8, (shoulder[1] + wrist[1]) / 2 + 12], wrist]);
    hand.setAttribute("transform", at(...wrist, -60));
    force.setAttribute("d", arrow(weight * 0.8));
    force.setAttribute("transform", `translate(${wrist[0].toFixed(1)} ${(wrist[1] + 6).toFixed(1)}) rotate(90)`);
    force.setAttribute("visibility", weight > 1 ? "visible" : "hidden");
    leg.edge.dataset.up = up;
  };
  const foot = svg("path", { class: "skin", d: FOOT, transform: `${at(...place([0, 8]))} scale(${PX})` });
  return { node: picture(260, 256, "chair", svg("path", { class: "grid zero", d: `M0 ${FLOOR}H260` }), chair, foot, leg.node, trunk.node, head, rest, arm.node, hand, force), show };
}

export function chairRise(host, { probes, fresh, still }) {
  const last = fresh ?? probes.at(-1);
  const [height, , push] = curvesOf(last);
  const end = lengthMs(height);
  const traces = [{ title: "Hips above the seat", series: [{ name: "", side: "right", curve: height }], low: 0, high: 50, short: true }, { title: "Weight on the arms, % of body weight", series: [{ name: "", side: "right", curve: push }], low: 0, high: 100, short: true }];
  acted(host, { probes: [last], make: rising, end, stills: still ? [0, measuresOf(last)[1].amount * 450, end] : [measuresOf(last)[1].amount * 450], traces, fresh, still });
  return `${measuresText(last)}.`;
}
