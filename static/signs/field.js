// The field of each eye by confrontation, as the examiner faces the patient: a target comes in from beyond to the point that
// was chosen and stops there. What the patient says stands beside it and is marked in the ring of the point; a point that was
// not tried is an empty ring.

import { el, svg } from "../bedside/dom.js";
import { picture } from "./head-parts.js";
import { latest } from "./latest.js";
import { Player } from "./player.js";

const SIDES = ["right", "left"];
const COMES_MS = 1600;

/** Where the points lie: [outwards, upwards] in degrees from where the eye looks. */
const POINTS = { "upper-outer": [30, 26], "lower-outer": [30, -26], "upper-inner": [-26, 26], "lower-inner": [-26, -26], "centre-outer": [9, 0], "centre-inner": [-9, 0], "far-outer": [68, 0] };
const BEYOND = 1.7;

/** On the page: outwards of the right eye is to the left. */
const spot = (side, [out, up], far = 1) => [(side === "right" ? -out : out) * far, -up * far];

const targetOf = (probe) => (probe.technique?.["field-target"] === "finger" ? "finger" : "pin");

const FINGER = "M-4 22V0a4 4 0 0 1 8 0V22Z";
const PIN = "M0 4.500V24M-4.500 0a4.500 4.500 0 1 1 9 0a4.500 4.500 0 1 1 -9 0Z";

const FULL = "M-4 0a4 4 0 1 0 8 0a4 4 0 1 0 -8 0Z";
const STRIPED = "M-3.200 1.700L1.700 -3.200M-2.700 3.500L3.500 -2.700M-4.200 -0.900L-0.900 -4.200M0.300 4.300L4.300 0.300";
const CROSSED = "M-3 -3L3 3M3 -3L-3 3";

/** How what the patient says is marked. */
function markOf(words) {
  if (words.startsWith("Nothing")) return CROSSED;
  return words.includes("washed out") ? STRIPED : FULL;
}

const LEGEND = [[FULL, "seen"], [STRIPED, "“washed out”"], [CROSSED, "“nothing”"], ["M0 0", "not tried"]];

const ring = (d) => [svg("circle", { class: "field-dot", r: 5.5 }), svg("path", { class: "field-mark", d })];

const legend = () =>
  el("ul", { class: "quiet field-legend" }, ...LEGEND.map(([d, text]) => el("li", {}, svg("svg", { viewBox: "-7 -7 14 14", width: 24, height: 24, "aria-hidden": "true" }, ...ring(d)), text)));

/** The field of one eye; {@code tried} by place, with their numbers. */
function map(side, tried, { pick, last }) {
  const rings = [10, 30, 60].map((degrees) => svg("circle", { class: "field-ring", r: degrees }));
  const points = Object.entries(POINTS).map(([place, at]) => {
    const [x, y] = spot(side, at);
    const probe = tried.find((one) => one.place === place);
    const choose = pick && !probe ? { class: "field-point free", tabindex: 0, role: "button", "aria-label": `Try ${place.replace("-", " ")}, ${side}`, onclick: () => pick(side, place), onkeydown: (event) => (event.key === "Enter" || event.key === " ") && (event.preventDefault(), pick(side, place)) } : { class: "field-point" };
    const mark = probe ? markOf(probe.shown.words) : "M0 0";
    return svg("g", { ...choose, transform: `translate(${x} ${y})` }, svg("circle", { class: "field-reach", r: 11.5 }), svg("circle", { class: probe && probe === last ? "field-dot last" : "field-dot", r: 5.5 }),
      svg("path", { class: "field-mark", d: mark }), svg("text", { class: "field-number", x: x < 0 ? -7 : 7, y: -5, "text-anchor": x < 0 ? "end" : "start" }, probe ? tried.indexOf(probe) + 1 : ""));
  });
  const target = svg("g", { class: "field-target", visibility: "hidden" }, svg("path", { class: "target" }));
  const node = picture([-92, -62, 184, 124], 2.1,
    svg("rect", { class: "field-card", x: -91, y: -61, width: 182, height: 122 }), ...rings, svg("path", { class: "field-ring", d: "M-90 0H90M0 -60V60" }),
    svg("path", { class: "eye-margin", d: "M-7 0C-3 -4 3 -4 7 0C3 4 -3 4 -7 0Z", opacity: 0.5 }), ...points, target,
    svg("text", { class: "eye-name face-name", x: -88, y: -52 }, side === "right" ? "outwards" : "inwards"), svg("text", { class: "eye-name face-name", x: 88, y: -52, "text-anchor": "end" }, side === "right" ? "inwards" : "outwards"));
  node.removeAttribute("aria-hidden");
  return { node, target };
}

/** The target comes in along its meridian and stops at the point. */
function come({ target }, probe, still) {
  const at = POINTS[probe.place];
  if (!at) return () => {};
  const [shape] = target.children;
  shape.setAttribute("d", targetOf(probe) === "finger" ? FINGER : PIN);
  const show = (share) => {
    const [x, y] = spot(probe.side, at, 1 + (BEYOND - 1) * (1 - share));
    const wag = targetOf(probe) === "finger" ? 2.5 * Math.sin(share * 40) : 0;
    target.setAttribute("visibility", "visible");
    target.setAttribute("transform", `translate(${(x + wag).toFixed(1)} ${(y + 11).toFixed(1)})`);
  };
  show(1);
  const player = new Player(0, COMES_MS, (ms) => show(ms / COMES_MS));
  return still ? () => {} : () => player.play();
}

export function fieldTarget(host, { manoeuvre, probes, fresh, still, again }) {
  const tried = latest(probes, (probe) => `${probe.place}/${probe.side}`);
  const last = fresh ?? probes.at(-1);
  const newest = tried.findLast((probe) => probe.place === last.place && probe.side === last.side);
  const name = (place) => manoeuvre.places.find(({ id }) => id === place)?.name ?? place;
  let play = () => {};
  host.append(el("div", { class: "head-row" }, ...SIDES.map((side) => {
    const of = tried.filter((probe) => probe.side === side);
    const drawn = map(side, of, { pick: again, last: newest });
    if (side === last.side) play = come(drawn, newest, still);
    return el("div", { class: "one-field" }, el("b", {}, `${side} eye, the other one covered`), drawn.node,
      el("ol", { class: "field-said" }, ...of.map((probe) => el("li", {}, `${name(probe.place)}, ${targetOf(probe) === "finger" ? "moving finger" : "red pin"}: `, el("span", { class: "said" }, `“${probe.shown.words}”`)))));
  })), legend(), el("p", { class: "quiet" }, "As you face the patient. Rings of 10, 30 and 60 degrees from where the eye looks."));
  if (fresh) play();
  return `${name(last.place)}, ${last.side} eye, ${targetOf(last) === "finger" ? "moving finger" : "red pin"}: “${last.shown.words}”`;
}
