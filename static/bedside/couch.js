// The couch: where the patient is now and where they can be asked to go. Moving costs seconds on the bedside clock.

import { el } from "./dom.js";
import { figure } from "./figures.js";
import { capital } from "./words.js";

export class Couch {
  #stops;

  constructor(positions, move) {
    this.#stops = positions.map((position) => {
      // Buttons and not one group of choices: arrow keys would take the patient through every position on the way.
      const ask = () => node.getAttribute("aria-pressed") === "true" || move(position.id);
      const node = el("button", { type: "button", class: "stop", "data-position": position.id, onclick: ask }, el("span", {}, figure(position.id), el("span", {}, capital(position.name))));
      return { id: position.id, node };
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
    for (const { id, node } of this.#stops) {
      const here = id === position;
      if (here && node.getAttribute("aria-pressed") !== "true") this.#bringIntoSight(node);
      node.setAttribute("aria-pressed", here);
    }
  }

  /** Sideways only: the page itself stays where the eye is. */
  #bringIntoSight(stop) {
    requestAnimationFrame(() => {
      this.stops.scrollLeft = stop.offsetLeft - (this.stops.clientWidth - stop.offsetWidth) / 2;
    });
  }
}
