// Words inside a drawing shrink with it on a narrow page. Here they are kept from becoming too small to be read; what is itself
// part of a test, such as a letter of a chart, keeps its size.

const LEAST_PX = 11;

const wordsOf = (host) => [...host.querySelectorAll("svg text:not(.letter)")];

/** How many pixels on the page a unit of the text is high. */
function scaleOf(text) {
  const at = text.getScreenCTM();
  return at ? Math.hypot(at.b, at.d) : 0;
}

function fit(host) {
  const words = wordsOf(host);
  for (const word of words) word.style.removeProperty("font-size");
  const sizes = words.map((word) => ({ word, scale: scaleOf(word), size: Number.parseFloat(getComputedStyle(word).fontSize) }));
  for (const { word, scale, size } of sizes) if (scale > 0 && size * scale < LEAST_PX) word.style.setProperty("font-size", `${(LEAST_PX / scale).toFixed(2)}px`);
}

const drawsAnew = ({ addedNodes }) => [...addedNodes].some((node) => node.nodeType === Node.ELEMENT_NODE && node.tagName !== "tspan");

const kept = new WeakSet();

/** Keeps every word that is drawn in the host legible, now, when the page becomes narrower and when something is drawn anew. */
export function keepLegible(host) {
  fit(host);
  if (kept.has(host)) return;
  kept.add(host);
  new ResizeObserver(() => fit(host)).observe(host);
  new MutationObserver((changes) => changes.some(drawsAnew) && fit(host)).observe(host, { childList: true, subtree: true });
}
