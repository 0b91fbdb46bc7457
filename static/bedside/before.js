// Before examining, where the case asks for it: two likely diagnoses, and up to three signs expected of each. It can be
// changed until the first manoeuvre is done, and is never marked.

import { Combobox } from "./combobox.js";
import { el } from "./dom.js";
import { questionOf } from "./fold.js";

const DIAGNOSES = 2;
const SIGNS = 3;

class Row {
  constructor(index, read, changed) {
    this.word = "";
    this.signs = Array.from({ length: SIGNS }, () => "");
    this.terms = read.terms.diagnoses;
    this.manoeuvres = read.manoeuvres;
    this.diagnosis = new Combobox({
      label: index === 0 ? "Likely diagnosis" : "Another likely diagnosis",
      placeholder: "Pick from the list",
      options: () => this.terms,
      pick: (option) => ((this.word = option.id), changed()),
    });
    this.boxes = this.signs.map((_, at) => new Combobox({
      label: `Sign ${at + 1} you expect of ${index === 0 ? "it" : "that one"}`,
      placeholder: at === 0 ? "What would be abnormal?" : "Another, or leave empty",
      options: () => this.manoeuvres,
      pick: (option) => ((this.signs[at] = option.id), changed()),
    }));
    this.node = el("div", { class: "expected" }, this.diagnosis.node, ...this.boxes.map((box) => box.node));
  }

  get answer() {
    return this.word ? [`${this.word}=${this.signs.filter(Boolean).join(";")}`] : [];
  }

  show(given = "=") {
    const cut = given.indexOf("=");
    this.word = given.slice(0, cut);
    const signs = given.slice(cut + 1).split(";");
    this.signs = this.signs.map((_, at) => signs[at] ?? "");
    this.diagnosis.text = this.terms.find(({ id }) => id === this.word)?.name ?? "";
    for (const [at, box] of this.boxes.entries()) box.text = this.manoeuvres.find(({ id }) => id === this.signs[at])?.name ?? "";
  }
}

export class Before {
  constructor(read, { conclude }) {
    this.asked = read.patient.expect;
    const changed = () => conclude("expect", this.rows.flatMap((row) => row.answer));
    this.rows = Array.from({ length: DIAGNOSES }, (_, index) => new Row(index, read, changed));
    this.fields = el("fieldset", { class: "writing" }, ...this.rows.map((row) => row.node));
    this.note = el("p", { class: "quiet" });
    this.node = el("details", { class: "before", open: true, hidden: !this.asked },
      el("summary", {}, "Before you examine: what do you expect?"), this.note, this.fields);
  }

  show(sheet) {
    if (!this.asked) return;
    const given = sheet.conclusion.get(questionOf("expect")) ?? [];
    this.rows.forEach((row, index) => row.show(given[index]));
    const begun = [...sheet.lines.values()].some((line) => line.kind === "manoeuvre" && line.probes.length > 0);
    this.fields.disabled = begun || sheet.handedIn;
    this.note.textContent = begun
      ? "You have begun to examine: what you expected stays as it is. The debrief compares it with what was there."
      : "Two diagnoses the story suggests, and the signs each would give. It is not marked; it shows you what examining changed.";
    if (begun && !this.closed) {
      this.closed = true;
      this.node.open = false;
    }
  }
}
