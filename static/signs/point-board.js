// Signs that are tried place by place on a map: the map, what the last place gave, and a list from which each place can be
// called back. Only places that were tried are here at all.

import { announce } from "../bedside/announce.js";
import { el, put } from "../bedside/dom.js";
import { amountText, latest, measuresOf, sideText } from "./latest.js";
import { onAPartner } from "./partner.js";

/** A list of more places than this is folded away below the map. */
const MANY = 4;

/** The amounts of a probe and the patient's words, as one phrase. */
export const phrase = (probe) =>
  [...measuresOf(probe).map(({ label, amount, unit }) => `${label} ${amountText(amount)} ${unit}`.trim()), probe.shown.words && `“${probe.shown.words}”`].filter(Boolean).join("; ");

/** Ends a sentence, unless the patient's words have ended it. */
export const sentence = (text) => (/[.!?]”$/.test(text) ? text : `${text}.`);

const nameOf = (manoeuvre, probe) => (manoeuvre.places ?? []).find(({ id }) => id === probe.place)?.name ?? manoeuvre.name;

const titleOf = (manoeuvre, probe) => [nameOf(manoeuvre, probe), sideText(probe.side)].filter(Boolean).join(", ");

/**
 * @param map    (tried, shown) => the map with a dot on each place
 * @param figure (probe) => what a hand or an eye meets there
 * @param felt   whether a hand feels it
 */
export function pointBoard(host, { manoeuvre, probes, fresh }, { map, figure, felt = true }) {
  const tried = latest(probes, (probe) => `${probe.place ?? ""}/${probe.side}`);
  const [mapBox, figureBox] = [el("div", { class: "figure-box" }), el("div", { class: "point-figure" })];
  function show(probe) {
    put(mapBox, map(tried, probe));
    put(figureBox, el("p", { class: "trace-title" }, titleOf(manoeuvre, probe)), figure(probe), probe.shown.words ? el("p", { class: "felt" }, `“${probe.shown.words}”`) : "", el("p", { class: "heard" }, phrase(probe)));
  }
  const rows = tried.map((probe) =>
    el("tr", {}, el("th", { scope: "row" }, titleOf(manoeuvre, probe)), el("td", {}, phrase(probe)),
      el("td", {}, el("button", { type: "button", "aria-label": `Show ${titleOf(manoeuvre, probe)}`, onclick: () => (show(probe), announce(sentence(`${titleOf(manoeuvre, probe)}: ${phrase(probe)}`))) }, "Show"))));
  const list = el("table", { class: "touched points" }, el("tbody", {}, ...rows));
  const folded = rows.length > MANY ? el("details", {}, el("summary", {}, `Every place that was tried (${rows.length})`), list) : list;
  host.append(el("div", { class: "stage point-stage" }, mapBox, figureBox), folded, felt ? onAPartner() : "");
  const last = fresh ?? probes.at(-1);
  show(last);
  return sentence(`${titleOf(manoeuvre, last)}: ${phrase(last)}`);
}

/** One drawing for each side side by side, or one drawing where there is no side; felt signs carry the partner's line. */
export const sidesBoard = (drawing, felt = true) => (host, { manoeuvre, probes }) => {
  const sides = latest(probes, (probe) => probe.side).sort((one, other) => (one.side < other.side ? 1 : -1));
  host.append(el("div", { class: "marks-row" }, ...sides.map((probe) =>
    el("div", { class: "one-side" }, sideText(probe.side) ? el("b", {}, sideText(probe.side)) : "", drawing(probe, manoeuvre), probe.shown.words ? el("p", { class: "felt" }, `“${probe.shown.words}”`) : "", el("p", { class: "heard" }, phrase(probe))))),
    felt ? onAPartner() : "");
  return sides.map((probe) => sentence([sideText(probe.side), phrase(probe)].filter(Boolean).join(": "))).join(" ");
};
