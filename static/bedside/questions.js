// What the finding means: normal or not and, if not, what it means in this patient and where the fault would lie,
// for each side, and for each point where it is done at points; and the roots the sign tests, asked once (or once for each point) and written for every side.

import { ABNORMAL, NORMAL, otherText, term, termText } from "./answers.js";
import { OneOf } from "./chips.js";
import { Combobox } from "./combobox.js";
import { el } from "./dom.js";
import { questionOf } from "./fold.js";
import { RootQuestion, rootsText } from "./root-question.js";
import { items } from "./readings.js";
import { inOrder, nameIn } from "./words.js";

const NORMAL_OR_NOT = [
  { id: NORMAL, name: "Normal" },
  { id: ABNORMAL, name: "Not normal" },
];

/** What an answer is about, in words: the point and the side. */
const about = ({ side, name }) => [name, side === "none" ? "" : side].filter(Boolean).join(", ");

const onIt = (text, subject) => (about(subject) ? `${text} (${about(subject)})` : text);

function normal(subject, answer) {
  const control = new OneOf({
    legend: about(subject) || "Normal or not?",
    options: NORMAL_OR_NOT,
    kind: "side-by-side",
    pick: (id) => answer("normal", subject.side, [id], subject.place),
  });
  control.node.classList.toggle("alone", !about(subject));
  return { node: control.node, show: (given) => (control.chosen = given?.[0]) };
}

/** A question with tabled terms; other text is kept for the teacher. */
function completed(question, text, terms) {
  return (subject, answer) => {
    const control = new Combobox({
      label: onIt(text, subject),
      placeholder: "Type, or pick from the list",
      options: () => terms,
      pick: (option) => answer(question, subject.side, term(option.id), subject.place),
      write: (written) => answer(question, subject.side, otherText(written), subject.place),
    });
    return { node: control.node, show: (given) => (control.text = termText(given, terms)) };
  };
}

export class Questions {
  #rows = new Map();

  constructor(manoeuvre, terms, answer) {
    this.manoeuvre = manoeuvre;
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
      { class: manoeuvre.placeMode === "points" ? "questions many" : "questions", hidden: true },
      this.asked.has("normal") ? el("p", { class: "asked" }, "Normal or not?") : "",
      this.normals,
      this.meanings,
    );
  }

  show(line) {
    const subjects = this.#subjects(line);
    for (const subject of subjects) this.#showSubject(line, subject);
    this.node.hidden = subjects.length === 0;
    this.roots.node.hidden = subjects.length === 0 || !this.asked.has("roots");
    this.roots.show(line);
  }

  /** Each side that was examined; where it is done at points, each point of it. */
  #subjects(line) {
    if (this.manoeuvre.placeMode !== "points") {
      return inOrder([...new Set(line.probes.map((probe) => probe.side))]).map((side) => ({ side, place: "", name: "" }));
    }
    return items(this.manoeuvre, line.probes).map(({ side, place }) => ({ side, place, name: nameIn(this.manoeuvre.places, place) }));
  }

  #showSubject(line, subject) {
    const given = (question) => line.answers.get(questionOf(question, subject.side, subject.place));
    const abnormal = !this.asked.has("normal") || given("normal")?.[0] === ABNORMAL;
    if (this.asked.has("normal")) this.#row("normal", subject, this.normals).show(given("normal"));
    for (const question of ["means", "site"].filter((one) => this.asked.has(one))) {
      const row = this.#row(question, subject, this.meanings);
      row.node.hidden = !abnormal;
      row.show(given(question));
    }
  }

  #row(question, subject, host) {
    const name = questionOf(question, subject.side, subject.place);
    if (!this.#rows.has(name)) {
      const row = this.makers[question](subject, this.answer);
      this.#rows.set(name, row);
      if (subject.side === "right" && !subject.place) host.prepend(row.node);
      else host.append(row.node);
    }
    return this.#rows.get(name);
  }
}

/** The interpretation of a line as written on the closed sheet. */
export function meaningText(line, terms) {
  const answered = [...new Set([...line.answers.keys()].map((name) => name.split("/").slice(1).join("/")))];
  const parts = inOrder([...new Set(line.probes.map((probe) => probe.side))]).flatMap((side) => answered.filter((one) => one.startsWith(`${side}/`)).map((one) => [side, one.slice(side.length + 1)])).map(([side, place]) => {
    const given = (question) => line.answers.get(questionOf(question, side, place));
    const text = [
      given("normal")?.[0] === ABNORMAL ? "not normal" : given("normal")?.[0],
      given("normal")?.[0] === NORMAL ? "" : termText(given("means"), terms.means),
    ].filter(Boolean);
    return text.length ? `${side === "none" ? "" : `${side} `}${text.join(", ")}` : "";
  });
  const roots = [...line.answers].filter(([name]) => name.startsWith("roots/")).map(([, answer]) => rootsText(answer));
  return [...new Set(roots), ...parts].filter(Boolean).join(" · ");
}
