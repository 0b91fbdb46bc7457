// The voice through the chest: to the ear, as spoken and whispered words and a long E, and under the hand.

import { svg } from "../bedside/dom.js";
import { amountText, measuresOf } from "./latest.js";
import { onAPartner } from "./partner.js";
import { between } from "./scale.js";
import { strip, trembling } from "./strip.js";
import { spokenSound, voiceOf, vowelOf, vowelSound, whisperedSound } from "./voice-audio.js";
import { zoneBoard } from "./zone-board.js";

const WIDTH = 480;
const HEIGHT = 84;
const FLOOR = 64;
const [LOWEST, HIGHEST] = [80, 3000];
const [FAINTEST, LOUDEST] = [-40, 8];
const MARKS = [100, 200, 500, 1000, 2000];

const across = between(Math.log(LOWEST), Math.log(HIGHEST), 4, WIDTH - 4);
const x = (hertz) => across(Math.log(hertz));
const y = between(FAINTEST, LOUDEST, FLOOR, 6);
const up = (level) => y(Math.max(FAINTEST, level));

/** What of a sound comes through, by pitch. */
function spectrum(bands) {
  return {
    node: svg(
      "svg",
      { class: "strip", viewBox: `0 0 ${WIDTH} ${HEIGHT}`, width: WIDTH, height: HEIGHT, "aria-hidden": "true" },
      ...MARKS.flatMap((hertz) => [svg("path", { class: "grid", d: `M${x(hertz)} 2V${FLOOR}` }), svg("text", { class: "tick", x: x(hertz), y: HEIGHT - 4, "text-anchor": "middle" }, `${hertz} Hz`)]),
      svg("path", { class: "grid zero", d: `M4 ${FLOOR}H${WIDTH - 4}` }),
      ...bands.map(([from, to, level]) => svg("path", { class: "band", d: `M${x(from)} ${FLOOR}L${x(from * 1.08)} ${up(level)}H${x(to / 1.08)}L${x(to)} ${FLOOR}Z` })),
    ),
  };
}

const through = (probe) => spectrum([[LOWEST * 1.1, voiceOf(probe).to, voiceOf(probe).level]]);
const throughSaid = (probe) => `${amountText(voiceOf(probe).level)} dB, pitches up to ${amountText(voiceOf(probe).to, 0)} Hz come through`;
const KEY = "How loud (upwards) the pitches (across) are that come through. Use headphones.";

export const voiceHeard = (host, view) => zoneBoard(host, { ...view, strip: through, sound: spokenSound, said: throughSaid, key: KEY });

export const whisperHeard = (host, view) => zoneBoard(host, { ...view, strip: through, sound: whisperedSound, said: throughSaid, key: KEY });

function vowelBands(probe) {
  const { level, lower, upper, ratio } = vowelOf(probe);
  return spectrum([[lower / 1.3, lower * 1.3, level], [upper / 1.2, upper * 1.2, level + ratio]]);
}

function vowelSaid(probe) {
  const { level, lower, upper, ratio } = vowelOf(probe);
  return `${amountText(level)} dB at ${amountText(lower, 0)} Hz and ${amountText(level + ratio)} dB at ${amountText(upper, 0)} Hz`;
}

export const vowelHeard = (host, view) => zoneBoard(host, { ...view, strip: vowelBands, sound: vowelSound, said: vowelSaid, key: KEY });

const HUM_HZ = 115;
const MOST_UM = 45;

const hum = (probe) => trembling(measuresOf(probe)[0].amount / MOST_UM, HUM_HZ);

const humSaid = (probe) => `the skin trembles by ${amountText(measuresOf(probe)[0].amount)} µm`;

export function humFelt(host, view) {
  const text = zoneBoard(host, { ...view, strip: hum, said: humSaid, key: "How far the skin moves while the patient says ninety-nine." });
  host.append(onAPartner());
  return text;
}
