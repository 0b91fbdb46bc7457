// The tongue: put out, lying in the mouth, seen from above, and pushed into the cheek.

import { el, svg } from "../bedside/dom.js";
import { Face, restOf } from "./face.js";
import { acted, captioned, discs, force, picture, saidOf, seen, strewn } from "./head-parts.js";
import { latestBySide, sideText } from "./latest.js";
import { acrossRuler, names, openMouth, partedLips } from "./mouth-parts.js";
import { onAPartner } from "./partner.js";
import { Player } from "./player.js";

const WIDE = 21;

/** Furrows of a half that has sunk, to one side of the middle, following how far the tongue leans. */
const furrows = (sign, sunk, lean, length) => [0.3, 0.55, 0.8].map((place) => {
  const x = sign * place * (WIDE - sunk);
  return `M${x} ${9 + 4 * place}C${x + lean * 0.15 + sign * 2} ${10 + length * 0.25} ${x * 0.9 + lean * 0.3 - sign * 2} ${10 + length * 0.4} ${x * 0.6 + lean * 0.55} ${9 + length * 0.6}`;
}).join("");

/** A tongue that is out by so many millimetres, its tip to one side, its halves sunk. */
function outside(length, lean, right, left) {
  const [l, r] = [WIDE - left * 1.1, WIDE - right * 1.1];
  const end = 8 + length;
  return `M${-r} 4C${-r - 1 + lean * 0.2} ${8 + length * 0.5} ${-r * 0.8 + lean * 0.8} ${end} ${lean} ${end + 1}C${l * 0.8 + lean * 0.8} ${end} ${l + 1 + lean * 0.2} ${8 + length * 0.5} ${l} 4C${l * 0.7} -3 ${-r * 0.7} -3 ${-r} 4Z`;
}

export function tongueOut(host, { probes, fresh, still }) {
  const probe = fresh ?? probes.at(-1);
  const [far, aside] = [seen(probe, "tip comes out by"), -seen(probe, "tip lies to the right of the middle by")];
  const [right, left] = ["right", "left"].map((side) => seen(probe, `${side} half has sunk by`));
  const body = svg("path", { class: "tongue-body" });
  const middle = svg("path", { class: "tongue-middle" });
  const sunk = [right, left].map(() => svg("path", { class: "tongue-furrow" }));
  host.append(captioned("The dashed line drops from the middle of the lips; ruler in millimetres.", picture([-48, -26, 96, 88], 3.4, ...partedLips(), body, middle, ...sunk,
    svg("path", { class: "gauge-edge", d: "M0 -20V50" }), ...acrossRuler(50), ...names(41, -19))));
  acted(host, (share) => {
    const [length, lean] = [far * share, aside * share];
    body.setAttribute("d", outside(length, lean, right, left));
    middle.setAttribute("d", `M0 3C${lean * 0.1} ${6 + length * 0.4} ${lean * 0.6} ${8 + length * 0.6} ${lean * 0.9} ${6 + length * 0.9}`);
    for (const [index, one] of [[0, right], [1, left]]) {
      sunk[index].setAttribute("d", furrows(index ? 1 : -1, one, lean, length));
      sunk[index].setAttribute("stroke-width", (one * 0.28).toFixed(2));
    }
  }, { fresh, still });
  return saidOf([probe]);
}

const TWITCH_MS = 220;
const LASTS = 10_000;

/** One half of a tongue that lies in the mouth, for the patient's left; a twitch dimples one place for a moment. */
class HalfTongue {
  constructor(probe) {
    const { side } = probe;
    this.sunk = seen(probe, "furrow of this half");
    const chance = strewn(side === "right" ? 7 : 11);
    const count = Math.round((seen(probe, "twitches") * LASTS) / 60_000);
    this.twitches = Array.from({ length: count }, (_, index) => ({ ms: ((index + 0.2 + 0.6 * chance()) * LASTS) / Math.max(1, count), x: 4 + 12 * chance(), y: 2 + 18 * chance() }));
    this.dimple = svg("path", { class: "tongue-dimple" });
    const edge = WIDE - this.sunk * 0.9;
    const lines = furrows(1, this.sunk, 0, 20);
    this.node = svg("g", { class: `half-tongue ${side}`, transform: side === "right" ? "scale(-1 1)" : "" },
      svg("path", { class: "tongue-body", d: `M0 -4C${edge * 0.8} -4 ${edge} 4 ${edge} 14C${edge} 24 ${edge * 0.5} 30 0 30Z` }),
      svg("path", { class: "tongue-furrow", "stroke-width": (this.sunk * 0.32).toFixed(2), d: lines, transform: "translate(0 -6)" }), this.dimple);
    this.all();
  }

  #draw(list) {
    this.dimple.setAttribute("d", discs(list.map(({ x, y }) => [x, y, 1.7])));
  }

  /** Every place that twitches in the ten seconds, for a still. */
  all() {
    this.#draw(this.twitches);
  }

  at(ms) {
    this.#draw(this.twitches.filter((one) => ms >= one.ms && ms < one.ms + TWITCH_MS));
  }
}

export function halfTongue(host, { probes, fresh, still }) {
  const both = latestBySide(probes);
  const halves = both.map((probe) => new HalfTongue(probe));
  const only = both.length === 1 ? ` Only the ${both[0].side} half has been looked at.` : "";
  host.append(captioned(`Lying in the mouth, watched for ten seconds; rings mark where the surface twitches.${only}`,
    picture([-48, -38, 96, 82], 3.4, ...openMouth(), ...halves.map(({ node }) => node), svg("path", { class: "tongue-middle", d: "M0 -4V30" }), ...names(41, -31))));
  if (!still) {
    const player = new Player(0, LASTS, (ms) => halves.forEach((half) => (ms < LASTS ? half.at(ms) : half.all())));
    host.append(el("div", { class: "actions" }, el("button", { type: "button", onclick: () => player.play() }, "Watch ten seconds again")));
    if (fresh) player.play();
  }
  return saidOf(both);
}

/** The tongue pushes a cheek out from within. */
export function tonguePush(host, { probes, fresh, still }) {
  const probe = fresh ?? probes.at(-1);
  const face = new Face(probe);
  const rest = restOf(probe, "right");
  const into = probe.side === "right" ? "left" : "right";
  const by = seen(probe, `${into} cheek pushed out by`);
  const bump = svg("path", { class: "face-bump" });
  const push = (share) => {
    const far = (by * share) / 12;
    const half = { ...rest, cheek: 0.9 * far };
    face.set(into === "right" ? half : rest, into === "left" ? half : rest);
    const x = (into === "right" ? -1 : 1) * 46;
    bump.setAttribute("d", discs([[x, 52, 3 + 8 * far]]));
  };
  face.node.append(bump);
  host.append(captioned(`The ${probe.side} half of the tongue pushes into the ${into} cheek, against the examiner's finger`, face.node));
  acted(host, push, { fresh, still });
  host.append(...latestBySide(probes).map((one) => el("div", {}, el("b", {}, `${sideText(one.side)} half: `), force(one, "pushes the examiner's hand with", 20))), onAPartner());
  return saidOf(latestBySide(probes), (label) => !label.endsWith(" cheek pushed out by") || label.startsWith(into));
}
