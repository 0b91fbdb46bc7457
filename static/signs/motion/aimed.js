// A finger to a finger, or a heel down a shin: the way it goes, drawn as it goes, and where it ends with the eyes shut.

import { el, svg } from "../../bedside/dom.js";
import { heightAt, highest, lengthMs, lowest } from "../curve.js";
import { amountText, curvesOf, latestBySide, measuresOf } from "../latest.js";
import { seriesOf } from "../moving.js";
import { acted } from "./acted.js";
import { at, flesh, headAside, line, picture } from "./flesh.js";
import { measuresText } from "./steps.js";

const PX = 4.6;
const SCENES = {
  finger: {
    cm: 45, from: [62, 92],
    behind: () => [svg("g", { transform: "translate(36 104) scale(1.700)" }, headAside())],
    before: (x, y) => [svg("path", { class: "helper", d: `M${x + 8} ${y - 5}C${x} ${y - 5} ${x} ${y + 5} ${x + 8} ${y + 5}H${x + 40}V${y - 5}Z` })],
    mover: () => svg("path", { class: "skin", d: "M0 -3C4 -5 20 -6 26 -4C34 -10 46 -8 50 0C52 10 40 16 30 12C24 10 22 5 18 4C8 5 2 4 0 2Z", transform: "rotate(62)" }),
  },
  heel: {
    cm: 40, from: [50, 84],
    behind: (x, y) => [flesh(30, [[20, y + 30], [x + 26, y + 34]]), svg("path", { class: "skin", d: `M${x + 18} ${y + 48}C${x + 30} ${y + 50} ${x + 40} ${y + 46} ${x + 42} ${y + 34}L${x + 44} ${y - 8}C${x + 43} ${y - 16} ${x + 33} ${y - 16} ${x + 30} ${y - 8}L${x + 18} ${y + 20}Z` }),
      svg("ellipse", { class: "skin", cx: 46, cy: y + 19, rx: 17, ry: 11 }), svg("text", { class: "tick", x: 30, y: y + 62 }, "knee"), svg("text", { class: "tick", x: x - 14, y: y + 62 }, "ankle")],
    before: () => [],
    mover: () => svg("path", { class: "skin", d: "M-8 -2C-9 6 8 6 9 0C14 -12 16 -24 22 -34C24 -40 16 -44 12 -38C6 -28 -2 -20 -6 -12Z" }),
  },
};

/** Both ways begin at the left; beside the line is across it. */
function aiming(scene) {
  return (probe) => {
    const [aside, along] = curvesOf(probe);
    const blind = measuresOf(probe)[2].amount;
    const [x0, y0] = scene.from;
    const x = (ms) => x0 + (heightAt(along, ms) / 100) * scene.cm * PX;
    const y = (ms) => y0 + heightAt(aside, ms) * PX;
    const mark = x0 + scene.cm * PX;
    const trail = svg("path", { class: "trail", d: "" });
    const mover = svg("g", {}, scene.mover());
    const ticks = [-10, -5, 0, 5, 10];
    const shut = svg("g", { class: "blind-end", "data-cm": blind }, svg("path", { class: "trail shut", d: `M${x0} ${y0}L${mark} ${(y0 - blind * PX).toFixed(1)}` }), svg("circle", { class: "dot last", cx: mark, cy: (y0 - blind * PX).toFixed(1), r: 4 }));
    const node = picture(330, 190, "aimed", ...scene.behind(mark, y0), svg("path", { class: "stop-watch", d: `M${x0} ${y0}H${mark}` }), ...scene.before(mark, y0),
      svg("path", { class: "gauge", d: ticks.map((cm) => `M${mark + 48} ${y0 + cm * PX}h${cm % 10 ? 5 : 9}`).join("") }), svg("text", { class: "tick", x: mark + 44, y: y0 - 10 * PX + 4, "text-anchor": "end" }, "10 cm"),
      shut, trail, mover);
    const show = (ms) => {
      const count = Math.max(1, Math.round(ms / aside.stepMs));
      trail.setAttribute("d", line(Array.from({ length: count + 1 }, (_, index) => [x((index / count) * ms), y((index / count) * ms)])));
      mover.setAttribute("transform", at(x(ms), y(ms)));
    };
    return { node, show };
  };
}

export function aimedPath(host, { manoeuvre, probes, fresh, still }) {
  const scene = manoeuvre.id.startsWith("heel") ? SCENES.heel : SCENES.finger;
  const end = lengthMs(curvesOf(probes.at(-1))[0]);
  const traces = [{ title: "To the side of the line", series: seriesOf(probes), low: -5, high: 5, short: true }, { title: "Of the way to the mark", series: seriesOf(probes, (curves) => curves[1]), low: 0, high: 120, short: true }];
  acted(host, { probes, make: aiming(scene), end, stills: still ? [600, 1400, end] : [end], traces, fresh, still });
  host.append(el("p", { class: "quiet" }, "Dotted: the same with the eyes shut, to where it ends."));
  const said = (probe) => {
    const [aside, along] = curvesOf(probe);
    return `${probe.side}: ${measuresText(probe)}; goes ${amountText(highest(along), 0)} % of the way at most, from side to side between ${amountText(lowest(aside))} and ${amountText(highest(aside))} cm`;
  };
  return `${latestBySide(probes).map(said).join(". ")}.`;
}
