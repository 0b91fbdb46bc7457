// Where the student writes down what was seen: a grade on the scale in force, a number with its unit, or one of a set.
// A control appears once its side (and point) has been examined.

import { OneOf } from "./chips.js";
import { el, freshId } from "./dom.js";
import { itemOf } from "./fold.js";
import { inOrder, nameIn } from "./words.js";

const PAUSE_IN_TYPING = 700;

class NumberRow {
  #timer;
  #sent;

  constructor({ legend, unit, pick }) {
    const id = freshId("number");
    const send = () => {
      clearTimeout(this.#timer);
      const text = this.input.value;
      if (text === "" || text === this.#sent || !this.input.validity.valid) return;
      this.#sent = text;
      pick(Number(text));
    };
    this.input = el("input", { id, type: "number", inputmode: "decimal", step: "any", onchange: send, oninput: () => this.#soon(send) });
    this.node = el("div", { class: "measured" }, el("label", { for: id }, legend), this.input, el("span", { class: "unit" }, unit));
    addEventListener("pagehide", send);
  }

  #soon(send) {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(send, PAUSE_IN_TYPING);
  }

  set chosen(number) {
    if (document.activeElement === this.input || number === undefined) return;
    this.#sent = String(number);
    this.input.value = this.#sent;
  }
}

/** A number, or one of the words that stand where there is nothing to measure. */
class NumberOrWord {
  constructor(number, reading, legend, pick) {
    this.number = number;
    this.word = new OneOf({ legend: `${legend}, instead of a number`, kind: "side-by-side", options: choicesOf(reading), pick: (seen) => pick({ seen }) });
    this.word.node.classList.add("instead");
    this.node = el("div", { class: "number-or-word" }, number.node, this.word.node);
  }

  set chosen(given) {
    this.number.chosen = typeof given === "number" ? given : undefined;
    this.word.chosen = typeof given === "string" ? given : undefined;
  }
}

const CONTROLS = {
  graded: (reading, legend, pick) => ({
    control: new OneOf({
      legend,
      kind: "side-by-side",
      options: reading.scale.levels.map(({ code, label }) => ({ id: code, name: code, title: label, heard: `${code}, ${label}` })),
      pick: (code) => pick({ grade: code, scale: reading.scale.id }),
    }),
    from: (given) => given?.grade,
  }),
  measured: (reading, legend, pick, unit) => {
    const number = new NumberRow({ legend, unit: unit || reading.unit, pick: (value) => pick({ value, unit: unit || reading.unit }) });
    return { control: reading.scale ? new NumberOrWord(number, reading, legend, pick) : number, from: (given) => given?.value ?? given?.seen };
  },
  chosen: (reading, legend, pick) => ({
    control: new OneOf({ legend, options: choicesOf(reading), pick: (seen) => pick({ seen }) }),
    from: (given) => given?.seen,
  }),
};

/** The choices of a set, told as {id, name} or as the levels of a scale without an order. */
const choicesOf = ({ choices, scale }) =>
  (choices?.length ? choices : (scale?.levels ?? [])).map((choice) => ({ id: choice.id ?? choice.code, name: choice.name ?? choice.label }));

const ASKED = { graded: "What did you see?", measured: "What did you measure?", chosen: "What did you find?" };

function levels(scale) {
  const rows = scale.levels.flatMap(({ code, label }) => [el("dt", {}, code), el("dd", {}, label)]);
  return el("details", { class: "scale" }, el("summary", {}, "What the grades say"), el("dl", {}, ...rows));
}

/** The items that can be written down after the given probes, in the order right, left, and as the places are tabled. */
export function items(manoeuvre, probes) {
  const sides = inOrder([...new Set(probes.map((probe) => probe.side))]);
  const places = manoeuvre.places?.length ? manoeuvre.places.map((place) => place.id) : [""];
  const tried = (side, place) => probes.some((probe) => probe.side === side && (probe.place ?? "") === place);
  const all = places.flatMap((place) => sides.map((side) => ({ side, place })));
  return manoeuvre.placeMode === "points" ? all.filter(({ side, place }) => tried(side, place)) : all;
}

export class Readings {
  #controls = new Map();

  constructor(manoeuvre, record) {
    this.manoeuvre = manoeuvre;
    this.record = record;
    const { kind, scale } = manoeuvre.reading;
    const label = el("p", { class: "asked" }, ASKED[kind], kind === "graded" ? el("span", { class: "quiet" }, ` Scale in force: ${scale.name}.`) : "");
    this.rows = el("div", { class: "rows" });
    this.node = el("div", { class: manoeuvre.placeMode === "points" ? "readings many" : "readings", hidden: true }, label, this.rows, kind === "graded" ? levels(scale) : "");
  }

  show(line) {
    for (const item of items(this.manoeuvre, line.probes)) {
      const { control, from } = this.#controlFor(item);
      control.chosen = from(line.readings.get(itemOf(item.side, item.place)));
    }
    this.node.hidden = line.probes.length === 0;
  }

  #controlFor({ side, place }) {
    const name = itemOf(side, place);
    if (!this.#controls.has(name)) {
      const legend = [place && nameIn(this.manoeuvre.places, place), side === "none" ? "" : side].filter(Boolean).join(", ");
      const made = CONTROLS[this.manoeuvre.reading.kind](this.manoeuvre.reading, legend || ASKED[this.manoeuvre.reading.kind], (reading) =>
        this.record(side, place, reading), this.manoeuvre.places?.find(({ id }) => id === place)?.unit,
      );
      made.control.node.classList.toggle("alone", !legend);
      this.#controls.set(name, made);
      this.#place();
    }
    return this.#controls.get(name);
  }

  /** Keeps the rows in their order, whatever was examined first, without moving the one in use. */
  #place() {
    const all = items({ ...this.manoeuvre, placeMode: "one" }, ["right", "left", "none"].map((side) => ({ side })));
    let before = null;
    for (const { side, place } of all.reverse()) {
      const node = this.#controls.get(itemOf(side, place))?.control.node;
      if (!node) continue;
      if (node.parentNode !== this.rows || node.nextSibling !== before) this.rows.insertBefore(node, before);
      before = node;
    }
  }
}
