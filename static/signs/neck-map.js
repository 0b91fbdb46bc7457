// The neck from the front with the places of its lymph nodes. The patient's right is on the left of the drawing.

import { svg } from "../bedside/dom.js";

const HALF = "M0 120C14 118 26 110 34 96C44 74 46 50 44 30M44 62C52 56 54 70 46 80M36 96C38 130 42 150 58 168C84 182 116 186 128 206M0 214C8 200 12 190 20 186C50 190 84 196 112 196M14 190C22 160 34 130 42 98";

/** Across from the midline and down. */
const SPOTS = {
  submental: [9, 122], submandibular: [28, 106], preauricular: [46, 62], postauricular: [56, 78], occipital: [60, 100], anterior: [30, 138], posterior: [52, 150], supraclavicular: [56, 186],
};

export const neckFigure = (...nodes) =>
  svg("svg", { class: "marks neck-map", viewBox: "-132 20 264 200", width: 317, height: 240, "aria-hidden": "true" },
    ...["scale(1 1)", "scale(-1 1)"].map((transform) => svg("path", { class: "outline", transform, d: HALF })),
    svg("text", { class: "tick", x: -128, y: 34 }, "right"), svg("text", { class: "tick", x: 128, y: 34, "text-anchor": "end" }, "left"), ...nodes);

export const spotOnNeck = (tried, shown) =>
  neckFigure(...tried.map((probe) => {
    const [across, cy] = SPOTS[probe.place] ?? [0, 140];
    return svg("circle", { class: probe === shown ? "dot last" : "dot", cx: probe.side === "right" ? -across : across, cy, r: probe === shown ? 7 : 4.5 });
  }));
