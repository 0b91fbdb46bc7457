// Hands held out with the wrists bent back: the angle of the wrist over a quarter of a minute.

import { svg } from "../bedside/dom.js";
import { heightAt, highest, lowest } from "./curve.js";
import { amountText, curvesOf } from "./latest.js";
import { moving } from "./moving.js";
import { line } from "./side-by-side.js";

const WRIST = [120, 96];

function arm() {
  const hand = svg("g", {}, line("M120 84C134 82 150 84 168 86M120 108C134 108 150 104 168 100M168 86C200 88 214 92 214 94C214 97 196 100 168 100", "limb-edge"));
  const node = svg("svg", { class: "look", viewBox: "0 0 240 160", width: 240, height: 160, "aria-hidden": "true" },
    line("M6 80C50 78 90 82 120 84M6 114C50 114 90 110 120 108", "limb-edge"), hand, line("M120 96H226", "grid"));
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
  const series = [{ side: probe.side === "none" ? "right" : probe.side, name: "", curve }];
  moving(host, { figure: { node: figure.node, show: (_, ms) => figure.show(heightAt(curve, ms)) }, traces: [{ series, low: 0, high: 70, title: "The wrist is bent back by" }], from: "the start", fresh: fresh && { ...fresh, side: series[0].side }, still, again: "Watch again" });
  const falls = lapses(curve);
  return `The wrists are bent back between ${amountText(lowest(curve))} and ${amountText(highest(curve))} degrees${falls.length ? `; they fall and catch themselves at ${falls.map((ms) => amountText(ms / 1000)).join(", ")} seconds` : ""}.`;
}
