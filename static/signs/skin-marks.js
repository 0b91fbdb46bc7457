// What stands on the skin: spiders, bruises, rashes, and what is seen and measured of a leg.

import { el, svg } from "../bedside/dom.js";
import { amountText, measuresOf } from "./latest.js";
import { amounts, label, line, picture, sideBySide } from "./side-by-side.js";

/** Evenly spread and the same each time. */
const spread = (index, width, height) => [((index * 0.618034) % 1) * width, ((index * 0.754878) % 1) * height];

const TORSO = "M70 8C70 24 66 28 40 34C18 40 12 70 10 110H34C36 92 38 80 44 70C42 100 46 130 46 168H154C154 130 158 100 156 70C162 80 164 92 166 110H190C188 70 182 40 160 34C134 28 130 24 130 8";

const spot = (x, y, arms) => svg("g", { transform: `translate(${x} ${y})` }, svg("circle", { class: "reddened", r: 2.6 }), line(arms, "spider"));

function upperBody(probe) {
  const [seen] = amounts(probe);
  return picture(200, 176, line(TORSO, "outline"), ...Array.from({ length: seen }, (_, index) => {
    const [x, y] = spread(index + 1, 84, 84);
    return spot(58 + x, 44 + y, "M0 0L7 3M0 0L-6 5M0 0L2 -8M0 0L-7 -4M0 0L5 -5");
  }));
}

export const spiders = sideBySide(upperBody, { key: "Pressed in the middle each turns pale, and fills again from the middle outwards." });

function bruised(probe) {
  const [seen] = amounts(probe);
  return picture(200, 176, line(TORSO, "outline"), ...Array.from({ length: seen }, (_, index) => {
    const [x, y] = spread(index + 2, 96, 100);
    return svg("ellipse", { class: "bruise", cx: 52 + x, cy: 50 + y, rx: 7, ry: 5 });
  }));
}

export const bruises = sideBySide(bruised);

function patches(probe) {
  const [scaly, spots, weals, contrast] = amounts(probe);
  const strength = Math.min(1, 0.25 + contrast / 30).toFixed(2);
  const part = (x, name) => [svg("rect", { class: "skin-tone", x, y: 8, width: 90, height: 90, rx: 8 }), svg("rect", { class: "outline", x, y: 8, width: 90, height: 90, rx: 8 }), label(x + 45, 114, name)];
  return picture(310, 122, ...part(6, "elbow"), ...part(110, "shin"), ...part(214, "trunk"),
    svg("ellipse", { class: "reddened", cx: 51, cy: 52, rx: scaly, ry: scaly * 0.75, opacity: strength }), line(`M${51 - scaly * 0.6} 48h${scaly * 1.2}M${51 - scaly * 0.5} 56h${scaly}`, "outline", { visibility: scaly > 0 ? "visible" : "hidden" }),
    ...Array.from({ length: spots }, (_, index) => svg("circle", { class: "bruise", cx: 114 + spread(index + 1, 80, 80)[0], cy: 14 + spread(index + 1, 80, 80)[1], r: 1.6 })),
    ...Array.from({ length: weals }, (_, index) => svg("ellipse", { class: "reddened raised", cx: 222 + spread(index + 1, 74, 76)[0], cy: 14 + spread(index + 1, 74, 76)[1], rx: 7, ry: 5, opacity: strength })));
}

export const rash = sideBySide(patches);

/** A left leg from its inner side, and one from behind, whose toes are seen on its outer side. */
const LEG = "M58 8C50 50 54 84 60 110C50 150 56 210 68 262C66 280 62 292 60 304H128C128 292 116 286 104 282C100 262 100 240 104 210C116 170 118 140 108 110C114 80 114 40 110 8";
const LEG_BEHIND = "M58 8C54 50 58 84 64 110C52 140 58 184 68 222C74 246 76 262 75 276C70 286 70 304 78 305H92C100 304 100 286 95 276C94 262 96 246 102 222C112 184 118 140 104 110C110 84 114 50 110 8M74 288C62 290 54 298 56 305H78";

/** What is drawn of a left leg, turned round for a right one. */
const ofLeg = (side, ...nodes) => svg("g", { transform: side === "right" ? "translate(168 0) scale(-1 1)" : "translate(0 0) scale(1 1)" }, ...nodes);

function skinOfLeg(probe) {
  const [inner, toe, black, red, patch, rough, stain, bare] = amounts(probe);
  return picture(180, 332, label(84, 326, "inner side"), ofLeg(probe.side,
    line("M66 170C60 210 62 240 70 262H102C100 240 102 210 106 180Z", "reddened", { opacity: (red / 110).toFixed(2) }),
    line("M68 232C66 250 68 262 70 274H102C100 262 100 248 102 232Z", "stain", { opacity: (stain / 130).toFixed(2) }),
    line(LEG, "outline"),
    svg("ellipse", { class: "sore", cx: 94, cy: 250, rx: inner * 0.5, ry: inner * 0.34 }),
    svg("circle", { class: "sore", cx: 124, cy: 297, r: toe * 0.6 }), svg("circle", { class: "hole", cx: 120, cy: 300, r: black * 0.6 }),
    svg("ellipse", { class: "reddened raised", cx: 80, cy: 190, rx: patch * 2.4, ry: patch * 3.4 }),
    ...Array.from({ length: 24 }, (_, index) => svg("circle", { class: "outline", cx: 70 + spread(index + 1, 34, 60)[0], cy: 224 + spread(index + 1, 34, 60)[1], r: 2.4, opacity: (rough / 100).toFixed(2) })),
    ...Array.from({ length: 16 }, (_, index) => line(`M${(74 + spread(index + 1, 30, 90)[0]).toFixed(1)} ${(170 + spread(index + 1, 30, 90)[1]).toFixed(1)}l4 6`, "hair", { opacity: (1 - bare / 100).toFixed(2) }))));
}

/** The longest bar of each unit. */
const LONGEST = { "%": 100, mm: 40 };

/** Everything that was looked for on a line of its own, with a bar. */
const listed = (probe) => el("ul", { class: "amount-list quiet" }, ...measuresOf(probe).map(({ label: name, amount, unit }) =>
  el("li", {}, el("span", {}, name), svg("svg", { viewBox: "0 0 40 8", width: 40, height: 8, "aria-hidden": "true" }, svg("path", { class: "grid", d: "M0 7.500H40" }), svg("rect", { class: "column", x: 0, y: 0, width: Math.min(40, (amount / LONGEST[unit]) * 40), height: 8 })), el("span", {}, `${amountText(amount)}\u00a0${unit}`))));

export const legSkin = sideBySide(skinOfLeg, { below: listed });

/** A vein down a leg: straight where it is narrow, the more wound the wider it is. */
function vein([x, from, to], mm) {
  const winds = Math.max(0, mm - 3) * 1.3;
  const points = Array.from({ length: 61 }, (_, index) => {
    const y = from + ((to - from) * index) / 60;
    return `${(x + 3 * Math.sin(y / 34) + winds * Math.sin(y / 7)).toFixed(1)} ${y.toFixed(1)}`;
  });
  return line(`M${points.join("L")}`, "vein", { "stroke-width": (mm * 0.8).toFixed(1), "data-mm": mm });
}

function veins(probe) {
  const [long, short] = amounts(probe);
  const leg = (across, name, outline, [x, from, to], mm) => svg("g", { transform: `translate(${across} 0)` }, ofLeg(probe.side, line(outline, "outline"), line("M50 108H56M112 108H118", "outline"), vein([x, from, to], mm)),
    label(126, 112, "knee", "start"), label(92, 320, `${name}: ${amountText(mm)} mm`));
  return picture(340, 326, line("M10 304H330", "grid"), leg(-20, "inner side", LEG, [92, 10, 286], long), leg(150, "from behind", LEG_BEHIND, [84, 118, 280], short));
}

export const legVeins = sideBySide(veins, { key: "Standing. The width of each vein is drawn larger than life, alike on both legs." });

/** The calf cut across, and the tape round it. */
function tape(probe) {
  const [cm] = amounts(probe);
  const r = (cm / (2 * Math.PI)) * 12;
  return picture(220, 220, svg("circle", { class: "limb-inside limb-edge thin", cx: 110, cy: 110, r }), svg("circle", { class: "mark tape-round", cx: 110, cy: 110, r: r + 4 }), svg("circle", { class: "outline", cx: 110, cy: 84, r: 18 }), svg("circle", { class: "outline", cx: 136, cy: 96, r: 6 }));
}

export const calfTape = sideBySide(tape);
