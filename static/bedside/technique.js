// How the manoeuvre is done before it is done: technique, cautions, variants, the point, and the buttons that do it.

import { OneOf } from "./chips.js";
import { el } from "./dom.js";
import { capital, inOrder, nameIn } from "./words.js";

const CLICK_AGAIN_AFTER = 400;

function cautions(list) {
  if (!list?.length) return "";
  const rows = list.map((text) => el("li", {}, text));
  return el("div", { class: "notice caution" }, el("strong", {}, "Take care. "), el("ul", {}, ...rows));
}

export class Technique {
  #technique = {};
  #place = "";

  constructor(manoeuvre, positions, { probe, move }) {
    this.manoeuvre = manoeuvre;
    this.positions = positions;
    this.probe = probe;
    this.buttons = inOrder(manoeuvre.sides).map((side) => this.#button(side));
    this.elsewhere = el("div", { class: "elsewhere" }, ...this.#moves(move));
    this.doing = el("fieldset", { class: "doing" }, ...this.#choices(), el("div", { class: "actions" }, ...this.buttons.map((one) => one.node)));
    this.node = el(
      "div",
      { class: "technique" },
      manoeuvre.technique ? el("p", { class: "how" }, manoeuvre.technique) : "",
      manoeuvre.goesWrong ? el("p", { class: "how" }, el("b", {}, "What goes wrong: "), manoeuvre.goesWrong) : "",
      cautions(manoeuvre.cautions),
      this.elsewhere,
      this.doing,
    );
  }

  #choices() {
    const variants = (this.manoeuvre.variants ?? []).map((variant) => this.#variant(variant));
    return this.manoeuvre.placeMode === "points" ? [this.#points(), ...variants] : variants;
  }

  #variant({ id, name, choices }) {
    this.#technique[id] = choices[0].id;
    const how = el("p", { class: "hint" });
    const tell = (chosen) => (how.textContent = choices.find((choice) => choice.id === chosen)?.how ?? "");
    const pick = (chosen) => {
      this.#technique[id] = chosen;
      tell(chosen);
    };
    const control = new OneOf({ legend: capital(name), options: choices, pick });
    control.chosen = choices[0].id;
    tell(choices[0].id);
    return el("div", { class: "variant" }, control.node, how);
  }

  #points() {
    const { places } = this.manoeuvre;
    this.#place = places[0].id;
    const select = el("select", { onchange: () => (this.#place = select.value) }, ...places.map(({ id, name }) => el("option", { value: id }, name)));
    return el("label", { class: "point" }, "Where on the body ", select);
  }

  #button(side) {
    const node = el("button", { type: "button", class: "first", onclick: () => this.#do(side, node) });
    return { side, node };
  }

  /** A second click in the same breath is the same examination, not another. */
  #do(side, node) {
    if (node.disabled) return;
    node.disabled = true;
    setTimeout(() => (node.disabled = false), CLICK_AGAIN_AFTER);
    this.probe(side, this.#place, { ...this.#technique });
  }

  /** Does it once more at a point chosen in the drawing, if it can be done now. */
  again(side, place) {
    const button = this.buttons.find((one) => one.side === side)?.node;
    if (!button || this.doing.hidden || this.node.disabled) return;
    if (place !== this.#place) button.disabled = false; // another point is another examination, however soon
    this.#place = place;
    const select = this.doing.querySelector(".point select");
    if (select) select.value = place;
    this.#do(side, button);
  }

  #moves(move) {
    const names = this.manoeuvre.positions.map((id) => [id, nameIn(this.positions, id)]);
    return [
      el("p", {}, "This cannot be done in the present position."),
      el("div", { class: "actions" }, ...names.map(([id, name]) => el("button", { type: "button", onclick: () => move(id) }, `Ask the patient to move: ${name.toLowerCase()}`))),
    ];
  }

  show(line, position) {
    const here = this.manoeuvre.positions.length === 0 || this.manoeuvre.positions.includes(position);
    this.elsewhere.hidden = here;
    this.doing.hidden = !here;
    for (const { side, node } of this.buttons) {
      const done = line.probes.some((probe) => probe.side === side);
      node.textContent = this.#label(side, done);
    }
  }

  #label(side, done) {
    const what = side === "none" ? "Examine" : `Examine the ${side}`;
    return done && this.manoeuvre.placeMode !== "points" ? `${what} again` : what;
  }
}
