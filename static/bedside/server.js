// The requests of the bedside. Nothing here knows what an event means.

const csrf = () => document.querySelector('meta[name="csrf"]')?.content ?? "";

async function read(path, what) {
  const answer = await fetch(path, { headers: { Accept: "application/json" }, cache: "no-store", credentials: "same-origin" });
  if (!answer.ok) throw new Error(`${what} could not be opened (${answer.status}).`);
  return answer.json();
}

/**
 * Everything about the attempt: {attempt, patient, clock, positions, manoeuvres, questions, terms, events}. Manoeuvres
 * that are not begun are brief: {id, name, system, positions, sides, placeMode, seconds}.
 */
export async function load(attempt) {
  const found = await read(`/attempts/${attempt}`, "The bedside");
  const named = (terms, meant) => terms.map((term) => (term.id ? term : { id: term, name: meant.get(term) ?? term }));
  const means = named(found.terms.means, new Map());
  const meant = new Map(means.map(({ id, name }) => [id, name]));
  const terms = Object.fromEntries(Object.entries(found.terms).map(([name, all]) => [name, named(all, meant)]));
  return { ...found, terms: { ...terms, means } };
}

/** One manoeuvre in full. */
export const loadManoeuvre = (attempt, id) => read(`/attempts/${attempt}/manoeuvres/${id}`, "The line");

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
