// How things are written on the sheet.

export const SIDES = ["right", "left", "none"];

export const inOrder = (sides) => [...sides].sort((one, other) => SIDES.indexOf(one) - SIDES.indexOf(other));

export const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);

/** Seconds as m:ss. */
export const clockText = (seconds) =>
  `${Math.floor(seconds / 60)}:${String(Math.floor(seconds % 60)).padStart(2, "0")}`;

function seenText({ choices, scale } = {}, seen) {
  const level = scale?.levels.find(({ code }) => code === seen);
  return level?.label ?? nameIn(choices, seen);
}

const nameIn = (list, id) => list?.find((one) => one.id === id)?.name ?? id;

/** What was recorded, as written: a grade with its scale, a number with its unit, or what was seen. */
export function readingText(reading, given) {
  if (!given) return "";
  if ("grade" in given) return given.grade;
  if ("seen" in given) return seenText(reading, given.seen);
  return `${given.value} ${given.unit ?? ""}`.trim();
}

const placeText = (manoeuvre, place) => (place ? nameIn(manoeuvre.places, place) : "");

/** All readings of a line: "right 2, left 1 (scale name)". */
export function readingsText(manoeuvre, line) {
  const parts = [...line.readings].map(([item, given]) => {
    const [side, place] = [item.slice(0, item.indexOf("/")), item.slice(item.indexOf("/") + 1)];
    return [placeText(manoeuvre, place), side === "none" ? "" : side, readingText(manoeuvre.reading, given)]
      .filter(Boolean)
      .join(" ");
  });
  return parts.join(", ");
}

export { nameIn };
