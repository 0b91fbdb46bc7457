// What a stethoscope hears over belly and neck: the bowel over a minute, a blowing with the pulse; and a tapped spleen.

import { el, svg } from "../bedside/dom.js";
import { chain, filter, following, gain, gainOf, noise, ring } from "./audio.js";
import { amounts, line } from "./frame.js";
import { bellyMap } from "./belly-figure.js";
import { phrase, pointBoard, sidesBoard } from "./point-board.js";
import { play } from "./sound-desk.js";
import { strip } from "./strip.js";

const BEAT_S = 0.85;
const BEATS = 4;
const SPED = 4;

/** Moments of the gurgles of one minute, the longest silence first; the same for the same amounts. */
function gurgles([rate, , silence]) {
  const count = Math.round(rate);
  const [begin, room] = [Math.min(silence, 58), Math.max(0, 60 - Math.min(silence, 58))];
  return Array.from({ length: count }, (_, i) => begin + (room * (i + 0.5 + 0.35 * Math.sin(i * 2.4))) / Math.max(1, count)).filter((s) => s < 60);
}

function bowelStrip(probe) {
  const tall = amounts(probe)[1] / 1100;
  return strip({ seconds: 60, draw: (x, middle, half) => [line("grid zero", `M${x(0)} ${middle}H${x(60)}`), svg("path", { class: "click", "stroke-width": 3, d: gurgles(amounts(probe)).map((s) => `M${x(s)} ${middle - half * tall}V${middle + half * tall}`).join("") })] });
}

const bowelSound = (probe) => (context, out, at) => {
  const hertz = amounts(probe)[1];
  for (const s of gurgles(amounts(probe))) for (const [step, late] of [[1, 0], [1.3, 0.05], [0.9, 0.1]]) ring(context, hertz * step, 90, at + s / SPED + late, gainOf(4)).connect(out);
  return 60 / SPED;
};

/** A blowing that begins with each beat: how loud and how long. */
function blowing(probe) {
  const [level, ms] = amounts(probe);
  return strip({ seconds: BEAT_S * BEATS, draw: (x, middle, half) => Array.from({ length: BEATS }, (_, beat) => {
    const [from, tall] = [beat * BEAT_S + 0.1, Math.min(1, level / 40) * half];
    const lines = Array.from({ length: Math.floor(ms / 12) }, (__, i) => `M${x(from + i * 0.012)} ${middle - tall * Math.sin((Math.PI * (i + 1) * 12) / (ms + 12))}V${middle + tall * Math.sin((Math.PI * (i + 1) * 12) / (ms + 12))}`);
    return svg("g", {}, line("hatch", lines.join("")), svg("path", { class: "beat", d: `M${x(from)} ${middle * 2 - 12}l-4 7h8Z` }));
  }) });
}

const blowingSound = (probe) => (context, out, at) => {
  const [level, ms] = amounts(probe);
  const rise = Array.from({ length: 24 }, (_, i) => gainOf(level - 17) * Math.sin((Math.PI * i) / 23));
  if (ms > 20) {
    for (let beat = 0; beat < BEATS; beat++) {
      const source = noise(context, BEAT_S, 3 + beat);
      chain(source, filter(context, "bandpass", 320, 0.8), following(context, rise, ms / 24, at + beat * BEAT_S + 0.1), out);
      source.start(at + beat * BEAT_S);
    }
  }
  return BEAT_S * BEATS;
};

/** The tapped point rings for so long, on a breath out and on a full breath in. */
function rings(probe) {
  const [out, into] = amounts(probe);
  const swing = (ms) => strip({ seconds: 0.24, height: 70, draw: (x, middle, half) => {
    const points = Array.from({ length: 400 }, (_, i) => i * 0.0006).map((t) => `${x(t).toFixed(1)} ${(middle - half * 0.9 * Math.sin(2 * Math.PI * 120 * t) * 10 ** (-(t * 1000) / ms)).toFixed(1)}`);
    return [line("curve thin", `M${points.join("L")}`)];
  } }).node;
  return el("div", { class: "traces" }, el("p", { class: "trace-title" }, "breath out"), swing(out), el("p", { class: "trace-title" }, "full breath in"), swing(into));
}

const ringsSound = (probe) => (context, out, at) => {
  amounts(probe).forEach((ms, index) => ring(context, 120 + (60 - ms) * 2, ms, at + index * 0.8, gain(context, gainOf(14)).gain.value).connect(out));
  return 1.8;
};

const heard = (drawn, sound, name, key = "") => (probe) => {
  const one = drawn(probe);
  const node = one.node ?? one;
  const act = () => play(sound(probe), one.at ? (seconds) => one.at(name === "a minute" ? seconds * SPED : seconds) : undefined);
  return el("div", {}, node, el("div", { class: "actions" }, el("button", { type: "button", onclick: act }, `Hear ${name}`)), key ? el("p", { class: "quiet" }, key) : "");
};

const bowel = heard(bowelStrip, bowelSound, "a minute");
const blow = heard(blowing, blowingSound, "four beats", "The triangles at the foot are the beats of the pulse; hatching is noise, taller is louder, longer lasts longer; where there is none, nothing but the noise of the room is heard. Use headphones.");

export const sounds = {
  "bowel-sounds": (host, { probes, fresh }) => {
    const last = fresh ?? probes.at(-1);
    host.append(bowel(last), el("p", { class: "quiet" }, "One stroke is one gurgle, taller is higher. The minute is played four times as fast. Use headphones."));
    return `${phrase(last)}.`;
  },
  "belly-bruit": (host, view) => (view.manoeuvre.places?.length ? pointBoard(host, view, { map: bellyMap, figure: blow, felt: false }) : sidesBoard(blow, false)(host, view)),
  "neck-bruit": sidesBoard(blow, false),
  "spleen-note": sidesBoard(heard(rings, ringsSound, "both taps")),
};
