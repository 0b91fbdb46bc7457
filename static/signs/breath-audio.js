// The sound of one breath through a stethoscope, from what the server tells of it: noise for the breath, short rings for
// crackles and creaks, tones for wheeze. A pure builder: it draws on any context, so that a test can render it to memory.

import { chain, filter, following, gain, gainOf, noise, ring } from "./audio.js";
import { curvesOf, measuresOf } from "./latest.js";

const AUDIBLE = -50;
const CHORD = [1, 1.26, 1.55, 2.07];
const OVERTONES = new Float32Array([0, 1, 0.35, 0.15]);

/** What is told of a breath, by short names. Milliseconds, dB, Hz. */
export function breathOf(probe) {
  const [air, clicks] = curvesOf(probe);
  const amount = (label) => measuresOf(probe).find((measure) => measure.label === label).amount;
  const phase = (name) => ({ level: amount(`${name}, level`), from: amount(`${name}, from`), even: amount(`${name}, even up to`), to: amount(`${name}, up to`) });
  return {
    air,
    clicks,
    in: { ...phase("breath in"), lasts: amount("breath in lasts"), heard: amount("breath in lasts"), tones: amount("tones in the breath in, level") },
    gap: amount("gap"),
    out: { ...phase("breath out"), lasts: amount("breath out lasts"), heard: amount("breath out is heard for"), tones: amount("tones in the breath out, level") },
    click: { hertz: amount("click pitch"), ms: amount("click lasts"), level: amount("click level") },
    tones: { count: amount("tones at once"), hertz: amount("lowest tone") },
  };
}

/** When each click comes, in ms, and how loud it is against the loudest. */
export const clicksOf = ({ clicks }) => clicks.samples.flatMap((height, index) => (height > 0 ? [{ ms: index * clicks.stepMs, height }] : []));

/** How loud a phase is at each sample of the air, 0 to 1. */
export function loudness({ air, in: inwards, gap }, name, heard) {
  const begins = name === "in" ? 0 : inwards.lasts + gap;
  return air.samples.map((flow, index) => {
    const after = index * air.stepMs - begins;
    const mine = name === "in" ? Math.max(0, flow) : Math.max(0, -flow);
    const fade = Math.min(1, Math.max(0, (heard - after) / 150));
    return after < 0 ? 0 : mine * fade;
  });
}

function hiss(context, out, at, breath, name) {
  const { level, from, even, to, heard } = breath[name];
  const source = noise(context, (breath.air.samples.length * breath.air.stepMs) / 1000, name === "in" ? 11 : 23);
  const share = Math.sqrt(context.sampleRate / 2 / (even * 1.1));
  chain(source, filter(context, "highpass", from), filter(context, "lowpass", even), filter(context, "lowpass", to),
    following(context, loudness(breath, name, heard), breath.air.stepMs, at), gain(context, gainOf(level) * share), out);
  source.start(at);
}

function sing(context, out, at, breath, name) {
  const { tones: level, lasts } = breath[name];
  const { count, hertz } = breath.tones;
  if (count === 0 || level < AUDIBLE) return;
  const seconds = (breath.air.samples.length * breath.air.stepMs) / 1000;
  const swell = following(context, loudness(breath, name, lasts), breath.air.stepMs, at);
  chain(swell, gain(context, gainOf(level) / Math.sqrt(count)), out);
  for (const step of CHORD.slice(0, count)) {
    const tone = context.createOscillator();
    tone.setPeriodicWave(context.createPeriodicWave(new Float32Array(4), OVERTONES));
    tone.frequency.setValueAtTime(hertz * step * 1.03, at);
    tone.frequency.linearRampToValueAtTime(hertz * step * 0.96, at + seconds);
    tone.connect(swell);
    tone.start(at);
    tone.stop(at + seconds);
  }
}

/** Builds one breath from a time on and returns how many seconds it lasts. */
export function breathSound(probe) {
  const breath = breathOf(probe);
  return (context, out, at) => {
    for (const name of ["in", "out"]) {
      hiss(context, out, at, breath, name);
      sing(context, out, at, breath, name);
    }
    for (const { ms, height } of clicksOf(breath)) {
      ring(context, breath.click.hertz, breath.click.ms, at + ms / 1000, height * gainOf(breath.click.level) * 3).connect(out);
    }
    return (breath.in.lasts + breath.gap + breath.out.lasts) / 1000;
  };
}
