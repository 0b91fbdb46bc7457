// A drawing of marks on a body, as wide as its column allows.

import { svg } from "../bedside/dom.js";
import { measuresOf } from "./latest.js";

export const frame = (width, height, ...nodes) => svg("svg", { class: "marks", viewBox: `0 0 ${width} ${height}`, width, height, "aria-hidden": "true" }, ...nodes);

/** The amounts of a probe in their order. */
export const amounts = (probe) => measuresOf(probe).map(({ amount }) => amount);

export const line = (name, d, there = true) => svg("path", { class: name, visibility: there ? "visible" : "hidden", d });

export const word = (x, y, text, anchor = "start", name = "tick") => svg("text", { class: name, x, y, "text-anchor": anchor }, text);
