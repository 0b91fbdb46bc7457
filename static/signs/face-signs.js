// The drawings of the face, brought only when one is wanted.

import { el } from "../bedside/dom.js";
import { Face, between, restOf } from "./face.js";
import { faceMap } from "./face-map.js";
import { acted, amountBar, captioned, force, saidOf, seen } from "./head-parts.js";
import { amountText } from "./latest.js";
import { jawOpen, jawTap } from "./jaw.js";
import { corneaTouch } from "./lid-watch.js";
import { onAPartner } from "./partner.js";
import { touchedOn } from "./skin-touch.js";

const SIDES = ["right", "left"];

/**
 * A face at rest and, beside it, what it does when asked.
 * @param done (rest, side, probe) => the half at the end of the movement
 */
const asked = (caption, done, { teeth = 0, felt } = {}) => (host, { probes, fresh, still }) => {
  const probe = fresh ?? probes.at(-1);
  const [rest, moving] = [new Face(probe), new Face(probe)];
  const from = Object.fromEntries(SIDES.map((side) => [side, restOf(probe, side)]));
  const to = Object.fromEntries(SIDES.map((side) => [side, { ...from[side], ...done(from[side], side, probe) }]));
  rest.set(from.right, from.left);
  const row = el("div", { class: "head-row pair" }, captioned("At rest", rest.node), captioned(caption, moving.node));
  host.append(row);
  acted(host, (share) => moving.set(between(from.right, to.right, share), between(from.left, to.left, share), { teeth: teeth * share }), { fresh, still });
  if (felt) host.append(felt(probe), onAPartner());
  return saidOf([probe]).replace(/^(right|left): /, "");
};

const named = (text, bar) => el("div", { class: "named-bar" }, el("span", {}, text), bar);

const of = (probe, side, label) => seen(probe, `${side} ${label}`);

const brow = asked("Asked to look up and wrinkle the forehead", (_, side, probe) => ({ rise: of(probe, side, "brow rises by") }));
const closure = asked("Asked to screw the eyes up", (rest, side, probe) => ({ lids: Math.max(0, rest.lids - of(probe, side, "lids come together by")), rise: -0.25 * of(probe, side, "lids come together by") }));
const smile = asked("Asked to show the teeth", (_, side, probe) => ({ out: of(probe, side, "corner of the mouth moves out by") }), { teeth: 1 });
const HELD = "air held behind the cheek";
const puff = asked("Asked to blow out the cheeks; the lines at the lips are air that escapes", (_, side, probe) => ({ cheek: of(probe, side, HELD) / 100, escapes: 1 - of(probe, side, HELD) / 100 }),
  { felt: (probe) => el("p", { class: "felt" }, `Tapped with a finger, the right cheek holds ${amountText(of(probe, "right", HELD))} % of its air, the left ${amountText(of(probe, "left", HELD))} %.`) });
const THICKER = "muscle over the jaw thickens by";
const THICKEST_MM = 10;

/** What the fingers feel of each muscle, and with what the side under the hand pushes. */
const bitten = (probe) => el("div", { class: "felt" },
  ...SIDES.map((side) => named(`${side} muscle thickens by`, amountBar(of(probe, side, THICKER), THICKEST_MM, "mm"))),
  named(`${probe.side} side pushes the examiner's hand with`, force(probe, "pushes the examiner's hand with", 200)));
const clench = asked("Asked to clench: the muscle over the angle of the jaw", (_, side, probe) => ({ muscle: of(probe, side, THICKER) }), { felt: bitten });

export const drawings = {
  "face-brow": brow,
  "face-eyes": closure,
  "face-teeth": smile,
  "face-cheeks": puff,
  "jaw-clench": clench,
  "jaw-open": jawOpen,
  "jaw-tap": jawTap,
  "cornea-touch": corneaTouch,
  "face-touch": touchedOn(faceMap),
};
