// One polite live region for what changes elsewhere on the page.

let region;

export const announceIn = (node) => (region = node);

/** Says the text once, even when it is the text said before. */
export function announce(text) {
  if (!region || !text) return;
  region.textContent = "";
  requestAnimationFrame(() => (region.textContent = text));
}
