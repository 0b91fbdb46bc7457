// The back of an eye through the ophthalmoscope: disc and cup, vessels, macula, and what lies on them, all from amounts. One
// unit of the drawing is a twentieth of the height of the disc. Drawn for the right eye, its nose to the right.

import { el, freshId, svg } from "../bedside/dom.js";
import { blend, captioned, discs, ink, picture, saidOf, seen, strewn } from "./head-parts.js";
import { latestBySide } from "./latest.js";

const DISC = 10;
const MACULA = [-50, 3];
const ROUND = 92;
const RETINA = [186, 88, 52];
const MILK = [226, 196, 164];
const PINK = [236, 168, 128];
const PALE = [246, 240, 226];
const CUP = [248, 226, 190];
const FOG = [196, 160, 132];
const ARTERY = 1.25;
const VEIN = 1.9;

const share = (probe, label) => seen(probe, label) / 100;
const count = (probe, label) => Math.round(seen(probe, label));

/** Four arcades out of the disc: up and down, to the temple and to the nose; veins run beside the arteries. */
const ARCADES = [
  [[0, -2], [-4, -34], [-30, -52], [-78, -40]], [[0, 2], [-4, 34], [-30, 54], [-78, 44]],
  [[1, -2], [6, -24], [20, -42], [40, -66]], [[1, 2], [6, 24], [20, 44], [40, 66]],
];
const BRANCHES = [[[-14, -43], [-34, -66], [-52, -74], [-62, -80]], [[-14, 44], [-34, 68], [-52, 76], [-62, 82]], [[12, -32], [30, -36], [36, -30], [46, -34]], [[12, 33], [30, 38], [36, 32], [46, 36]], [[-30, -48], [-46, -34], [-52, -28], [-56, -18]], [[-30, 50], [-46, 36], [-52, 30], [-56, 22]]];

const at = ([a, b, c, d], t) => [0, 1].map((i) => (1 - t) ** 3 * a[i] + 3 * (1 - t) ** 2 * t * b[i] + 3 * (1 - t) * t * t * c[i] + t ** 3 * d[i]);

/** Where a vessel lies beside the middle of its arcade: the artery swings over the vein and back. */
const out = (t) => Math.min(1, 0.3 + 3 * t);
const artery = (t) => -1.6 * out(t) + 4.4 * Math.sin(1.6 * Math.PI * t) ** 2;
const vein = (winding) => (t) => 1.6 * out(t) + winding * Math.sin(t * 34) * Math.min(1, t * 5);
const beside = (by) => () => by;

/** A place on a vessel and the direction in which it runs. */
function along(way, t, off) {
  const [x, y] = at(way, t);
  const [nx, ny] = at(way, t + 0.01);
  const long = Math.hypot(nx - x, ny - y);
  const [c, s] = [(nx - x) / long, (ny - y) / long];
  return [x - s * off(t), y + c * off(t), c, s];
}

const run = (way, off) => Array.from({ length: 121 }, (_, index) => along(way, index / 120, off)).map(([x, y], index) => `${index ? "L" : "M"}${x.toFixed(1)} ${y.toFixed(1)}`).join("");

/** Where arteries cross veins: the arcade, and how far along it. */
const CROSSINGS = [[0, 0.421], [1, 0.421], [2, 0.421], [3, 0.421], [0, 0.829], [1, 0.829], [0, 0.204], [1, 0.204]];

/** Gaps in the vein on both sides of the artery that crosses it. */
const nips = (number) => CROSSINGS.slice(0, number).map(([way, t]) => {
  const [x, y, c, s] = along(ARCADES[way], t, vein(0));
  return `M${(x - 3.2 * c).toFixed(1)} ${(y - 3.2 * s).toFixed(1)}L${(x + 3.2 * c).toFixed(1)} ${(y + 3.2 * s).toFixed(1)}`;
}).join("") || "M0 0";

/** Places over the retina that keep off disc and macula. */
function places(number, seed, far = 78, keep = 17) {
  const chance = strewn(seed);
  const found = [];
  while (found.length < number) {
    const [angle, out] = [chance() * 2 * Math.PI, Math.sqrt(chance()) * far];
    const [x, y] = [-14 + out * Math.cos(angle), out * Math.sin(angle)];
    if (Math.hypot(x, y) > keep && Math.hypot(x - MACULA[0], y - MACULA[1]) > 13 && Math.hypot(x + 14, y) < far) found.push([x, y, chance()]);
  }
  return found;
}

const around = (number, seed, [cx, cy], far) => {
  const chance = strewn(seed);
  return Array.from({ length: number }, () => {
    const [angle, out] = [chance() * 2 * Math.PI, far * (0.25 + 0.75 * Math.sqrt(chance()))];
    return [cx + out * Math.cos(angle), cy + out * Math.sin(angle), chance()];
  });
};

/** Streaks that run with the fibres, away from the disc. */
const flames = (number) => places(number, 23, 62, 15).map(([x, y, r]) => {
  const turn = Math.atan2(y, x) + 0.25 * Math.sign(x) * Math.sign(y);
  const [c, s, long, wide] = [Math.cos(turn), Math.sin(turn), 4 + 5 * r, 0.8 + 0.7 * r];
  const point = (along, across) => `${(x + along * c - across * s).toFixed(1)} ${(y + along * s + across * c).toFixed(1)}`;
  return `M${point(-long, 0)}C${point(-long / 2, wide * 1.6)} ${point(long / 2, wide * 1.6)} ${point(long, wide)}L${point(long * 0.8, 0)}L${point(long, -wide)}C${point(long / 2, -wide * 1.6)} ${point(-long / 2, -wide * 1.6)} ${point(-long, 0)}Z`;
}).join("") || "M0 0";

/** Knots of fine vessels. */
const tufts = (number) => [[6, -13], [-46, -52], [-40, 55], [34, -50], [-11, 14], [32, 52], [-66, -30], [14, 12]].slice(0, number).map(([x, y]) =>
  Array.from({ length: 6 }, (_, index) => {
    const turn = (index / 6) * 2 * Math.PI;
    const p = (r, o) => `${(x + r * Math.cos(turn + o)).toFixed(1)} ${(y + r * Math.sin(turn + o)).toFixed(1)}`;
    const far = 4 + 3.5 * Math.abs(Math.sin(x + index * 2.3));
    return `M${x} ${y}C${p(far * 0.6, -0.5)} ${p(far, 0.1)} ${p(far * 0.9, 0.5)}C${p(far * 0.8, 0.9)} ${p(far * 0.5, 0.8)} ${p(far * 0.35, 0.3)}`;
  }).join("")).join("") || "M0 0";

const soft = (all) => discs(all.flatMap(([x, y, r]) => [[x, y, 3 + 1.5 * r], [x + 2.4, y + 0.8, 2 + r], [x - 2, y - 1, 2 + r]]));

const wide = (name, ways, width, off) => svg("path", { class: name, d: ways.map((way) => run(way, off)).join(""), "stroke-width": width.toFixed(2) });

function vessels(probe) {
  const [thin, thick] = [ARTERY * (1 - share(probe, "arteries thinner by")), VEIN * (1 + 0.7 * share(probe, "veins wider by"))];
  const winding = 2.2 * share(probe, "veins wider by");
  return [
    wide("fundus-vein", ARCADES, thick, vein(winding)), wide("fundus-vein", BRANCHES, thick * 0.6, beside(1)),
    svg("path", { class: "fundus-nip", d: nips(count(probe, "veins vanish under arteries at")), "stroke-width": (thick * 1.5).toFixed(2), stroke: ink(RETINA) }),
    wide("fundus-artery", ARCADES, thin, artery), wide("fundus-artery", BRANCHES, thin * 0.6, beside(-1)),
  ];
}

/** The disc: its edge goes as it swells, its rim pales, the cup is so high. */
function disc(probe, blur) {
  const swollen = seen(probe, "edge stands out by");
  const cup = DISC * share(probe, "cup is so much of the height of the disc") * Math.max(0, 1 - swollen / 3);
  const rim = blend(PINK, PALE, share(probe, "paler than a usual rim by"));
  const size = DISC * (1 + 0.09 * swollen);
  const lines = Array.from({ length: 90 }, (_, index) => {
    const turn = (index / 90) * 2 * Math.PI;
    return `M${(size * 0.8 * Math.cos(turn)).toFixed(1)} ${(size * 0.8 * Math.sin(turn)).toFixed(1)}L${((size + 1 + swollen * 1.6) * Math.cos(turn)).toFixed(1)} ${((size + 1 + swollen * 1.6) * Math.sin(turn)).toFixed(1)}`;
  }).join("");
  return [
    svg("ellipse", { class: "fundus-halo", rx: size * 0.93 + swollen * 2, ry: size + swollen * 2, fill: ink(blend(rim, RETINA, 0.35)), opacity: Math.min(0.9, swollen * 0.4).toFixed(2), filter: `url(#${blur})` }),
    svg("ellipse", { class: "fundus-disc", rx: size * 0.93, ry: size, fill: ink(rim), "stroke-width": Math.max(0, 0.7 - swollen).toFixed(2), filter: `url(#${blur})` }),
    svg("path", { class: "fundus-fibres", d: lines, "stroke-width": Math.min(0.3, swollen * 0.12).toFixed(2) }),
    svg("ellipse", { class: "fundus-cup", cx: -DISC * 0.08, rx: cup * 0.93, ry: cup, fill: ink(CUP) }),
  ];
}

function marks(probe) {
  const milky = share(probe, "retina whitened by");
  const [mx, my] = MACULA;
  return [
    svg("circle", { class: "fundus-macula", cx: mx, cy: my, r: 13, fill: ink(blend([146, 58, 34], MILK, milky)) }),
    svg("circle", { class: "fundus-spot", cx: mx, cy: my, r: 4.2, fill: ink(blend([120, 44, 28], [186, 24, 24], milky)) }),
    svg("path", { class: "fundus-drusen", d: discs(around(count(probe, "soft pale dots at the macula"), 31, MACULA, 19).map(([x, y, r]) => [x, y, 0.7 + 0.8 * r])) }),
    svg("path", { class: "fundus-yellow", d: discs(around(count(probe, "sharp yellow specks at the macula"), 37, MACULA, 12).map(([x, y, r]) => [x, y, 0.6 + 0.5 * r])) }),
    svg("path", { class: "fundus-blood", d: blot(share(probe, "macula dark or grey over")) }),
    svg("path", { class: "fundus-cotton", d: soft(places(count(probe, "white patches, edges soft"), 43, 56)) }),
    svg("path", { class: "fundus-yellow", d: discs(places(count(probe, "yellow specks, edges sharp"), 47, 66).map(([x, y, r]) => [x, y, 0.7 + 0.7 * r])) }),
    svg("path", { class: "fundus-red", d: flames(count(probe, "red streaks along the fibres")) }),
    svg("path", { class: "fundus-red", d: discs(places(count(probe, "round red marks"), 53).map(([x, y, r]) => [x, y, 0.7 + 1.3 * r])) }),
  ];
}

/** A dark patch over so much of the macula. */
function blot(part) {
  const r = 18 * Math.sqrt(part);
  const [x, y] = MACULA;
  return discs([[x - 1, y, r * 0.8], [x + r * 0.45, y + r * 0.3, r * 0.55], [x - r * 0.4, y - r * 0.45, r * 0.5]]);
}

/** What is seen through so much cloud of one eye, in a frame of the drawing. */
function view(probe, frame, scale) {
  const [clip, blur] = [freshId("fundus"), freshId("edge")];
  const fog = share(probe, "view clouded");
  const milky = share(probe, "retina whitened by");
  const swollen = seen(probe, "edge stands out by");
  return picture(frame, scale,
    svg("clipPath", { id: clip }, svg("circle", { cx: -14, r: ROUND - 2 })),
    svg("filter", { id: blur }, svg("feGaussianBlur", { stdDeviation: Math.min(2, swollen * 0.55).toFixed(2) })),
    svg("circle", { class: "fundus-dark", cx: -14, r: ROUND }),
    svg("g", { "clip-path": `url(#${clip})` },
      svg("g", { transform: probe.side === "left" ? "translate(-28 0) scale(-1 1)" : "" },
        svg("circle", { class: "fundus-retina", cx: -14, r: ROUND, fill: ink(blend(RETINA, MILK, milky)) }),
        ...marks(probe), ...disc(probe, blur), ...vessels(probe),
        svg("path", { class: "fundus-new", d: tufts(count(probe, "tufts of fine vessels")) })),
      svg("circle", { class: "fundus-fog", cx: -14, r: ROUND, fill: ink(FOG), opacity: Math.min(1, fog * 1.25).toFixed(2) })));
}

const WHOLE = [-108, -94, 188, 188];
/** What is looked at closely: the part of the eye in the middle of a smaller frame. */
const near = ([x, y], side, half) => [(side === "left" ? -28 - x : x) - half, y - half, 2 * half, 2 * half];

const fundus = (closely) => (host, { probes }) => {
  const both = latestBySide(probes);
  host.append(el("div", { class: "head-row" }, ...both.map((probe) => el("div", { class: "fundus" }, el("b", {}, `${probe.side} eye`),
    el("div", { class: "fundus-pair" }, captioned("The whole back of the eye", view(probe, WHOLE, 1.5)),
      ...(closely ? [captioned(closely.name, view(probe, near(closely.at, probe.side, closely.half), 280 / (2 * closely.half)))] : []))))),
  el("p", { class: "quiet" }, "The disc is about 1.5 mm high. The macula lies towards the temple of each eye."));
  return saidOf(both);
};

export const opticDisc = fundus({ name: "The disc, nearer", at: [0, 0], half: 24 });
export const macula = fundus({ name: "The macula, nearer", at: MACULA, half: 28 });
export const retina = fundus();
export const retinalVessels = fundus({ name: "Vessels beside the disc, nearer", at: [-16, -24], half: 36 });
