// The three requests of the bedside. Nothing here knows what an event means.

const csrf = () => document.querySelector('meta[name="csrf"]')?.content ?? "";

/** Everything about the attempt: {attempt, patient, clock, positions, manoeuvres, questions, terms, events}. */
export async function load(attempt) {
  const answer = await fetch(`/attempts/${attempt}`, {
    headers: { Accept: "application/json" },
    cache: "no-store",
    credentials: "same-origin",
  });
  if (!answer.ok) throw new Error(`The bedside could not be opened (${answer.status}).`);
  return answer.json();
}

const SIGNED_OUT = new Set([401, 403]);

/** Whether a status says "this event never" (and not "not now"). */
const isRefusal = (status) => status >= 400 && status < 500 && status !== 408 && status !== 429;

/** Sends one event. Never throws: a lost line is an outcome like any other. */
export async function post(attempt, event) {
  try {
    const answer = await fetch(`/attempts/${attempt}/events`, {
      method: "POST",
      headers: { "Content-Type": "application/json", Accept: "application/json", "X-CSRF-Token": csrf() },
      body: JSON.stringify(event),
      keepalive: true,
      credentials: "same-origin",
    });
    const reply = await answer.json().catch(() => ({}));
    if (answer.ok) return { outcome: "stored", reply };
    if (SIGNED_OUT.has(answer.status)) return { outcome: "signed-out", reply };
    return { outcome: isRefusal(answer.status) ? "refused" : "later", reply };
  } catch {
    return { outcome: "later", reply: {} };
  }
}
