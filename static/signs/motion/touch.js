// What a hand makes of what touches it, touches on both hands, and a pin up the trunk: with the patient's words.

import { el, svg } from "../../bedside/dom.js";
import { amountText, latestBySide, measuresOf } from "../latest.js";
import { beside } from "./acted.js";
import { headOn, eyes, flesh, picture } from "./flesh.js";
import { OUTLINES, placed, smooth } from "./outline.js";
import { sidesText } from "./steps.js";

const part = (name, at, degrees, size) => svg("path", { class: "skin", d: smooth(placed(OUTLINES[name], at, degrees, size)) });
const text = (x, y, words, anchor = "middle", kind = "tick") => svg("text", { class: kind, x, y, "text-anchor": anchor }, words);

const OBJECTS = [
  ["coin", "M0 0m-9 0a9 9 0 1 0 18 0a9 9 0 1 0 -18 0M-4 0h8"],
  ["key", "M-9 0a5 5 0 1 0 10 0a5 5 0 1 0 -10 0M1 0H13M13 0v5M9 0v4"],
  ["clip", "M-8 -5H8C12 -5 12 4 8 4H-6C-9 4 -9 -2 -6 -2H6"],
  ["ring", "M0 0m-8 0a8 8 0 1 0 16 0a8 8 0 1 0 -16 0M0 0m-5 0a5 5 0 1 0 10 0a5 5 0 1 0 -10 0"],
  ["pen", "M-12 4L8 -6L12 -5L9 -2L-11 7Z"],
];
const FIGURES = ["3", "8", "5", "2", "6"];
/** In which order those that are told come. */
const ORDER = [2, 0, 4, 1, 3];

/** Five small palms, each with what lies on it and the patient's answer beneath. */
function fiveTried(probe, draw, nameOf) {
  const way = probe.side === "right" ? 1 : -1;
  const [told] = measuresOf(probe).map(({ amount }) => amount);
  const cells = OBJECTS.map((_, index) => {
    const x = 38 + index * 72;
    const answer = ORDER.indexOf(index) < told ? nameOf(index) : "can't tell";
    return svg("g", { class: "tried" }, part("finger", [x + way * 15, 76], -90 + way * 40, 0.72), part("palm", [x, 92], -90, 1), ...[-18, -6, 6, 18].map((dx) => part("finger", [x + dx, 42], -90 + dx * 0.5, 0.62)), svg("g", { transform: `translate(${x} 66)` }, draw(index)), text(x, 122, `“${answer}”`, "middle", "trace-name answer"));
  });
  return picture(366, 132, "five-tried", ...cells);
}

const DISTANCES = [20, 15, 10, 8, 6, 5, 4, 3, 2];

/** A fingertip touched by two points ever nearer to each other; beneath, what the patient says. */
function points(probe) {
  const [least] = measuresOf(probe).map(({ amount }) => amount);
  const cells = DISTANCES.map((mm, index) => {
    const [x, y] = [32 + (index % 5) * 60, 52 + Math.floor(index / 5) * 104];
    const half = mm * 1.1;
    return svg("g", { class: "tried" }, svg("path", { class: "skin", d: `M${x - 24} ${y + 22}C${x - 26} ${y - 8} ${x - 14} ${y - 22} ${x} ${y - 22}C${x + 14} ${y - 22} ${x + 26} ${y - 8} ${x + 24} ${y + 22}` }),
      svg("path", { class: "gauge", d: `M${x - half} ${y}L${x - 4} ${y - 38}M${x + half} ${y}L${x + 4} ${y - 38}` }), svg("circle", { class: "pin", cx: x - half, cy: y, r: 2.2 }), svg("circle", { class: "pin", cx: x + half, cy: y, r: 2.2 }),
      text(x, y + 18, `${mm} mm`), text(x, y + 38, mm >= least ? "“two”" : "“one”", "middle", "trace-name answer"));
  });
  return picture(308, 204, "two-points", ...cells);
}

export function handTouch(host, { manoeuvre, probes }) {
  const object = (probe) => fiveTried(probe, (index) => svg("path", { class: "object", d: OBJECTS[index][1] }), (index) => OBJECTS[index][0]);
  const figure = (probe) => fiveTried(probe, (index) => svg("text", { class: "object-figure", "text-anchor": "middle", y: 8 }, FIGURES[index]), (index) => FIGURES[index]);
  beside(host, probes, manoeuvre.id.startsWith("two") ? points : manoeuvre.id.startsWith("figures") ? figure : object);
  return `Eyes shut. ${sidesText(probes)}`;
}

/** Somebody from the front with the eyes shut and both hands out; a ring on each hand that is touched. */
function touched(sides, felt, title) {
  const hand = (side) => {
    const way = side === "right" ? -1 : 1;
    return [flesh(9, [[70 + way * 24, 66], [70 + way * 30, 96], [70 + way * 46, 112]]), svg("circle", { class: "skin", cx: 70 + way * 48, cy: 114, r: 7 }), svg("circle", { class: "touch", cx: 70 + way * 48, cy: 114, r: 12, visibility: sides.includes(side) ? "visible" : "hidden" })];
  };
  return picture(150, 180, "touched", text(70, 12, title), svg("path", { class: "skin", d: "M44 66Q70 52 96 66L90 140H50Z" }), svg("g", { transform: "translate(70 54)" }, headOn(1.1), eyes(false, 1.1)), ...hand("right"), ...hand("left"),
    text(70, 170, felt, "middle", "trace-name answer"), text(2, 146, "right", "start"), text(142, 146, "left", "end"));
}

const saying = (right, left) => (right && left ? "“both”" : right ? "“right”" : left ? "“left”" : "(says nothing)");

/** Five times each; beneath one touch how often it is told, beneath two what is said in most of them. */
export function twoTouches(host, { probes, fresh }) {
  const last = fresh ?? probes.at(-1);
  const [rightAlone, leftAlone, rightBoth, leftBoth] = measuresOf(last).map(({ amount }) => amount);
  const most = (told) => told > 2;
  const times = (told) => `${told} ${told === 1 ? "time" : "times"} of 5`;
  const cells = [
    touched(["right"], `“right” ${times(rightAlone)}`, "right touched"),
    touched(["left"], `“left” ${times(leftAlone)}`, "left touched"),
    touched(["right", "left"], saying(most(rightBoth), most(leftBoth)), "both touched"),
  ];
  const row = el("div", { class: "acts" });
  row.append(...cells.map((cell) => el("div", { class: "act" }, cell)));
  host.append(row);
  return `Eyes shut. ${measuresOf(last).map(({ label, amount }) => `${label} ${amountText(amount)}`).join("; ")}.`;
}

const TRUNK_PX = 3.2;
const FOOT_Y = 232;
const MARKS = [[0, "groin"], [14, "navel"], [32, "end of the breast bone"], [42, "nipples"], [56, "top of the shoulder"]];

/** A trunk from the front with a pin at every third centimetre, and the patient's answer at each. */
function upTheTrunk(probe) {
  const [cm] = measuresOf(probe).map(({ amount }) => amount);
  const way = probe.side === "right" ? -1 : 1;
  const y = (at) => FOOT_Y - at * TRUNK_PX;
  const steps = Array.from({ length: 20 }, (_, index) => index * 3);
  const x = 110 + way * 24;
  return picture(364, 290, "trunk-pins", svg("path", { class: "outline", d: `M94 ${y(68)}C92 ${y(60)} 70 ${y(58)} 46 ${y(55)}C30 ${y(53)} 26 ${y(46)} 24 ${y(36)}M126 ${y(68)}C128 ${y(60)} 150 ${y(58)} 174 ${y(55)}C190 ${y(53)} 194 ${y(46)} 196 ${y(36)}` }), svg("path", { class: "outline", d: `M46 ${y(42)}C42 ${y(36)} 54 ${y(24)} 50 ${y(12)}C46 ${y(6)} 46 ${y(2)} 48 ${y(-6)}M174 ${y(42)}C178 ${y(36)} 166 ${y(24)} 170 ${y(12)}C174 ${y(6)} 174 ${y(2)} 172 ${y(-6)}` }),
    svg("path", { class: "outline", d: `M60 ${y(-2)}Q110 ${y(-10)} 160 ${y(-2)}M110 ${y(14) - 5}v10M110 ${y(32)}q-20 4 -34 24M110 ${y(32)}q20 4 34 24M110 ${y(52)}V${y(32)}` }),
    ...[76, 144].map((nx) => svg("circle", { class: "outline", cx: nx, cy: y(42), r: 4 })),
    ...MARKS.map(([at, name]) => svg("text", { class: "tick", x: 204, y: y(at) + 4 }, `${at} cm ${name}`)),
    ...steps.map((at) => svg("g", { class: "pricked" }, svg("path", { class: "gauge", d: `M${x - 5} ${y(at)}h10` }), svg("path", { class: "felt-mark", d: `M${x + way * 9} ${y(at)}h${way * (at >= cm ? 12 : 4)}` }))),
    svg("path", { class: "stop-watch", d: `M110 ${y(cm)}h${way * 60}`, "data-cm": cm }), text(182, 266, "pin every 3 cm; long dash: sharp as on the cheek; short: less"), text(182, 282, "dotted line: from here upwards as sharp as on the cheek"));
}

export function trunkLine(host, { probes }) {
  beside(host, probes, upTheTrunk);
  return sidesText(latestBySide(probes));
}
