// Joints: how they look, what the thumbs feel, what the palm feels while they move, and fluid in the knee.

import { el, svg } from "../bedside/dom.js";
import { heightAt, highest, lengthMs, lowest } from "./curve.js";
import { amountText, curvesOf, sideText } from "./latest.js";
import { acted } from "./motion/acted.js";
import { seriesOf } from "./moving.js";
import { onAPartner } from "./partner.js";
import { ruler } from "./ruler.js";
import { amounts, atThisPlace, label, line, picture, said, sideBySide } from "./side-by-side.js";
import { Trace } from "./trace.js";

const MM = 3;

/** Two bones that meet, in their skin: soft swelling bows the skin, bone makes a step, leaning turns the far part. */
function look(probe) {
  const [soft, hard, leans, redder] = amounts(probe);
  const bow = soft * MM;
  const step = hard * MM;
  const far = svg("g", { transform: `rotate(${leans} 120 130)` },
    line(`M92 150C96 176 98 210 100 250M148 150C144 176 142 210 140 250`, "limb-edge thin"),
    line("M108 140C106 180 110 220 112 250M132 140C134 180 130 220 128 250", "outline"));
  return picture(240, 264,
    svg("ellipse", { class: "reddened", cx: 120, cy: 130, rx: 34 + bow, ry: 36, opacity: Math.min(0.9, redder / 20).toFixed(2) }),
    line(`M100 10C98 50 96 90 92 112C${88 - bow * 1.3} 122 ${88 - bow * 1.3} 140 92 150M140 10C142 50 144 90 148 112C${152 + bow * 1.3} 122 ${152 + bow * 1.3} 140 148 150`, "limb-edge thin"),
    line(`M112 10C110 50 106 90 106 118C${106 - step} 124 ${106 - step} 128 108 132M128 10C130 50 134 90 134 118C${134 + step} 124 ${134 + step} 128 132 132`, "outline"),
    far, ruler({ at: 8, across: 222, mm: 10, scale: MM }), label(44, 244, "cm", "start"), label(4, 196, "swelling is", "start"), label(4, 212, "to this scale", "start"));
}

export const jointLook = sideBySide(look);

/** A cut across the joint between two thumbs. */
function feel(probe) {
  const [gives, lifts, hard] = amounts(probe);
  return picture(240, 130,
    line(`M20 70C60 ${64 - gives * 3} 80 ${62 + gives * 3} 96 ${64 + gives * 3}C110 ${62 + gives * 3} 130 ${60 - lifts * 5} 160 ${60 - lifts * 5}C190 ${60 - lifts * 5} 200 68 222 70`, "limb-edge"),
    line(`M20 106H90L100 ${106 - hard * 4}L110 106H222`, "outline"),
    line(`M96 8V${56 + gives * 3}M90 ${48 + gives * 3}L96 ${58 + gives * 3}L102 ${48 + gives * 3}`, "mark"),
    line(`M160 ${50 - lifts * 5}V18M154 26L160 16L166 26`, "mark", { opacity: Math.min(1, 0.5 + lifts / 3) }), label(60, 124, "bone"));
}

export const jointFeel = sideBySide(feel, { felt: true });

const drawsBack = (probe) => {
  const [mm] = amounts(probe);
  return picture(220, 70, line("M20 40H200", "grid"), ruler({ at: 20, across: 40, mm: 60, scale: 2.6 }), line(`M20 24H${20 + mm * 2.6}`, "mark"), svg("circle", { class: "dot", cx: 20 + mm * 2.6, cy: 24, r: 5 }));
};

export const pressed = sideBySide(drawsBack, { felt: true, key: "How far the part draws back when it is pressed, and what the patient says. Watch the face." });

export function grating(host, { manoeuvre, probes, fresh }) {
  const both = atThisPlace(probes, fresh);
  const box = el("div", { class: "traces wide" });
  host.append(box);
  box.append(el("p", { class: "trace-title" }, "Felt under the palm while the joint bends"), new Trace(box, { series: seriesOf(both), low: -4, high: 4, from: "the start", watch: () => {} }).node);
  host.append(onAPartner());
  return both.map((probe) => said(manoeuvre, probe, `shakes between ${amountText(lowest(curvesOf(probe)[0]))} and ${amountText(highest(curvesOf(probe)[0]))} tenths of a millimetre`)).join(" ");
}

function played(host, { probes, fresh, still }, { figure, title, high, from, shown }) {
  const both = atThisPlace(probes, fresh);
  const series = seriesOf(both);
  const make = (probe) => {
    const drawn = figure(probe);
    return { node: drawn.node, show: (ms) => drawn.show(heightAt(curvesOf(probe)[0], ms)) };
  };
  acted(host, { probes: both, make, end: lengthMs(series[0].curve), stills: still ? [0, shown] : [0], traces: [{ series, low: 0, high, title }], since: from, fresh, still });
  host.append(onAPartner());
  return both.map((probe) => {
    const [curve] = curvesOf(probe);
    return `${sideText(probe.side)}: ${curve.name} between ${amountText(lowest(curve))} and ${amountText(highest(curve))} mm.`;
  }).join(" ");
}

/** The straight knee from in front, the patient facing you; the inner hollow fills or stays. */
function innerHollow({ side }) {
  const skin = line("", "limb-edge");
  const node = svg("svg", { class: "look", viewBox: "0 0 200 180", width: 200, height: 180, "aria-hidden": "true" },
    svg("g", side === "right" ? { transform: "translate(200 0) scale(-1 1)" } : {}, line("M150 6C146 50 150 70 156 92C150 120 146 150 142 176", "limb-edge"), svg("ellipse", { class: "outline", cx: 104, cy: 90, rx: 24, ry: 28 }), skin),
    label(side === "right" ? 170 : 30, 94, "inner"));
  return { node, show: (mm) => skin.setAttribute("d", `M52 6C56 46 62 62 ${70 - mm * 3} 90C62 118 58 146 62 176`) };
}

export const kneeBulge = (host, view) =>
  played(host, view, { figure: innerHollow, title: "The inner hollow fills by", high: 8, from: "the stroke down the outer side", shown: 1600 });

/** The straight knee from the side: the kneecap above the thigh bone. */
function cap() {
  const bone = svg("rect", { class: "limb-inside limb-edge thin", x: 90, width: 60, height: 16, rx: 8 });
  const node = svg("svg", { class: "look", viewBox: "0 0 240 120", width: 240, height: 120, "aria-hidden": "true" }, line("M4 92H100C120 74 140 74 150 92H236", "limb-edge"), bone, label(120, 116, "thigh bone"), label(42, 58, "kneecap"), ruler({ at: 190, across: 24, mm: 10, scale: 4, down: true }));
  return { node, place: (y) => bone.setAttribute("y", y) };
}

export function kneecap(host, view) {
  const figure = (probe) => {
    const drawn = cap();
    const most = highest(curvesOf(probe)[0]);
    return { node: drawn.node, show: (mm) => drawn.place(62 - (most - mm) * 4) };
  };
  return played(host, view, { figure, title: "The kneecap goes down by", high: 10, from: "the push", shown: 400 });
}
