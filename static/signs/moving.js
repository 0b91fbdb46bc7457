// What the signs with a movement share: a figure beside its trace, the side that is shown, and "play again".

import { el } from "../bedside/dom.js";
import { lengthMs, peak } from "./curve.js";
import { curvesOf, latestBySide, sideText } from "./latest.js";
import { Player } from "./player.js";
import { Trace } from "./trace.js";

/** Every curve of that name, or the first one, of the last probe of each side. */
export const seriesOf = (probes, pick = (curves) => curves[0]) =>
  latestBySide(probes)
    .map((probe) => ({ side: probe.side, name: sideText(probe.side), curve: pick(curvesOf(probe)) }))
    .filter(({ curve }) => curve);

/**
 * @param figure {node, show(side, ms)} draws a moment of a side
 * @param traces [{series, low, high, title?}]
 * @param together whether the figure shows all sides at once
 * @param lead   milliseconds shown before the stimulus
 * @param stillMs the moment shown where motion is not wanted; without it the farthest
 */
export function moving(host, { figure, traces, from, together = false, lead = 0, fresh, still, stillMs, again = "Play again" }) {
  const sides = together ? ["none"] : traces[0].series.map(({ side }) => side);
  let shownSide = together ? "none" : (fresh?.side ?? sides.at(-1));
  const caption = el("p", { class: "quiet shown-side" });
  const box = el("div", { class: "traces" });
  const stage = el("div", { class: "stage" }, el("div", { class: "figure-box" }, figure.node, caption), box);
  host.append(stage);
  const show = (ms) => {
    figure.show(shownSide, ms);
    caption.textContent = sideText(shownSide);
  };
  const watched = (ms) => {
    player.stop();
    show(ms);
    for (const trace of drawn.slice(1)) trace.at(ms);
  };
  const drawn = traces.map((trace, index) => new Trace(box, { ...trace, from, watch: index === 0 && watched }));
  for (const [index, { node }] of drawn.entries()) box.append(traces[index].title ? el("p", { class: "trace-title" }, traces[index].title) : "", node);
  const end = Math.max(...traces.flatMap(({ series }) => series.map(({ curve }) => lengthMs(curve))));
  const player = new Player(-lead, end, (ms) => {
    show(ms);
    for (const trace of drawn) trace.at(ms);
  });
  const stillAt = (side) => stillMs ?? peak((traces[0].series.find((one) => one.side === side) ?? traces[0].series[0]).curve).ms;
  const play = (side) => {
    shownSide = side;
    if (still) show(stillAt(side));
    else player.play();
  };
  const label = (side) => [still ? "Show" : again, sideText(side)].filter(Boolean).join(": ");
  host.append(el("div", { class: "actions" }, ...sides.map((side) => el("button", { type: "button", onclick: () => play(side) }, label(side)))));
  if (fresh || still) play(shownSide);
  else show(0);
}
