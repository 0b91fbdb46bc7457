// Parts that move as one breath goes in: the costal margin, the chest and the belly.

import { el, svg } from "../bedside/dom.js";
import { heightAt, lengthMs, peak } from "./curve.js";
import { amountText, curvesOf, sideText } from "./latest.js";
import { moving, seriesOf } from "./moving.js";
import { Player } from "./player.js";
import { Trace } from "./trace.js";

const MOST = 18;

const edgeOfRibs = (mm) => `M110 20C${90 - mm * 0.6} 60 ${56 - mm * 1.2} 96 ${24 - mm} 118`;

/** The lower edge of the ribs of these sides from the front; the ghost shows where it began. */
function ribs(series) {
  const half = ({ side }) => {
    const moved = svg("path", { class: "limb-edge" });
    const node = svg("g", side === "left" ? { transform: "translate(220 0) scale(-1 1)" } : {}, svg("path", { class: "limb-ghost", d: edgeOfRibs(0) }), moved);
    return { node, moved };
  };
  const halves = series.map(half);
  const node = svg("svg", { class: "look", viewBox: "-22 0 264 142", width: 264, height: 142, "aria-hidden": "true" }, svg("path", { class: "outline", d: "M110 20V128" }), ...halves.map((one) => one.node),
    svg("text", { class: "tick", x: 0, y: 140 }, "right"), svg("text", { class: "tick", x: 220, y: 140, "text-anchor": "end" }, "left"));
  return { node, draw: (ms) => halves.forEach(({ moved }, index) => moved.setAttribute("d", edgeOfRibs(heightAt(series[index].curve, ms)))) };
}

const said = (probe) => `${[sideText(probe.side), ...curvesOf(probe).map((curve) => `${curve.name}: ${amountText(peak(curve).height)} ${curve.unit}`)].filter(Boolean).join(", ")}`;

export function costalMargin(host, { probes, fresh, still }) {
  const series = seriesOf(probes);
  const figure = ribs(series);
  moving(host, {
    together: true,
    figure: { node: figure.node, show: (side, ms) => figure.draw(ms) },
    traces: [{ series, low: -MOST, high: MOST, title: "The margin moves, outwards is up" }], from: "the start of the breath in", fresh, still,
  });
  return `${probes.map(said).join(". ")}.`;
}

/** Someone who lies flat, from the side: chest on the left, belly on the right. */
function lying() {
  const skin = svg("path", { class: "skin" });
  const draw = (chest, belly) => skin.setAttribute("d", `M6 80C30 72 44 ${52 - chest * 1.4} 90 ${48 - chest * 1.4}C120 ${52 - chest * 0.4} 128 ${60 - belly * 0.4} 160 ${56 - belly * 1.4}C200 ${58 - belly} 226 72 254 78V104H6Z`);
  draw(0, 0);
  return { node: svg("svg", { class: "look", viewBox: "0 0 260 108", width: 260, height: 108, "aria-hidden": "true" }, skin), draw };
}

export function bellyBreath(host, { probes, fresh, still }) {
  const last = fresh ?? probes.at(-1);
  const [chest, belly] = curvesOf(last);
  const figure = lying();
  const box = el("div", { class: "traces" });
  host.append(el("div", { class: "stage" }, el("div", { class: "figure-box" }, figure.node), box));
  const series = [{ side: "right", name: "chest", curve: chest }, { side: "left", name: "belly", curve: belly }];
  const at = (ms) => figure.draw(heightAt(chest, ms), heightAt(belly, ms));
  const trace = new Trace(box, { series, low: -MOST, high: MOST, from: "the start of the breath in", watch: (ms) => (player.stop(), at(ms)), short: true });
  box.append(el("p", { class: "trace-title" }, "Chest and belly move, outwards is up"), trace.node);
  const player = new Player(0, lengthMs(chest), (ms) => (trace.at(ms), at(ms)));
  const full = peak(chest).ms;
  const act = () => (still ? (trace.at(full), at(full)) : player.play());
  host.append(el("div", { class: "actions" }, el("button", { type: "button", onclick: act }, still ? "Show the full breath" : "Watch one breath again")));
  if (fresh || still) act();
  return `${said(last)}.`;
}
