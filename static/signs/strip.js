// A narrow drawing of something that lasts a moment, with a cursor that follows it.

import { svg } from "../bedside/dom.js";
import { between, roundStep, ticks } from "./scale.js";

const WIDTH = 480;
const FOOT = 18;

/** A time stands to the right of its line, at the right edge to the left. */
const beside = (x) => (x > WIDTH - 40 ? { x: x - 3, "text-anchor": "end" } : { x: x + 3 });

/**
 * @param seconds how long the strip is
 * @param left    where it begins, with numbers beside it
 * @param draw    (x, middle, half) => nodes; x turns seconds into places
 */
export function strip({ seconds, height = 84, left = 4, draw }) {
  const x = between(0, seconds, left, WIDTH - 4);
  const floor = height - FOOT;
  const cursor = svg("path", { class: "stop-watch", d: "" });
  const inMs = seconds < 1;
  const times = ticks(0, seconds, roundStep(seconds, 6));
  const node = svg(
    "svg",
    { class: "strip", viewBox: `0 0 ${WIDTH} ${height}`, width: WIDTH, height, "aria-hidden": "true" },
    ...times.flatMap((t) => [svg("path", { class: "grid", d: `M${x(t)} 2V${floor}` }), svg("text", { class: "tick", ...beside(x(t)), y: height - 4 }, inMs ? `${Math.round(t * 1000)} ms` : `${t} s`)]),
    ...draw(x, floor / 2 + 1, floor / 2 - 3),
    cursor,
  );
  const at = (t) => cursor.setAttribute("d", t <= seconds ? `M${x(t)} 0V${floor}` : "");
  return { node, at };
}

const TREMBLE_SECONDS = 0.24;
const TREMBLE_STEPS = 480;

/** A tremble as a hand feels it: so large a share of the most that is drawn, so many times a second. */
export const trembling = (share, hertz) =>
  strip({
    seconds: TREMBLE_SECONDS,
    draw: (x, middle, half) => {
      const points = Array.from({ length: TREMBLE_STEPS + 1 }, (_, step) => {
        const t = (step / TREMBLE_STEPS) * TREMBLE_SECONDS;
        return `${x(t).toFixed(1)} ${(middle - Math.min(1, share) * half * Math.sin(2 * Math.PI * hertz * t)).toFixed(1)}`;
      });
      return [svg("path", { class: "curve thin tremble", d: `M${points.join("L")}` })];
    },
  });
