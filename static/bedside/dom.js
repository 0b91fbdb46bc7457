// Elements without markup in strings. Attribute names starting with "on" are listeners; true and false are presence.

const SVG = "http://www.w3.org/2000/svg";

function fill(node, attributes, children) {
  for (const [name, given] of Object.entries(attributes)) {
    if (name.startsWith("on")) node.addEventListener(name.slice(2), given);
    else if (given === true) node.setAttribute(name, "");
    else if (given !== false && given !== undefined && given !== null) node.setAttribute(name, given);
  }
  node.append(...children.flat().filter((child) => child !== undefined && child !== null && child !== ""));
  return node;
}

export const el = (name, attributes = {}, ...children) => fill(document.createElement(name), attributes, children);

export const svg = (name, attributes = {}, ...children) =>
  fill(document.createElementNS(SVG, name), attributes, children);

/** Puts the given nodes in place of what stood in the host. */
export const put = (host, ...nodes) => host.replaceChildren(...nodes.flat().filter(Boolean));

let last = 0;
/** An id no other element of the page has. */
export const freshId = (stem) => `${stem}-${++last}`;
