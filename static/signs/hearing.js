// Hearing at the bedside: a whispered set and what is repeated of it; a fork on the head and where, or which, is louder.

import { el, svg } from "../bedside/dom.js";
import { EACH, forkSound, whisperSound } from "./hearing-sound.js";
import { captioned, picture, seen } from "./head-parts.js";
import { amountText, latestBySide, sideText } from "./latest.js";
import { play } from "./sound-desk.js";
import { strip } from "./strip.js";

const SETS = { right: ["4", "K", "7", "B", "2", "M"], left: ["9", "F", "3", "R", "6", "L"], none: ["4", "K", "7", "B", "2", "M"] };
/** The order in which a listener who hears less and less keeps what was said. */
const KEPT = [0, 5, 2, 3, 1, 4];

const button = (text, onclick) => el("button", { type: "button", onclick }, text);

function whisperStrip(items) {
  return strip({
    seconds: items.length * EACH,
    height: 78,
    draw: (x, middle, half) => items.flatMap((item, index) => {
      const [from, to] = [x(index * EACH + 0.04), x(index * EACH + EACH * 0.75)];
      const bars = Array.from({ length: 13 }, (_, step) => {
        const at = from + ((to - from) * step) / 12;
        const high = half * 0.62 * Math.sin((Math.PI * (step + 0.5)) / 13) * (0.6 + 0.4 * Math.sin(step * 2.4 + index));
        return `M${at.toFixed(1)} ${(middle + 8 - high).toFixed(1)}V${(middle + 8 + high).toFixed(1)}`;
      });
      return [svg("path", { class: "hatch", d: bars.join("") }), svg("text", { class: "trace-name", x: (from + to) / 2, y: 14, "text-anchor": "middle" }, item)];
    }),
  });
}

export function whisper(host, { probes }) {
  const both = latestBySide(probes);
  for (const probe of both) {
    const items = SETS[probe.side] ?? SETS.none;
    const right = seen(probe, "repeated rightly");
    const kept = new Set(KEPT.slice(0, right));
    const drawn = whisperStrip(items);
    host.append(el("div", { class: "whisper" },
      el("p", { class: "trace-title" }, `Whispered behind the ${probe.side} ear`), drawn.node,
      el("p", { class: "felt" }, "The patient repeats: ", ...items.map((item, index) => el("span", { class: "repeated" }, kept.has(index) ? item : "…"))),
      el("div", { class: "actions" }, button(`Play the whisper as you make it: ${probe.side}`, () => play(whisperSound(items), drawn.at)))));
  }
  return `${both.map((probe) => `${probe.side}: of ${seen(probe, "whispered")} letters and numbers ${seen(probe, "repeated rightly")} are repeated rightly`).join("; ")}.`;
}

const pitchOf = (probe) => (probe.technique?.fork === "256" ? 256 : 512);

/** What the examiner hears of the fork: a tone that dies away. */
const forkStrip = () => strip({
  seconds: 4,
  height: 64,
  draw: (x, middle, half) => {
    const edge = (sign) => Array.from({ length: 41 }, (_, index) => `${index ? "L" : "M"}${x(index / 10).toFixed(1)} ${(middle - sign * half * 10 ** (-index / 32)).toFixed(1)}`).join("");
    return [svg("path", { class: "tone", d: edge(1) }), svg("path", { class: "tone", d: edge(-1) })];
  },
});

function forkDesk(probe, title) {
  const drawn = forkStrip();
  return el("div", { class: "whisper" }, el("p", { class: "trace-title" }, title), drawn.node,
    el("div", { class: "actions" }, button(`Sound the fork of ${pitchOf(probe)} Hz`, () => play(forkSound(pitchOf(probe)), drawn.at))));
}

const HEAD = "M0 -80C46 -80 66 -52 66 -8C66 14 62 30 59 52C57 76 26 104 0 104C-26 104 -57 76 -59 52C-62 30 -66 14 -66 -8C-66 -52 -46 -80 0 -80Z";
const FEATURES = "M-47 -2C-40 -8 -24 -8 -17 0C-24 5 -40 5 -47 -2M47 -2C40 -8 24 -8 17 0C24 5 40 5 47 -2M-3 -6C-2 10 -5 22 -8 26C-8 31 -3 33 0 33C3 33 8 31 8 26C5 22 2 10 3 -6M-22 62C-10 58 10 58 22 62M-66 -10C-78 -18 -80 6 -72 18C-70 24 -65 20 -64 12M66 -10C78 -18 80 6 72 18C70 24 65 20 64 12";
const TINES = "M0 0V-16M-5 -50V-22C-5 -17 5 -17 5 -22V-50";

/** The patient points to where the fork on the forehead is heard: so many centimetres from the midline. */
export function forkMiddle(host, { probes, fresh }) {
  const probe = fresh ?? probes.at(-1);
  const cm = seen(probe, "points to the right of the midline");
  const x = -cm * 10.3;
  const far = Math.abs(cm) / 7;
  const y = -52 + 56 * far;
  const hand = `M${x - 4} ${y + 4}a4 4 0 0 1 8 0V${y + 26}q9 1 9 10v10q0 8 -8 8h-12q-9 0 -10 -10l-1 -10q0 -7 6 -8l8 -2Z`;
  host.append(el("div", { class: "head-row" },
    captioned("The fork stands on the forehead; the finger shows where it is heard.", picture([-110, -128, 220, 238], 1.5,
      svg("path", { class: "skin", d: HEAD }), svg("path", { class: "head-line", d: FEATURES }),
      svg("path", { class: "fork", d: TINES, transform: "translate(0 -66)" }),
      svg("path", { class: "pointing", d: hand }),
      svg("text", { class: "eye-name face-name", x: -92, y: -92, "text-anchor": "middle" }, "right"), svg("text", { class: "eye-name face-name", x: 92, y: -92, "text-anchor": "middle" }, "left"))),
    el("div", {}, el("p", { class: "felt" }, `“${probe.shown.words}”`), forkDesk(probe, "The fork as the examiner hears it"))));
  return `The patient points ${amountText(Math.abs(cm))} cm ${cm > 0 ? "to the right of" : cm < 0 ? "to the left of" : "from"} the midline: “${probe.shown.words}”`;
}

/** A head from the side with the fork first on the bone, then beside the canal. */
function besideTheEar(side) {
  const flip = side === "left" ? "scale(-1 1)" : "";
  const fork = (x, y, turn, number) => svg("g", { transform: `translate(${x} ${y})` }, svg("path", { class: "fork", d: TINES, transform: `rotate(${turn})` }), svg("text", { class: "eye-name face-name", x: (number === 1 ? -52 : 16) * (side === "left" ? -1 : 1), y: number === 1 ? 44 : 16, "text-anchor": "middle", transform: flip }, number));
  return picture([-100, -100, 200, 190], 1.4, svg("g", { transform: flip },
    svg("path", { class: "skin", d: "M-30 88C-26 70 -30 56 -44 40C-66 14 -62 -50 -24 -76C10 -96 56 -80 62 -40C63 -32 60 -28 64 -20C70 -10 78 -2 76 2C74 6 68 4 66 6C68 14 70 18 66 22C62 26 64 34 60 40C50 48 34 46 24 46C20 60 22 76 26 88" }),
    svg("path", { class: "head-line", d: "M-12 -14C-22 -30 -2 -40 8 -28C14 -18 6 -8 4 0C2 10 -8 16 -12 8C-14 4 -12 0 -8 -2M-2 -22C4 -22 4 -14 -2 -10M38 -30C44 -34 50 -34 54 -30M46 28C52 26 56 28 60 30" }),
    fork(-20, 8, 235, 1), fork(40, -12, -60, 2)));
}

export function forkEar(host, { probes }) {
  const both = latestBySide(probes);
  host.append(el("div", { class: "head-row pair" }, ...both.map((probe) => el("figure", { class: "head-figure" }, besideTheEar(probe.side),
    el("figcaption", {}, el("b", {}, sideText(probe.side)), ": first on the bone (1), then beside the canal (2). Which is louder? ", el("span", { class: "said" }, `“${probe.shown.words}”`))))),
  forkDesk(both.at(-1), "The fork as the examiner hears it, each time alike"));
  return `${both.map((probe) => `${probe.side}: first on the bone, then beside the canal, which is louder? “${probe.shown.words}”`).join(" ")}`;
}
