// The conclusion: nothing abnormal, or where the fault lies, what it may be and what to do next; then handing in.

import { NONE, otherText, term, termText } from "./answers.js";
import { Combobox } from "./combobox.js";
import { Differential } from "./differential.js";
import { el, freshId } from "./dom.js";
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
    const summary = freshId("summary");
    this.summary = el("textarea", { id: summary, rows: 3, maxlength: 600, onchange: () => conclude("summary", this.summary.value.trim() ? [this.summary.value.trim()] : []) });
    this.writing.append(el("details", { class: "spoken" }, el("summary", {}, "Three lines for your senior, if you like"),
      el("label", { for: summary }, "As you would say it at the bedside. It is not marked; your teacher can read it."), this.summary));
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
    const said = given(sheet, "summary")?.[0] ?? "";
    if (document.activeElement !== this.summary) this.summary.value = said;
    this.writing.disabled = sheet.handedIn;
    this.handIn.show(sheet);
  }
}
