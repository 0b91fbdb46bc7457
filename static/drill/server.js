// The two requests of the drill.

const AS_JSON = { Accept: "application/json" };

async function json(answer) {
  const reply = await answer.json().catch(() => ({}));
  if (!answer.ok) throw new Error(reply.detail ?? `The server answered ${answer.status}.`);
  return reply;
}

/** {day, questions: [{number, question: {asked, panels, options}, answer?}], manoeuvres} */
export const load = async () => json(await fetch("/student/signs", { headers: AS_JSON, cache: "no-store", credentials: "same-origin" }));

/** {chosen, right, why, sources, unverified} */
export const answer = async (number, option) =>
  json(await fetch(`/student/signs/${number}`, {
    method: "POST",
    headers: { ...AS_JSON, "Content-Type": "application/json", "X-CSRF-Token": document.querySelector('meta[name="csrf"]')?.content ?? "" },
    body: JSON.stringify({ option }),
    credentials: "same-origin",
  }));
