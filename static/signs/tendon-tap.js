// A tendon is tapped: the limb moves at true speed, and the angle of the joint is traced from the tap on.

import { el } from "../bedside/dom.js";
import { heightAt, peak } from "./curve.js";
import { Limb } from "./limb.js";
import { limbFor } from "./limbs.js";
import { amountText, latestBySide, wordsText } from "./latest.js";
import { moving, seriesOf } from "./moving.js";

const USUAL_DEGREES = 40;
const LEAD = 260;

export function tendonTap(host, { manoeuvre, probes, fresh, still }) {
  const series = seriesOf(probes);
  const limb = new Limb(limbFor(manoeuvre));
  const curveOf = (side) => series.find((one) => one.side === side).curve;
  const figure = {
    node: limb.node,
    show(side, ms) {
      limb.set(heightAt(curveOf(side), ms));
      limb.swing(ms);
    },
  };
  moving(host, { figure, traces: [{ series, high: USUAL_DEGREES }], from: "the tap", lead: LEAD, fresh, still, again: "Watch again" });
  const words = wordsText(latestBySide(probes));
  if (words) host.append(el("p", { class: "felt" }, words));
  return `${series.map(said).join(" ")} ${words}`.trim();
}

function said({ name, curve }) {
  const { ms, height } = peak(curve);
  return `${name}: turns by at most ${amountText(height)} ${curve.unit}, ${Math.round(ms)} ms after the tap.`;
}
