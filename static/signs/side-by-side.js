// What the drawings of hands, legs, skin and joints share: right and left of one place side by side, with their amounts.

import { el, svg } from "../bedside/dom.js";
import { amountText, latest, measuresOf, sideText } from "./latest.js";
import { onAPartner } from "./partner.js";

export const amounts = (probe) => measuresOf(probe).map(({ amount }) => amount);

export const picture = (width, height, ...nodes) => svg("svg", { class: "look", viewBox: `0 0 ${width} ${height}`, width, height, "aria-hidden": "true" }, ...nodes);

export const line = (d, kind = "outline", more = {}) => svg("path", { class: kind, d, ...more });

export const label = (x, y, text, anchor = "middle") => svg("text", { class: "tick", x, y, "text-anchor": anchor }, text);

const ORDER = ["right", "left", "none"];

/** The last probe of each side at the place that was tried last: right, left. */
export function atThisPlace(probes, fresh) {
  const { place = "" } = fresh ?? probes.at(-1);
  return latest(probes.filter((probe) => (probe.place ?? "") === place), (probe) => probe.side)
    .sort((one, other) => ORDER.indexOf(one.side) - ORDER.indexOf(other.side));
}

export const placeName = (manoeuvre, probe) => (manoeuvre.places ?? []).find(({ id }) => id === probe.place)?.name ?? "";

const quoted = (probe) => (probe.shown.words ? `“${probe.shown.words}”` : "");

export const amountsText = (probe) => [...measuresOf(probe).map(({ label: name, amount, unit }) => `${name} ${amountText(amount)} ${unit}`.trim()), quoted(probe)].filter(Boolean).join("; ");

/** Where a thing was found, and what: "knee, right: …". */
export const said = (manoeuvre, probe, text = amountsText(probe)) => {
  const where = [placeName(manoeuvre, probe), sideText(probe.side)].filter(Boolean).join(", ");
  return `${where ? `${where}: ` : ""}${text}.`;
};

/** A table of every other place that was tried. */
function before(manoeuvre, probes, shown) {
  const others = latest(probes, ({ place, side }) => `${place}/${side}`).filter((probe) => !shown.some(({ place, side }) => place === probe.place && side === probe.side));
  return others.length ? el("details", { class: "earlier" }, el("summary", {}, "Tried before"), el("ul", {}, ...others.map((probe) => el("li", {}, said(manoeuvre, probe))))) : "";
}

/**
 * A drawing that puts both sides beside each other.
 * @param drawing (probe, view) => node
 * @param felt    whether a hand feels it
 * @param text    (probe) => what is seen
 * @param below   (probe) => what stands beneath the drawing, the text where it is not said
 */
export const sideBySide = (drawing, { felt = false, text = amountsText, key = "", below = (probe) => el("p", { class: "quiet" }, text(probe)) } = {}) => (host, view) => {
  const { manoeuvre, probes, fresh } = view;
  const both = atThisPlace(probes, fresh);
  host.append(el("div", { class: "marks-row" }, ...both.map((probe) => {
    const caption = [placeName(manoeuvre, probe), sideText(probe.side)].filter(Boolean).join(", ");
    return el("figure", { class: "beside" }, caption ? el("figcaption", {}, el("b", {}, caption)) : "", drawing(probe, view), below(probe));
  })), key ? el("p", { class: "quiet" }, key) : "", before(manoeuvre, probes, both));
  if (felt) host.append(onAPartner());
  return both.map((probe) => said(manoeuvre, probe, text(probe))).join(" ");
};
