// Hands held out with the wrists bent back: the angle of the wrist over a quarter of a minute.

import { svg } from "../bedside/dom.js";
import { heightAt, highest, lowest } from "./curve.js";
import { amountText, curvesOf } from "./latest.js";
import { moving } from "./moving.js";
import { line } from "./side-by-side.js";

const WRIST = [120, 96];

function arm() {
  const hand = svg("g", {}, line("M112 84C134 80 152 82 170 86C200 88 216 92 216 95C216 99 198 101 170 102C150 106 132 110 112 108Z", "limb-inside limb-edge"));
  const node = svg("svg", { class: "look", viewBox: "0 0 240 160", width: 240, height: 160, "aria-hidden": "true" },
    line("M120 96H226", "grid"), hand, line("M4 78C50 76 90 80 124 84V108C90 110 50 116 4 116", "limb-inside limb-edge"));
  return { node, show: (degrees) => hand.setAttribute("transform", `rotate(${-degrees} ${WRIST.join(" ")})`) };
}

/** Each time the angle falls by ten degrees within a fifth of a second. */
export const lapses = ({ samples, stepMs }) => {
  const back = Math.round(200 / stepMs);
  return samples.reduce((found, angle, index) => (index >= back && samples[index - back] - angle >= 10 && index * stepMs - (found.at(-1) ?? -1000) > 400 ? [...found, index * stepMs] : found), []);
};

export function outstretchedHands(host, { probes, fresh, still }) {
  const probe = fresh ?? probes.at(-1);
  const [curve] = curvesOf(probe);
  const figure = arm();
  const series = [{ side: probe.side, name: "", curve }];
  moving(host, { figure: { node: figure.node, show: (_, ms) => figure.show(heightAt(curve, ms)) }, traces: [{ series, low: 0, high: 70, title: "The wrist is bent back by" }], from: "the start", fresh, still, again: "Watch again" });
  const falls = lapses(curve);
  return `The wrists are bent back between ${amountText(lowest(curve))} and ${amountText(highest(curve))} degrees${falls.length ? `; they fall and catch themselves at ${falls.map((ms) => amountText(ms / 1000)).join(", ")} seconds` : ""}.`;
}
