// Points of the skin that were tried, on an outline of the body and in a list, with what the patient said at each.

import { el } from "../bedside/dom.js";
import { bodyMap } from "./body-map.js";
import { amountText, latest, measuresOf } from "./latest.js";
import { onAPartner } from "./partner.js";

const SIDES = ["right", "left"];

const answerOf = (probe) =>
  probe ? [probe.shown.words && `“${probe.shown.words}”`, ...measuresOf(probe).map(({ label, amount, unit }) => `${label} ${amountText(amount)} ${unit}`)].filter(Boolean).join("; ") : "not tried";

/** Touches shown on a map: (tried, last) => its drawing. */
export const touchedOn = (map) => (host, { manoeuvre, probes, fresh }) => {
  const tried = latest(probes, (probe) => `${probe.place ?? ""}/${probe.side}`);
  const sides = SIDES.some((side) => tried.some((probe) => probe.side === side)) ? SIDES : ["none"];
  const places = (manoeuvre.places ?? []).filter(({ id }) => tried.some((probe) => probe.place === id));
  const rows = (places.length ? places : [{ id: "", name: manoeuvre.name }]).map((place) => ({
    place,
    answers: sides.map((side) => tried.find((probe) => (probe.place ?? "") === place.id && probe.side === side)),
  }));
  const head = el("tr", {}, el("th", { scope: "col" }, "Point"), ...sides.map((side) => el("th", { scope: "col" }, side === "none" ? "answer" : side)));
  const list = el("table", { class: "touched" }, el("thead", {}, head),
    el("tbody", {}, ...rows.map(({ place, answers }) => el("tr", {}, el("th", { scope: "row" }, place.name), ...answers.map((probe) => el("td", { class: probe ? "" : "quiet" }, answerOf(probe)))))));
  host.append(el("div", { class: "stage skin-stage" }, map(tried, fresh ?? probes.at(-1)), list), onAPartner());
  const last = fresh ?? probes.at(-1);
  const name = (manoeuvre.places ?? []).find(({ id }) => id === last.place)?.name ?? manoeuvre.name;
  return `${name}${last.side === "none" ? "" : `, ${last.side}`}: ${answerOf(last)}.`;
};

export const skinTouch = touchedOn(bodyMap);
