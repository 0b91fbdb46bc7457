// What the student saw, drawn again from what was stored, one manoeuvre after the other; and the button that prints.

import { announceIn } from "../bedside/announce.js";
import { el, put } from "../bedside/dom.js";
import { fold } from "../bedside/fold.js";
import { load } from "../bedside/server.js";
import { capital, readingsText } from "../bedside/words.js";
import { showSign } from "../signs/index.js";

const host = document.getElementById("saw");

function replayed(manoeuvre, line) {
  const sign = el("div", { class: "sign" });
  const wrote = readingsText(manoeuvre, line) || "nothing written";
  const details = el("details", {}, el("summary", {}, capital(manoeuvre.name), el("span", { class: "quiet" }, `: ${wrote}`)), sign);
  details.addEventListener("toggle", () => {
    if (details.open && !sign.hasChildNodes()) showSign(sign, { manoeuvre, probes: line.probes, waiting: false, fresh: undefined });
  });
  return details;
}

async function start() {
  const read = await load(host.dataset.attempt);
  const manoeuvres = new Map(read.manoeuvres.map((one) => [one.id, one]));
  const lines = [...fold(read.events, "").lines.values()].filter((line) => line.kind === "manoeuvre" && line.probes.some(({ shown }) => shown));
  announceIn(el("p"));
  put(host, ...(lines.length ? lines.map((line) => replayed(manoeuvres.get(line.id), line)) : [el("p", { class: "empty" }, "No manoeuvre was done.")]));
}

const print = document.getElementById("print");
if (print) {
  print.hidden = false;
  print.addEventListener("click", () => window.print());
}
start().catch(() => put(host, el("p", { class: "quiet" }, "What was shown could not be read again. Reload the page.")));
