// Handing in takes two steps, because after it nothing can be changed. It waits until everything before it is saved.

import { el, put } from "./dom.js";
import { questionOf } from "./fold.js";

const OPEN = [
  ["site", "where the fault is"],
  ["differential", "what is wrong"],
  ["next", "what to do next"],
];

/** What is still blank, in a sentence; the sheet says nothing of how good the rest is. */
function blanks(sheet) {
  const lines = [...sheet.lines.values()].filter((line) => line.kind === "manoeuvre" && line.readings.size === 0).length;
  const open = OPEN.filter(([question]) => !sheet.conclusion.get(questionOf(question))?.length).map(([, text]) => text);
  const parts = [
    lines ? `${lines === 1 ? "one examined line has" : `${lines} examined lines have`} no reading` : "",
    open.length ? `not said: ${open.join(", ")}` : "",
  ].filter(Boolean);
  return parts.length ? `Still blank: ${parts.join("; ")}.` : "Every line has a reading and the conclusion is written.";
}

export class HandIn {
  constructor(handIn) {
    this.ask = el("button", { type: "button", class: "first", onclick: () => this.#confirm(true) }, "Hand in…");
    this.yes = el("button", { type: "button", class: "first", onclick: () => this.#send(handIn) }, "Hand in now");
    this.no = el("button", { type: "button", onclick: () => this.#confirm(false) }, "Go on examining");
    this.blank = el("p");
    this.sure = el("div", { class: "notice caution", role: "group", "aria-label": "Hand in", hidden: true },
      el("p", {}, el("strong", {}, "After handing in nothing can be changed.")), this.blank,
      el("div", { class: "actions" }, this.yes, this.no));
    this.done = el("p", { class: "notice done", hidden: true });
    this.node = el("div", { class: "hand-in" }, this.ask, this.sure, this.done);
  }

  show(sheet) {
    this.blank.textContent = blanks(sheet);
    if (!sheet.handedIn) return;
    this.ask.hidden = this.sure.hidden = true;
    const waiting = sheet.waiting.length > 0;
    this.done.hidden = false;
    if (waiting) this.done.textContent = "Handing in: this page still waits for the server.";
    else put(this.done, "This sheet is handed in. ", el("a", { href: `${location.pathname.replace(/\/$/, "")}/debrief` }, "Read the debrief"), ".");
  }

  #confirm(open) {
    this.sure.hidden = !open;
    this.ask.hidden = open;
    (open ? this.yes : this.ask).focus();
  }

  #send(handIn) {
    this.yes.disabled = true;
    handIn();
  }
}
