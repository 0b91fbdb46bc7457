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

const REFUSALS = new Set([400, 409, 413, 422]);
const NOT_ME = new Set([401, 403, 404]);

/** What a status means for the event: stored, never, after signing in again, or later. */
function outcomeOf(status) {
  if (status < 300) return "stored";
  if (REFUSALS.has(status)) return "refused";
  return NOT_ME.has(status) ? "signed-out" : "later";
}

/** After signing in again in another tab the token is a new one: this page takes it over. */
async function renewToken() {
  const answer = await fetch(location.pathname, { headers: { Accept: "text/html" }, credentials: "same-origin" });
  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  const fresh = page.querySelector('meta[name="csrf"]');
  if (fresh) document.querySelector('meta[name="csrf"]')?.replaceWith(fresh);
}

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
    const outcome = outcomeOf(answer.status);
    if (outcome === "signed-out") await renewToken();
    return { outcome, reply };
  } catch {
    return { outcome: "later", reply: {} };
  }
}
