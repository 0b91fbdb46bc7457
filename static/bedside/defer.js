// Putting off what is intimate, with a reason: what a careful student may do instead of doing it.

import { OneOf } from "./chips.js";
import { el } from "./dom.js";

export class Defer {
  #reason = "";

  /** @param put (reason) => puts it off */
  constructor(deferrals, put) {
    this.deferrals = deferrals;
    this.reasons = new OneOf({ legend: "I would put this off, because", options: deferrals, pick: (reason) => this.#pick(reason) });
    this.button = el("button", { type: "button", disabled: true, onclick: () => put(this.#reason) }, "Put it off");
    this.said = el("p", { class: "hint", role: "status" });
    this.node = el("details", { class: "defer" }, el("summary", {}, "Put it off, with a reason"), this.reasons.node, el("div", { class: "actions" }, this.button), this.said);
  }

  #pick(reason) {
    this.#reason = reason;
    this.button.disabled = false;
  }

  show(line, handedIn) {
    this.node.hidden = handedIn && !line.deferred;
    this.reasons.disabled = handedIn;
    if (handedIn) this.button.disabled = true;
    this.said.textContent = line.deferred ? `Written down: put off, because ${this.name(line.deferred)}.` : "";
  }

  name(reason) {
    return this.deferrals.find(({ id }) => id === reason)?.name ?? reason;
  }
}
