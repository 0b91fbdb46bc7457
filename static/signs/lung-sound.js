// What a stethoscope hears over a zone of the chest: heard on a press, and drawn as it sounds.

import { svg } from "../bedside/dom.js";
import { breathOf, breathSound, clicksOf, loudness } from "./breath-audio.js";
import { amountText } from "./latest.js";
import { strip } from "./strip.js";
import { zoneBoard } from "./zone-board.js";

const FAINTEST = -36;
const LOUDEST = 14;
const SILENT = -50;
const LINES_PER_HZ = 1 / 2600;

const height = (level) => Math.min(1, Math.max(0, (level - FAINTEST) / (LOUDEST - FAINTEST)));

/** Upright lines as tall as the breath is loud, and the closer together the higher it sounds. */
function hatch(breath, name, x, middle, half) {
  const loud = loudness(breath, name, breath[name].heard);
  const tall = height(breath[name].level) * half;
  const step = Math.min(0.08, 1 / (breath[name].to * LINES_PER_HZ * 100));
  const lines = [];
  for (let t = 0; t < (loud.length * breath.air.stepMs) / 1000; t += step) {
    const reach = tall * loud[Math.floor((t * 1000) / breath.air.stepMs)];
    if (reach > 0.4) lines.push(`M${x(t).toFixed(1)} ${(middle - reach).toFixed(1)}V${(middle + reach).toFixed(1)}`);
  }
  return svg("path", { class: "hatch", d: lines.join("") });
}

function tones(breath, name, x, middle, half) {
  const { tones: level, lasts } = breath[name];
  if (breath.tones.count === 0 || level < SILENT) return [];
  const begins = name === "in" ? 0 : (breath.in.lasts + breath.gap) / 1000;
  const [from, to] = [x(begins + 0.1), x(begins + lasts / 1000 - 0.1)];
  return Array.from({ length: breath.tones.count }, (_, index) => {
    const y = middle - half * 0.85 + ((index + 0.5) * half * 1.7) / breath.tones.count;
    return svg("path", { class: "tone", d: `M${from} ${y}C${from + (to - from) / 3} ${y - 5} ${from + (to - from) / 1.5} ${y + 5} ${to} ${y}` });
  });
}

function drawn(probe) {
  const breath = breathOf(probe);
  const turn = breath.in.lasts / 1000;
  return strip({
    seconds: (breath.air.samples.length * breath.air.stepMs) / 1000,
    draw: (x, middle, half) => [
      svg("path", { class: "grid zero", d: `M${x(0)} ${middle}H${x(4.8)}` }),
      svg("path", { class: "turn", d: `M${x(turn)} 2V${middle * 2 - 4}` }),
      svg("text", { class: "trace-name", x: x(0) + 4, y: 13 }, "in"),
      svg("text", { class: "trace-name", x: x(turn) + 5, y: 13 }, "out"),
      ...["in", "out"].map((name) => hatch(breath, name, x, middle, half)),
      ...clicksOf(breath).map(({ ms, height: part }) => click(x(ms / 1000), middle, half * part, breath.click.ms)),
      ...["in", "out"].flatMap((name) => tones(breath, name, x, middle, half)),
    ],
  });
}

const click = (x, middle, reach, ms) => svg("path", { class: "click", "stroke-width": ms > 10 ? 3 : 1.5, d: `M${x} ${middle - reach}V${middle + reach}` });

const seconds = (ms) => amountText(ms / 1000);

function phaseText(name, { level, to, heard }) {
  return level <= -36 ? `${name} with nothing but the noise of the room` : `${name} heard for ${seconds(heard)} s at ${amountText(level)} dB, up to ${to} Hz`;
}

function clicksText(breath) {
  const clicks = clicksOf(breath);
  if (!clicks.length) return "no clicks";
  const inwards = clicks.filter(({ ms }) => ms <= breath.in.lasts).map(({ ms }) => Math.round((ms / breath.in.lasts) * 100));
  const outwards = clicks.length - inwards.length;
  const where = `${inwards.length} between ${inwards[0]} % and ${inwards.at(-1)} % of the breath in${outwards ? `, ${outwards} in the breath out` : ""}`;
  return `clicks of ${breath.click.ms} ms near ${breath.click.hertz} Hz: ${where}`;
}

function tonesText({ tones: { count, hertz }, in: inwards, out }) {
  if (!count) return "no tones";
  const loud = [["in", inwards.tones], ["out", out.tones]].map(([name, level]) => `${amountText(level)} dB in the breath ${name}`);
  return `${count} ${count === 1 ? "tone" : "tones at once"} from ${hertz} Hz: ${loud.join(", ")}`;
}

/** The same breath in words. */
export function breathText(probe) {
  const breath = breathOf(probe);
  const gap = breath.gap > 0 ? `, a gap of ${seconds(breath.gap)} s` : "";
  return `${phaseText("breath in", breath.in)}${gap}; ${phaseText("breath out", breath.out)}; ${clicksText(breath)}; ${tonesText(breath)}`;
}

export const lungSound = (host, view) =>
  zoneBoard(host, {
    ...view,
    strip: drawn,
    sound: breathSound,
    said: breathText,
    key: "Taller lines are louder, closer lines higher; a single strong stroke is a click, a wavy line a tone. Only what this line of the sheet is about is heard here; use headphones.",
  });
