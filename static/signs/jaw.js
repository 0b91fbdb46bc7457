// The jaw: opened against the examiner's hand, seen by the teeth; and tapped, seen from the side.

import { el, svg } from "../bedside/dom.js";
import { heightAt, peak } from "./curve.js";
import { acted, picture, saidOf, seen } from "./head-parts.js";
import { amountText } from "./latest.js";
import { Limb } from "./limb.js";
import { moving, seriesOf } from "./moving.js";

const OPENS = "jaw opens by";
const RIGHT = "lower teeth move to the right by";
const WIDTHS = [8.5, 6.5, 7.5, 7];
const LOWER_WIDTHS = [5.5, 6, 7, 7];

/** A row of teeth as one path, edges at nought, crowns towards {@code way}. */
function row(widths, height, way) {
  const half = (sign) => {
    let x = 0;
    return widths.map((width) => {
      const from = sign * x;
      x += width;
      return `M${from} ${way * height}V${way * 1.5}Q${from} 0 ${from + sign * 1.5} 0H${sign * (x - 1.5)}Q${sign * x} 0 ${sign * x} ${way * 1.5}V${way * height}`;
    }).join("");
  };
  return half(1) + half(-1);
}

const scaleMarks = Array.from({ length: 25 }, (_, index) => index - 12).map((mm) => `M${mm} 0v${mm % 10 === 0 ? 4 : mm % 5 === 0 ? 3 : 1.8}`).join("");

export function jawOpen(host, { probes, fresh, still }) {
  const probe = fresh ?? probes.at(-1);
  const [opens, right] = [seen(probe, OPENS), seen(probe, RIGHT)];
  const gap = svg("path", { class: "mouth-dark" });
  const lower = svg("g", { class: "lower-teeth" },
    svg("path", { class: "tooth", d: row(LOWER_WIDTHS, 7, 1) }), svg("path", { class: "mid-mark", d: "M0 -3V12" }));
  const lips = svg("path", { class: "mouth-lips" });
  const plumb = svg("path", { class: "gauge-edge" });
  const marks = svg("g", {}, svg("path", { class: "gauge", d: `M-12 0H12${scaleMarks}` }),
    ...[-10, 0, 10].map((mm) => svg("text", { class: "tick small", x: mm, y: 7.500, "text-anchor": "middle" }, Math.abs(mm))));
  host.append(el("figure", { class: "head-figure" },
    picture([-50, -26, 100, 104], 3.6, lips, gap, svg("path", { class: "tooth", d: row(WIDTHS, 10, -1) }), svg("path", { class: "mid-mark", d: "M0 -13V3" }), lower,
      plumb, marks,
      svg("text", { class: "eye-name", x: -40, y: -19, "text-anchor": "middle" }, "right"), svg("text", { class: "eye-name", x: 40, y: -19, "text-anchor": "middle" }, "left")),
    el("figcaption", { class: "quiet" }, "The lines mark the middle of the upper and of the lower teeth, the dashed one drops from the upper; ruler in millimetres.")));
  acted(host, (share) => {
    const down = 2 + opens * share;
    const aside = -right * share;
    plumb.setAttribute("d", `M0 2V${(down + 20).toFixed(1)}`);
    marks.setAttribute("transform", `translate(0 ${(down + 20).toFixed(1)})`);
    lower.setAttribute("transform", `translate(${aside.toFixed(2)} ${down.toFixed(2)})`);
    lips.setAttribute("d", `M-38 0C-30 -20 -10 -20 0 -17C10 -20 30 -20 38 0C${34 + aside} ${down + 12} ${14 + aside} ${down + 18} ${aside} ${down + 18}C${-14 + aside} ${down + 18} ${-34 + aside} ${down + 12} -38 0Z`);
    gap.setAttribute("d", `M-32 0C-26 -13 26 -13 32 0C${28 + aside} ${down + 8} ${12 + aside} ${down + 12} ${aside} ${down + 12}C${-12 + aside} ${down + 12} ${-28 + aside} ${down + 8} -32 0Z`);
  }, { fresh, still });
  return saidOf([probe]);
}

// The lower half of a face from the side, looking to the right; the jaw hangs from its joint and is tapped on the chin.
const SKULL = "M34 172C36 150 34 132 28 112C18 84 16 40 26 -8H108C112 14 108 26 112 34C120 46 128 54 128 59C126 65 116 63 113 66C117 71 120 76 114 80C98 84 80 82 62 84C70 106 70 140 76 172";
const JAW = "M46 58C46 78 48 94 56 108C66 124 94 136 116 128C124 124 122 112 117 106C122 100 120 93 113 91C98 92 80 92 64 84C62 76 62 68 61 58A8 8 0 0 0 46 58Z";
const SIDE = { rest: SKULL, moving: JAW, joint: [53, 60], turn: -1, tap: [121, 122], strike: 100, handle: -1 };

export function jawTap(host, { probes, fresh, still }) {
  const series = seriesOf(probes);
  const [{ curve }] = series;
  const limb = new Limb(SIDE);
  const figure = {
    node: limb.node,
    show(_, ms) {
      limb.set(heightAt(curve, ms));
      limb.swing(ms);
    },
  };
  moving(host, { figure, traces: [{ series, high: 12 }], from: "the tap", lead: 260, stillMs: 65, fresh, still, again: "Watch again" });
  const { ms, height } = peak(curve);
  return `The jaw closes by at most ${amountText(height)} degrees, ${Math.round(ms)} ms after the tap.`;
}
