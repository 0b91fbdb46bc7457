// The last line of the sheet: type or pick what to do next. What can be done as the patient now lies comes first.

import { Combobox } from "./combobox.js";
import { el } from "./dom.js";
import { capital, nameIn } from "./words.js";

const canBeDone = (manoeuvre, position) => manoeuvre.positions.length === 0 || manoeuvre.positions.includes(position);

export class Entry {
  #sheet;

  /** @param take (option) => opens a manoeuvre or asks a question */
  constructor(read, take) {
    this.read = read;
    this.combo = new Combobox({
      label: "Next line",
      placeholder: "Type or pick what to examine or ask",
      options: () => this.#options(),
      pick: take,
      up: true,
      keep: false,
    });
    this.node = el("div", { class: "entry" }, this.combo.node);
  }

  show(sheet) {
    this.#sheet = sheet;
    this.node.hidden = sheet.handedIn;
  }

  #options() {
    const { position, lines } = this.#sheet;
    const here = this.read.manoeuvres.filter((manoeuvre) => canBeDone(manoeuvre, position));
    const elsewhere = this.read.manoeuvres.filter((manoeuvre) => !canBeDone(manoeuvre, position));
    const opened = (manoeuvre) => lines.has(`manoeuvre:${manoeuvre.id}`);
    const row = (manoeuvre, group, note) => ({
      id: manoeuvre.id, kind: "manoeuvre", name: capital(manoeuvre.name), also: manoeuvre.system, group, note: opened(manoeuvre) ? "on the sheet" : note,
    });
    return [
      ...here.map((one) => row(one, `Can be done here: ${nameIn(this.read.positions, position).toLowerCase()}`, `${one.seconds} s`)),
      ...this.read.questions.map(({ id, name }) => ({ id, kind: "question", name, group: "Say or ask" })),
      ...elsewhere.map((one) => row(one, "Needs another position", this.#needs(one))),
    ];
  }

  #needs(manoeuvre) {
    return manoeuvre.positions.map((id) => nameIn(this.read.positions, id).toLowerCase()).join(" or ");
  }
}
