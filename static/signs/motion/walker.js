// The geometry of a walk from the angles of its joints. Lengths in centimetres; x is the way walked, y is down.

import { heightAt, lengthMs } from "../curve.js";
import { hang, turned } from "./flesh.js";

export const THIGH = 42;
export const SHANK = 42;
const HEEL = [-6, 8];
const TOE = [17, 8];
const SIDES = ["right", "left"];
/** Of a stride: how long a foot bears weight, and how long it takes over from the other. */
const BEARS = 0.6;
const SHARED = 0.1;

/** The share of the weight that a leg bears, by the part of its stride that has passed since its heel came down. */
function bearing(strides) {
  const along = strides - Math.floor(strides);
  if (along < SHARED) return along / SHARED;
  if (along < BEARS - SHARED) return 1;
  return Math.max(0, (BEARS - along) / SHARED);
}

export class Walker {
  constructor({ curves, measures }) {
    this.curves = Object.fromEntries(curves.map((curve) => [curve.name, curve]));
    this.step = measures[0].amount;
    this.base = measures[1].amount;
    this.cadence = measures[2].amount;
    this.out = measures[3].amount;
    this.end = lengthMs(curves[0]);
    this.strideMs = 120000 / this.cadence;
    this.stepMs = curves[0].stepMs;
    this.gone = this.#way();
  }

  of(name, ms) {
    return heightAt(this.curves[name], ms);
  }

  #leg(side, ms) {
    const hip = this.of(`${side} hip`, ms);
    const shin = hip - this.of(`${side} knee`, ms);
    const knee = hang([0, 0], THIGH, hip);
    const ankle = hang(knee, SHANK, shin);
    const sole = -(shin + this.of(`${side} foot up`, ms));
    const [heel, toe] = [HEEL, TOE].map((part) => turned(ankle, part, sole));
    const strides = ms / this.strideMs + (side === "right" ? 0 : 0.5);
    return { knee, ankle, sole, heel, toe, low: Math.max(heel[1], toe[1]), weight: bearing(strides) };
  }

  /** How far the hips have gone at each sample: the foot that came down last does not slide. */
  #way() {
    const gone = [0];
    for (let ms = this.stepMs; ms <= this.end + 1e-6; ms += this.stepMs) {
      const strides = (ms - this.stepMs / 2) / this.strideMs;
      const side = strides - Math.floor(strides) < 0.5 ? "right" : "left";
      gone.push(gone.at(-1) + this.#leg(side, ms - this.stepMs).ankle[0] - this.#leg(side, ms).ankle[0]);
    }
    return { samples: gone, stepMs: this.stepMs };
  }

  /** Where everything is at a time; the hips at 0 across, the floor at 0. */
  pose(ms) {
    const legs = Object.fromEntries(SIDES.map((side) => [side, this.#leg(side, ms)]));
    const hips = SIDES.reduce((sum, side) => sum + legs[side].weight * legs[side].low, 0) / SIDES.reduce((sum, side) => sum + legs[side].weight, 0);
    for (const side of SIDES) {
      const leg = legs[side];
      leg.up = hips + Math.max(0, leg.low - hips);
      leg.outwards = this.of(`${side} leg outwards`, ms);
    }
    return { hips, legs, gone: heightAt(this.gone, ms) };
  }

  /** The prints of the feet: where each heel came down, along the way and to the right of its middle. */
  prints(count) {
    return Array.from({ length: count }, (_, index) => {
      const side = SIDES[index % 2];
      const ms = (index / 2) * this.strideMs;
      const { legs, gone } = this.pose(ms);
      const half = side === "right" ? this.base / 2 : -this.base / 2;
      return { side, along: gone + legs[side].ankle[0], across: half + this.of("body beside its way, to the right", ms) };
    });
  }
}
