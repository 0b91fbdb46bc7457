// A combobox with a list (the ARIA pattern with list autocompletion): type to narrow, arrows to choose, Enter to take,
// Escape to close, then to empty. Options are {id, name, note?, group?}; groups keep the order of the options.

import { el, freshId, put } from "./dom.js";

const plain = (text) => text.toLowerCase().normalize("NFD").replace(/[\u0300-\u036f]/g, "");
const wordsOf = (text) => plain(text).split(/[^a-z0-9]+/).filter(Boolean);

/** The same words in the same order, whatever stands between them. */
const same = (option, text) => [option.name, option.id].some((name) => wordsOf(name).join(" ") === wordsOf(text).join(" "));

/**
 * Those in which every word typed begins a word of the name, or of the name the trade has for it, which is the id. First
 * what is called just so, then what begins as typed.
 */
export function narrowed(options, typed) {
  const wanted = wordsOf(typed);
  if (!wanted.length) return options;
  const begins = (option) => [option.name, option.id].some((name) => wordsOf(name).join(" ").startsWith(wanted.join(" ")));
  const rank = (option) => {
    const words = wordsOf(`${option.name} ${option.id} ${option.also ?? ""}`);
    if (!wanted.every((part) => words.some((word) => word.startsWith(part)))) return 3;
    return same(option, typed) ? 0 : begins(option) ? 1 : 2;
  };
  const ranked = options.map((option) => [rank(option), option]).filter(([place]) => place < 3);
  return ranked.sort(([one], [other]) => one - other).map(([, option]) => option);
}

export class Combobox {
  #options;
  #pick;
  #write;
  #shown = [];
  #at = -1;

  /**
   * @param label   what is asked
   * @param options () => the options in force now
   * @param pick    (option) => taken from the list
   * @param write   (text) => typed and left, when other text is welcome; absent when only the list will do
   */
  constructor({ label, placeholder, options, pick, write, up = false, keep = true }) {
    this.#options = options;
    this.#pick = pick;
    this.#write = write;
    this.keep = keep;
    const [id, list] = [freshId("combo"), freshId("list")];
    this.list = el("div", { class: "options", id: list, role: "listbox", "aria-label": label, hidden: true });
    this.input = el("input", {
      id,
      type: "text",
      role: "combobox",
      autocomplete: "off",
      autocapitalize: "none",
      spellcheck: "false",
      placeholder,
      "aria-autocomplete": "list",
      "aria-expanded": "false",
      "aria-controls": list,
      oninput: () => this.#open(),
      onclick: () => this.#open(),
      onkeydown: (event) => this.#key(event),
      onblur: () => this.#leave(),
    });
    this.node = el(
      "div",
      { class: up ? "combo up" : "combo" },
      el("label", { for: id }, label),
      el("div", { class: "combo-box" }, this.input, this.list),
    );
    this.list.addEventListener("pointerdown", (event) => event.preventDefault());
    this.list.addEventListener("click", (event) => this.#clicked(event));
  }

  /** Shows the text without telling anyone; not while it is being typed in. */
  set text(text) {
    if (document.activeElement !== this.input) this.input.value = text;
    this.settled = text;
  }

  #open() {
    this.#shown = narrowed(this.#options(), this.input.value === this.settled ? "" : this.input.value);
    this.#draw();
    this.#expand(this.#shown.length > 0);
    this.#mark(-1);
  }

  #draw() {
    const groups = new Map();
    this.#shown.forEach((option, index) => {
      const name = option.group ?? "";
      if (!groups.has(name)) groups.set(name, []);
      groups.get(name).push(this.#row(option, index));
    });
    this.#shown = [...groups.values()].flat().map((row) => this.#shown[row.dataset.index]);
    put(this.list, [...groups].flatMap(([name, rows]) => this.#group(name, rows)));
    this.rows = [...this.list.querySelectorAll('[role="option"]')];
  }

  #row(option, index) {
    const note = option.note ? el("span", { class: "note" }, option.note) : "";
    return el(
      "div",
      { role: "option", id: freshId("option"), "aria-selected": "false", "data-index": index },
      el("span", {}, option.name),
      note,
    );
  }

  #group(name, rows) {
    if (!name) return rows;
    const heading = el("div", { class: "group-name", id: freshId("group"), role: "presentation" }, name);
    return [el("div", { role: "group", "aria-labelledby": heading.id }, heading, ...rows)];
  }

  #expand(open) {
    this.list.hidden = !open;
    this.input.setAttribute("aria-expanded", String(open));
    if (!open) this.input.removeAttribute("aria-activedescendant");
  }

  #mark(at) {
    this.#at = at;
    this.rows.forEach((row, index) => row.setAttribute("aria-selected", String(index === at)));
    const row = this.rows[at];
    if (!row) return this.input.removeAttribute("aria-activedescendant");
    this.input.setAttribute("aria-activedescendant", row.id);
    row.scrollIntoView({ block: "nearest" });
  }

  #key(event) {
    const open = !this.list.hidden;
    const act = {
      ArrowDown: () => (open ? this.#mark((this.#at + 1) % this.rows.length) : this.#open()),
      ArrowUp: () => (open ? this.#mark((this.#at <= 0 ? this.rows.length : this.#at) - 1) : this.#open()),
      Enter: () => this.#enter(open),
      Escape: () => (open ? this.#expand(false) : (this.input.value = "")),
    }[event.key];
    if (!act) return;
    event.preventDefault();
    act();
  }

  /** Takes the marked row; without one the only row, or the row of exactly that name, or the text itself. */
  #enter(open) {
    const typed = this.input.value.trim();
    const exact = this.#shown.find((option) => same(option, typed));
    const only = this.#write || this.#shown.length !== 1 ? undefined : this.#shown[0];
    const option = (open && this.#shown[this.#at]) || (typed ? (exact ?? only) : undefined);
    if (option) this.#take(option);
    else this.#leave();
  }

  #take(option) {
    this.settled = this.keep ? option.name : "";
    this.input.value = this.settled;
    this.#expand(false);
    this.#pick(option);
  }

  #clicked(event) {
    const row = event.target.closest('[role="option"]');
    if (row) this.#take(this.#shown[this.rows.indexOf(row)]);
  }

  #leave() {
    this.#expand(false);
    const text = this.input.value.trim();
    if (!this.#write || text === (this.settled ?? "")) return;
    const exact = this.#options().find((option) => same(option, text));
    if (exact) this.#take(exact);
    else {
      this.settled = text;
      this.#write(text);
    }
  }
}
