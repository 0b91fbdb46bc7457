// The style of these drawings comes with them; what is drawn waits for it.

import { el } from "../../bedside/dom.js";

export const styled = new Promise((done) => {
  document.head.append(el("link", { rel: "stylesheet", href: new URL("../../css/limbs.css", import.meta.url).href, onload: done, onerror: done }));
});
