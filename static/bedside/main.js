// The bedside page. Everything the student does is an event; everything the page shows follows from the events.

import { announce, announceIn } from "./announce.js";
import { Attempt } from "./attempt.js";
import { Before } from "./before.js";
import { Conclusion } from "./conclusion.js";
import { Couch } from "./couch.js";
import { el, put } from "./dom.js";
import { Entry } from "./entry.js";
import { Patient } from "./patient.js";
import { Sheet } from "./sheet.js";
import { nameIn } from "./words.js";

function acts(attempt) {
  const send = (event) => attempt.send(event);
  return {
    move: (position) => send({ type: "moved", position }),
    ask: (question) => send({ type: "asked", question }),
    probe: (manoeuvre, side, place, technique) => send({ type: "probed", manoeuvre: manoeuvre.id, side, place, technique }),
    defer: (manoeuvre, reason) => send({ type: "deferred", manoeuvre: manoeuvre.id, side: "none", place: "", reason }),
    record: (manoeuvre, side, place, reading) => send({ type: "recorded", manoeuvre: manoeuvre.id, side, place, reading }),
    answer: (manoeuvre, side, place, question, answer) => send({ type: "answered", manoeuvre: manoeuvre.id, side, place, question, answer }),
    conclude: (question, answer) => send({ type: "answered", manoeuvre: "", side: "none", place: "", question, answer }),
    handIn: () => send({ type: "handed-in" }),
  };
}

function build(attempt) {
  const act = acts(attempt);
  const read = attempt.case;
  const patient = new Patient(read, () => attempt.outbox.tryNow());
  const couch = new Couch(read.positions, act.move);
  const entry = new Entry(read, (option) => (option.kind === "question" ? act.ask(option.id) : sheet.openManoeuvre(option.id)));
  const sheet = new Sheet(read, act, entry);
  const conclusion = new Conclusion(read, act);
  const before = new Before(read, act);
  return { patient, couch, entry, before, sheet, conclusion };
}

function showAll(attempt, parts) {
  const state = attempt.sheet;
  parts.patient.show(attempt.clock, attempt.outbox);
  parts.couch.show(state.position, state.handedIn);
  parts.entry.show(state);
  parts.before.show(state);
  parts.sheet.show(state);
  parts.conclusion.show(state);
  return state;
}

/** Says the patient's new position aloud, once it is new. */
function positionTeller(attempt) {
  let last;
  return ({ position }) => {
    if (last !== undefined && last !== position) announce(`The patient is now: ${nameIn(attempt.case.positions, position)}.`);
    last = position;
  };
}

function complain(host, text) {
  host.append(el("p", { class: "notice fault", role: "alert" }, el("strong", {}, "Not stored. "), text));
}

async function start(host) {
  const [head, body, live, faults] = [el("div"), el("div", { class: "bedside-body" }), el("div", { class: "heard", role: "status" }), el("div", { class: "faults" })];
  announceIn(live);
  try {
    const attempt = await Attempt.open(host.dataset.attempt);
    const parts = build(attempt);
    put(head, parts.patient.node);
    put(body, faults, parts.before.node, parts.sheet.node, parts.conclusion.node);
    put(host, head, parts.couch.node, body, live);
    const tell = positionTeller(attempt);
    const show = () => tell(showAll(attempt, parts));
    attempt.addEventListener("change", show);
    attempt.addEventListener("refused", ({ detail }) => {
      complain(faults, detail.reply.detail || "The server did not accept the last step.");
      attempt.refresh().catch(() => {});
    });
    show();
  } catch (fault) {
    put(host, el("p", { class: "notice fault", role: "alert" }, el("strong", {}, "The bedside did not open. "), fault.message, " Reload the page to try again."));
  }
}

start(document.getElementById("bedside"));
