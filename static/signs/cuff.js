// A cuff let down slowly: its pressure over time, a tick for every sound heard below it, and the pulse at the other wrist.
// Drag along the trace, or listen at true speed, and read the pressure where the sounds begin and where they end.

import { el } from "../bedside/dom.js";
import { thump } from "./beat-sound.js";
import { heightAt, lengthMs } from "./curve.js";
import { amountText, curvesOf } from "./latest.js";
import { Player } from "./player.js";
import { Trace } from "./trace.js";

const curveOf = (probe, name) => curvesOf(probe).find((curve) => curve.name === name);

/** The moments of the sounds, in milliseconds: a sample above nought holds a beat. */
const sounds = ({ samples, stepMs }) => samples.flatMap((height, index) => (height > 0 ? [index * stepMs] : []));

const SOUND_LASTS = 400;

export function cuff(host, { probes, fresh }) {
  const probe = fresh ?? probes.at(-1);
  const [pressure, pulse] = [curveOf(probe, "cuff"), curveOf(probe, "pulse")];
  const beats = sounds(curveOf(probe, "sound"));
  const box = el("div", { class: "traces wide" });
  const heard = el("output", { class: "watch-text" });
  host.append(box);
  const at = (ms) => {
    const near = beats.some((beat) => ms >= beat && ms < beat + SOUND_LASTS);
    heard.textContent = `Cuff at ${amountText(heightAt(pressure, ms), 0)} mmHg: ${near ? "a sound" : "silence"}`;
  };
  const trace = new Trace(box, {
    series: [{ name: "cuff", side: "right", curve: pressure }], from: "the start", ticks: beats, low: 0,
    watch: () => (player.stop(), (heard.textContent = "")), also: (ms) => (beats.some((beat) => Math.abs(ms - beat) < SOUND_LASTS) ? "a sound" : "silence"),
  });
  box.append(el("p", { class: "trace-title" }, "Pressure in the cuff; a tick for every sound"), trace.node, heard);
  if (pulse) {
    box.append(el("p", { class: "trace-title" }, "Pulse at the other wrist"));
    box.append(new Trace(box, { series: [{ name: "pulse", side: "right", curve: pulse }], from: "the start", watch: () => {}, short: true }).node);
  }
  let before = 0;
  const player = new Player(0, lengthMs(pressure), (ms) => {
    if (beats.some((beat) => beat > before && beat <= ms)) thump();
    before = ms;
    trace.at(ms);
    at(ms);
  });
  host.append(el("div", { class: "actions" },
    el("button", { type: "button", onclick: () => ((before = 0), player.play()) }, "Listen, at true speed"),
    el("button", { type: "button", onclick: () => player.stop() }, "Stop")));
  if (probe.shown.words) host.append(el("p", { class: "felt" }, probe.shown.words));
  return `The cuff falls from ${amountText(pressure.samples[0], 0)} to ${amountText(pressure.samples.at(-1), 0)} mmHg. Move the stop-watch along to hear where the sounds begin and end. ${probe.shown.words ?? ""}`.trim();
}
