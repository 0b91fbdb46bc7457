// Which drawing shows which sign. A drawing is a function (host, view) => text: it draws into the host and returns what
// is seen as a sentence made of numbers and the patient's words, for those who listen.
// view: {manoeuvre, probes (answered, in order of time), fresh (the probe to play, or undefined), still (no motion)}

import { announce } from "../bedside/announce.js";
import { el, put } from "../bedside/dom.js";
import { clonus } from "./clonus.js";
import { cuff } from "./cuff.js";
import { lids } from "./lids.js";
import { neckVeins } from "./neck-veins.js";
import { pulse } from "./pulse.js";
import { pupils } from "./pupils.js";
import { resistedMovement } from "./resisted-movement.js";
import { skinTouch } from "./skin-touch.js";
import { table } from "./table.js";
import { tendonTap } from "./tendon-tap.js";
import { toeStroke } from "./toe-stroke.js";

const DRAWINGS = {
  "tendon-tap": tendonTap,
  "toe-stroke": toeStroke,
  clonus,
  "resisted-movement": resistedMovement,
  "skin-touch": skinTouch,
  pupils,
  lids,
  "neck-veins": neckVeins,
  pulse,
  cuff,
};

const withoutMotion = matchMedia("(prefers-reduced-motion: reduce)");

const note = (text) => el("p", { class: "quiet not-yet" }, text);

/** Draws what the probes of one line showed, and says what is new. */
export function showSign(host, { manoeuvre, probes, waiting, fresh }) {
  put(host);
  if (probes.length) {
    const drawing = DRAWINGS[probes.at(-1).shown.sign] ?? table;
    const text = drawing(host, { manoeuvre, probes, fresh, still: withoutMotion.matches });
    host.append(el("p", { class: "heard" }, text));
    if (fresh) announce(text);
  }
  if (waiting) host.append(note("The sign is shown as soon as the server has answered."));
  else if (!probes.length) host.append(note("Nothing to see yet."));
}
