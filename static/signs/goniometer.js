// A joint that moves as far as it goes, with a protractor round it. Right and left side by side.

import { svg } from "../bedside/dom.js";
import { amountText, curvesOf } from "./latest.js";
import { label, line, picture, sideBySide } from "./side-by-side.js";

const CENTRE = [130, 150];

/** Where the moving part starts (degrees, 0 to the right, counter-clockwise), and which way it turns. */
const FROM = {
  "shoulder-abduction": [270, 1], "shoulder-outward-turn": [90, -1], "elbow-flexion": [0, 1], "wrist-extension": [0, 1], "knuckles-flexion": [0, -1],
  "hip-flexion": [0, 1], "hip-inward-turn": [270, 1], "knee-flexion": [0, -1], "ankle-dorsiflexion": [0, 1], "big-toe-extension": [0, 1],
};

const out = (degrees, length) => [CENTRE[0] + Math.cos((degrees * Math.PI) / 180) * length, CENTRE[1] - Math.sin((degrees * Math.PI) / 180) * length];
const at = (point) => point.map((one) => one.toFixed(1)).join(" ");

function drawn(probe) {
  const [curve] = curvesOf(probe);
  const [start, turn] = FROM[probe.place] ?? [0, 1];
  const reached = curve.samples.at(-1);
  const ticks = Array.from({ length: 19 }, (_, index) => index * 10);
  const way = (degrees) => start + turn * degrees;
  const large = reached > 180 ? 1 : 0;
  return picture(270, 270,
    ...ticks.map((degrees) => line(`M${at(out(way(degrees), 96))}L${at(out(way(degrees), degrees % 30 ? 101 : 107))}`, "gauge")),
    ...ticks.filter((degrees) => degrees % 30 === 0).map((degrees) => label(...out(way(degrees), 119), degrees)),
    line(`M${at(out(start + 180, 90))}L${at(CENTRE)}`, "ray"), line(`M${at(CENTRE)}L${at(out(start, 90))}`, "limb-ghost"),
    line(`M${at(CENTRE)}L${at(out(way(reached), 90))}`, "ray"),
    line(`M${at(out(start, 46))}A46 46 0 ${large} ${turn > 0 ? 0 : 1} ${at(out(way(reached), 46))}`, "mark"),
    svg("circle", { class: "limb-inside limb-edge thin", cx: CENTRE[0], cy: CENTRE[1], r: 9 }));
}

const text = (probe) => [`moves through ${amountText(curvesOf(probe)[0].samples.at(-1))} degrees`, probe.shown.words && `“${probe.shown.words}”`].filter(Boolean).join("; ");

export const goniometer = sideBySide(drawn, { text, felt: true, key: "The thin line is where the movement begins; the ticks are ten degrees apart." });
