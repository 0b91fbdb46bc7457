// Steps seen from above or close by: turning round, heel to toe along a line, on the heels and on the toes.

import { svg } from "../../bedside/dom.js";
import { heightAt, highest, lengthMs, lowest } from "../curve.js";
import { amountText, curvesOf, latestBySide, measuresOf, sideText } from "../latest.js";
import { acted, beside } from "./acted.js";
import { flesh, FOOT, PRINT, at, line, picture } from "./flesh.js";

const amounts = (probe) => measuresOf(probe).map(({ amount }) => amount);
export const measuresText = (probe) => measuresOf(probe).map(({ label, amount, unit }) => `${label} ${amountText(amount)} ${unit}`.trim()).join("; ");
export const sidesText = (probes) => `${latestBySide(probes).map((probe) => [sideText(probe.side), measuresText(probe)].filter(Boolean).join(": ")).join(". ")}.`;

const MOST_STEPS = 14;
const ROUND = 84;
const PX = 2;

/** A half turn: the prints stand on half a circle, the steps numbered as they come. */
function turnRound(probe, still) {
  const [steps] = amounts(probe);
  const [angle, lean] = curvesOf(probe);
  const middle = [170, 168];
  const spot = (degrees, out) => [middle[0] - Math.cos((degrees * Math.PI) / 180) * (ROUND + out), middle[1] - Math.sin((degrees * Math.PI) / 180) * (ROUND + out)];
  const print = (index) => {
    const degrees = Math.min(180, (index / steps) * 180);
    const out = index % 2 ? 17 : -17;
    const [x, y] = spot(degrees, out);
    const [nx, ny] = spot(degrees, out + (index % 2 ? 19 : -19));
    const mark = svg("text", { class: "tick", x: nx, y: ny + 4, "text-anchor": "middle" }, index || "start");
    return { degrees: (index / steps) * 180, node: svg("g", { class: "turn-step" }, svg("path", { class: "skin print", d: PRINT, transform: `${at(x, y, degrees, index % 2 ? -1 : 1)} scale(${PX * 0.7}) translate(0 12)` }), mark) };
  };
  const prints = Array.from({ length: MOST_STEPS }, (_, index) => print(index));
  const trail = svg("path", { class: "trail", d: "" });
  const body = svg("ellipse", { class: "trail body", rx: 24, ry: 10 });
  const clock = svg("text", { class: "trace-name", x: 170, y: 172, "text-anchor": "middle", visibility: still ? "hidden" : "visible" });
  const trunk = (ms) => spot(heightAt(angle, ms), heightAt(lean, ms) * PX);
  const show = (ms) => {
    const now = heightAt(angle, ms);
    prints.forEach(({ degrees, node }, index) => node.setAttribute("visibility", index <= steps && degrees <= now + 1 ? "visible" : "hidden"));
    const count = Math.max(1, Math.round(ms / 50));
    trail.setAttribute("d", line(Array.from({ length: count + 1 }, (_, index) => trunk((index / count) * ms))));
    body.setAttribute("transform", at(...trunk(ms), now));
    clock.textContent = `${amountText(Math.min(ms, amounts(probe)[1] * 1000) / 1000)} s`;
  };
  return { node: picture(340, 216, "turning", ...prints.map(({ node }) => node), trail, body, clock, svg("text", { class: "tick", x: 70, y: 208 }, "begins"), svg("text", { class: "tick", x: 276, y: 208, "text-anchor": "end" }, "ends")), show };
}

export function turning(host, { probes, fresh, still }) {
  const last = fresh ?? probes.at(-1);
  const end = lengthMs(curvesOf(last)[0]);
  acted(host, { probes: [last], make: (probe) => turnRound(probe, still), end, stills: still ? [1000, 2000, end] : [end], fresh, still });
  return `${measuresText(last)}; trunk leans by up to ${amountText(highest(curvesOf(last)[1]))} cm to the right and ${amountText(-lowest(curvesOf(last)[1]))} cm to the left.`;
}

const TANDEM_PX = 1.75;

/** Ten steps along a line, each at the distance from it at which it fell. */
export function tandem(host, { probes, fresh }) {
  const last = fresh ?? probes.at(-1);
  const [steps] = curvesOf(last);
  const prints = steps.samples.map((across, index) =>
    svg("path", { class: "skin print", d: PRINT, "data-across": across, transform: `${at(8 + index * 26 * TANDEM_PX, 70 + across * TANDEM_PX, 90, index % 2 ? 1 : -1)} scale(${TANDEM_PX})` }));
  const marks = [-20, -10, 10, 20];
  host.append(picture(516, 140, "tandem", svg("path", { class: "stop-watch", d: "M0 70H516" }), ...prints,
    ...marks.map((cm) => svg("path", { class: "gauge", d: `M500 ${70 + cm * TANDEM_PX}h8` })),
    ...marks.map((cm) => svg("text", { class: "tick", x: 496, y: 74 + cm * TANDEM_PX, "text-anchor": "end" }, Math.abs(cm))),
    svg("text", { class: "tick", x: 514, y: 12, "text-anchor": "end" }, "cm left of the line"), svg("text", { class: "tick", x: 514, y: 136, "text-anchor": "end" }, "cm right of the line")));
  return `${measuresText(last)}; distances from the line ${steps.samples.map((across) => amountText(Math.abs(across))).join(", ")} cm.`;
}

const FOOT_PX = 4.2;

/** A foot from the side, toes or heel lifted off the floor, with a ruler in centimetres. */
function lifted(onHeel) {
  return (probe) => {
    const [cm] = amounts(probe);
    const angle = (Math.asin(Math.min(cm / 22, 0.9)) * 180) / Math.PI;
    const pivot = onHeel ? [-6, 8] : [14, 8];
    const turn = onHeel ? -angle : angle;
    const [x, y] = [92, 150];
    const leg = svg("g", { transform: `translate(${x} ${y - 8 * FOOT_PX}) rotate(${turn} ${pivot.map((part) => part * FOOT_PX).join(" ")})` },
      svg("path", { class: "skin", transform: `scale(${FOOT_PX})`, "vector-effect": "non-scaling-stroke", d: FOOT }),
      svg("g", { transform: `rotate(${-turn})` }, flesh(34, [[0, -2], [0, -100]])));
    const rulerAt = onHeel ? 178 : 46;
    const lift = svg("path", { class: "stop-watch", d: `M${rulerAt} ${y}V${(y - cm * FOOT_PX).toFixed(1)}`, "data-cm": cm });
    const ticks = Array.from({ length: 9 }, (_, index) => index);
    return picture(220, 176, "on-heel-or-toe", svg("path", { class: "grid zero", d: `M10 ${y}H210` }), leg, lift,
      svg("path", { class: "gauge", d: ticks.map((i) => `M${onHeel ? 190 : 24} ${y - i * FOOT_PX}h${i % 5 ? 6 : 11}`).join("") }),
      svg("text", { class: "tick", x: onHeel ? 204 : 8, y: y - 5 * FOOT_PX + 4 }, "5"), svg("text", { class: "tick", x: onHeel ? 190 : 20, y: y + 18 }, "cm"));
  };
}

export function onTiptoe(host, { manoeuvre, probes }) {
  beside(host, probes, lifted(manoeuvre.id.startsWith("heel")));
  return sidesText(probes);
}
