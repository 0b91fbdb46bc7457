// From the sequence of events to the sheet as it stands. Pure: the same events give the same sheet in every tab.

export const itemOf = (side, place = "") => `${side}/${place}`;

export const questionOf = (question, side = "none", place = "") => `${question}/${side}/${place}`;

const freshLine = (kind, id, clock) => ({ kind, id, clock, probes: [], readings: new Map(), answers: new Map() });

function lineFor(sheet, kind, id, clock) {
  const name = `${kind}:${id}`;
  if (!sheet.lines.has(name)) sheet.lines.set(name, freshLine(kind, id, clock));
  return sheet.lines.get(name);
}

const apply = {
  moved(sheet, event) {
    sheet.position = event.position;
  },
  asked(sheet, event) {
    lineFor(sheet, "question", event.question, event.clock?.bedside).probes.push(event);
  },
  probed(sheet, event) {
    lineFor(sheet, "manoeuvre", event.manoeuvre, event.clock?.bedside).probes.push({ ...event, position: sheet.position });
  },
  deferred(sheet, event) {
    lineFor(sheet, "manoeuvre", event.manoeuvre, event.clock?.bedside).deferred = event.reason;
  },
  recorded(sheet, event) {
    const line = lineFor(sheet, "manoeuvre", event.manoeuvre, event.clock?.bedside);
    line.readings.set(itemOf(event.side, event.place), event.reading);
  },
  answered(sheet, event) {
    const answers = event.manoeuvre
      ? lineFor(sheet, "manoeuvre", event.manoeuvre, event.clock?.bedside).answers
      : sheet.conclusion;
    answers.set(questionOf(event.question, event.side, event.place), event.answer);
  },
  "handed-in"(sheet) {
    sheet.handedIn = true;
  },
};

/** The sheet after the given events: the last reading of an item and the last answer to a question count. */
export function fold(events, position) {
  const sheet = { position, lines: new Map(), conclusion: new Map(), handedIn: false };
  for (const event of events) apply[event.type]?.(sheet, event);
  return sheet;
}
