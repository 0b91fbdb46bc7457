// The sign desk: the sign in health and the sign chosen, side by side, from the drawings of the bedside.

import { announceIn } from "../bedside/announce.js";
import { el } from "../bedside/dom.js";
import { showSign } from "../signs/index.js";

const pair = document.getElementById("sign-pair");

/** Each amount and each curve of a look as a row of numbers. */
const rows = ({ shown }) => [...(shown.measures ?? []).map(({ amount }) => [amount]), ...(shown.curves ?? []).map(({ samples }) => samples)];

const mean = (all) => all.reduce((sum, one) => sum + one, 0) / (all.length || 1);

/** The largest number of each row over all looks, against which differences are weighed. */
const largest = (looks) => rows(looks[0]).map((_, row) => looks.flatMap((look) => rows(look)[row]).reduce((most, number) => Math.max(most, Math.abs(number)), 1e-9));

/** How far apart two looks are: the mean difference of their rows, and one for other words. */
function apart(one, other, scale) {
  const [here, there] = [rows(one), rows(other)];
  const all = here.map((row, index) => mean(row.map((number, at) => Math.abs(number - there[index][at]))) / scale[index]);
  return mean(all) + (one.shown.words === other.shown.words ? 0 : 1);
}

/** A murmur is opened where it is loudest: the most that its noise reaches. */
const noise = ({ shown }) => Math.max(...shown.curves.filter(({ name }) => name.startsWith("noise")).flatMap(({ samples }) => samples));

/** Drawings show the place that was tried last: the one that differs most from health, its sides together. */
function mostChangedLast({ id }, health, now) {
  const scale = largest([...health, ...now]);
  const changes = now.map((probe, index) => (id.startsWith("murmur") ? noise(probe) : apart(health[index], probe, scale)));
  const changed = new Map();
  for (const [index, { place }] of now.entries()) changed.set(place, Math.max(changed.get(place) ?? 0, changes[index]));
  const [most] = [...changed].reduce((best, one) => (one[1] >= best[1] ? one : best));
  return [...now.keys()].sort((one, other) => (now[one].place === most) - (now[other].place === most) || (now[one].place === most ? changes[one] - changes[other] : 0) || one - other);
}

async function start() {
  const answer = await fetch(location.href, { headers: { Accept: "application/json" }, credentials: "same-origin" });
  if (!answer.ok) throw new Error(`The sign could not be read (${answer.status}).`);
  const { manoeuvre, health, now } = await answer.json();
  const order = mostChangedLast(manoeuvre, health, now);
  const drawn = [health, now].map((probes) => order.map((index) => probes[index]));
  pair.querySelectorAll(".sign").forEach((host, i) => showSign(host, { manoeuvre, probes: drawn[i] }));
}

const live = el("div", { class: "heard", role: "status" });
pair.after(live);
announceIn(live);
document.querySelectorAll("#choice select").forEach((select) => select.addEventListener("change", () => select.form.requestSubmit()));
start().catch((fault) => pair.replaceChildren(el("p", { class: "notice fault", role: "alert" }, fault.message)));
