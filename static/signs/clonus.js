// Each foot is pushed up briskly and held there: both are shown and traced, and the beats are for the student to count.

import { el } from "../bedside/dom.js";
import { heightAt, highest, lengthMs, lowest } from "./curve.js";
import { Limb } from "./limb.js";
import { limbFor } from "./limbs.js";
import { amountText, curvesOf, latestBySide, wordsText } from "./latest.js";
import { acted } from "./motion/acted.js";
import { seriesOf } from "./moving.js";
import { onAPartner } from "./partner.js";

export function clonus(host, { manoeuvre, probes, fresh, still }) {
  const series = seriesOf(probes);
  const make = (probe) => {
    const limb = new Limb(limbFor(manoeuvre), { tapped: false });
    return { node: limb.node, show: (ms) => limb.set(-heightAt(curvesOf(probe)[0], ms)) };
  };
  const traces = series.map((one) => ({ title: [one.name, "angle of the foot"].filter(Boolean).join(": "), series: [{ ...one, side: "right" }], low: 0, high: 20, short: true }));
  acted(host, { probes, make, atRest: true, end: lengthMs(series[0].curve), stills: still ? [0, 600] : [0], since: "the push", fresh, still, traces });
  const words = wordsText(latestBySide(probes));
  if (words) host.append(el("p", { class: "felt" }, words));
  host.append(onAPartner());
  return `${series.map(said).join(" ")} ${words}`.trim();
}

/** Turning points of the curve at least so many units apart: what an eye would call a beat. */
export function beats({ samples }, apart = 1) {
  let [count, rising, edge] = [0, false, samples[0]];
  for (const height of samples) {
    if (rising ? height > edge : height < edge) edge = height;
    else if (Math.abs(height - edge) >= apart) {
      if (rising) count++;
      rising = !rising;
      edge = height;
    }
  }
  return count;
}

function said({ name, curve }) {
  const seconds = amountText(lengthMs(curve) / 1000);
  return `${name}: between ${amountText(lowest(curve))} and ${amountText(highest(curve))} ${curve.unit} in ${seconds} seconds, moving up and down ${beats(curve)} times.`;
}
