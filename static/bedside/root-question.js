// "Which roots?", asked once of a manoeuvre and, where it is done at points of the skin, once of each point tried. The
// roots are those of the sign and not of a side: one answer is written for both.

import { NONE } from "./answers.js";
import { el } from "./dom.js";
import { questionOf } from "./fold.js";
import { Roots } from "./roots.js";
import { nameIn } from "./words.js";

const ASKED = "Which roots does it test?";

/** Roots as written on the sheet. */
export const rootsText = (roots) => roots.map((root) => (root === NONE ? "no root" : root)).join(" ");

/** The grid behind the answer: opened for one point at a time, or a page of points would be a page of grids. */
function folded(name, roots) {
  const answer = el("span", { class: "quiet" });
  const node = el("details", { class: "point-roots" }, el("summary", {}, `${name}:`, answer), roots.node);
  return { node, tell: (chosen) => (answer.textContent = chosen.length ? ` ${rootsText(chosen)}` : " not said") };
}

export class RootQuestion {
  #rows = new Map();

  constructor(manoeuvre, write) {
    this.manoeuvre = manoeuvre;
    this.write = write;
    this.points = manoeuvre.placeMode === "points";
    this.node = el("div", { class: "root-question", hidden: true }, this.points ? el("p", { class: "asked" }, "Which roots does each point test?") : "");
  }

  show(line) {
    const places = this.points ? [...new Set(line.probes.map((probe) => probe.place ?? ""))] : [""];
    for (const place of places) this.#show(line, place);
  }

  #show(line, place) {
    const chosen = this.manoeuvre.sides.map((side) => line.answers.get(questionOf("roots", side, place))).find((answer) => answer?.length) ?? [];
    const row = this.#rowFor(place);
    row.roots.chosen = chosen;
    row.tell(chosen);
  }

  #rowFor(place) {
    if (!this.#rows.has(place)) {
      const name = nameIn(this.manoeuvre.places, place);
      const roots = new Roots(this.points ? `${ASKED} ${name}` : ASKED, (chosen) => this.#picked(place, chosen));
      const { node, tell } = this.points ? folded(name, roots) : { node: roots.node, tell: () => {} };
      this.#rows.set(place, { roots, tell });
      this.node.append(node);
    }
    return this.#rows.get(place);
  }

  #picked(place, chosen) {
    for (const side of this.manoeuvre.sides) this.write(side, place, chosen);
  }
}
