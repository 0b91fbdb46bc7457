// The sign desk: the sign in health and the sign chosen, side by side, from the drawings of the bedside.

import { announceIn } from "../bedside/announce.js";
import { el } from "../bedside/dom.js";
import { showSign } from "../signs/index.js";

const pair = document.getElementById("sign-pair");

async function start() {
  const answer = await fetch(location.href, { headers: { Accept: "application/json" }, credentials: "same-origin" });
  if (!answer.ok) throw new Error(`The sign could not be read (${answer.status}).`);
  const { manoeuvre, health, now } = await answer.json();
  const drawn = [health, now];
  pair.querySelectorAll(".sign").forEach((host, i) => showSign(host, { manoeuvre, probes: drawn[i] }));
}

const live = el("div", { class: "heard", role: "status" });
pair.after(live);
announceIn(live);
document.querySelectorAll("#choice select").forEach((select) => select.addEventListener("change", () => select.form.requestSubmit()));
start().catch((fault) => pair.replaceChildren(el("p", { class: "notice fault", role: "alert" }, fault.message)));
