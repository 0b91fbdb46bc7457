// Up to five diagnoses, each with a confidence in steps of ten from 10 to 90 percent.

import { guess, guesses, otherText, termText } from "./answers.js";
import { Combobox } from "./combobox.js";
import { el, freshId } from "./dom.js";

const ROWS = 5;
const STEPS = [10, 20, 30, 40, 50, 60, 70, 80, 90];
const UNSURE = 50;

class Row {
  constructor(index, terms, changed) {
    this.terms = terms;
    this.word = "";
    this.combo = new Combobox({
      label: `Diagnosis ${index + 1}`,
      placeholder: index === 0 ? "The most likely" : "Another, or leave empty",
      options: () => terms,
      pick: (option) => this.#chosen(option.id, changed),
      write: (text) => this.#chosen(otherText(text)[0] ?? "", changed),
    });
    const id = freshId("sure");
    const steps = STEPS.map((step) => el("option", { value: step, selected: step === UNSURE }, `${step} %`));
    this.sure = el("select", { id, onchange: changed }, ...steps);
    this.node = el("div", { class: "guess" }, this.combo.node, el("div", { class: "sure" }, el("label", { for: id }, "How sure"), this.sure));
  }

  #chosen(word, changed) {
    this.word = word;
    changed();
  }

  get answer() {
    return this.word ? [guess(this.word, this.sure.value)] : [];
  }

  show(given) {
    this.word = given?.word ?? "";
    this.combo.text = this.word ? termText([this.word], this.terms) : "";
    if (given && document.activeElement !== this.sure) this.sure.value = String(given.confidence);
  }
}

export class Differential {
  constructor(terms, answer) {
    this.rows = Array.from({ length: ROWS }, (_, index) => new Row(index, terms, () => answer(this.answer)));
    this.node = el("fieldset", { class: "differential" }, el("legend", {}, "What is wrong? The likeliest first"), ...this.rows.map((row) => row.node));
  }

  get answer() {
    return this.rows.flatMap((row) => row.answer);
  }

  show(given) {
    const rows = guesses(given);
    this.rows.forEach((row, index) => {
      row.show(rows[index]);
      row.node.hidden = index > rows.length;
    });
  }
}
