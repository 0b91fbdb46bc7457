// A face in millimetres as the examiner sees it, the patient's right on the left. Each half is set by itself: how far the
// brow rises or hangs, the lids are open, the fold is deep, the corner of the mouth is moved, the cheek is full.

import { svg } from "../bedside/dom.js";
import { blend, ink, irisOf, mix, seen, skinOf } from "./head-parts.js";
import { measuresOf } from "./latest.js";

const LOWER = 4.8;
const LIP = [168, 92, 84];
const DARK = [30, 20, 16];

const REST = { browHangs: 0, rise: 0, lids: 10, fold: 3, mouthHangs: 0, out: 0, cheek: 0, escapes: 0, muscle: 0 };

/** What one half looks like at rest, from what was measured; of a sign that tells nothing of it, the usual. */
export function restOf(probe, side) {
  const of = (label) => seen(probe, `${side} ${label}`);
  if (!measuresOf(probe).some(({ label }) => label.endsWith("lids open at rest by"))) return REST;
  return { ...REST, browHangs: of("brow hangs by"), lids: of("lids open at rest by"), fold: of("fold beside the mouth is deep by"), mouthHangs: of("corner of the mouth hangs by") };
}

/** One half, drawn for the patient's left (to the right of the page); the other is its mirror image. */
class Half {
  constructor(side, colours) {
    this.side = side;
    const line = (name, attributes = {}) => svg("path", { class: name, stroke: ink(colours.line), ...attributes });
    this.brow = line("face-brow", { stroke: ink(colours.brow) });
    this.wrinkles = line("face-crease");
    this.white = svg("path", { class: "eye-white" });
    this.iris = svg("circle", { class: "eye-iris", cx: 32, cy: 0, r: 5.85, fill: ink(colours.iris) });
    this.pupil = svg("circle", { class: "eye-pupil", cx: 32, cy: 0, r: 2 });
    this.cover = svg("path", { class: "face-cover", fill: ink(colours.skin) });
    this.margin = svg("path", { class: "eye-margin" });
    this.bags = line("face-wrinkle");
    this.fold = line("face-fold");
    this.cheek = line("face-cheek");
    this.air = line("face-air", { d: "M27 61L40 57M28 63.500H44M27 66L40 70" });
    this.muscle = svg("path", { class: "face-muscle", fill: ink(colours.shade) });
    this.node = svg("g", { class: `face-half ${side}`, transform: side === "right" ? "scale(-1 1)" : "" },
      this.muscle, this.white, this.iris, this.pupil, this.cover, this.margin, this.brow, this.wrinkles, this.bags, this.fold, this.cheek, this.air,
      line("face-line", { d: "M3 -6C2 8 4 18 7 26C9 30 5 33 1 33" }));
  }

  set(state) {
    this.#eye(state.lids);
    this.#brow(state);
    this.#cheek(state);
    this.air.setAttribute("stroke-width", Math.min(1.8, 5 * state.escapes).toFixed(2));
  }

  #eye(lids) {
    const [up, low] = [LOWER - lids, LOWER];
    const rim = `M17 1C24 ${up / 0.75} 40 ${up / 0.75} 47 -0.500C40 ${low / 0.75} 24 ${low / 0.75} 17 1Z`;
    this.white.setAttribute("d", rim);
    this.margin.setAttribute("d", rim);
    this.cover.setAttribute("d", `M12 -10H52V10H12Z${rim}`);
    const squeezed = Math.max(0, 3 - lids);
    this.bags.setAttribute("d", `M20 ${-5 - squeezed}C27 ${-10 - squeezed} 38 ${-10 - squeezed} 46 -5M48 ${-2 - squeezed}l${2 + squeezed * 2} ${-1 - squeezed}M48.500 1l${2 + squeezed * 2} ${squeezed * 0.6}`);
  }

  #brow({ rise, browHangs }) {
    const y = -15 - rise + browHangs;
    this.brow.setAttribute("d", `M11 ${y + 1}C22 ${y - 4} 38 ${y - 5} 50 ${y + 3}`);
    const crease = (row) => `M4 ${y - 8 - row * 6}C18 ${y - 12 - row * 6.5} 34 ${y - 12 - row * 6.5} 46 ${y - 6 - row * 6}`;
    this.wrinkles.setAttribute("d", [0, 1, 2].map(crease).join(""));
    this.wrinkles.setAttribute("stroke-width", Math.max(0.1, 0.4 + rise * 0.13 - browHangs * 0.09).toFixed(2));
  }

  #cheek({ fold, out, cheek, mouthHangs, muscle }) {
    const deep = fold + out * 0.12;
    this.fold.setAttribute("d", `M9 28C${20 + out * 0.4} 34 ${28 + out * 0.6} ${44 + mouthHangs * 0.4} ${29 + out * 0.7} ${56 + mouthHangs}`);
    this.fold.setAttribute("stroke-width", Math.max(0.15, deep * 0.45).toFixed(2));
    this.cheek.setAttribute("d", `M${46 - cheek * 4} 26C${50 + cheek * 8} 38 ${48 + cheek * 8} 54 ${38 + cheek * 2} 66`);
    this.cheek.setAttribute("stroke-width", (0.15 + cheek * 1.1).toFixed(2));
    this.muscle.setAttribute("d", `M52 40C${54 + muscle * 1.4} 52 ${52 + muscle * 1.2} 66 46 78C42 68 44 50 52 40Z`);
    this.muscle.setAttribute("opacity", Math.min(0.75, muscle * 0.09).toFixed(2));
  }
}

/** Outline of the head with the cheeks and the jaw, for both halves. */
function outline(right, left) {
  const down = ({ cheek, muscle }, sign) => [`${sign * 66} 14 ${sign * (62 + cheek * 7)} 30`, `${sign * (59 + cheek * 7 + muscle * 0.7)} 52`, `${sign * (57 + cheek * 3.5 + muscle * 0.7)} 76 ${sign * 26} 104`];
  const [l, r] = [down(left, 1), down(right, -1)];
  const turned = (controls) => controls.split(" ").reduce((pairs, one, index) => (index % 2 ? [[...pairs[0], one], ...pairs.slice(1)] : [[one], ...pairs]), []).map((pair) => pair.join(" ")).join(" ");
  return `M0 -80C46 -80 66 -52 66 -8C${l[0]} ${l[1]}C${l[2]} 0 104C${turned(r[2])} ${r[1]}C${turned(r[0])} -66 -8C-66 -52 -46 -80 0 -80Z`;
}

const HAIR = "M-66 -8C-68 -56 -48 -86 0 -86C48 -86 68 -56 66 -8C62 -30 56 -46 46 -56C24 -66 -24 -66 -46 -56C-56 -46 -62 -30 -66 -8Z";

/** The mouth: both corners by themselves, the lips apart by what the teeth need. */
function mouth(right, left, { teeth = 0 }) {
  const corner = (half, sign) => [sign * (24 + half.out * 0.75), 62 + half.mouthHangs - half.out * 0.45];
  const [[lx, ly], [rx, ry]] = [corner(left, 1), corner(right, -1)];
  const lift = (half) => teeth * (half.out / 12);
  const [gl, gr] = [lift(left), lift(right)];
  const upper = `M${rx} ${ry}C${rx * 0.6} ${59.5 - gr * 4} ${rx * 0.2} ${60 - gr * 3} 0 ${60.5 - (gl + gr) * 1.2}C${lx * 0.2} ${60 - gl * 3} ${lx * 0.6} ${59.5 - gl * 4} ${lx} ${ly}`;
  const lower = `C${lx * 0.6} ${63 + gl * 5} ${lx * 0.2} ${63 + gl * 4.5} 0 ${62.5 + (gl + gr) * 2.2}C${rx * 0.2} ${63 + gr * 4.5} ${rx * 0.6} ${63 + gr * 5} ${rx} ${ry}Z`;
  const lips = `M${rx} ${ry}C${rx * 0.6} ${56 - gr * 4} -7 ${53 - gr * 2} 0 ${56 - (gl + gr)}C7 ${53 - gl * 2} ${lx * 0.6} ${56 - gl * 4} ${lx} ${ly}C${lx * 0.6} ${70 + gl * 6} ${lx * 0.2} ${71 + gl * 5} 0 ${71 + (gl + gr) * 2.4}C${rx * 0.2} ${71 + gr * 5} ${rx * 0.6} ${70 + gr * 6} ${rx} ${ry}Z`;
  return { gap: upper + lower, lips };
}

export class Face {
  constructor(probe, width = 250) {
    const skin = skinOf(probe);
    const shade = blend(skin, DARK, 0.45);
    const deep = skin[0] < 150 ? 0.85 : 0.62;
    const colours = { skin, iris: irisOf(probe), line: blend(skin, DARK, deep), brow: blend(skin, DARK, 0.8), shade };
    this.head = svg("path", { class: "face-head", fill: ink(skin), stroke: ink(colours.line) });
    this.ears = svg("path", { class: "face-head", fill: ink(skin), stroke: ink(colours.line), d: "M-65 -12C-76 -18 -78 2 -72 18C-70 24 -64 22 -64 14M65 -12C76 -18 78 2 72 18C70 24 64 22 64 14" });
    this.lips = svg("path", { class: "face-lips", fill: ink(blend(skin, LIP, 0.55)) });
    this.gap = svg("path", { class: "face-gap" });
    this.teeth = svg("path", { class: "face-teeth" });
    this.right = new Half("right", colours);
    this.left = new Half("left", colours);
    this.node = svg("svg", { class: "head-picture face", viewBox: "-84 -92 168 204", width, height: (width * 204) / 168, "aria-hidden": "true" },
      this.ears, this.head, svg("path", { class: "face-hair", d: HAIR, fill: ink(colours.brow) }), this.right.node, this.left.node, this.lips, this.gap, this.teeth,
      svg("text", { class: "eye-name face-name", x: -62, y: -78, "text-anchor": "middle" }, "right"),
      svg("text", { class: "eye-name face-name", x: 62, y: -78, "text-anchor": "middle" }, "left"));
  }

  /** @param right, left what each half does; {@code teeth} 0..1 how far the lips part to show them */
  set(right, left, { teeth = 0 } = {}) {
    this.right.set(right);
    this.left.set(left);
    this.head.setAttribute("d", outline(right, left));
    const { gap, lips } = mouth(right, left, { teeth });
    this.lips.setAttribute("d", lips);
    this.gap.setAttribute("d", gap);
    const show = (half) => Math.max(0, Math.min(1, (teeth * half.out) / 12));
    const row = [-20, -15, -10.5, -5.5, 0, 5.5, 10.5, 15, 20];
    this.teeth.setAttribute("d", row.map((x) => {
      const open = show(x < 0 ? right : left);
      return `M${x} ${62 - 3 * open}V${62 + 5 * open}`;
    }).join(""));
    this.teeth.setAttribute("stroke-width", (0.35 * Math.max(show(right), show(left))).toFixed(2));
  }
}

/** A state between two. */
export const between = (from, to, share) => Object.fromEntries(Object.keys(from).map((key) => [key, mix(from[key], to[key], share)]));
