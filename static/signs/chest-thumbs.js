// The hands hold the chest and the thumbs part as the breath goes in; or a tape lies round it. Measured with the ruler.

import { el, svg } from "../bedside/dom.js";
import { heightAt, lengthMs, peak } from "./curve.js";
import { amountText, curvesOf, latest, sideText } from "./latest.js";
import { onAPartner } from "./partner.js";
import { Player } from "./player.js";
import { ruler } from "./ruler.js";

const SCALE = 5;
const WIDTH = 440;
const MIDDLE = WIDTH / 2;
const THUMB = "M0 0C0 -9 5 -15 11 -15H58V15H11C5 15 0 9 0 0Z";

/** Thumbs to either side of the midline; the farthest they went stays marked. */
class Hands {
  constructor(manoeuvre, probes) {
    this.probes = probes;
    this.behind = manoeuvre.id.endsWith("-back");
    this.thumbs = new Map(probes.map((probe) => [probe, svg("path", { class: "skin", d: THUMB })]));
    this.far = svg("path", { class: "stop-watch", d: "" });
    const [leftmost, rightmost] = this.behind ? ["left", "right"] : ["right", "left"];
    this.node = svg(
      "svg",
      { class: "strip thumbs", viewBox: `0 0 ${WIDTH} 118`, width: WIDTH, height: 118, "aria-hidden": "true" },
      svg("path", { class: "grid zero", d: `M${MIDDLE} 2V82` }),
      svg("text", { class: "trace-name", x: 6, y: 14 }, leftmost),
      svg("text", { class: "trace-name", x: WIDTH - 6, y: 14, "text-anchor": "end" }, rightmost),
      ...this.thumbs.values(),
      this.far,
      ruler({ at: MIDDLE, across: 86, mm: 40, scale: SCALE, from: -40 }),
    );
  }

  #way(probe) {
    return (probe.side === "right") === this.behind ? 1 : -1;
  }

  show(ms) {
    for (const [probe, thumb] of this.thumbs) {
      const way = this.#way(probe);
      thumb.setAttribute("transform", `translate(${MIDDLE + way * heightAt(curvesOf(probe)[0], ms) * SCALE} 46) scale(${way} 1)`);
    }
  }

  mark() {
    this.far.setAttribute("d", this.probes.map((probe) => `M${MIDDLE + this.#way(probe) * peak(curvesOf(probe)[0]).height * SCALE} 22V84`).join(""));
  }
}

/** A tape that lies still at its zero and slips past it as the chest fills. */
class Tape {
  constructor(_, [probe]) {
    this.probe = probe;
    this.edge = svg("path", { class: "stop-watch", d: "" });
    this.node = svg(
      "svg",
      { class: "strip", viewBox: `0 0 ${WIDTH} 76`, width: WIDTH, height: 76, "aria-hidden": "true" },
      svg("path", { class: "skin", d: `M10 10H${WIDTH - 10}V40H10Z` }),
      ruler({ at: 30, across: 42, mm: 80, scale: SCALE }),
      this.edge,
    );
  }

  show(ms) {
    this.edge.setAttribute("d", `M${30 + heightAt(curvesOf(this.probe)[0], ms) * SCALE} 4V52`);
  }

  mark() {
    this.show(peak(curvesOf(this.probe)[0]).ms);
  }
}

const said = (probe) => `${sideText(probe.side) || "the tape"} moves by ${amountText(peak(curvesOf(probe)[0]).height)} mm`;

function measured(host, { manoeuvre, probes, fresh, still }, Figure) {
  const last = fresh ?? probes.at(-1);
  const here = latest(probes.filter((probe) => probe.place === last.place), (probe) => probe.side);
  const figure = new Figure(manoeuvre, here);
  const place = (manoeuvre.places ?? []).find(({ id }) => id === last.place)?.name ?? manoeuvre.name;
  const player = new Player(0, lengthMs(curvesOf(last)[0]), (ms) => figure.show(ms));
  const full = () => (player.stop(), figure.show(peak(curvesOf(last)[0]).ms));
  host.append(el("p", { class: "trace-title" }, place), figure.node);
  host.append(el("div", { class: "actions" }, still ? "" : el("button", { type: "button", onclick: () => player.play() }, "A full breath again"), el("button", { type: "button", onclick: full }, "Hold at the full breath")));
  host.append(onAPartner());
  figure.mark();
  if (fresh && !still) player.play();
  else full();
  return `${place}: ${here.map(said).join(", ")} in a full breath.`;
}

export const chestThumbs = (host, view) => measured(host, view, Hands);
export const chestTape = (host, view) => measured(host, view, Tape);
