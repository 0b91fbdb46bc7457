// Which drawing shows which sign. A drawing is a function (host, view) => text: it draws into the host and returns what
// is seen as a sentence made of numbers and the patient's words, for those who listen.
// view: {manoeuvre, probes (answered, in order of time), fresh (the probe to play, or undefined), still (no motion),
//        again (side, place) => does it once more at another point}

import { announce } from "../bedside/announce.js";
import { el, put } from "../bedside/dom.js";
import { cuff } from "./cuff.js";
import { neckVeins } from "./neck-veins.js";
import { pulse } from "./pulse.js";
import { breathCuff, pulseWave } from "./pulse-wave.js";
import { skinTouch } from "./skin-touch.js";
import { table } from "./table.js";

const DRAWINGS = {
  "skin-touch": skinTouch,
  "neck-veins": neckVeins,
  pulse,
  cuff,
  "pulse-wave": pulseWave,
  "breath-cuff": breathCuff,
};

const withoutMotion = matchMedia("(prefers-reduced-motion: reduce)");

const note = (text) => el("p", { class: "quiet not-yet" }, text);

/** The drawings of limbs come with a style of their own. */
const limbs = (name) => async () => {
  const [{ drawings }] = await Promise.all([import(`./motion/${name}.js`), import("./motion/style.js").then(({ styled }) => styled)]);
  return { drawings };
};

/** Systems whose drawings are brought when one of their manoeuvres is first done, so that the page stays light. */
const BROUGHT = {
  chest: () => import("./chest.js"),
  abdomen: () => import("./abdomen.js"),
  neck: () => import("./neck.js"),
  back: () => import("./back.js"),
  eyes: () => import("./eye-signs.js"),
  face: () => import("./face-signs.js"),
  mouth: () => import("./mouth-signs.js"),
  ears: () => import("./ear-signs.js"),
  heart: () => import("./heart.js"),
  "other cranial nerves": () => import("./nerve-signs.js"),
  power: limbs("limbs"),
  coordination: limbs("limbs"),
  tremor: limbs("limbs"),
  functional: limbs("limbs"),
  reflexes: limbs("reflexes"),
  "cortical-feeling": limbs("feeling"),
  sensation: limbs("feeling"),
  walking: limbs("walking"),
  standing: limbs("walking"),
  ...Object.fromEntries(["approach", "hands", "skin", "arteries", "legs", "joints"].map((system) => [system, () => import("./surface.js")])),
};

const brought = new Set();

/** The style sheets that such drawings need beside those of the page. */
const STYLED = { eyes: "head", face: "head", mouth: "head", ears: "head", "other cranial nerves": "head" };

function style(name) {
  const href = `/static/css/${name}.css`;
  if (!name || document.querySelector(`link[href="${href}"]`)) return undefined;
  return new Promise((done) => document.head.append(el("link", { rel: "stylesheet", href, onload: done, onerror: done })));
}

/** Brings what is still to be brought, then draws, unless the host has been drawn on since. */
async function bring(system, host, view) {
  const waiting = note("Drawing …");
  put(host, waiting);
  const [{ drawings }] = await Promise.all([BROUGHT[system](), style(STYLED[system])]);
  Object.assign(DRAWINGS, drawings);
  brought.add(system);
  if (waiting.isConnected) showSign(host, view);
}

/** Draws what the probes of one line showed, and says what is new. */
export function showSign(host, view) {
  const { manoeuvre, probes, waiting, fresh, again } = view;
  if (BROUGHT[manoeuvre.system] && !brought.has(manoeuvre.system)) {
    bring(manoeuvre.system, host, view);
    return;
  }
  put(host);
  if (probes.length) {
    const drawing = DRAWINGS[probes.at(-1).shown.sign] ?? table;
    const text = drawing(host, { manoeuvre, probes, fresh, still: withoutMotion.matches, again });
    host.append(el("p", { class: "heard" }, text));
    if (fresh) announce(text);
  }
  if (waiting) host.append(note("The sign is shown as soon as the server has answered."));
  else if (!probes.length) host.append(note("Nothing to see yet."));
}
