// Choices as a row of chips: native radio buttons and check boxes, so that keys and readers work as they always do.

import { el, freshId } from "./dom.js";

function chip(type, name, option, changed) {
  const input = el("input", { type, name, value: option.id, onchange: () => changed(input) });
  const label = option.heard ? [el("span", { class: "heard" }, option.heard), el("span", { "aria-hidden": "true" }, option.name)] : option.name;
  return { input, node: el("label", { class: "chip", title: option.title }, input, el("span", {}, label)) };
}

function group(legend, chips, kind) {
  return el("fieldset", { class: `chips ${kind}` }, el("legend", {}, legend), ...chips.map((one) => one.node));
}

/** One of a few. */
export class OneOf {
  constructor({ legend, options, pick, kind = "" }) {
    const name = freshId("one");
    this.chips = options.map((option) => chip("radio", name, option, (input) => pick(input.value)));
    this.node = group(legend, this.chips, kind);
  }

  set chosen(id) {
    for (const { input } of this.chips) input.checked = input.value === id;
  }

  set disabled(off) {
    this.node.disabled = off;
  }
}

/** Some of many. */
export class SomeOf {
  constructor({ legend, options, pick, kind = "" }) {
    this.chips = options.map((option) => chip("checkbox", freshId("some"), option, (input) => pick(this.chosen, input.value)));
    this.node = group(legend, this.chips, kind);
  }

  get chosen() {
    return this.chips.filter(({ input }) => input.checked).map(({ input }) => input.value);
  }

  set chosen(ids) {
    for (const { input } of this.chips) input.checked = ids.includes(input.value);
  }
}
