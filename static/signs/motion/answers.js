// What answers where it need not: the thumb to a flicked finger, the other thigh to a tap, the fingers to a tap on the
// radius; and how long a knee swings.

import { svg } from "../../bedside/dom.js";
import { heightAt, highest, lengthMs, lowest } from "../curve.js";
import { amountText, curvesOf, latestBySide, sideText } from "../latest.js";
import { Limb } from "../limb.js";
import { limbFor } from "../limbs.js";
import { seriesOf } from "../moving.js";
import { acted } from "./acted.js";
import { ofSide, picture } from "./flesh.js";
import { OUTLINES, placed, smooth } from "./outline.js";
import { sidesText } from "./steps.js";

const part = (name, at, degrees, size) => smooth(placed(OUTLINES[name], at, degrees, size));
const skin = (d) => svg("path", { class: "skin", d });
const turn = (node, degrees, [x, y]) => node.setAttribute("transform", `rotate(${degrees.toFixed(2)} ${x} ${y})`);

/** A hand from the side, palm down: the middle finger is flicked down and let go, the thumb beneath may bend. */
function flicked(probe) {
  const [curve] = curvesOf(probe);
  const thumb = skin(part("tip", [112, 112], 12, 1.5));
  const finger = skin(part("finger", [128, 82], 12, 1.5));
  const helper = svg("path", { class: "helper", d: "M188 84C180 78 182 70 192 70H216V92H196Z" });
  const [end, x] = probe.side === "right" ? ["end", (from) => 220 - from] : ["start", (from) => from];
  const node = picture(220, 170, "answers", ofSide(probe.side, 220, skin(part("forearm", [-90, 88], 0, 1.5)), skin(part("palm", [44, 90], 4, 1.5)), thumb, finger, helper),
    svg("text", { class: "tick", x: x(104), y: 164, "text-anchor": end }, "thumb"), svg("text", { class: "tick", x: x(116), y: 48, "text-anchor": end }, "middle finger"));
  const show = (ms) => {
    const bends = heightAt(curve, ms);
    turn(thumb, -bends, [112, 112]);
    thumb.dataset.degrees = bends;
    turn(finger, ms < 90 ? (ms / 90) * 16 : 16 * Math.max(0, 1 - (ms - 90) / 60), [128, 82]);
    helper.setAttribute("transform", `translate(0 ${(ms < 90 ? (ms / 90) * 16 : 24).toFixed(1)})`);
  };
  return { node, show };
}

/** Both thighs from above: the tap falls on the one, the named one may move in. */
function across(probe) {
  const [curve] = curvesOf(probe);
  const way = probe.side === "right" ? -1 : 1;
  const leg = (side, degrees) => skin(part("legAbove", [110 + side * 26, 40], 90 - side * degrees, 1.05));
  const own = leg(way, 16);
  const node = picture(220, 176, "answers", skin(part("trunk", [110, 46], -90, 1.2)), leg(-way, 16), own, svg("path", { class: "hammer-mark", d: `M${110 - way * 40} 104l${-way * 4} 18M${110 - way * 34} 104l${-way * 14} -2` }), svg("path", { class: "stroke", d: `M${110 - way * 2} 128L${110 - way * 26} 112` }),
    svg("text", { class: "tick", x: 2, y: 170 }, "right"), svg("text", { class: "tick", x: 218, y: 170, "text-anchor": "end" }, "left"), svg("text", { class: "tick", x: 110 - way * 2, y: 144, "text-anchor": "middle" }, "tap"));
  const show = (ms) => {
    const moved = heightAt(curve, ms);
    turn(own, way * moved, [110 + way * 26, 40]);
    own.dataset.degrees = moved;
  };
  return { node, show };
}

export function flick(host, { manoeuvre, probes, fresh, still }) {
  const make = manoeuvre.id.startsWith("crossed") ? across : flicked;
  const [curve] = curvesOf(probes.at(-1));
  acted(host, { probes, make, end: lengthMs(curve), stills: still ? [0, 220] : [220], fresh, still, traces: [{ title: curve.name, series: seriesOf(probes), low: 0, high: 30, short: true }] });
  return `${curve.name}. ${sidesText(probes)}`;
}

/** Forearm and hand with the hammer on the radius: the elbow, the fingers, both or neither answer. */
function onRadius(probe) {
  const [elbowCurve, fingerCurve] = curvesOf(probe);
  const fingers = skin(part("fingers", [150, 112], 10, 1.25));
  const fore = svg("g", {}, skin(part("forearm", [56, 100], 6, 1.15)), fingers);
  const node = picture(220, 170, "answers", skin(part("upperArm", [50, 14], 86, 1)), fore, svg("path", { class: "stroke", d: "M124 56V92M116 84L124 92L132 84" }));
  const show = (ms) => {
    const [elbow, bend] = [heightAt(elbowCurve, ms), heightAt(fingerCurve, ms)];
    turn(fore, -elbow, [56, 100]);
    turn(fingers, bend, [150, 112]);
    fore.dataset.degrees = elbow;
    fingers.dataset.degrees = bend;
  };
  return { node, show };
}

export function radiusTap(host, { probes, fresh, still }) {
  const traces = ["Elbow bends", "Fingers bend"].map((title, index) => ({ title, series: seriesOf(probes, (curves) => curves[index]), low: 0, high: 30, short: true }));
  acted(host, { probes, make: onRadius, end: lengthMs(curvesOf(probes.at(-1))[0]), stills: still ? [0, 220] : [220], traces, fresh, still });
  return sidesText(probes);
}

function hanging(probe) {
  const [curve] = curvesOf(probe);
  const limb = new Limb(limbFor({ id: "knee" }), { tapped: false });
  return { node: limb.node, show: (ms) => limb.set(heightAt(curve, ms)) };
}

export function pendulum(host, { probes, fresh, still }) {
  const [curve] = curvesOf(probes.at(-1));
  acted(host, { probes, make: hanging, end: lengthMs(curve), stills: still ? [0, 260, 800, 1300] : [260], fresh, still, traces: [{ title: "Shin from its rest", series: seriesOf(probes), low: -20, high: 20 }] });
  const swings = ({ samples }) => samples.filter((one, index) => index && index < samples.length - 1 && one > 2 && one > samples[index - 1] && one >= samples[index + 1]).length;
  return `${latestBySide(probes).map((probe) => `${sideText(probe.side)}: ${swings(curvesOf(probe)[0])} swings of more than 2 degrees in five seconds, between ${amountText(lowest(curvesOf(probe)[0]))} and ${amountText(highest(curvesOf(probe)[0]))} degrees`).join(". ")}.`;
}
