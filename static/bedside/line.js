// One line of the examination sheet: closed, what the student wrote; open, the sign itself and the place to write.

import { prepare, showSign } from "../signs/index.js";
import { Defer } from "./defer.js";
import { el, freshId, put } from "./dom.js";
import { meaningText, Questions } from "./questions.js";
import { Readings } from "./readings.js";
import { loadManoeuvre } from "./server.js";
import { Technique } from "./technique.js";
import { capital, clockText, readingsText } from "./words.js";

export class Line {
  #drawn = "";

  /** @param bedside {case, probe, record, answer, move, toggle} */
  constructor(manoeuvre, bedside) {
    this.manoeuvre = manoeuvre;
    this.bedside = bedside;
    const body = freshId("line");
    this.opener = el("button", { type: "button", class: "opener", "aria-expanded": "false", "aria-controls": body, onclick: () => bedside.toggle(this) }, capital(manoeuvre.name));
    this.time = el("span", { class: "at number" });
    this.reading = el("span", { class: "wrote" });
    this.meaning = el("span", { class: "meant" });
    this.body = el("div", { class: "body", id: body, hidden: true });
    this.node = el("li", { class: "line" },
      el("div", { class: "closed" }, this.time, el("h3", { class: "sign-name" }, this.opener), this.reading, this.meaning),
      this.body);
  }

  get open() {
    return !this.body.hidden;
  }

  set open(open) {
    if (open && !this.technique) this.#build();
    this.body.hidden = !open;
    this.node.classList.toggle("open", open);
    this.opener.setAttribute("aria-expanded", String(open));
  }

  /** Most lines are never opened: what a line needs is brought when it is. */
  async #bring() {
    const { manoeuvre, bedside } = this;
    this.waiting = el("p", { class: "quiet", role: "status" }, "Opening the line …");
    put(this.body, this.waiting);
    try {
      const full = await loadManoeuvre(bedside.case.attempt.id, manoeuvre.id);
      if (this.technique) return;
      Object.assign(manoeuvre, full);
      put(this.body);
      this.#build();
      bedside.brought();
    } catch (fault) {
      put(this.waiting, `${fault.message} `, el("button", { type: "button", onclick: () => this.#bring() }, "Try again"));
    }
  }

  #build() {
    const { manoeuvre, bedside } = this;
    if (!manoeuvre.reading) {
      if (!this.waiting) this.#bring();
      return;
    }
    prepare(manoeuvre);
    this.technique = new Technique(manoeuvre, bedside.case.positions, {
      probe: (side, place, technique) => bedside.probe(manoeuvre, side, place, technique),
      move: bedside.move,
    });
    if (manoeuvre.deferrable) this.defer = new Defer(bedside.case.deferrals, (reason) => bedside.defer(manoeuvre, reason));
    this.readings = new Readings(manoeuvre, (side, place, reading) => bedside.record(manoeuvre, side, place, reading));
    this.questions = new Questions(manoeuvre, bedside.case.terms, (question, side, answer, place = "") => bedside.answer(manoeuvre, side, place, question, answer));
    this.sign = el("div", { class: "sign" });
    this.writing = el("fieldset", { class: "writing" }, this.readings.node, this.questions.node, this.questions.roots.node);
    this.body.append(this.technique.node, this.defer?.node ?? "", el("div", { class: "look" }, this.sign, this.writing),
      el("button", { type: "button", class: "close", onclick: () => bedside.toggle(this) }, "Close this line"));
  }

  show(line, sheet) {
    this.time.textContent = line.clock === undefined ? "" : clockText(line.clock);
    this.reading.textContent = readingsText(this.manoeuvre, line) || (line.probes.length ? "nothing written yet" : line.deferred ? "put off" : "not examined yet");
    this.reading.classList.toggle("quiet", line.readings.size === 0);
    this.meaning.textContent = meaningText(line, this.bedside.case.terms);
    if (!this.open || !this.technique) return;
    this.technique.show(line, sheet.position);
    this.technique.node.disabled = sheet.handedIn;
    if (sheet.handedIn) this.technique.doing.hidden = this.technique.elsewhere.hidden = true;
    this.writing.disabled = sheet.handedIn;
    this.defer?.show(line, sheet.handedIn);
    this.readings.show(line);
    this.questions.show(line);
    this.#draw(line);
  }

  #draw(line) {
    const seen = line.probes.filter((probe) => probe.shown);
    const waiting = line.probes.length > seen.length;
    const name = `${seen.map((probe) => probe.seq).join()}${waiting}`;
    if (name === this.#drawn) return;
    const fresh = this.#drawn !== "" && seen.length > 0;
    this.#drawn = name;
    showSign(this.sign, { manoeuvre: this.manoeuvre, probes: seen, waiting, fresh: fresh ? seen.at(-1) : undefined, again: (side, place) => this.technique.again(side, place) });
  }
}
