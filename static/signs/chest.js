// The drawings of the chest, brought only when one is wanted.

import { bedsideNoise, forcedBreath } from "./airway-noise.js";
import { bellyBreath, costalMargin } from "./breath-move.js";
import { breathingWatch } from "./breathing-watch.js";
import { breathingEffort, chestScar, chestShape, lips } from "./chest-look.js";
import { diaphragmMarks, neckLength, windpipeGap } from "./chest-marks.js";
import { chestTape, chestThumbs } from "./chest-thumbs.js";
import { humFelt, voiceHeard, vowelHeard, whisperHeard } from "./chest-voice.js";
import { ribSpring } from "./rib-spring.js";
import { lungSound } from "./lung-sound.js";
import { percussionNote } from "./percussion-note.js";

export const drawings = {
  "lung-sound": lungSound,
  "percussion-note": percussionNote,
  "voice-heard": voiceHeard,
  "whisper-heard": whisperHeard,
  "vowel-heard": vowelHeard,
  "hum-felt": humFelt,
  "chest-thumbs": chestThumbs,
  "chest-tape": chestTape,
  "breathing-watch": breathingWatch,
  "neck-length": neckLength,
  "diaphragm-marks": diaphragmMarks,
  "windpipe-gap": windpipeGap,
  "chest-shape": chestShape,
  "chest-scar": chestScar,
  lips,
  "breathing-effort": breathingEffort,
  "costal-margin": costalMargin,
  "belly-breath": bellyBreath,
  "bedside-noise": bedsideNoise,
  "forced-breath": forcedBreath,
  "rib-spring": ribSpring,
};
