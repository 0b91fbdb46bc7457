// The examination sheet: lines in the order in which they were begun, one of them open, and the entry last.

import { AskedLine } from "./asked.js";
import { el } from "./dom.js";
import { Line } from "./line.js";

const EMPTY_LINE = { probes: [], readings: new Map(), answers: new Map() };

export class Sheet {
  #lines = new Map();

  constructor(read, bedside, entry) {
    this.read = read;
    this.bedside = { ...bedside, case: read, toggle: (line) => this.#toggle(line), brought: () => this.show(this.sheet) };
    this.list = el("ol", { class: "lines" });
    this.empty = el("p", { class: "nothing-yet" }, "The sheet is empty. Introduce yourself, ask for consent, and begin with the next line.");
    this.node = el("section", { class: "sheet", "aria-labelledby": "sheet" }, el("h2", { id: "sheet", class: "heard" }, "Examination sheet"), this.empty, this.list, entry.node);
  }

  /** Opens the line of a manoeuvre, a new one at the end when there is none, and closes the others. */
  openManoeuvre(id) {
    const line = this.#lineFor("manoeuvre", id);
    this.#only(line);
    this.show(this.sheet);
    line.node.scrollIntoView({ block: "start", behavior: "smooth" });
    line.opener.focus({ preventScroll: true });
  }

  show(sheet) {
    this.sheet = sheet;
    for (const { kind, id } of sheet.lines.values()) this.#lineFor(kind, id);
    for (const [name, line] of this.#lines) line.show(sheet.lines.get(name) ?? EMPTY_LINE, sheet);
    this.empty.hidden = this.#lines.size > 0;
  }

  #toggle(line) {
    if (line.open) line.open = false;
    else this.#only(line);
    this.show(this.sheet);
    line.opener.focus({ preventScroll: true });
  }

  #only(line) {
    for (const other of this.#lines.values()) if (other !== line && other.open) other.open = false;
    line.open = true;
  }

  #lineFor(kind, id) {
    const name = `${kind}:${id}`;
    if (!this.#lines.has(name)) {
      const line = this.#make(kind, id);
      this.#lines.set(name, line);
      this.list.append(line.node);
    }
    return this.#lines.get(name);
  }

  #make(kind, id) {
    if (kind === "question") return new AskedLine(this.read.questions.find((one) => one.id === id) ?? { id, name: id });
    return new Line(this.read.manoeuvres.find((one) => one.id === id), this.bedside);
  }
}
