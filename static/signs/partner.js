import { el } from "../bedside/dom.js";

/** Stands under every sign that a hand feels. */
export const onAPartner = () =>
  el("p", { class: "quiet partner" }, "A screen does not teach touch. Practise this on a partner, with consent, under supervision.");
