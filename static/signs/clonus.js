// The foot is pushed up briskly and held there: its movement is traced, and the beats are for the student to count.

import { el } from "../bedside/dom.js";
import { heightAt, highest, lengthMs, lowest } from "./curve.js";
import { Limb } from "./limb.js";
import { limbFor } from "./limbs.js";
import { amountText, latestBySide, wordsText } from "./latest.js";
import { moving, seriesOf } from "./moving.js";
import { onAPartner } from "./partner.js";

export function clonus(host, { manoeuvre, probes, fresh, still }) {
  const series = seriesOf(probes);
  const limb = new Limb(limbFor(manoeuvre), { tapped: false });
  const figure = {
    node: limb.node,
    show: (side, ms) => limb.set(-heightAt(series.find((one) => one.side === side).curve, ms)),
  };
  moving(host, { figure, traces: [{ series, low: 0, high: 20 }], from: "the push", fresh, still, again: "Watch again" });
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
