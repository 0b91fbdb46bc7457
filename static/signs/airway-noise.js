// What is heard without a stethoscope on the chest: the breath across the room, and a forced breath out over the windpipe.

import { el, svg } from "../bedside/dom.js";
import { chain, filter, following, gain, gainOf, noise } from "./audio.js";
import { lengthMs } from "./curve.js";
import { amountText, curvesOf, measuresOf } from "./latest.js";
import { play, stop } from "./sound-desk.js";
import { strip } from "./strip.js";
import { Trace } from "./trace.js";

const [IN, OUT] = [1.5, 2];
const SILENT = -50;
const STEPS = 60;
const RISE = Array.from({ length: STEPS }, (_, index) => Math.sin((Math.PI * index) / (STEPS - 1)));

const noiseOf = (probe) => {
  const [hertz, inwards, outwards] = measuresOf(probe).map(({ amount }) => amount);
  return { hertz, phases: [[0, IN, inwards], [IN, OUT, outwards]] };
};

export function bedsideSound(probe) {
  const { hertz, phases } = noiseOf(probe);
  return (context, out, at) => {
    const air = noise(context, IN + OUT, 5);
    air.start(at);
    for (const [begins, lasts, level] of phases) {
      const swell = () => following(context, RISE, (lasts * 1000) / STEPS, at + begins);
      chain(air, filter(context, "bandpass", 500, 0.5), swell(), gain(context, gainOf(-14)), out);
      if (level < SILENT) continue;
      const tone = context.createOscillator();
      tone.type = "triangle";
      tone.frequency.setValueAtTime(hertz * 1.03, at + begins);
      tone.frequency.linearRampToValueAtTime(hertz * 0.95, at + begins + lasts);
      chain(tone, swell(), gain(context, gainOf(level)), out);
      tone.start(at + begins);
      tone.stop(at + begins + lasts);
    }
    return IN + OUT;
  };
}

function drawn(probe) {
  const { phases } = noiseOf(probe);
  return strip({
    seconds: IN + OUT,
    draw: (x, middle, half) => [
      svg("path", { class: "grid zero", d: `M${x(0)} ${middle}H${x(IN + OUT)}` }),
      svg("path", { class: "turn", d: `M${x(IN)} 2V${middle * 2 - 4}` }),
      svg("text", { class: "trace-name", x: x(0) + 4, y: 13 }, "in"),
      svg("text", { class: "trace-name", x: x(IN) + 5, y: 13 }, "out"),
      ...phases.map(([begins, lasts]) => svg("path", { class: "hatch", d: `M${x(begins)} ${middle}Q${x(begins + lasts / 2)} ${middle - half * 0.5} ${x(begins + lasts)} ${middle}Q${x(begins + lasts / 2)} ${middle + half * 0.5} ${x(begins)} ${middle}` })),
      ...phases.filter(([, , level]) => level >= SILENT).map(([begins, lasts, level]) => svg("path", { class: "tone", d: `M${x(begins + 0.1)} ${middle - (half * level) / 20}H${x(begins + lasts - 0.1)}` })),
    ],
  });
}

export function bedsideNoise(host, { probes, fresh }) {
  const probe = fresh ?? probes.at(-1);
  const figure = drawn(probe);
  host.append(figure.node, el("div", { class: "actions" }, el("button", { type: "button", onclick: () => play(bedsideSound(probe), figure.at) }, "Listen to one breath")));
  const { hertz, phases } = noiseOf(probe);
  const tone = (name, [, , level]) => (level < SILENT ? `no tone in the breath ${name}` : `a tone of ${hertz} Hz at ${amountText(level)} dB in the breath ${name}`);
  const said = `${tone("in", phases[0])}, ${tone("out", phases[1])}.`;
  host.append(el("p", { class: "quiet" }, `Hatching is the air, a blue line a tone, higher on the drawing where it is louder: ${said}`));
  return said;
}

export function blownSound(probe) {
  const [curve] = curvesOf(probe);
  return (context, out, at) => {
    const air = noise(context, lengthMs(curve) / 1000, 9);
    chain(air, filter(context, "bandpass", 700, 0.4), following(context, curve.samples, curve.stepMs, at), gain(context, gainOf(8)), out);
    air.start(at);
    return lengthMs(curve) / 1000;
  };
}

export function forcedBreath(host, { probes, fresh }) {
  const probe = fresh ?? probes.at(-1);
  const [curve] = curvesOf(probe);
  const box = el("div", { class: "traces wide" });
  host.append(box);
  const trace = new Trace(box, { series: [{ name: "", side: "right", curve }], low: 0, high: 1, from: "the start", watch: () => stop(), short: true });
  box.append(el("p", { class: "trace-title" }, "Sound over the windpipe"), trace.node);
  host.append(el("div", { class: "actions" },
    el("button", { type: "button", onclick: () => play(blownSound(probe), (seconds) => trace.at(seconds * 1000)) }, "Listen, at true speed"),
    el("button", { type: "button", onclick: stop }, "Stop")));
  const end = curve.samples.findLastIndex((height) => height > 0);
  return `Sound over the windpipe until ${amountText(((end + 1) * curve.stepMs) / 1000)} seconds.`;
}
