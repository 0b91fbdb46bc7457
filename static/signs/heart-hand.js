// What a hand feels over the heart: the apex beat on the chest, a lift beside the breast bone, a thrill at an area.

import { el, svg } from "../bedside/dom.js";
import { heightAt, highest, lengthMs } from "./curve.js";
import { heartMap, SPOTS } from "./heart-map.js";
import { amountText, curvesOf, latest, measuresOf } from "./latest.js";
import { onAPartner } from "./partner.js";
import { Player } from "./player.js";
import { Trace } from "./trace.js";

const CM = 4.2;
const LINE = 34;
const RIBS = { 4: 78, 5: 90, 6: 102 };

function beating(host, { map, curve, grow, title, still, fresh, max }) {
  const box = el("div", { class: "traces" });
  host.append(el("div", { class: "stage" }, el("div", { class: "figure-box" }, map), box));
  const trace = new Trace(box, { series: [{ name: "", side: "right", curve }], from: "the first sound", high: max, watch: (ms) => (player.stop(), grow(heightAt(curve, ms))), short: true });
  box.append(el("p", { class: "trace-title" }, title), trace.node);
  const player = new Player(0, lengthMs(curve), (ms) => (trace.at(ms), grow(heightAt(curve, ms))));
  if (!still) host.append(el("div", { class: "actions" }, el("button", { type: "button", onclick: () => player.play() }, "Feel one beat again")));
  host.append(onAPartner());
  grow(still ? highest(curve) : 0);
  if (fresh && !still) player.play();
}

const upTime = ({ samples, stepMs }) => samples.filter((height) => height > highest({ samples }) / 2).length * stepMs;

const liftText = (curve) => (highest(curve) > 0.3 ? `lifts by ${amountText(highest(curve))} mm and stays up for ${upTime(curve)} ms` : "no lift is felt");

export function apexBeat(host, { probes, fresh, still }) {
  const probe = fresh ?? probes.at(-1);
  const [curve] = curvesOf(probe);
  const [outside, space, width] = measuresOf(probe).map(({ amount }) => amount);
  const felt = highest(curve) > 0.3;
  const spot = svg("circle", { class: "press", cx: LINE + outside * CM, cy: RIBS[space] ?? RIBS[5], r: 0 });
  const line = svg("path", { class: "gauge-edge", d: `M${LINE} 36V140` });
  const ribs = Object.entries(RIBS).flatMap(([number, y]) => [svg("path", { class: "grid", d: `M16 ${y}H62` }), svg("text", { class: "tick", x: 4, y: y + 4 }, number)]);
  const map = heartMap({ places: [], tried: [], standing: "" }, line, ...ribs, spot);
  beating(host, { map, curve, grow: (mm) => spot.setAttribute("r", felt ? 1 + mm * 0.8 + width * 0.5 : 0), title: "Lift under the finger", still, fresh, max: 8 });
  host.append(el("p", { class: "quiet" }, "Dotted: the line down from the middle of the collar bone. Numbers and thin lines: rib spaces."));
  const where = felt ? `${amountText(Math.abs(outside))} cm ${outside > 0 ? "outside" : "inside"} the midclavicular line in rib space ${space}, ${amountText(width)} cm wide; it ` : "";
  return `${where}${liftText(curve)}.`;
}

export function heave(host, { probes, fresh, still }) {
  const probe = fresh ?? probes.at(-1);
  const [curve] = curvesOf(probe);
  const hand = svg("rect", { class: "press", x: 3, y: 60, width: 12, height: 30, rx: 5 });
  const map = heartMap({ places: [], tried: [], standing: "" }, hand);
  beating(host, { map, curve, grow: (mm) => hand.setAttribute("transform", `translate(0 ${-mm})`), title: "Lift under the heel of the hand", still, fresh, max: 6 });
  return `Along the left edge of the breast bone: ${liftText(curve)}.`;
}

const trembleText = (curve) => {
  const on = curve.samples.flatMap((height, index) => (height > 0.05 ? [index * curve.stepMs] : []));
  return on.length ? `a tremble from ${on[0]} to ${on.at(-1)} ms after the first sound` : "no tremble";
};

export function thrill(host, { manoeuvre, probes, fresh, still, again }) {
  const tried = latest(probes, (probe) => probe.place);
  const probe = fresh ?? probes.at(-1);
  const [curve] = curvesOf(probe);
  const [across, down] = SPOTS[probe.place] ?? [0, 0];
  const wave = svg("path", { class: "curve", d: "" });
  const grow = (height) => wave.setAttribute("d", height > 0.05 ? `M${across - 9} ${down}q3 ${-8 * height} 6 0t6 0t6 0` : "");
  const map = heartMap({ places: manoeuvre.places, tried: tried.map(({ place }) => place), standing: probe.place, pick: again && ((id) => again("none", id)) }, wave);
  beating(host, { map, curve, grow, title: "Tremble under the flat hand", still, fresh, max: 1 });
  const said = tried.map((one) => `${manoeuvre.places.find(({ id }) => id === one.place).name}: ${trembleText(curvesOf(one)[0])}`);
  return `${said.join(". ")}.`;
}
