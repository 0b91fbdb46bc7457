// A joint moved by the examiner, slowly and quickly: the limb in the examiner's hand, and the resistance over the angle.

import { el, svg } from "../../bedside/dom.js";
import { heightAt, highest, lengthMs } from "../curve.js";
import { amountText, curvesOf, latestBySide, measuresOf, sideText } from "../latest.js";
import { onAPartner } from "../partner.js";
import { between, roundStep, ticks } from "../scale.js";
import { acted } from "./acted.js";
import { arrow, at, Flesh, flesh, FOOT, hang, picture } from "./flesh.js";

// Of each joint: where the resting part lies, the joint, the length of the moved part, the direction in which it begins (0
// hangs down, 90 to the right) and the way it turns (1 towards the right), and what is at its end.
const JOINTS = {
  elbow: { rest: [[30, 40], [66, 120]], thick: [26, 20], length: 78, begins: 200, turns: -1, end: "hand", names: ["shoulder", "elbow"] },
  wrist: { rest: [[10, 100], [92, 100]], thick: [22, 19], length: 44, begins: 30, turns: 1, end: "none", names: ["forearm", "wrist"] },
  knee: { rest: [[10, 70], [96, 66]], thick: [38, 26], length: 92, begins: 90, turns: -1, end: "foot", names: ["thigh", "knee"] },
  ankle: { rest: [[96, 6], [90, 102]], thick: [28, 12], length: 30, begins: 78, turns: 1, end: "sole", names: ["shin", "ankle"] },
};
const jointOf = (id) => JOINTS[Object.keys(JOINTS).find((name) => id.includes(name))] ?? JOINTS.elbow;

function tip(end) {
  if (end === "foot") return svg("path", { class: "skin", d: FOOT, transform: "scale(1.700)" });
  if (end === "hand") return svg("path", { class: "skin", d: "M-9 0C-12 10 -11 24 -5 28C3 31 10 26 10 14L9 0Z" });
  return svg("path", { class: "outline", d: "M0 0" });
}

/** @param curves (probe) => [force, angle] */
function movedLimb(joint, curves) {
  return (probe) => {
    const [force, angle] = curves(probe);
    const moved = new Flesh(joint.thick[1]);
    const end = svg("g", {}, joint.end === "sole" ? svg("path", { class: "skin", d: FOOT, transform: "scale(2.600)" }) : tip(joint.end));
    const hand = svg("g", {}, svg("path", { class: "helper", d: "M-16 -9C-4 -14 10 -13 15 -6C19 2 12 11 2 11C-8 12 -18 10 -20 4Z" }));
    const push = svg("path", { class: "force", d: "" });
    const at0 = joint.rest[1];
    const node = picture(200, 210, "moved", ...(joint.end === "sole" ? [end] : []), flesh(joint.thick[0], joint.rest), moved.node, ...(joint.end === "sole" ? [] : [end]), hand, push,
      svg("text", { class: "tick", x: Math.max(-58, joint.rest[0][0] - 88), y: joint.rest[0][1] - 26 < 12 ? 14 : joint.rest[0][1] - 26 }, joint.names[0]));
    node.setAttribute("viewBox", "-60 0 280 210");
    const show = (ms) => {
      const direction = joint.begins + joint.turns * heightAt(angle, ms);
      const held = hang(at0, joint.length, direction);
      if (joint.end === "sole") {
        end.setAttribute("transform", at(at0[0], at0[1], joint.begins + 12 - direction));
        moved.set([at0, at0]);
      } else {
        moved.set([at0, held]);
        end.setAttribute("transform", at(...held, -direction));
      }
      const grip = hang(at0, joint.length * (joint.end === "hand" ? 0.92 : 0.9), direction);
      hand.setAttribute("transform", at(...grip, 90 - direction));
      const newton = heightAt(force, ms);
      push.setAttribute("d", arrow(8 + newton * 1.6));
      push.setAttribute("transform", at(...hang(grip, 14, direction), (joint.turns > 0 ? 180 : 0) - direction));
      moved.edge.dataset.angle = heightAt(angle, ms);
    };
    return { node, show };
  };
}

const [WIDE, TALL] = [300, 200];
const PAD = { left: 34, right: 12, top: 28, bottom: 30 };

/** Resistance over the angle of the joint up to its axes' ends; slow solid, quick dashed, each named. */
function overAngle(lines, { most, widest }) {
  const x = between(0, widest, PAD.left, WIDE - PAD.right);
  const y = between(0, most, TALL - PAD.bottom, PAD.top);
  const path = ({ force, angle }) => force.samples.map((newton, index) => `${index ? "L" : "M"}${x(angle.samples[index]).toFixed(1)} ${y(newton).toFixed(1)}`).join("");
  const across = ticks(0, widest, roundStep(widest, 5));
  const up = ticks(0, most, roundStep(most, 4));
  const node = picture(WIDE, TALL, "over-angle",
    ...across.flatMap((degrees) => [svg("path", { class: "grid", d: `M${x(degrees)} ${PAD.top}V${TALL - PAD.bottom}` }), svg("text", { class: "tick", x: x(degrees), y: TALL - 14, "text-anchor": "middle" }, `${degrees}°`)]),
    ...up.flatMap((newton) => [svg("path", { class: newton ? "grid" : "grid zero", d: `M${PAD.left} ${y(newton)}H${WIDE - PAD.right}` }), svg("text", { class: "tick", x: PAD.left - 5, y: y(newton) + 4, "text-anchor": "end" }, newton)]),
    svg("text", { class: "tick", x: 2, y: 11 }, "N"),
    ...lines.map((one) => svg("path", { class: `curve ${one.dashed ? "left" : "right"}`, d: path(one) })),
    ...lines.map(({ name, dashed }, index) => svg("g", {}, svg("path", { class: `curve ${dashed ? "left" : "right"}`, d: `M${60 + index * 110} 12h26` }), svg("text", { class: "tick", x: 92 + index * 110, y: 16 }, name))));
  return node;
}

/** The angle at which the resistance is greatest. */
export function strongestAt(force, angle) {
  const index = force.samples.indexOf(highest(force));
  return angle.samples[index];
}

function drawn(host, { manoeuvre, probes, fresh, still }, { curves, lines, axes }) {
  const joint = jointOf(manoeuvre.id);
  const sides = latestBySide(probes);
  const end = lengthMs(curves(sides[0])[0]);
  acted(host, { probes, make: movedLimb(joint, curves), end, stills: still ? [0, 220, end] : [220], fresh, still, again: "Move it again, quickly" });
  const plots = sides.map((probe) => el("div", { class: "act" }, el("b", { class: "act-side" }, `${sideText(probe.side)}: resistance over the angle`), overAngle(lines(probe), axes)));
  host.append(el("div", { class: "acts", "data-figures": plots.length }, ...plots), onAPartner());
}

export function tone(host, view) {
  const lines = (probe) => {
    const [slow, quick, slowAngle, quickAngle] = curvesOf(probe);
    return [{ name: "slowly", force: slow, angle: slowAngle, dashed: false }, { name: "quickly", force: quick, angle: quickAngle, dashed: true }];
  };
  drawn(host, view, { curves: (probe) => [curvesOf(probe)[1], curvesOf(probe)[3]], lines, axes: { most: 25, widest: highest(curvesOf(view.probes.at(-1))[2]) } });
  return `${latestBySide(view.probes).map((probe) => said(probe, lines(probe))).join(" ")}`;
}

export function stretch(host, view) {
  const lines = (probe) => [{ name: "in a second", force: curvesOf(probe)[0], angle: curvesOf(probe)[1], dashed: false }];
  drawn(host, view, { curves: (probe) => curvesOf(probe), lines, axes: { most: 60, widest: 140 } });
  return `${latestBySide(view.probes).map((probe) => `${said(probe, lines(probe))} ${measuresOf(probe).map(({ label, amount, unit }) => `${label} ${amountText(amount)} ${unit}`).join("; ")}.`).join(" ")}`;
}

const said = (probe, lines) =>
  `${sideText(probe.side)}: ${lines.map(({ name, force, angle }) => `moved ${name}, resistance rises to ${amountText(highest(force))} N at ${amountText(strongestAt(force, angle), 0)} degrees of ${amountText(highest(angle), 0)}, and is ${amountText(force.samples[Math.max(0, angle.samples.findIndex((one) => one >= highest(angle) * 0.75))])} N three quarters of the way`).join("; ")}.`;
