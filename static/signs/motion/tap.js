// A tendon is tapped on both sides: the limbs move at true speed beside each other, and the angle is traced from the tap on.

import { el } from "../../bedside/dom.js";
import { heightAt, lengthMs, peak } from "../curve.js";
import { amountText, curvesOf, latestBySide, wordsText } from "../latest.js";
import { Limb } from "../limb.js";
import { limbFor } from "../limbs.js";
import { seriesOf } from "../moving.js";
import { acted } from "./acted.js";

const USUAL_DEGREES = 40;
const LEAD = 260;
/** The tap, about the farthest of a usual answer, and when a usual one is nearly over. */
const STILLS = [0, 190, 450];

export function tap(host, { manoeuvre, probes, fresh, still }) {
  const series = seriesOf(probes);
  const make = (probe) => {
    const limb = new Limb(limbFor(manoeuvre));
    const [curve] = curvesOf(probe);
    return { node: limb.node, show: (ms) => (limb.set(heightAt(curve, ms)), limb.swing(ms)) };
  };
  acted(host, { probes, make, from: -LEAD, end: lengthMs(series[0].curve), stills: still ? STILLS : [0], since: "the tap", fresh, still, traces: [{ title: "Angle of the joint", series, high: USUAL_DEGREES }] });
  const words = wordsText(latestBySide(probes));
  if (words) host.append(el("p", { class: "felt" }, words));
  return `${series.map(said).join(" ")} ${words}`.trim();
}

function said({ name, curve }) {
  const { ms, height } = peak(curve);
  return `${name}: turns by at most ${amountText(height)} ${curve.unit}, ${Math.round(ms)} ms after the tap.`;
}
