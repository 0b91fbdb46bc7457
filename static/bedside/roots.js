// "Which roots?": the segments of the cord as a grid, and "no root" as an answer of its own.

import { NONE } from "./answers.js";
import { SomeOf } from "./chips.js";
import { el } from "./dom.js";

const REGIONS = [["Neck", "C", 8], ["Chest", "T", 12], ["Back", "L", 5], ["Pelvis", "S", 5]];

const segments = (letter, count) => Array.from({ length: count }, (_, index) => `${letter}${index + 1}`);

export class Roots {
  #groups;

  constructor(legend, pick) {
    this.#groups = [
      ...REGIONS.map(([name, letter, count]) => this.#group(name, segments(letter, count), pick)),
      this.#group("None", [NONE], pick),
    ];
    this.node = el("fieldset", { class: "roots" }, el("legend", {}, legend), ...this.#groups.map((group) => group.node));
  }

  #group(name, ids, pick) {
    const options = ids.map((id) => ({ id, name: id === NONE ? "no root" : id }));
    return new SomeOf({ legend: name, options, kind: "tight", pick: (_, changed) => this.#picked(changed, pick) });
  }

  /** "No root" and a root exclude each other: the one chosen last stays. */
  #picked(changed, pick) {
    const chosen = this.#groups.flatMap((group) => group.chosen);
    const kept = chosen.includes(changed) ? chosen.filter((id) => (id === NONE) === (changed === NONE)) : chosen;
    this.chosen = kept;
    pick(kept);
  }

  set chosen(ids) {
    for (const group of this.#groups) group.chosen = ids;
  }
}
