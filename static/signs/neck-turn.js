// Shoulders that are lifted against a hand, a head that turns against one, and a smell held under one nostril.

import { el, svg } from "../bedside/dom.js";
import { acted, captioned, force, picture, saidOf, seen } from "./head-parts.js";
import { amountText, latestBySide, sideText } from "./latest.js";
import { onAPartner } from "./partner.js";

const SIDES = ["right", "left"];
const PUSH = "pushes the examiner's hand with";

const pushes = (probes, most) => latestBySide(probes).map((probe) => el("div", {}, el("b", {}, `${sideText(probe.side)}: `), force(probe, PUSH, most)));

/** From behind, as the examiner stands: the patient's right is on the right of the page; each side lifted by so many mm. */
function trunk(right, left) {
  const side = (sign, up) => ({ neck: `${sign * 26} ${-40 - up * 0.1}`, slope: `C${sign * 30} ${-6 - up * 0.35} ${sign * 64} ${4 - up * 0.9} ${sign * 96} ${14 - up}C${sign * 116} ${20 - up} ${sign * 122} ${44 - up} ${sign * 122} ${70 - up}L${sign * 124} 128` });
  const [r, l] = [side(1, right), side(-1, left)];
  return [r, l].map(({ neck, slope }) => `M${neck}${slope}`).join("");
}

const BACK = Array.from({ length: 9 }, (_, index) => index * 10).map((mm) => `M0 ${-mm}h${mm % 50 === 0 ? 8 : 5}`).join("");

const scale = (x) => svg("g", { transform: `translate(${x} 14)` }, svg("path", { class: "gauge wide", d: `M0 0V-80${BACK}` }),
  ...[0, 50].map((mm) => svg("text", { class: "tick body", x: 11, y: -mm + 3 }, mm)));

export function shoulders(host, { probes, fresh, still }) {
  const probe = fresh ?? probes.at(-1);
  const of = (side) => seen(probe, `${side} shoulder rises by`);
  const [rest, moved] = [svg("path", { class: "head-line ghostly", d: trunk(0, 0) }), svg("path", { class: "limb-edge thin shoulders" })];
  const tops = SIDES.map(() => svg("path", { class: "gauge-edge" }));
  host.append(captioned("Seen from behind, so that the right is on the right; the thin line is where the shoulders were. Rulers in millimetres.",
    picture([-160, -130, 320, 262], 1.5,
      svg("path", { class: "skin", d: "M-26 -40C-26 -56 -40 -66 -40 -92C-40 -120 -22 -126 0 -126C22 -126 40 -120 40 -92C40 -66 26 -56 26 -40" }), rest, moved, ...tops, scale(134), scale(-150),
      svg("text", { class: "eye-name face-name body", x: -110, y: -110, "text-anchor": "middle" }, "left"), svg("text", { class: "eye-name face-name body", x: 110, y: -110, "text-anchor": "middle" }, "right"))));
  acted(host, (share) => {
    const [right, left] = SIDES.map((side) => of(side) * share);
    moved.setAttribute("d", trunk(right, left));
    tops[0].setAttribute("d", `M96 ${14 - right}H134`);
    tops[1].setAttribute("d", `M-96 ${14 - left}H-150`);
  }, { fresh, still });
  host.append(...pushes(probes, 250), onAPartner());
  return saidOf(latestBySide(probes));
}

const RIM = Array.from({ length: 19 }, (_, index) => -90 + index * 10).map((degrees) => {
  const [x, y] = [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)];
  const long = degrees % 30 === 0 ? 9 : 5;
  return `M${(92 * x).toFixed(1)} ${(92 * y).toFixed(1)}l${(long * x).toFixed(1)} ${(long * y).toFixed(1)}`;
}).join("");

/** A head from above, the nose towards the examiner, who stands below; it turns to the patient's right (left of the page). */
function fromAbove(side, degrees) {
  const head = svg("g", { class: `turned ${side}` }, svg("path", { class: "skin", d: "M0 -66C34 -66 50 -38 50 -4C50 30 32 56 14 62C10 74 6 84 0 86C-6 84 -10 74 -14 62C-32 56 -50 30 -50 -4C-50 -38 -34 -66 0 -66Z" }),
    svg("path", { class: "head-line", d: "M50 -8C60 -14 62 6 52 12M-50 -8C-60 -14 -62 6 -52 12M-24 48C-18 52 -12 54 -8 54M24 48C18 52 12 54 8 54" }));
  const label = (at) => svg("text", { class: "tick body", x: 112 * Math.sin((at * Math.PI) / 180), y: 112 * Math.cos((at * Math.PI) / 180) + 4, "text-anchor": "middle" }, Math.abs(at));
  const node = picture([-132, -76, 264, 202], 1.15, svg("path", { class: "head-line", d: "M-118 -10C-100 -50 -60 -62 0 -62C60 -62 100 -50 118 -10" }), head,
    svg("path", { class: "gauge wide", d: RIM }), ...[-90, -60, -30, 0, 30, 60, 90].map(label));
  const set = (share) => head.setAttribute("transform", `rotate(${((side === "right" ? 1 : -1) * degrees * share).toFixed(1)})`);
  set(1);
  return { node, set };
}

export function headTurn(host, { probes, fresh, still }) {
  const probe = fresh ?? probes.at(-1);
  const drawn = SIDES.map((side) => ({ side, ...fromAbove(side, seen(probe, `${side} chin turns this way by`)) }));
  host.append(el("div", { class: "head-row pair" }, ...drawn.map(({ side, node }) => captioned(`Turning the chin to the ${side}, seen from above; the patient faces you. Degrees from straight ahead.`, node))));
  acted(host, (share) => drawn.forEach((one) => one.set(share)), { fresh, still });
  host.append(el("p", { class: "quiet" }, "Turning to each side against your hand:"), ...pushes(probes, 90), onAPartner());
  return `${SIDES.map((side) => `chin turns to the ${side} by ${amountText(seen(probe, `${side} chin turns this way by`))} degrees`).join("; ")}; ${latestBySide(probes).map((one) => `to the ${one.side} it ${PUSH} ${amountText(seen(one, PUSH))} N`).join("; ")}.`;
}

const NOSE = "M-34 -60C-18 -52 -14 -30 -14 -10C-15 6 -26 10 -30 22C-32 34 -22 38 -14 34C-8 40 8 40 14 34C22 38 32 34 30 22C26 10 15 6 14 -10C14 -30 18 -52 34 -60";

export function smelt(host, { probes }) {
  const both = latestBySide(probes);
  host.append(el("div", { class: "head-row pair" }, ...both.map((probe) => {
    const sign = probe.side === "right" ? -1 : 1;
    return el("figure", { class: "head-figure" }, picture([-70, -66, 140, 150], 1.4,
      svg("path", { class: "skin", d: NOSE }), svg("path", { class: "hole", d: "M-20 30C-18 24 -10 24 -8 31ZM20 30C18 24 10 24 8 31Z" }),
      svg("path", { class: "finger wide", d: "M-8 80V44a8 8 0 0 1 16 0V80", transform: `translate(${-sign * 22} -14) rotate(${sign * 14})` }),
      svg("path", { class: "fork", d: "M-8 76V60L-5 56V48H5V56L8 60V76Z", transform: `translate(${sign * 14} 0)` })),
    el("figcaption", {}, el("b", {}, `${probe.side} nostril`), ", the other held shut: ", el("span", { class: "said" }, `“${probe.shown.words}”`)));
  })));
  return `${both.map((probe) => `${probe.side} nostril: “${probe.shown.words}”`).join(" ")}`;
}
