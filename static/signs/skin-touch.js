// Points of the skin that were tried, on an outline of the body; beside it the patient's answers, each with the points where it
// was given, and folded away a list of every point.

import { el } from "../bedside/dom.js";
import { bodyMap } from "./body-map.js";
import { amountText, latest, measuresOf } from "./latest.js";
import { onAPartner } from "./partner.js";
import { markAlone, numberOf, touchKey } from "./touch-mark.js";

const SIDES = ["right", "left"];

const answerOf = (probe) =>
  probe ? [probe.shown.words && `“${probe.shown.words}”`, ...measuresOf(probe).map(({ label, amount, unit }) => `${label} ${amountText(amount)} ${unit}`)].filter(Boolean).join("; ") : "not tried";

/** So many points are named; more are for the map and the list. */
const NAMED = 8;

const pointText = (manoeuvre, { place, side }) => [(manoeuvre.places ?? []).find(({ id }) => id === place)?.name, side === "none" ? "" : side].filter(Boolean).join(", ");

/** Each answer once, the lowest number first, and where it was given. */
function answers(manoeuvre, tried) {
  const given = new Map();
  for (const probe of tried) given.set(answerOf(probe), [...(given.get(answerOf(probe)) ?? []), probe]);
  return [...given].sort(([, [one]], [, [other]]) => numberOf(one) - numberOf(other)).map(([answer, probes]) =>
    el("li", {}, markAlone(probes[0]), el("span", {}, `${answer}: `, el("b", {}, `${probes.length} ${probes.length === 1 ? "point" : "points"}`), probes.length > NAMED ? "" : ` (${probes.map((probe) => pointText(manoeuvre, probe)).join("; ")})`)));
}

function everyPoint(manoeuvre, tried) {
  const sides = SIDES.some((side) => tried.some((probe) => probe.side === side)) ? SIDES : ["none"];
  const places = (manoeuvre.places ?? []).filter(({ id }) => tried.some((probe) => probe.place === id));
  const rows = (places.length ? places : [{ id: "", name: manoeuvre.name }]).map((place) => ({
    place,
    given: sides.map((side) => tried.find((probe) => (probe.place ?? "") === place.id && probe.side === side)),
  }));
  const head = el("tr", {}, el("th", { scope: "col" }, "Point"), ...sides.map((side) => el("th", { scope: "col" }, side === "none" ? "answer" : side)));
  const list = el("table", { class: "touched" }, el("thead", {}, head),
    el("tbody", {}, ...rows.map(({ place, given }) => el("tr", {}, el("th", { scope: "row" }, place.name), ...given.map((probe) => el("td", { class: probe ? "" : "quiet" }, answerOf(probe)))))));
  return el("details", {}, el("summary", {}, `Point by point: ${rows.length} ${rows.length === 1 ? "place" : "places"}`), list);
}

/** Touches shown on a map: (tried, last) => its drawing. */
export const touchedOn = (map) => (host, { manoeuvre, probes, fresh }) => {
  const tried = latest(probes, (probe) => `${probe.place ?? ""}/${probe.side}`);
  const last = fresh ?? probes.at(-1);
  host.append(el("div", { class: "stage skin-stage" }, el("div", { class: "figure-box" }, map(tried, last), touchKey()), el("div", {}, el("ul", { class: "touch-answers" }, ...answers(manoeuvre, tried)), everyPoint(manoeuvre, tried))), onAPartner());
  return `${pointText(manoeuvre, last) || manoeuvre.name}: ${answerOf(last)}.`;
};

export const skinTouch = touchedOn(bodyMap);
