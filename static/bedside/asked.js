// A line for something said to the patient: a request, an explanation, a question. It needs no reading.

import { el } from "./dom.js";
import { clockText } from "./words.js";

export class AskedLine {
  open = false;

  constructor(question) {
    this.time = el("span", { class: "at number" });
    this.said = el("span", { class: "wrote" });
    this.node = el("li", { class: "line" },
      el("div", { class: "closed" }, this.time, el("h3", { class: "sign-name said" }, question.name), this.said));
  }

  show(line) {
    const last = line.probes.at(-1);
    this.time.textContent = line.clock === undefined ? "" : clockText(line.clock);
    this.said.textContent = last?.shown?.words ?? "";
  }
}
