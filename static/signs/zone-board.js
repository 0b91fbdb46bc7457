// What the signs of the chest share that are tried zone by zone: the map, the two sides of one zone above one another, and a
// list of every zone that was tried, from which each can be called back, and heard.

import { announce } from "../bedside/announce.js";
import { el, put } from "../bedside/dom.js";
import { chestMap } from "./chest-map.js";
import { latest } from "./latest.js";
import { play } from "./sound-desk.js";

const SIDES = ["right", "left"];

/**
 * @param strip (probe) => {node, at(seconds)?} draws what one probe gave
 * @param sound (probe) => a builder of its sound; left out for what is not heard
 * @param said  (probe) => the same in words
 * @param key   what the drawing means, in a line below it
 */
export function zoneBoard(host, { manoeuvre, probes, fresh, strip, sound, said, key }) {
  const tried = latest(probes, (probe) => `${probe.place}/${probe.side}`);
  const of = (place, side) => tried.find((probe) => probe.place === place && probe.side === side);
  const places = manoeuvre.places.filter(({ id }) => tried.some((probe) => probe.place === id));
  const nameOf = (id) => places.find((place) => place.id === id).name;
  const [map, strips] = [el("div", { class: "figure-box" }), el("div", { class: "traces zone-strips" })];

  function show(place) {
    const both = SIDES.map((side) => of(place, side)).filter(Boolean);
    const drawn = new Map(both.map((probe) => [probe, strip(probe)]));
    put(map, chestMap(manoeuvre, tried, both));
    put(strips, el("p", { class: "trace-title" }, nameOf(place)), ...both.map((probe) => row(probe, drawn.get(probe))), el("p", { class: "quiet" }, key));
    return drawn;
  }

  const row = (probe, { node }) => el("div", { class: "zone-strip" }, el("b", {}, probe.side), node, el("p", { class: "heard" }, said(probe)));

  function hear(probe) {
    const drawn = show(probe.place).get(probe);
    play(sound(probe), (seconds) => drawn.at?.(seconds));
  }

  function cell(place, side) {
    const probe = of(place.id, side);
    if (!probe) return el("td", { class: "quiet" }, "not tried");
    const what = sound ? "Hear" : "Show";
    const act = () => {
      announce(`${place.name}, ${side}: ${said(probe)}.`);
      return sound ? hear(probe) : show(place.id);
    };
    return el("td", {}, el("button", { type: "button", "aria-label": `${what} ${place.name}, ${side}`, onclick: act }, `${what} ${side}`));
  }

  const last = fresh ?? probes.at(-1);
  const list = el("table", { class: "touched zones" },
    el("thead", {}, el("tr", {}, el("th", { scope: "col" }, "Where"), ...SIDES.map((side) => el("th", { scope: "col" }, side)))),
    el("tbody", {}, ...places.map((place) => el("tr", {}, el("th", { scope: "row" }, place.name), ...SIDES.map((side) => cell(place, side))))));
  host.append(el("div", { class: "stage zone-stage" }, map, strips), list);
  show(last.place);
  return `${nameOf(last.place)}, ${last.side}: ${said(last)}.`;
}
