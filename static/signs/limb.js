// A jointed limb that can be set to an angle, with the hammer that taps it. The limb at rest stays behind as a ghost.

import { svg } from "../bedside/dom.js";

const SWING = 50;
const SWING_MS = 160;
const GRIP = [-9, 58];

const hammer = () =>
  svg("g", { class: "hammer" }, svg("path", { d: `M-9 6V${GRIP[1]}` }), svg("path", { class: "rubber", d: "M0 0 -15 -10V10Z" }));

/** Both parts are first stroked and then filled, so that no line crosses the joint. */
const edge = (d) => svg("path", { class: "limb-edge", d });
const inside = (d) => svg("path", { class: "limb-inside", d });

export class Limb {
  constructor(limb, { tapped = true } = {}) {
    this.limb = limb;
    this.moving = [svg("g", {}, edge(limb.moving)), svg("g", {}, inside(limb.moving))];
    this.hammer = tapped ? hammer() : svg("g");
    this.node = svg(
      "svg",
      { class: "limb", viewBox: "-16 0 208 176", width: 240, height: 203, "aria-hidden": "true" },
      svg("path", { class: "limb-behind", d: limb.behind ?? "" }),
      ...(limb.names ?? []).map(([name, x, y]) => svg("text", { class: "tick", x, y }, name)),
      svg("path", { class: "limb-ghost", d: limb.moving }),
      edge(limb.rest), this.moving[0], inside(limb.rest), this.moving[1],
      this.hammer,
    );
    this.set(0);
    this.swing(0);
  }

  /** Turns the moving part by so many degrees in the direction of the reflex. */
  set(degrees) {
    const [x, y] = this.limb.joint;
    for (const group of this.moving) group.setAttribute("transform", `rotate(${this.limb.turn * degrees} ${x} ${y})`);
  }

  /** Where the hammer is, so many milliseconds before (negative) or after the tap; once it has swung back it is taken away. */
  swing(ms) {
    this.hammer.setAttribute("visibility", ms > SWING_MS ? "hidden" : "visible");
    const { tap, strike, handle } = this.limb;
    const away = Math.min(Math.abs(ms) / SWING_MS, 1) * SWING;
    this.hammer.setAttribute("transform", `translate(${tap.join(" ")}) rotate(${strike}) scale(1 ${handle}) rotate(${-away} ${GRIP.join(" ")})`);
  }
}
