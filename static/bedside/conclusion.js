// The conclusion: nothing abnormal, or where the fault lies, what it may be and what to do next; then handing in.

import { NONE, otherText, term, termText } from "./answers.js";
import { Combobox } from "./combobox.js";
import { Differential } from "./differential.js";
import { el } from "./dom.js";
import { questionOf } from "./fold.js";
import { HandIn } from "./hand-in.js";

const given = (sheet, question) => sheet.conclusion.get(questionOf(question));

export class Conclusion {
  constructor(read, { conclude, handIn }) {
    this.terms = read.terms;
    const box = (label, terms, question) => new Combobox({
      label,
      placeholder: "Type, or pick from the list",
      options: () => terms,
      pick: (option) => conclude(question, term(option.id)),
      write: (text) => conclude(question, otherText(text)),
    });
    this.nothing = el("input", { type: "checkbox", onchange: () => conclude("site", this.nothing.checked ? [NONE] : []) });
    this.site = box("Where is the fault?", read.terms.sites, "site");
    this.next = box("What next?", read.terms.next, "next");
    this.differential = new Differential(read.terms.diagnoses, (answer) => conclude("differential", answer));
    this.writing = el("fieldset", { class: "writing" },
      el("label", { class: "nothing" }, this.nothing, "Nothing abnormal: there is no fault to localise"),
      this.site.node, this.differential.node, this.next.node);
    this.handIn = new HandIn(handIn);
    this.node = el("section", { class: "conclusion", "aria-labelledby": "conclusion" },
      el("h2", { id: "conclusion" }, "Conclusion"), this.writing, this.handIn.node);
  }

  show(sheet) {
    const site = given(sheet, "site");
    this.nothing.checked = site?.[0] === NONE;
    this.site.node.hidden = this.nothing.checked;
    this.site.text = this.nothing.checked ? "" : termText(site, this.terms.sites);
    this.next.text = termText(given(sheet, "next"), this.terms.next);
    this.differential.show(given(sheet, "differential"));
    this.writing.disabled = sheet.handedIn;
    this.handIn.show(sheet);
  }
}
