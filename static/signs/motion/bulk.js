// The bulk of a muscle, seen along the limb and measured with a tape; and the surface of a limb at rest, watched.

import { el, svg } from "../../bedside/dom.js";
import { heightAt, highest, lengthMs, lowest } from "../curve.js";
import { amountText, curvesOf, latest, measuresOf, sideText } from "../latest.js";
import { acted, beside } from "./acted.js";
import { picture } from "./flesh.js";
import { seriesOf } from "../moving.js";
import { measuresText } from "./steps.js";

// Of each place: how thick the limb is beside the muscle, from where to where the muscle lies, what bounds the picture, and, for
// the small muscles of the hand, how large a millimetre is drawn.
const PLACES = {
  deltoid: { thick: 62, from: 30, to: 130, ends: ["shoulder", "elbow"] },
  infraspinatus: { thick: 54, from: 40, to: 170, ends: ["spine", "shoulder"] },
  biceps: { thick: 52, from: 50, to: 190, ends: ["shoulder", "elbow"] },
  triceps: { thick: 52, from: 40, to: 185, ends: ["shoulder", "elbow"] },
  "extensor-digitorum": { thick: 42, from: 26, to: 150, ends: ["elbow", "wrist"] },
  "first-dorsal-interosseous": { thick: 54, px: 3.4, from: 70, to: 170, ends: ["wrist", "index"] },
  "abductor-pollicis-brevis": { thick: 54, px: 3.4, from: 50, to: 150, ends: ["wrist", "thumb"] },
  "abductor-digiti-minimi": { thick: 54, px: 3.4, from: 50, to: 160, ends: ["wrist", "little finger"] },
  quadriceps: { thick: 84, from: 26, to: 180, ends: ["hip", "knee"] },
  "medial-hamstrings": { thick: 84, from: 26, to: 180, ends: ["hip", "knee"] },
  "tibialis-anterior": { thick: 50, from: 30, to: 170, ends: ["knee", "ankle"] },
  "gastrocnemius-soleus": { thick: 44, from: 24, to: 160, ends: ["knee", "ankle"] },
};
const OTHER = { thick: 52, from: 40, to: 180, ends: ["near end", "far end"] };
const FLOOR = 150;
const PX = 1.6;

const here = ({ probes, fresh }) => {
  const last = fresh ?? probes.at(-1);
  return latest(probes.filter((probe) => probe.place === last.place), (probe) => probe.side).sort((one, other) => (one.side < other.side ? 1 : -1));
};
const nameOf = ({ manoeuvre, probes, fresh }) => {
  const last = fresh ?? probes.at(-1);
  return (manoeuvre.places ?? []).find(({ id }) => id === last.place)?.name ?? manoeuvre.name;
};

/** The far end of a limb is thinner than the near one, on both of its edges. */
const tapered = (thick, x) => thick * (1 - 0.16 * (x / 220));
const under = (thick) => `L230 ${(FLOOR - thick * 0.14).toFixed(1)}C170 ${(FLOOR - thick * 0.1).toFixed(1)} 90 ${FLOOR + 5} 10 ${FLOOR}Z`;

/** The outline above the bone: the muscle as a hump of so many millimetres. */
function contour({ thick, from, to, px = PX }, mm, bump = () => 0) {
  const points = Array.from({ length: 111 }, (_, index) => {
    const x = index * 2;
    const along = Math.min(1, Math.max(0, (x - from) / (to - from)));
    const hump = Math.sin(Math.PI * along ** 0.85) ** 1.15 * mm * px;
    return `${x + 10} ${(FLOOR - tapered(thick, x) - hump - bump(x)).toFixed(1)}`;
  });
  return `M${points.join("L")}`;
}

/** One side; dashed the outline of the other one over it, where that was looked at. */
function bulky(probe, other) {
  const place = PLACES[probe.place] ?? OTHER;
  const { px = PX } = place;
  const [mm, cm] = measuresOf(probe).map(({ amount }) => amount);
  const middle = (place.from + place.to) / 2 + 10;
  const rest = FLOOR - tapered(place.thick, middle - 10);
  const top = rest - mm * px;
  const ticks = Array.from({ length: px > PX ? 4 : 6 }, (_, index) => index * (px > PX ? 5 : 10));
  return picture(290, 214, "bulk",
    svg("path", { class: "skin", d: `${contour(place, mm)}${under(place.thick)}` }),
    svg("path", { class: "bone-line", d: `M14 ${FLOOR - place.thick * 0.45}H226` }),
    svg("path", { class: "trail shut", d: other ? contour(place, measuresOf(other)[0].amount) : "" }),
    svg("path", { class: "grid", d: `M10 ${rest.toFixed(1)}H230` }),
    svg("path", { class: "gauge", d: ticks.map((one, index) => `M244 ${(rest - one * px).toFixed(1)}h${index % 2 ? 5 : 9}`).join("") }),
    ...ticks.filter((_, index) => index % 2 === 0).map((one) => svg("text", { class: "tick", x: 256, y: (rest - one * px + 4).toFixed(1) }, one)),
    svg("text", { class: "tick", x: 282, y: (rest + 23).toFixed(1), "text-anchor": "end" }, "mm"),
    svg("path", { class: "tape", d: `M${middle - 5} ${(top - 3).toFixed(1)}h10V${FLOOR}h-10Z`, "data-mm": mm, "data-cm": cm }),
    ...[`stands out ${amountText(mm)} mm`, `round it ${amountText(cm)} cm`].map((words, index) => svg("text", { class: "trace-name", x: 120, y: FLOOR + 18 + 19 * index, "text-anchor": "middle" }, words)),
    svg("text", { class: "tick", x: 10, y: 209 }, place.ends[0]), svg("text", { class: "tick", x: 230, y: 209, "text-anchor": "end" }, place.ends[1]));
}

export function muscleBulk(host, view) {
  const both = here(view);
  host.append(title(nameOf(view)));
  beside(host, both, (probe) => bulky(probe, both.find((one) => one !== probe)));
  host.append(el("p", { class: "quiet" }, both.length > 1 ? "How far the muscle stands out from the limb, and a tape round it. Dashed: the outline of the other side." : "How far the muscle stands out from the limb, and a tape round it."));
  return `${nameOf(view)}: ${both.map((probe) => `${sideText(probe.side)} ${measuresText(probe)}`).join(". ")}.`;
}

const title = (text) => el("p", { class: "trace-title" }, text);

const SPOTS = [0.3, 0.62, 0.45, 0.78, 0.52];
const TALLER = 5;

/** The surface moves at one spot after the other, drawn five times as high as it is. */
function surface(probe) {
  const place = PLACES[probe.place] ?? OTHER;
  const [curve] = curvesOf(probe);
  const skin = svg("path", { class: "skin", d: "" });
  const show = (ms) => {
    const up = heightAt(curve, ms);
    const spot = place.from + SPOTS[Math.floor(ms / 2300) % SPOTS.length] * (place.to - place.from);
    skin.setAttribute("d", `${contour(place, 14, (x) => up * TALLER * (place.px ?? PX) * Math.exp(-(((x - spot) / 7) ** 2)))}${under(place.thick)}`);
    skin.dataset.up = up;
  };
  return { node: picture(250, 196, "surface", skin, svg("path", { class: "bone-line", d: `M14 ${FLOOR - place.thick * 0.45}H226` }),
    svg("text", { class: "tick", x: 10, y: 192 }, place.ends[0]), svg("text", { class: "tick", x: 230, y: 192, "text-anchor": "end" }, place.ends[1])), show };
}

const peaks = ({ samples, stepMs }) => samples.flatMap((up, index) => (index && up > 0.3 && up >= samples[index - 1] && up > (samples[index + 1] ?? 0) ? [index * stepMs] : []));

export function twitching(host, view) {
  const { fresh, still } = view;
  const both = here(view);
  const last = fresh ?? view.probes.at(-1);
  const times = [...peaks(curvesOf(last)[0]), 1000, 2500, 4000].slice(0, 3).sort((one, other) => one - other);
  host.append(title(`${nameOf(view)}, at rest; the surface is drawn five times as high`));
  acted(host, { probes: both, make: surface, end: lengthMs(curvesOf(last)[0]), stills: still ? times : [times[0]], traces: [{ title: "Height of the skin at the spot that moves most", series: seriesOf(both), low: 0, high: 2, short: true }], fresh, still });
  const said = (probe) => `${sideText(probe.side)}: the surface moves by up to ${amountText(highest(curvesOf(probe)[0]) - lowest(curvesOf(probe)[0]))} mm, ${peaks(curvesOf(probe)[0]).length} times in five seconds`;
  return `${nameOf(view)}: ${both.map(said).join("; ")}.`;
}
