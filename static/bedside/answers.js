// How an answer is written in an event: always a list of words. The only place that knows.

export const NORMAL = "normal";
export const ABNORMAL = "abnormal";
/** "No root", "nothing abnormal": an answer that was chosen, and not the lack of one. */
export const NONE = "none";
const OTHER = "other:";

/** A tabled term by its id; any other text behind a mark, kept for the teacher. */
export const term = (id) => [id];
export const otherText = (text) => (text ? [`${OTHER}${text}`] : []);

export const isOther = (word) => word.startsWith(OTHER);

/** What an answer with a term reads like, given the tabled terms. */
export function termText(answer, terms) {
  const [word] = answer ?? [];
  if (!word) return "";
  return isOther(word) ? word.slice(OTHER.length) : (terms.find((one) => one.id === word)?.name ?? word);
}

/** One row of a differential: a diagnosis with a confidence in percent, "id=70". */
export const guess = (word, confidence) => `${word}=${confidence}`;

/** {word, confidence} of each row of a differential. */
export const guesses = (answer) =>
  (answer ?? []).map((row) => {
    const cut = row.lastIndexOf("=");
    return { word: row.slice(0, cut), confidence: Number(row.slice(cut + 1)) };
  });
