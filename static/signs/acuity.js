// Charts of letters, each eye by itself: the letters read rightly stand in ink with a line under them, the others in outline.

import { el, svg } from "../bedside/dom.js";
import { captioned, picture, saidOf } from "./head-parts.js";
import { amountText, latestBySide, measuresOf, sideText } from "./latest.js";

const LETTERS = "HVZDNCKRSOETLPFUAXYB";
/** In which order the letters of a line are lost. */
const LOST = [3, 0, 5, 1, 6, 2, 4, 7];

const [BLACK, GREY, CARD] = ["#11161b", "#7b8289", "#fffef9"];

const letter = (row, index) => LETTERS[(row * 7 + index * 3) % LETTERS.length];

const ofHow = ({ unit }) => Number(/^of (\d+)/.exec(unit)?.[1] ?? 0);

/** Which of a line's letters are read. */
function read(row, count, right) {
  const order = LOST.filter((index) => index < count).map((index) => (index + row) % count);
  return new Set(order.slice(count - right));
}

const sure = (row, count, right) => {
  const known = read(row, count, right);
  return Array.from({ length: count }, (_, index) => ({ text: letter(row, index), known: known.has(index) }));
};

/** One line of letters, in the middle of the page, so high. */
function line(row, letters, y, high, named) {
  const wide = high * 0.9;
  const gap = Math.max(wide * 0.55, 3);
  const from = -((letters.length - 1) * (wide + gap)) / 2;
  return svg("g", {},
    ...letters.map(({ text, known }, index) => svg("text", { class: "letter", fill: known ? BLACK : CARD, stroke: known ? "none" : GREY, x: from + index * (wide + gap), y, "font-size": high * 1.35, "text-anchor": "middle" }, text)),
    svg("path", { class: "letter-line", d: letters.map(({ known }, index) => (known ? `M${from + index * (wide + gap) - wide / 2} ${y + 2.5}h${wide}` : "")).join("") || "M0 0" }),
    svg("text", { class: "tick", x: 119, y, "text-anchor": "end" }, named));
}

function chart(rows) {
  let y = 4;
  const drawn = rows.map(({ row, high, letters, named }) => {
    y += high + 8;
    return line(row, letters, y, high, named);
  });
  return picture([-122, 0, 244, y + 10], 1.35, svg("rect", { class: "chart-card", x: -121, y: 1, width: 242, height: y + 8 }), ...drawn);
}

const pips = ({ label, amount, unit }) => el("tr", {}, el("th", { scope: "row" }, label), el("td", {}, el("span", { class: "pips" }, "●".repeat(amount), "○".repeat(Math.max(0, ofHow({ unit }) - amount)))), el("td", {}, `${amount} ${unit}`));

const sides = (host, probes, draw) => {
  const both = latestBySide(probes);
  host.append(el("div", { class: "head-row" }, ...both.map((probe) => {
    const name = [`${probe.side} eye`, probe.technique?.pinhole === "pinhole" ? "through a pinhole" : ""].filter(Boolean).join(", ");
    return el("div", {}, el("b", {}, name), draw(probe));
  })));
  return both;
};

const METRES = / marked (\d+) at 6 m$/;

export function acuityChart(host, { probes }) {
  const both = sides(host, probes, (probe) => {
    const lines = measuresOf(probe).filter(({ label }) => METRES.test(label));
    const rows = lines.map((measure, row) => {
      const metres = Number(METRES.exec(measure.label)[1]);
      return { row, high: Math.max(5, metres * 0.85), letters: sure(row, ofHow(measure), measure.amount), named: metres };
    });
    const rest = measuresOf(probe).filter(({ label }) => !METRES.test(label));
    return el("div", {}, captioned("At 6 m; the number of a line stands beside it. Underlined: read rightly. In outline: not read, or read wrongly.", chart(rows)),
      el("table", { class: "measures" }, el("tbody", {}, ...rest.map(pips))));
  });
  return `${both.map((probe) => `${sideText(probe.side)}: ${measuresOf(probe).map(({ label, amount, unit }) => `${label}, ${amount} ${unit}`).join("; ")}`).join(". ")}.`;
}

export function letterChart(host, { probes }) {
  const both = sides(host, probes, (probe) => {
    const rows = measuresOf(probe).map((measure, row) => ({ row: row + 3, high: 34 * 10 ** (-row * 0.07), letters: sure(row + 3, ofHow(measure), measure.amount), named: amountText(1 - 0.1 * row) }));
    return captioned("At 4 m; beside each line its logMAR; each letter counts 0.02. Underlined: read rightly. In outline: not read, or read wrongly.", chart(rows));
  });
  return saidOf(both);
}
