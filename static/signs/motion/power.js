// Power of a movement, both sides: what the limb does resting on the couch, raised clear of it, and against a hand.

import { el, svg } from "../../bedside/dom.js";
import { amountText, measuresOf } from "../latest.js";
import { onAPartner } from "../partner.js";
import { acted } from "./acted.js";
import { arrow, at, ofSide, picture } from "./flesh.js";
import { PARTS, sceneFor } from "./power-scenes.js";
import { sidesText } from "./steps.js";

const MOVES_MS = 1200;
const PANELS = ["resting on the couch", "raised clear of it", "against a hand"];

/** How far a limb that is held up against the hand can give way, in degrees. */
const GIVES = 25;

const farther = ([x, y], degrees, by) => [x + by * Math.cos((degrees * Math.PI) / 180), y + by * Math.sin((degrees * Math.PI) / 180)];

const smooth = (part) => part * part * (3 - 2 * part);

/** One of the three: the limb at rest stays behind as a ghost. */
function panel(scene, index, degrees, [newton, pressed], tight, side) {
  const moving = svg("g", {}, svg("path", { class: "skin", d: scene.moving }));
  const belly = svg("ellipse", { class: "belly", cx: scene.belly[0], cy: scene.belly[1], rx: 16, ry: 3 });
  const slack = svg("ellipse", { class: "gauge-edge", cx: scene.belly[0], cy: scene.belly[1], rx: 16, ry: 3 });
  const force = svg("path", { class: "force", d: arrow(newton * 0.32), visibility: index === 2 && newton > 0 ? "visible" : "hidden" });
  const against = svg("path", { class: "force against", d: arrow(pressed * 0.32), visibility: index === 2 ? "visible" : "hidden" });
  const helper = svg("path", { class: "helper", d: PARTS.palm, visibility: index === 2 ? "visible" : "hidden" });
  const words = [`${amountText(degrees)}°`, `${amountText(degrees)}°`, `${amountText(newton)} N`][index];
  const [edge, inwards, other, outwards] = side === "right" ? [4, "start", 148, "end"] : [146, "end", 2, "start"];
  const node = picture(150, 150, "power-panel", ofSide(side, 150,
    svg("path", { class: "couch", d: "M4 136H146V143H4Z", visibility: index === 0 ? "visible" : "hidden" }),
    svg("path", { class: "gauge", d: "M138 92V124M132 116L138 124L144 116", visibility: index === 1 ? "visible" : "hidden" }),
    ...(scene.over ? [] : [svg("path", { class: "skin", d: scene.rest })]), svg("path", { class: "limb-ghost", d: scene.moving }), moving, ...(scene.over ? [svg("path", { class: "skin", d: scene.rest })] : []),
    belly, slack, helper, against, force), svg("text", { class: "tick", x: other, y: 14, "text-anchor": outwards }, scene.seen), svg("text", { class: "tick", x: edge, y: 30, "text-anchor": inwards }, index === 2 ? `against ${amountText(pressed)} N` : ""), svg("text", { class: "trace-name", x: edge, y: 14, "text-anchor": inwards }, words));
  const show = (ms) => {
    const part = smooth(Math.min(1, Math.max(0, ms / MOVES_MS)));
    const held = Math.min(degrees, GIVES);
    const turn = index === 2 ? held * (1 - part * (1 - Math.min(1, newton / pressed))) : degrees * part;
    const [x, y] = scene.joint;
    moving.setAttribute("transform", `rotate(${(scene.turn * turn).toFixed(2)} ${x} ${y})`);
    moving.dataset.degrees = turn;
    belly.setAttribute("ry", (3 + tight * part * 1.6).toFixed(2));
    const [gx, gy] = scene.grip;
    const angle = (scene.turn * turn * Math.PI) / 180;
    const grip = [x + (gx - x) * Math.cos(angle) - (gy - y) * Math.sin(angle), y + (gx - x) * Math.sin(angle) + (gy - y) * Math.cos(angle)];
    const direction = scene.push + scene.turn * turn;
    helper.setAttribute("transform", at(...grip, direction));
    against.setAttribute("transform", at(...farther(farther(grip, direction, 16 + pressed * 0.32), direction + 90, 9), direction + 180));
    force.setAttribute("transform", at(...grip, direction));
    force.dataset.newton = newton;
  };
  return { node, show };
}

function threePanels(manoeuvre) {
  const scene = sceneFor(manoeuvre.id);
  return (probe) => {
    const [tight, lying, lifted, newton, pressed] = measuresOf(probe).map(({ amount }) => amount);
    const parts = [lying, lifted, lifted].map((degrees, index) => panel(scene, index, degrees, [newton, pressed], tight, probe.side));
    const node = el("div", { class: "power-row" }, ...parts.map((part, index) => el("div", {}, part.node, el("span", { class: "quiet" }, PANELS[index]))));
    return { node, show: (ms) => parts.forEach((part) => part.show(ms)) };
  };
}

export function limbPower(host, { manoeuvre, probes, fresh, still }) {
  acted(host, { probes, make: threePanels(manoeuvre), end: 2000, stills: [2000], fresh, still, again: "Try it again" });
  host.append(onAPartner());
  return sidesText(probes);
}

