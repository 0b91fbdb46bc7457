// The couch: where the patient is now and where they can be asked to go. Moving costs seconds on the bedside clock.

import { el, freshId } from "./dom.js";
import { figure } from "./figures.js";
import { capital } from "./words.js";

export class Couch {
  #stops;

  constructor(positions, move) {
    const name = freshId("position");
    this.#stops = positions.map((position) => {
      const input = el("input", { type: "radio", name, value: position.id, onchange: () => move(position.id) });
      const node = el("label", { class: "stop" }, input, el("span", {}, figure(position.id), el("span", {}, capital(position.name))));
      return { input, node };
    });
    this.stops = el("div", { class: "stops" }, ...this.#stops.map((stop) => stop.node));
    this.node = el(
      "fieldset",
      { class: "couch" },
      el("legend", { class: "heard" }, "Position of the patient; moving takes time"),
      this.stops,
    );
  }

  show(position, locked) {
    this.node.disabled = locked;
    for (const { input, node } of this.#stops) {
      const here = input.value === position;
      if (here && !input.checked) this.#bringIntoSight(node);
      input.checked = here;
    }
  }

  /** Sideways only: the page itself stays where the eye is. */
  #bringIntoSight(stop) {
    requestAnimationFrame(() => {
      this.stops.scrollLeft = stop.offsetLeft - (this.stops.clientWidth - stop.offsetWidth) / 2;
    });
  }
}
