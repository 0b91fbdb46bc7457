// Both eyes following a finger: the nine positions of gaze on one chart, the last one moving, with its trace.

import { el, put } from "../bedside/dom.js";
import { heightAt, highest, lengthMs, lowest } from "./curve.js";
import { gazeEyes } from "./gaze-eyes.js";
import { irisOf, seen, skinOf } from "./head-parts.js";
import { amountText, curvesOf } from "./latest.js";
import { Player } from "./player.js";
import { Trace } from "./trace.js";

const EYES = ["right", "left"];
const SETTLED_MS = 1800;
/** Rows of the chart from above, columns from the patient's right, which is on the left of the page. */
const ROWS = [1, 0, -1];
const COLUMNS = [1, 0, -1];
const UP = { 1: "up", 0: "", "-1": "down" };
const ACROSS = { 1: "to the patient's right", 0: "", "-1": "to the patient's left" };

const directionText = (right, up) => [UP[up], ACROSS[right]].filter(Boolean).join(" and ") || "straight ahead";

const curve = (probe, name) => curvesOf(probe).find((one) => one.name === name);
const across = (probe, eye) => curve(probe, `${eye} outwards`);
const upwards = (probe, eye) => curve(probe, `${eye} upwards`);
const tones = (probe) => ({ skin: skinOf(probe), iris: irisOf(probe) });

/** Where the finger is: 1 to the patient's right, 1 up. */
export function direction({ place = "", side }) {
  const words = place.split("-");
  const has = (...any) => any.some((word) => words.includes(word));
  const outward = has("outward", "out") ? 1 : has("inward", "in") ? -1 : 0;
  return { right: side === "left" ? -outward : outward, up: has("up") ? 1 : has("down") ? -1 : 0 };
}

/** The samples once the eye has arrived. */
const settled = (one) => ({ ...one, samples: one.samples.slice(Math.round(SETTLED_MS / one.stepMs)) });

/** Both eyes where they come to stand; an eye that beats has its other end as an outline. */
function stand(pair, probe, options) {
  for (const eye of EYES) {
    const [x, y] = [settled(across(probe, eye)), settled(upwards(probe, eye))];
    pair[eye].look(highest(x), highest(y), options?.(eye));
    pair[eye].also(lowest(x), lowest(y));
  }
}

const held = () => ({ held: true });

function atFirst(pair, probe) {
  for (const eye of EYES) {
    const [x] = across(probe, eye).samples;
    const [y] = upwards(probe, eye).samples;
    pair[eye].look(x, y, held());
    pair[eye].also(x, y);
  }
}

function chart(probes) {
  const cells = ROWS.flatMap((up) => COLUMNS.map((right) => {
    const probe = probes.findLast((one) => { const at = direction(one); return at.right === right && at.up === up; });
    const [first] = probes;
    const pair = gazeEyes(tones(first), { apart: 37, width: 320, named: false, aside: 17 });
    const ahead = right === 0 && up === 0;
    if (probe) stand(pair, probe, held);
    else if (ahead) atFirst(pair, first);
    const tried = probe || ahead;
    return el("div", { class: tried ? "gaze-cell" : "gaze-cell not-tried" }, tried ? pair.node : "", el("span", { class: "quiet" }, tried ? directionText(right, up) : `${directionText(right, up)}: not tried`));
  }));
  return el("div", { class: "gaze-chart whole" }, ...cells);
}

/** The way of both eyes in space, towards the patient's right and upwards. */
function ways(probe) {
  const turned = (one, sign) => ({ ...one, samples: one.samples.map((height) => sign * height) });
  return [
    { title: "Towards the patient's right (up on the trace), degrees", series: EYES.map((side) => ({ side, name: side, curve: turned(across(probe, side), side === "right" ? 1 : -1) })) },
    { title: "Upwards, degrees", series: EYES.map((side) => ({ side, name: side, curve: upwards(probe, side) })) },
  ];
}

/** The last movement at true speed, where motion is not wanted as its traces alone. */
function follow(host, probe, { fresh, still }) {
  const pair = gazeEyes(tones(probe), { width: 460 });
  const box = el("div", { class: "traces" });
  const at = direction(probe);
  const looking = `Looking ${directionText(at.right, at.up)}; the lids are held up`;
  host.append(still ? el("div", {}, el("p", {}, el("b", {}, looking)), box) : el("div", { class: "stage gaze-stage" }, el("div", { class: "figure-box" }, pair.node, el("p", { class: "quiet shown-side" }, looking)), box));
  const show = (ms) => {
    for (const eye of EYES) pair[eye].look(heightAt(across(probe, eye), ms), heightAt(upwards(probe, eye), ms), held());
  };
  const watched = (ms) => {
    player.stop();
    show(ms);
    drawn[1].at(ms);
  };
  const drawn = ways(probe).map((way, index) => new Trace(box, { series: way.series, low: -50, high: 50, from: "the start", short: true, watch: index === 0 && watched }));
  for (const [index, { node }] of drawn.entries()) box.append(el("p", { class: "trace-title" }, ways(probe)[index].title), node);
  const end = lengthMs(across(probe, "right"));
  const player = new Player(-300, end, (ms) => {
    show(Math.max(0, ms));
    for (const trace of drawn) trace.at(ms);
  });
  stand(pair, probe, held);
  if (still) return;
  host.append(el("div", { class: "actions" }, el("button", { type: "button", onclick: () => player.play() }, "Watch the eyes move again")));
  if (fresh) player.play();
}

const eyeSaid = (probe, eye) => {
  const [x, y] = [settled(across(probe, eye)), settled(upwards(probe, eye))];
  const beat = highest(x) - lowest(x);
  const among = (settledCurve) => amountText((lowest(settledCurve) + highest(settledCurve)) / 2);
  const swing = beat > 0.3 ? `, beating by ${amountText(beat)} degrees, ${amountText(beats(x))} times a second` : "";
  return `${eye} eye ${among(x)} degrees outwards and ${among(y)} upwards${swing}`;
};

/** Quick returns of a beating eye in a second. */
export function beats({ samples, stepMs }) {
  const half = (Math.max(...samples) - Math.min(...samples)) / 2;
  const jumps = samples.flatMap((height, index) => (index > 0 && Math.abs(height - samples[index - 1]) > half ? [index] : []));
  return jumps.length < 2 ? 0 : ((jumps.length - 1) * 1000) / ((jumps.at(-1) - jumps[0]) * stepMs);
}

const saidOne = (probe) => `${eyeSaid(probe, "right")}; ${eyeSaid(probe, "left")}. How many: “${probe.shown.words}”`;

/** At rest: the lids as they are, and held up so that both corneas are seen. */
function atRest(host, probe) {
  const [own, lifted] = [gazeEyes(tones(probe)), gazeEyes(tones(probe))];
  stand(own, probe, (eye) => ({ opening: seen(probe, `${eye} lids open by`) }));
  stand(lifted, probe, held);
  host.append(el("div", { class: "marks-row" },
    el("figure", { class: "head-figure" }, own.node, el("figcaption", { class: "quiet" }, "As the patient looks into the distance")),
    el("figure", { class: "head-figure" }, lifted.node, el("figcaption", { class: "quiet" }, "The same with the lids held up: compare the light on each cornea"))));
}

const isRest = (manoeuvre) => !manoeuvre.places?.some(({ id }) => id);

export function eyeMovement(host, { manoeuvre, probes, fresh, still }) {
  const last = fresh ?? probes.at(-1);
  const words = el("p", { class: "felt" }, `How many fingers does the patient see? “${last.shown.words}”`);
  if (isRest(manoeuvre)) {
    atRest(host, last);
    host.append(words);
    const lids = EYES.map((eye) => `${eye} lids open by ${amountText(seen(last, `${eye} lids open by`))} mm`).join(", ");
    return `Looking straight ahead: ${saidOne(last)} ${lids}.`;
  }
  const moving = el("div");
  put(moving);
  const nine = [el("p", { class: "trace-title" }, "The nine positions as you face the patient, the lids held up. In each pair the patient's right eye is on the left."), chart(probes)];
  host.append(...(still ? [...nine, words, moving] : [moving, words, ...nine]));
  follow(moving, last, { fresh, still });
  const at = direction(last);
  return `Looking ${directionText(at.right, at.up)}: ${saidOne(last)}`;
}
