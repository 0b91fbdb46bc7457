// Walking, from the side and from the front, with the prints of the feet from above.

import { el, svg } from "../../bedside/dom.js";
import { highest, lowest } from "../curve.js";
import { amountText, measuresOf } from "../latest.js";
import { acted } from "./acted.js";
import { Flesh, FOOT, HAND, at, eyes, hang, headAside, headOn, picture } from "./flesh.js";
import { footprints } from "./footprints.js";
import { Walker } from "./walker.js";

const SCALE = 1.3;
const FLOOR = 236;
const TRUNK = 50;
const [UPPER, FORE] = [29, 25];
const SIDES = ["right", "left"];
const TICK_CM = 25;

/** From the right side, walking to the right of the picture: the left limbs are the far ones. */
class Aside {
  constructor(walker) {
    this.walker = walker;
    this.ground = svg("path", { class: "grid", d: "" });
    const limb = (side) => ({ leg: new Flesh(13, side === "left"), arm: new Flesh(8, side === "left"), foot: svg("path", { class: side === "left" ? "skin far" : "skin", d: FOOT }), hand: svg("path", { class: side === "left" ? "skin far" : "skin", d: HAND }) });
    this.limbs = { left: limb("left"), right: limb("right") };
    this.trunk = new Flesh(24);
    this.head = svg("g", {}, headAside(1.15));
    const { left, right } = this.limbs;
    this.node = picture(260, 256, "walk-aside", svg("path", { class: "grid zero", d: `M0 ${FLOOR}H260` }), this.ground,
      left.arm.node, left.hand, left.foot, left.leg.node, right.foot, right.leg.node, this.trunk.node, this.head, right.arm.node, right.hand);
  }

  show(ms) {
    const { hips, legs, gone } = this.walker.pose(ms);
    const place = ([x, y], up) => [130 + x * SCALE, FLOOR - (up - y) * SCALE];
    const hip = place([0, 0], hips);
    for (const side of SIDES) {
      const leg = legs[side];
      const ankle = place(leg.ankle, leg.up);
      this.limbs[side].leg.set([place([0, 0], leg.up), place(leg.knee, leg.up), ankle]);
      this.limbs[side].foot.setAttribute("transform", `${at(...ankle, leg.sole)} scale(${SCALE})`);
    }
    const bent = this.walker.of("trunk bent forward", ms);
    const shoulder = hang(hip, -TRUNK * SCALE, -bent);
    this.trunk.set([hip, hang(hip, -TRUNK * SCALE * 0.55, -bent), shoulder]);
    this.head.setAttribute("transform", at(...hang(shoulder, -16, -bent * 1.3), bent * 0.7));
    for (const side of SIDES) this.#arm(side, shoulder, ms);
    this.#floor(gone);
  }

  #arm(side, shoulder, ms) {
    const swing = this.walker.of(`${side} arm`, ms);
    const fore = swing + this.walker.of(`${side} elbow`, ms);
    const elbow = hang(shoulder, UPPER * SCALE, swing);
    const wrist = hang(elbow, FORE * SCALE, fore);
    this.limbs[side].arm.set([shoulder, elbow, wrist]);
    this.limbs[side].arm.edge.dataset.swing = swing;
    this.limbs[side].hand.setAttribute("transform", at(...wrist, -fore));
  }

  #floor(gone) {
    const first = Math.ceil((gone - 100) / TICK_CM);
    const marks = Array.from({ length: 8 }, (_, index) => 130 + ((first + index) * TICK_CM - gone) * SCALE);
    this.ground.setAttribute("d", marks.map((x) => `M${x.toFixed(1)} ${FLOOR}v8`).join(""));
  }
}

/** From the front, coming towards the eye: the right limbs are on the left of the picture. */
class FromFront {
  /** @param named whether the sides are written below it */
  constructor(walker, named = true) {
    this.walker = walker;
    const limb = () => ({ leg: new Flesh(13), arm: new Flesh(8), foot: svg("ellipse", { class: "skin", rx: 7, ry: 5 }), hand: svg("path", { class: "skin", d: HAND }) });
    this.limbs = { right: limb(), left: limb() };
    this.trunk = svg("path", { class: "skin", d: "" });
    this.pelvis = svg("path", { class: "stop-watch pelvis-line", d: "" });
    this.head = svg("g", {}, headOn(1.25), eyes(true, 1.25));
    const { left, right } = this.limbs;
    this.node = picture(180, 256, "walk-front", svg("path", { class: "grid zero", d: `M0 ${FLOOR}H180` }),
      ...(named ? [svg("text", { class: "tick", x: 2, y: 252 }, "right"), svg("text", { class: "tick", x: 178, y: 252, "text-anchor": "end" }, "left")] : []),
      right.foot, left.foot, right.leg.node, left.leg.node, this.trunk, right.arm.node, left.arm.node, right.hand, left.hand, this.head, this.pelvis);
  }

  show(ms) {
    const { hips, legs } = this.walker.pose(ms);
    const [tilt, lean] = [this.walker.of("pelvis, right side down", ms), this.walker.of("trunk to the right", ms)];
    const middle = [90, FLOOR - hips * SCALE];
    const half = 11 * SCALE;
    const hipOf = (side) => [middle[0] + (side === "right" ? -half : half), middle[1] + (side === "right" ? 1 : -1) * half * Math.sin((tilt * Math.PI) / 180)];
    for (const side of SIDES) {
      const leg = legs[side];
      const hip = hipOf(side);
      const y = (point) => FLOOR - (leg.up - point[1]) * SCALE;
      const x = 90 + (side === "right" ? -1 : 1) * (this.walker.base / 2 + leg.outwards) * SCALE;
      const ankle = [x, y(leg.ankle)];
      this.limbs[side].leg.set([hip, [(hip[0] + x) / 2, y(leg.knee)], ankle]);
      const foot = this.limbs[side].foot;
      foot.setAttribute("cx", (x + (side === "right" ? -1 : 1) * this.walker.out * 0.25).toFixed(1));
      foot.setAttribute("cy", (ankle[1] + 6).toFixed(1));
    }
    this.pelvis.setAttribute("d", `M${hipOf("right").join(" ")}L${hipOf("left").join(" ")}`);
    this.pelvis.dataset.tilt = tilt;
    this.#upper(middle, lean, ms);
  }

  #upper(middle, lean, ms) {
    const neck = hang(middle, -TRUNK * SCALE, lean);
    const shoulders = { right: [neck[0] - 24, neck[1] + 4 - lean * 0.3], left: [neck[0] + 24, neck[1] + 4 + lean * 0.3] };
    const { right, left } = shoulders;
    this.trunk.setAttribute("d", `M${right.join(" ")}Q${neck[0]} ${neck[1] - 6} ${left.join(" ")}L${middle[0] + 18} ${middle[1] + 8}Q${middle[0]} ${middle[1] + 16} ${middle[0] - 18} ${middle[1] + 8}Z`);
    this.head.setAttribute("transform", at(...hang(neck, -7, lean * 0.6), -lean * 0.5));
    for (const side of SIDES) {
      const way = side === "right" ? -1 : 1;
      const [swing, bend] = [this.walker.of(`${side} arm`, ms), this.walker.of(`${side} elbow`, ms)];
      const elbow = [shoulders[side][0] + way * 6, shoulders[side][1] + UPPER * SCALE * Math.cos((swing * Math.PI) / 180)];
      const drop = Math.cos(((bend + swing) * Math.PI) / 180);
      const wrist = [elbow[0] - way * 20 * Math.sin((bend * Math.PI) / 180), elbow[1] + FORE * SCALE * drop];
      this.limbs[side].arm.set([shoulders[side], elbow, wrist]);
      this.limbs[side].hand.setAttribute("transform", at(...wrist, way * bend * 0.6, -way));
    }
  }
}

function figure(probe) {
  const walker = new Walker(probe.shown);
  const views = [new Aside(walker), new FromFront(walker)];
  return { node: el("div", { class: "walk" }, ...views.map(({ node }) => node)), show: (ms) => views.forEach((view) => view.show(ms)) };
}

const FRAMES = 8;

/** One stride of the right leg in eight stills, from the side and from the front. */
function stride(probe) {
  const walker = new Walker(probe.shown);
  const frames = Array.from({ length: FRAMES }, (_, index) => {
    const views = [new Aside(walker), new FromFront(walker, index === 0)];
    views.forEach((view) => view.show((index / FRAMES) * walker.strideMs));
    return el("div", { class: "walk-frame" }, ...views.map(({ node }) => node));
  });
  return el("div", { class: "walk-stride" }, ...frames);
}

export function gait(host, { probes, fresh, still }) {
  const last = fresh ?? probes.at(-1);
  const walker = new Walker(last.shown);
  if (!still) acted(host, { probes: [last], make: figure, end: walker.end, stills: [0], fresh, still });
  host.append(el("p", { class: "trace-title" }, `One stride in eight stills, ${amountText(walker.strideMs / 1000)} s; the left limbs are fainter`), stride(last),
    el("p", { class: "trace-title" }, "The first five steps from above"), footprints(walker));
  return said(last, walker);
}

function said(probe, walker) {
  const swing = (name) => amountText(highest(walker.curves[name]) - lowest(walker.curves[name]), 0);
  const most = (name) => amountText(highest(walker.curves[name]), 0);
  const parts = [
    ...measuresOf(probe).map(({ label, amount, unit }) => `${label} ${amountText(amount)} ${unit}`.trim()),
    ...SIDES.map((side) => `${side} arm swings through ${swing(`${side} arm`)} degrees with the elbow bent by up to ${most(`${side} elbow`)}`),
    ...SIDES.map((side) => `${side} hip moves through ${swing(`${side} hip`)} degrees, knee bends up to ${most(`${side} knee`)}, foot hangs down by up to ${amountText(-lowest(walker.curves[`${side} foot up`]), 0)}, leg goes outwards by up to ${most(`${side} leg outwards`)} cm`),
    `right side of the pelvis goes down by up to ${most("pelvis, right side down")} degrees, left side by up to ${amountText(-lowest(walker.curves["pelvis, right side down"]), 0)}`,
    `trunk sways through ${swing("trunk to the right")} degrees, between ${amountText(lowest(walker.curves["trunk to the right"]), 0)} and ${most("trunk to the right")} to the right`,
    `trunk bent forward ${most("trunk bent forward")} degrees`,
    `body between ${amountText(lowest(walker.curves["body beside its way, to the right"]), 0)} and ${most("body beside its way, to the right")} cm to the right of its way`,
  ];
  return `${parts.join("; ")}.`;
}
