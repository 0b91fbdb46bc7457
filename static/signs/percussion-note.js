// A zone of the chest tapped with the finger: heard on a press, and drawn as it rings.

import { svg } from "../bedside/dom.js";
import { amountText } from "./latest.js";
import { onAPartner } from "./partner.js";
import { noteOf, percussionSound, swing } from "./percussion-audio.js";
import { strip } from "./strip.js";
import { zoneBoard } from "./zone-board.js";

const SECONDS = 0.36;
const TALLEST = 1.5;
const STEP = 0.0004;

function drawn(probe) {
  const note = noteOf(probe);
  return strip({
    seconds: SECONDS,
    draw: (x, middle, half) => {
      let d = "";
      for (let t = 0; t <= SECONDS; t += STEP) d += `${d ? "L" : "M"}${x(t).toFixed(1)} ${(middle - (swing(note, t * 1000) / TALLEST) * half).toFixed(1)}`;
      return [svg("path", { class: "grid zero", d: `M${x(0)} ${middle}H${x(SECONDS)}` }), svg("path", { class: "curve thin", d })];
    },
  });
}

function said(probe) {
  const { hertz, ms, level } = noteOf(probe);
  return `rings at ${amountText(hertz, 0)} Hz, falls by 20 dB in ${amountText(ms, 0)} ms, level ${amountText(level)} dB`;
}

export function percussionNote(host, view) {
  const text = zoneBoard(host, { ...view, strip: drawn, sound: percussionSound, said, key: "The taller the louder, the longer the trace the longer it rings. Use headphones." });
  host.append(onAPartner());
  return text;
}
