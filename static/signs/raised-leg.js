// A leg raised slowly from the couch, seen from the side, and the colour that the sole keeps.

import { svg } from "../bedside/dom.js";
import { heightAt, lengthMs } from "./curve.js";
import { amountText, curvesOf, sideText } from "./latest.js";
import { acted } from "./motion/acted.js";
import { seriesOf } from "./moving.js";
import { atThisPlace, label, line } from "./side-by-side.js";

const HIP = [40, 176];
const DEGREES = [15, 30, 45, 60, 75, 90];

const out = (degrees, length) => [HIP[0] + Math.cos((degrees * Math.PI) / 180) * length, HIP[1] - Math.sin((degrees * Math.PI) / 180) * length];

function figure() {
  const sole = svg("path", { class: "flushed", d: "M196 160L204 160C212 168 212 190 204 194L196 192Z" });
  const white = svg("path", { class: "pale-part", d: "M196 160L204 160C212 168 212 190 204 194L196 192Z" });
  const leg = svg("g", {}, line("M40 162C90 158 150 164 196 162M40 192C90 194 150 190 196 190", "limb-edge"), sole, white);
  const node = svg("svg", { class: "look", viewBox: "0 -44 260 250", width: 260, height: 250, "aria-hidden": "true" },
    line("M4 200H256", "grid"), ...DEGREES.flatMap((degrees) => [line(`M${out(degrees, 172).map(Math.round).join(" ")}L${out(degrees, 180).map(Math.round).join(" ")}`, "gauge"), label(...out(degrees, 194), `${degrees}°`)]), leg);
  return {
    node,
    show(degrees, percent) {
      leg.setAttribute("transform", `rotate(${-degrees} ${HIP.join(" ")})`);
      white.setAttribute("opacity", (1 - percent / 100).toFixed(2));
    },
  };
}

const half = (curve) => curve.samples.findIndex((percent) => percent < 60);

function said(probe) {
  const [raised, sole] = curvesOf(probe);
  const at = half(sole);
  const end = amountText(sole.samples.at(-1));
  return `${sideText(probe.side)}: the leg is raised to ${amountText(raised.samples.at(-1))} degrees; the sole keeps ${end} % of its colour${at < 0 ? "" : `, and falls below 60 % at ${amountText(raised.samples[at])} degrees`}.`;
}

export function raisedLeg(host, { probes, fresh, still }) {
  const both = atThisPlace(probes, fresh);
  const [angles, colours] = [seriesOf(both, (curves) => curves[0]), seriesOf(both, (curves) => curves[1])];
  const make = (probe) => {
    const [drawn, [angle, colour]] = [figure(), curvesOf(probe)];
    return { node: drawn.node, show: (ms) => drawn.show(heightAt(angle, ms), heightAt(colour, ms)) };
  };
  const end = lengthMs(angles[0].curve);
  acted(host, {
    probes: both, make, end, stills: still ? [end / 4, end / 2, end] : [0], since: "the couch", fresh, still, again: "Raise again",
    traces: [{ series: angles, low: 0, high: 90, title: "The leg is raised by", short: true }, { series: colours, low: 0, high: 100, title: "Colour of the sole" }],
  });
  return both.map(said).join(" ");
}
