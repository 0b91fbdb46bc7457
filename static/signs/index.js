// Which drawing shows which sign. A drawing is a function (host, view) => text: it draws into the host and returns what
// is seen as a sentence made of numbers and the patient's words, for those who listen.
// view: {manoeuvre, probes (answered, in order of time), fresh (the probe to play, or undefined), still (no motion),
//        again (side, place) => does it once more at another point}

import { announce } from "../bedside/announce.js";
import { el, put } from "../bedside/dom.js";
import { keepLegible } from "./legible.js";

const DRAWINGS = {};

const withoutMotion = matchMedia("(prefers-reduced-motion: reduce)");

const note = (text) => el("p", { class: "quiet not-yet" }, text);

/** A system's drawings, and in order the style sheets they need beside that of all signs. */
const system = (drawings, ...styles) => ({ drawings, styles: ["signs", ...styles] });

const chest = system(() => import("./chest.js"), "chest");
const abdomen = system(() => import("./abdomen.js"), "limbs", "chest", "belly");
const heart = system(() => import("./heart.js"), "chest", "heart");
const surface = system(() => import("./surface.js"), "limbs", "chest", "belly", "surface");
const circulation = system(() => import("./circulation.js"));
const limbs = system(() => import("./motion/limbs.js"), "limbs");
const feeling = system(() => import("./motion/feeling.js"), "limbs");
const walking = system(() => import("./motion/walking.js"), "limbs");
const head = (drawings) => system(drawings, "chest", "head");

/** Brought when a manoeuvre of the system is first done, so that the page stays light. */
const SYSTEMS = {
  chest,
  abdomen,
  heart,
  neck: system(() => import("./neck.js"), "chest", "belly"),
  back: system(() => import("./back.js"), "chest", "belly"),
  "neck veins": circulation,
  "pulse and pressure": circulation,
  eyes: head(() => import("./eye-signs.js")),
  face: head(() => import("./face-signs.js")),
  mouth: head(() => import("./mouth-signs.js")),
  ears: head(() => import("./ear-signs.js")),
  "other cranial nerves": head(() => import("./nerve-signs.js")),
  reflexes: system(() => import("./motion/reflexes.js"), "limbs"),
  power: limbs,
  coordination: limbs,
  tremor: limbs,
  functional: limbs,
  "cortical-feeling": feeling,
  sensation: feeling,
  walking,
  standing: walking,
  approach: surface,
  hands: surface,
  skin: surface,
  arteries: surface,
  legs: surface,
  joints: surface,
};

/** Signs that are brought without the rest of their system. */
const ALONE = { "tendon-tap": system(() => import("./motion/taps.js"), "limbs") };

/** What is most often needed of a system whose signs are drawn apart. */
const MOSTLY = { reflexes: ALONE["tendon-tap"] };

const PLAIN = system(() => import("./table.js"));

const brought = new Set();

const sheets = new Map();

/** A style sheet, asked for once; what is drawn waits for it. */
function sheet(name) {
  if (!sheets.has(name)) {
    const href = new URL(`../css/${name}.css`, import.meta.url).href;
    sheets.set(name, new Promise((done) => document.head.append(el("link", { rel: "stylesheet", href, onload: done, onerror: done }))));
  }
  return sheets.get(name);
}

/** Brings what is still to be brought, then draws, unless the host has been drawn on since. */
async function bring(needed, host, view) {
  const waiting = note("Drawing …");
  put(host, waiting);
  try {
    const [{ drawings }] = await Promise.all([needed.drawings(), ...needed.styles.map(sheet)]);
    Object.assign(DRAWINGS, drawings);
    brought.add(needed);
  } catch {
    put(waiting, "The drawing could not be brought. ", el("button", { type: "button", onclick: () => bring(needed, host, view) }, "Try again"));
    return;
  }
  if (waiting.isConnected) showSign(host, view);
}

/** Begins to bring what a line will most likely need, while its technique is read; whether it came is found out later. */
export function prepare({ system }) {
  const likely = MOSTLY[system] ?? SYSTEMS[system] ?? PLAIN;
  likely.drawings().catch(() => {});
  likely.styles.forEach(sheet);
}

/** The system; the plain table when it has no drawing of this sign. */
function neededFor(manoeuvre, sign) {
  const own = ALONE[sign] ?? SYSTEMS[manoeuvre.system] ?? PLAIN;
  return brought.has(own) && !DRAWINGS[sign] ? PLAIN : own;
}

const exerciseFor = (sign) => el("a", { href: `/partner/${sign}`, target: "_blank", rel: "noopener" }, "The exercise on a sheet to print");

/** Draws what the probes of one line showed, and says what is new. */
export function showSign(host, view) {
  const { manoeuvre, probes, waiting, fresh, again } = view;
  const needed = neededFor(manoeuvre, probes.at(-1)?.shown.sign);
  if (probes.length && !brought.has(needed)) {
    bring(needed, host, view);
    return;
  }
  put(host);
  if (probes.length) {
    const drawing = DRAWINGS[probes.at(-1).shown.sign] ?? DRAWINGS.table;
    const text = drawing(host, { manoeuvre, probes, fresh, still: withoutMotion.matches, again });
    for (const line of host.querySelectorAll(".partner")) line.append(" ", exerciseFor(probes.at(-1).shown.sign));
    host.append(el("p", { class: "heard" }, text));
    keepLegible(host);
    if (fresh) announce(text);
  }
  if (waiting) host.append(note("The sign is shown as soon as the server has answered."));
  else if (!probes.length) host.append(note("Nothing to see yet."));
}
