// Both eyes as the examiner faces them, the patient's right on the left of the page: pupils to scale, in millimetres.

import { el, svg } from "../bedside/dom.js";
import { heightAt, lengthMs, peak } from "./curve.js";
import { amountText, curvesOf, measuresOf } from "./latest.js";
import { Player } from "./player.js";
import { Trace } from "./trace.js";

const MM = 8;
const IRIS_MM = 11.7;
const LID = "M-66 4C-44 -34 40 -38 66 2C40 34 -40 36 -66 4Z";

function gauge() {
  const ticks = Array.from({ length: 10 }, (_, mm) => svg("path", { class: "gauge", d: `M${mm * MM} 0V${mm % 5 ? 5 : 9}` }));
  return svg("g", { transform: `translate(${-4.5 * MM} 60)` }, svg("path", { class: "gauge", d: `M0 0H${9 * MM}` }), ...ticks,
    svg("text", { class: "tick", x: 0, y: 22, "text-anchor": "middle" }, "0"), svg("text", { class: "tick", x: 5 * MM, y: 22, "text-anchor": "middle" }, "5"),
    svg("text", { class: "tick", x: 9 * MM + 6, y: 22 }, "mm"));
}

function eye(side, x) {
  const pupil = svg("circle", { class: "pupil", cx: 0, cy: 0 });
  const span = svg("path", { class: "stop-watch" });
  const millimetres = svg("text", { class: "mm", y: 104, "text-anchor": "middle" });
  const torch = svg("path", { class: "torch", d: "M-14 -50 0 -24 14 -50", hidden: true });
  const clip = svg("clipPath", { id: `lid-${side}` }, svg("path", { d: LID }));
  const node = svg("g", { transform: `translate(${x} 66)` }, clip, torch,
    svg("path", { class: "white", d: LID }),
    svg("g", { "clip-path": `url(#lid-${side})` }, svg("circle", { class: "iris", r: (IRIS_MM / 2) * MM }), pupil),
    svg("path", { class: "lid", d: LID }), span, gauge(),
    svg("text", { class: "trace-name", y: -54, "text-anchor": "middle" }, side), millimetres);
  return {
    node,
    set(mm) {
      const r = (mm / 2) * MM;
      pupil.setAttribute("r", r);
      span.setAttribute("d", `M${-r} 52V58M${r} 52V58`);
      millimetres.textContent = `${mm.toFixed(1)} mm`;
    },
    light(on) {
      if (on) torch.removeAttribute("hidden");
      else torch.setAttribute("hidden", "");
    },
  };
}

const curveOn = (probe, side) => curvesOf(probe).find((curve) => curve.name.toLowerCase().includes(side));
const torchCurve = (probe) => curvesOf(probe).find((curve) => /torch|light/i.test(curve.name));

/** Which eye the torch is on: told by a curve (above 0 right, below 0 left), or else the side that was examined. */
function litEye(probe, ms) {
  const torch = torchCurve(probe);
  if (!torch) return ms > 0 ? probe.side : "none";
  const height = heightAt(torch, ms);
  return height > 0 ? "right" : height < 0 ? "left" : "none";
}

const described = (manoeuvre, probe) =>
  (manoeuvre.variants ?? []).map(({ id, name, choices }) => {
    const chosen = choices.find((choice) => choice.id === probe.technique?.[id]);
    return chosen ? `${name}: ${chosen.name}` : "";
  }).filter(Boolean).join("; ");

export function pupils(host, { manoeuvre, probes, fresh, still }) {
  const probe = fresh ?? probes.at(-1);
  const eyes = { right: eye("right", 90), left: eye("left", 270) };
  const curves = ["right", "left"].map((side) => ({ side, name: side, curve: curveOn(probe, side) })).filter(({ curve }) => curve);
  const drawing = svg("svg", { class: "eyes", viewBox: "0 0 360 180", width: 420, height: 210, "aria-hidden": "true" }, eyes.right.node, eyes.left.node);
  const box = el("div", { class: "traces" });
  const caption = [described(manoeuvre, probe), ...measuresOf(probe).map(({ label, amount, unit }) => `${label} ${amountText(amount)} ${unit}`)].filter(Boolean).join("; ");
  host.append(el("div", { class: "stage eyes-stage" }, el("div", { class: "figure-box" }, drawing, el("p", { class: "quiet shown-side" }, caption)), box));
  const show = (ms) => {
    for (const { side, curve } of curves) eyes[side].set(heightAt(curve, ms));
    const lit = litEye(probe, ms);
    for (const side of ["right", "left"]) eyes[side].light(lit === side);
  };
  const trace = new Trace(box, { series: curves, low: 0, high: 8, from: "the start", watch: (ms) => (player.stop(), show(ms)) });
  box.append(trace.node);
  const player = new Player(0, Math.max(...curves.map(({ curve }) => lengthMs(curve))), (ms) => (show(ms), trace.at(ms)));
  const play = () => (still ? show(Math.max(...curves.map(({ curve }) => peak(curve).ms))) : player.play());
  host.append(el("div", { class: "actions" }, el("button", { type: "button", onclick: play }, still ? "Show the end" : "Watch again")));
  if (probe.shown.words) host.append(el("p", { class: "felt" }, probe.shown.words));
  if (fresh || still) play();
  else show(0);
  return `${caption ? `${caption}. ` : ""}${curves.map(said).join("; ")}. ${probe.shown.words ?? ""}`.trim();
}

const said = ({ name, curve }) =>
  `${name} ${curve.samples[0].toFixed(1)} mm to ${peak(curve).height.toFixed(1)} mm, at the end ${curve.samples.at(-1).toFixed(1)} mm`;
