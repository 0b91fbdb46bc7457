// "What would help most next?" is offered where one practises, and answered only when it is asked.

import { el, put } from "./dom.js";

const csrf = () => document.querySelector('meta[name="csrf"]')?.content ?? "";

async function read(attempt, method) {
  const answer = await fetch(`/attempts/${attempt}/advice`, {
    method,
    headers: { Accept: "application/json", "X-CSRF-Token": csrf() },
    cache: "no-store",
    credentials: "same-origin",
  });
  const reply = await answer.json().catch(() => ({}));
  if (!answer.ok) throw new Error(reply.detail || "The server did not answer.");
  return reply;
}

/** The words for an answer: the step, or why there is none. */
async function answered(attempt) {
  try {
    return (await read(attempt, "POST")).next;
  } catch (fault) {
    return fault.message;
  }
}

async function offer(host) {
  const attempt = host.dataset.advice;
  const { offered } = await read(attempt, "GET").catch(() => ({ offered: false }));
  if (!offered) return;
  const said = el("p", { role: "status" });
  const ask = el("button", {
    type: "button",
    onclick: async () => {
      ask.disabled = true;
      put(said, await answered(attempt));
      ask.disabled = false;
    },
  }, "What would help most next?");
  put(host, ask, said);
}

const host = document.querySelector("[data-advice]");
if (host) offer(host);
