// From the nose to a finger, or with the heel down a shin: the whole limb from its shoulder or hip, the way its end goes, and
// where it ends with the eyes shut. What is not lifted to the line lies where it rests: on the lap or on the bed.

import { el, svg } from "../../bedside/dom.js";
import { heightAt, highest, lengthMs, lowest } from "../curve.js";
import { amountText, curvesOf, latestBySide, measuresOf } from "../latest.js";
import { seriesOf } from "../moving.js";
import { acted } from "./acted.js";
import { at, Flesh, flesh, headAside, line, picture } from "./flesh.js";
import { measuresText } from "./steps.js";

const PX = 3.4;

/** The middle joint of a limb of two bones from one end to the other, on the side that is told. */
function joint([x, y], [tx, ty], near, far, way) {
  const apart = Math.min(Math.max(Math.hypot(tx - x, ty - y), Math.abs(near - far) + 1), near + far - 0.5);
  const along = (apart * apart + near * near - far * far) / (2 * apart);
  const off = Math.sqrt(Math.max(0, near * near - along * along)) * way;
  const [ux, uy] = [(tx - x) / Math.hypot(tx - x, ty - y), (ty - y) / Math.hypot(tx - x, ty - y)];
  return [x + ux * along - uy * off, y + uy * along + ux * off];
}

const degrees = ([x, y], [tx, ty]) => (Math.atan2(ty - y, tx - x) * 180) / Math.PI;

const HAND = "M-4 -8C10 -12 22 -10 26 -6L48 -4C53 -3 53 3 48 4L30 5C28 11 8 12 -4 8Z";
const POINTS_TO = 50;

/** Sitting, from the side; the finger goes from the nose to a finger at arm's length. */
const finger = {
  size: [330, 320], cm: 45, ruler: 54, high: 54, from: [100, 80], rest: [166, 264], ground: "lap",
  behind: () => [flesh(30, [[50, 132], [52, 92]]), svg("g", { transform: "translate(55 89) scale(3)" }, headAside()), svg("path", { class: "skin", d: "M20 142C26 118 74 116 84 140C92 180 86 240 88 300H14C10 240 12 180 20 142Z" }), flesh(46, [[52, 288], [240, 288]]),
    svg("text", { class: "tick", x: 232, y: 292, "text-anchor": "middle" }, "lap")],
  before: ([x, y]) => [svg("path", { class: "helper", d: `M${x + 8} ${y - 6}C${x} ${y - 6} ${x} ${y + 6} ${x + 8} ${y + 6}H${x + 40}V${y - 6}Z` })],
  limb() {
    const [upper, fore] = [new Flesh(25), new Flesh(19)];
    const hand = svg("path", { class: "skin", d: HAND });
    const set = (tip) => {
      const elbow = joint([52, 142], tip, 100, 140, 1);
      const turn = degrees(elbow, tip);
      const wrist = [tip[0] - POINTS_TO * Math.cos((turn * Math.PI) / 180), tip[1] - POINTS_TO * Math.sin((turn * Math.PI) / 180)];
      upper.set([[52, 142], elbow]);
      fore.set([elbow, wrist]);
      hand.setAttribute("transform", at(...wrist, turn));
    };
    return { node: svg("g", {}, upper.node, fore.node, hand), set };
  },
};

/** Lying, from the side; the heel goes from the other knee down to the ankle. */
const heel = {
  size: [430, 236], cm: 40, ruler: 84, high: 12, from: [190, 164], rest: [326, 205], ground: "bed",
  behind: ([x, y]) => [svg("path", { class: "grid zero", d: "M0 207H400" }), svg("text", { class: "tick", x: 4, y: 224 }, "bed"), flesh(40, [[36, y + 22], [190, y + 22], [x + 4, y + 22]]),
    svg("path", { class: "skin", d: `M${x - 2} ${y + 40}C${x + 12} ${y + 44} ${x + 28} ${y + 44} ${x + 30} ${y + 34}L${x + 34} ${y - 14}C${x + 33} ${y - 22} ${x + 22} ${y - 22} ${x + 19} ${y - 14}L${x + 6} ${y + 6}Z` }),
    svg("text", { class: "tick", x: 190, y: y + 60, "text-anchor": "middle" }, "knee"), svg("text", { class: "tick", x, y: y + 60, "text-anchor": "middle" }, "ankle")],
  before: () => [],
  limb() {
    const [thigh, shank] = [new Flesh(38), new Flesh(28)];
    const foot = svg("path", { class: "skin", d: "M-8 -2C-9 6 8 6 9 0C14 -12 16 -24 22 -34C24 -40 16 -44 12 -38C6 -28 -2 -20 -6 -12Z" });
    const set = ([x, y]) => {
      const ankle = [x - 5, y - 13];
      const knee = joint([36, 184], ankle, 146, 144, -1);
      thigh.set([[36, 184], knee]);
      shank.set([knee, ankle]);
      foot.setAttribute("transform", at(x, y));
    };
    return { node: svg("g", {}, thigh.node, shank.node, foot), set };
  },
};

/** Both ways begin at the left; beside the line is across it. */
function aiming(scene) {
  return (probe) => {
    const [aside, along, lifted] = curvesOf(probe);
    const blind = measuresOf(probe)[2].amount;
    const [x0, y0] = scene.from;
    const share = (ms) => Math.min(1, heightAt(lifted, ms) / scene.high);
    const between = (rest, aim, part) => rest + (aim - rest) * part;
    const place = (ms) => [between(scene.rest[0], x0 + (heightAt(along, ms) / 100) * scene.cm * PX, share(ms)), between(scene.rest[1], y0 + heightAt(aside, ms) * PX, share(ms))];
    const mark = [x0 + scene.cm * PX, y0];
    const held = share(lengthMs(lifted));
    const blindEnd = [between(scene.rest[0], mark[0], held), between(scene.rest[1], y0 - blind * PX, held)];
    const trail = svg("path", { class: "trail", d: "" });
    const { node: limb, set } = scene.limb();
    const ticks = [-10, -5, 0, 5, 10];
    const shut = svg("g", { class: "blind-end", "data-cm": blind }, svg("path", { class: "trail shut", d: line([[between(scene.rest[0], x0, held), between(scene.rest[1], y0, held)], blindEnd]) }), svg("circle", { class: "dot last", cx: blindEnd[0].toFixed(1), cy: blindEnd[1].toFixed(1), r: 4 }));
    const node = picture(...scene.size, "aimed", ...scene.behind(mark), limb, svg("path", { class: "stop-watch", d: `M${x0} ${y0}H${mark[0]}` }), ...scene.before(mark),
      svg("path", { class: "gauge", d: ticks.map((cm) => `M${mark[0] + scene.ruler} ${y0 + cm * PX}h${cm % 10 ? 5 : 9}`).join("") }), svg("text", { class: "tick", x: mark[0] + scene.ruler + 10, y: y0 - 10 * PX - 6, "text-anchor": "end" }, "10 cm"),
      shut, trail);
    const show = (ms) => {
      const count = Math.max(1, Math.round(ms / aside.stepMs));
      trail.setAttribute("d", line(Array.from({ length: count + 1 }, (_, index) => place((index / count) * ms))));
      set(place(ms));
    };
    return { node, show };
  };
}

/** How high it is held, or how often it is lifted and falls back. */
function liftText({ name, samples }, ground) {
  const [low, high] = [Math.min(...samples), Math.max(...samples)];
  if (low > high / 2) return `${name} by ${amountText(high)} cm all along`;
  const times = samples.filter((height, index) => height > 1 && height >= (samples[index - 1] ?? 0) && height > (samples[index + 1] ?? 0)).length;
  return `lies on the ${ground}; lifted ${times} times by at most ${amountText(high)} cm, it drops back and does not get to the line`;
}

export function aimedPath(host, { manoeuvre, probes, fresh, still }) {
  const scene = manoeuvre.id.startsWith("heel") ? heel : finger;
  const [end, lifted] = [lengthMs(curvesOf(probes.at(-1))[0]), curvesOf(probes.at(-1))[2].name];
  const traces = [{ title: "Of the way to the mark", series: seriesOf(probes, (curves) => curves[1]), low: 0, high: 120, short: true },
    { title: `${lifted[0].toUpperCase()}${lifted.slice(1)}`, series: seriesOf(probes, (curves) => curves[2]), low: 0, high: scene.high, short: true },
    { title: "To the side of the line", series: seriesOf(probes), low: -5, high: 5, short: true }];
  acted(host, { probes, make: aiming(scene), end, stills: still ? [700, 1400, end] : [end], traces, fresh, still });
  host.append(el("p", { class: "quiet" }, "Dotted, with a dot at its end: the same with the eyes shut."));
  const said = (probe) => {
    const [aside, along, up] = curvesOf(probe);
    return `${probe.side}: ${liftText(up, scene.ground)}; goes ${amountText(highest(along), 0)} % of the way at most, from side to side between ${amountText(lowest(aside))} and ${amountText(highest(aside))} cm; ${measuresText(probe)}`;
  };
  return `${latestBySide(probes).map(said).join(". ")}.`;
}
