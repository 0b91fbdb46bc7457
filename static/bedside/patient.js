// The head of the bedside: who lies here, what they tell, what was measured, and the two plain facts of the moment:
// the bedside clock, and whether everything is saved.

import { el, put } from "./dom.js";
import { clockText } from "./words.js";

const STATES = {
  later: "Not saved yet; trying again",
  "signed-out": "Not saved yet: sign in again in another tab",
};

/** Markup cleaned by the server; put in as it came. */
function markup(html) {
  const holder = el("template");
  holder.innerHTML = html;
  return holder.content;
}

const observation = ({ label, text }) => el("div", {}, el("dt", {}, label), el("dd", {}, text));

export class Patient {
  constructor({ patient, attempt }, tryNow) {
    this.clock = el("p", { class: "clock" });
    this.saved = el("p", { class: "saved", role: "status" });
    this.retry = el("button", { type: "button", class: "plain", onclick: tryNow, hidden: true }, "Try now");
    const vignette = el("details", { class: "vignette", open: true }, el("summary", {}, "What the patient tells you"));
    vignette.append(el("div", { class: "told" }, markup(patient.vignetteHtml)));
    this.node = el(
      "header",
      { class: "patient" },
      el("div", { class: "who-lies-here" },
        el("p", { class: "quiet" }, attempt.title),
        el("h1", {}, `${patient.name}, ${patient.age}`, el("span", { class: "sex" }, ` ${patient.sex}`))),
      el("div", { class: "facts" }, this.clock, el("div", { class: "saving" }, this.saved, this.retry)),
      el("dl", { class: "observations" }, ...patient.observations.map(observation)),
      vignette,
    );
  }

  show(clock, outbox) {
    put(this.clock, el("span", { class: "number" }, clockText(clock.bedside)), el("span", { class: "quiet" }, " at the bedside"));
    const unsaved = outbox.waiting.length > 0;
    const text = unsaved ? (STATES[outbox.state] ?? "Saving…") : "Saved";
    if (this.saved.textContent !== text) this.saved.textContent = text;
    this.saved.classList.toggle("unsaved", unsaved && outbox.state !== "saved");
    this.retry.hidden = !(unsaved && outbox.state !== "saved");
  }
}
