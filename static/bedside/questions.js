// What the finding means: normal or not and, if not, what it means in this patient and where the fault would lie,
// for each side; and the roots the sign tests, asked once (or once for each point) and written for every side.

import { ABNORMAL, NORMAL, otherText, term, termText } from "./answers.js";
import { OneOf } from "./chips.js";
import { Combobox } from "./combobox.js";
import { el } from "./dom.js";
import { questionOf } from "./fold.js";
import { RootQuestion, rootsText } from "./root-question.js";
import { inOrder } from "./words.js";

const NORMAL_OR_NOT = [
  { id: NORMAL, name: "Normal" },
  { id: ABNORMAL, name: "Not normal" },
];

const onSide = (text, side) => (side === "none" ? text : `${text} (${side})`);

function normal(side, answer) {
  const control = new OneOf({
    legend: side === "none" ? "Normal or not?" : side,
    options: NORMAL_OR_NOT,
    kind: "side-by-side",
    pick: (id) => answer("normal", side, [id]),
  });
  control.node.classList.toggle("alone", side === "none");
  return { node: control.node, show: (given) => (control.chosen = given?.[0]) };
}

/** A question with tabled terms; other text is kept for the teacher. */
function completed(question, text, terms) {
  return (side, answer) => {
    const control = new Combobox({
      label: onSide(text, side),
      placeholder: "Type, or pick from the list",
      options: () => terms,
      pick: (option) => answer(question, side, term(option.id)),
      write: (written) => answer(question, side, otherText(written)),
    });
    return { node: control.node, show: (given) => (control.text = termText(given, terms)) };
  };
}

export class Questions {
  #rows = new Map();

  constructor(manoeuvre, terms, answer) {
    this.asked = new Set(manoeuvre.questions);
    this.answer = answer;
    this.makers = {
      normal,
      means: completed("means", "What does it mean in this patient?", terms.means),
      site: completed("site", "Where would the fault lie?", terms.sites),
    };
    this.normals = el("div", { class: "rows" });
    this.meanings = el("div", { class: "rows" });
    this.roots = new RootQuestion(manoeuvre, (side, place, chosen) => answer("roots", side, chosen, place));
    this.node = el(
      "div",
      { class: "questions", hidden: true },
      this.asked.has("normal") ? el("p", { class: "asked" }, "Normal or not?") : "",
      this.normals,
      this.meanings,
    );
  }

  show(line) {
    this.sides = inOrder([...new Set(line.probes.map((probe) => probe.side))]);
    for (const side of this.sides) this.#showSide(line, side);
    this.node.hidden = this.sides.length === 0;
    this.roots.node.hidden = this.sides.length === 0 || !this.asked.has("roots");
    this.roots.show(line);
  }

  #showSide(line, side) {
    const given = (question) => line.answers.get(questionOf(question, side));
    const abnormal = !this.asked.has("normal") || given("normal")?.[0] === ABNORMAL;
    if (this.asked.has("normal")) this.#row("normal", side, this.normals).show(given("normal"));
    for (const question of ["means", "site"].filter((one) => this.asked.has(one))) {
      const row = this.#row(question, side, this.meanings);
      row.node.hidden = !abnormal;
      row.show(given(question));
    }
  }

  #row(question, side, host) {
    const name = questionOf(question, side);
    if (!this.#rows.has(name)) {
      const row = this.makers[question](side, this.answer);
      this.#rows.set(name, row);
      if (side === "right") host.prepend(row.node);
      else host.append(row.node);
    }
    return this.#rows.get(name);
  }
}

/** The interpretation of a line as written on the closed sheet. */
export function meaningText(line, terms) {
  const parts = inOrder([...new Set(line.probes.map((probe) => probe.side))]).map((side) => {
    const given = (question) => line.answers.get(questionOf(question, side));
    const text = [
      given("normal")?.[0] === ABNORMAL ? "not normal" : given("normal")?.[0],
      given("normal")?.[0] === NORMAL ? "" : termText(given("means"), terms.means),
    ].filter(Boolean);
    return text.length ? `${side === "none" ? "" : `${side} `}${text.join(", ")}` : "";
  });
  const roots = [...line.answers].filter(([name]) => name.startsWith("roots/")).map(([, answer]) => rootsText(answer));
  return [...new Set(roots), ...parts].filter(Boolean).join(" · ");
}
