// Lids over time: falling while the patient looks up for a minute, blinking when a cornea is touched, following downwards.

import { el, svg } from "../bedside/dom.js";
import { heightAt, lengthMs, lowest } from "./curve.js";
import { GLOBE, gazeEyes } from "./gaze-eyes.js";
import { irisOf, seen, skinOf } from "./head-parts.js";
import { amountText, curvesOf, latestBySide } from "./latest.js";
import { Player } from "./player.js";
import { Trace } from "./trace.js";

const EYES = ["right", "left"];
const tones = (probe) => ({ skin: skinOf(probe), iris: irisOf(probe) });
const seriesOf = (probe) => EYES.map((side) => ({ side, name: side, curve: curvesOf(probe).find(({ name }) => name === side) }));

/** Lids that open and close beside their trace. {@code at} is where a still is shown; {@code times} how much faster it plays. */
function openings(host, probe, { fresh, still, times, at, title, from, caption, again, upward = 0, before }) {
  const series = seriesOf(probe);
  const pair = gazeEyes(tones(probe));
  before?.(pair);
  const box = el("div", { class: "traces" });
  const clock = el("p", { class: "quiet shown-side" });
  host.append(el("div", { class: "stage gaze-stage" }, el("div", { class: "figure-box" }, pair.node, clock), box));
  const show = (ms) => {
    for (const { side, curve } of series) pair[side].look(0, upward, { opening: heightAt(curve, Math.max(0, ms)) });
    clock.textContent = caption(Math.max(0, ms));
  };
  const trace = new Trace(box, { series, low: 0, high: 12, from, short: true, watch: (ms) => (player.stop(), show(ms)) });
  box.append(el("p", { class: "trace-title" }, title), trace.node);
  const end = lengthMs(series[0].curve);
  const player = new Player(-200, end / times, (ms) => (show(ms * times), trace.at(ms * times)));
  show(at(series, end));
  if (still) return series;
  host.append(el("div", { class: "actions" }, el("button", { type: "button", onclick: () => player.play() }, again)));
  if (fresh) player.play();
  return series;
}

export function lidsLookingUp(host, { probes, fresh, still }) {
  const probe = fresh ?? probes.at(-1);
  const series = openings(host, probe, {
    fresh, still, times: 6, at: (_, end) => end, upward: 0, from: "the start", title: "Opening between the lids, mm",
    caption: (ms) => `After ${amountText(ms / 1000, 0)} s of looking up; the picture shows the opening on looking ahead again`, again: "Watch the minute again, six times as fast",
  });
  return `${series.map(({ side, curve }) => `${side} lids open by ${amountText(curve.samples[0])} mm at first and ${amountText(curve.samples.at(-1))} mm after a minute`).join("; ")}.`;
}

const wisp = () => svg("path", { class: "wisp", d: "M0 0C4 2 7 3 11 3M0 0C4 1 7 0 11 2M11 2.500H19" });

export function corneaTouch(host, { probes, fresh, still }) {
  const told = latestBySide(probes).map((probe) => {
    const part = el("div");
    host.append(part);
    const series = openings(part, probe, {
      fresh: probe === fresh, still, times: 0.5, from: "the touch", title: `${probe.side} cornea touched: opening between the lids, mm`,
      at: ([{ curve }]) => 0.2 * lengthMs(curve), caption: (ms) => `The ${probe.side} cornea touched, ${Math.round(ms)} ms ago`, again: `Watch again, at half speed: ${probe.side}`,
      before: (pair) => pair.node.append(svg("g", { transform: probe.side === "right" ? "translate(-36 2) scale(-1 1)" : "translate(36 2)" }, wisp())),
    });
    return `${probe.side} cornea touched: ${series.map(({ side, curve }) => `${side} lids from ${amountText(curve.samples[0])} to ${amountText(lowest(curve))} mm`).join(", ")}`;
  });
  return `${told.join(". ")}.`;
}

const WHITE = "white above the cornea on looking down";
const FROM = 18;
const TO = -32;
const LASTS = 2600;
const LIMBUS = 5.85;

/** The upper lid rides over the top of the cornea all the way down, or stays behind it. */
export function lidFollowing(host, { probes, fresh, still }) {
  const sides = latestBySide(probes);
  const pair = gazeEyes(tones(sides[0]), { width: 460 });
  const finger = svg("path", { class: "finger" });
  pair.node.append(finger);
  host.append(el("div", { class: "figure-box lag-box" }, pair.node, el("p", { class: "quiet shown-side" }, sides.length > 1 ? "Both eyes, looking down" : `Only the ${sides[0].side} eye is watched`)));
  const show = (share) => {
    const upward = FROM + (TO - FROM) * share;
    for (const probe of sides) {
      const behind = seen(probe, WHITE) * share;
      const top = -GLOBE * Math.sin((upward * Math.PI) / 180) - LIMBUS * Math.cos((upward * Math.PI) / 180);
      pair[probe.side].look(0, upward);
      pair[probe.side].lids(top + (behind > 0 ? -behind : 0) + Math.max(0, 1.4 - behind * 3), 5.2 + 3.5 * share);
    }
    const y = -10 + 20 * share;
    finger.setAttribute("d", `M-2 ${y + 22}V${y}a2 2 0 0 1 4 0V${y + 22}Z`);
  };
  show(1);
  const player = new Player(0, LASTS, (ms) => show(ms / LASTS));
  if (!still) {
    host.append(el("div", { class: "actions" }, el("button", { type: "button", onclick: () => player.play() }, "Watch the eyes go down again")));
    if (fresh) player.play();
  }
  return `${sides.map((probe) => `${probe.side}: ${amountText(seen(probe, WHITE))} mm of white above the cornea on looking down`).join("; ")}.`;
}
