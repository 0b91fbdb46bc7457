// One question: the signs, the options, and after the answer what was right and why.

import { el, freshId, put } from "../bedside/dom.js";
import { showSign } from "../signs/index.js";

const probesOf = (looks) => looks.map((look, index) => ({ ...look, seq: index + 1 }));

export class Question {
  #open = true;

  /** @param told {answer(option) → promise of what was right, next(), last, say(text)} */
  constructor({ question, answer }, manoeuvres, told) {
    this.told = told;
    this.given = answer;
    const heading = freshId("asked");
    this.heading = el("h2", { id: heading, tabindex: "-1" }, question.asked);
    this.panels = question.panels.map((panel) => ({ ...panel, manoeuvre: manoeuvres[panel.manoeuvre], host: el("div", { class: "sign" }) }));
    this.options = question.options.map((text, index) =>
      el("button", { type: "button", class: "option", onclick: () => this.choose(index) },
        el("span", { class: "key number", "aria-hidden": "true" }, String(index + 1)), el("span", { class: "text" }, text), el("span", { class: "verdict" })));
    this.list = el("ul", { class: "options", "aria-label": "Answers" }, ...this.options.map((option) => el("li", {}, option)));
    this.why = el("div", { class: "why" });
    this.node = el("section", { class: "question", "aria-labelledby": heading, onkeydown: (event) => this.#key(event) },
      this.heading,
      el("div", { class: this.panels.length > 1 ? "panels several" : "panels" }, ...this.panels.map((panel) => this.#panel(panel))),
      this.list,
      el("p", { class: "quiet hint keys" }, `Keys 1 to ${this.options.length} answer.`),
      this.why);
  }

  #panel({ label, manoeuvre, host }) {
    return el("div", { class: "panel" }, el("h3", {}, label || manoeuvre.name), host);
  }

  /** Draws the signs and takes the keyboard. */
  begin() {
    for (const { host, manoeuvre, looks } of this.panels) {
      const probes = probesOf(looks);
      showSign(host, { manoeuvre, probes, waiting: false, fresh: undefined });
    }
    this.heading.focus();
    if (this.given) this.#tell(this.given);
  }

  #key(event) {
    const at = Number(event.key) - 1;
    const typing = event.target.matches("input, select, textarea") || event.ctrlKey || event.metaKey || event.altKey;
    if (!typing && Number.isInteger(at) && this.options[at]) this.choose(at);
  }

  async choose(index) {
    if (!this.#open) return;
    this.#open = false;
    for (const option of this.options) option.disabled = true;
    try {
      this.#tell(await this.told.answer(index));
    } catch (error) {
      this.#open = true;
      for (const option of this.options) option.disabled = false;
      put(this.why, el("p", { class: "notice fault", role: "alert" }, error.message));
    }
  }

  #tell({ chosen, right, why, sources, unverified }) {
    this.#open = false;
    for (const [index, option] of this.options.entries()) {
      option.disabled = true;
      option.classList.toggle("chosen", index === chosen);
      const verdict = option.querySelector(".verdict");
      if (index === right) put(verdict, el("span", { class: "mark-full" }, chosen === right ? "your answer, right" : "right"));
      else if (index === chosen) put(verdict, el("span", { class: "mark-none" }, "your answer"));
    }
    const next = el("button", { type: "button", class: "first", onclick: () => this.told.next() }, this.told.last ? "Finish" : "Next sign");
    put(this.why,
      el("p", {}, el("b", {}, chosen === right ? "Right. " : "Not so. "), why),
      el("p", { class: "quiet source" }, `Source: ${sources.join("; ")} `, unverified ? el("span", { class: "tag caution" }, "not confirmed against its source") : ""),
      el("p", { class: "actions" }, next));
    this.node.querySelector(".keys").hidden = true;
    this.told.say(`${chosen === right ? "Right." : "Not so."} ${why}`);
    next.focus();
  }
}
