// The drawings of approach, hands, skin, arteries, legs and joints, brought only when one is wanted.

import { cuff } from "./cuff.js";
import { answer, generalLook, oximeter, temples, thermometer, weighing } from "./approach-look.js";
import { blanch, legPit, pitsUpwards, skinFold } from "./pressed-skin.js";
import { raisedLeg } from "./raised-leg.js";
import { fourPressures, jointWarmth, skinWarmth } from "./warmth-bars.js";
import { fingerSkin, nailProfile, nails, palmCord, tendonLumps } from "./hand-look.js";
import { outstretchedHands } from "./outstretched-hands.js";
import { goniometer } from "./goniometer.js";
import { grating, jointFeel, jointLook, kneeBulge, kneecap, pressed } from "./joint-figure.js";
import { bruises, calfTape, legSkin, legVeins, rash, spiders } from "./skin-marks.js";
import { pulseFelt, twoPulses } from "./pulse-felt.js";
import { arterySound } from "./artery-sound.js";
import { skinColour } from "./skin-colour.js";

export const drawings = {
  answer,
  "general-look": generalLook,
  thermometer,
  oximeter,
  weighing,
  temples,
  "nail-profile": nailProfile,
  nails,
  "palm-cord": palmCord,
  "outstretched-hands": outstretchedHands,
  "finger-skin": fingerSkin,
  "tendon-lumps": tendonLumps,
  "skin-warmth": skinWarmth,
  "skin-colour": skinColour,
  blanch,
  "skin-fold": skinFold,
  pit: legPit,
  "pits-upwards": pitsUpwards,
  "calf-tape": calfTape,
  "leg-veins": legVeins,
  "leg-skin": legSkin,
  spiders,
  bruises,
  rash,
  pressed,
  "pulse-felt": pulseFelt,
  "two-pulses": twoPulses,
  cuff,
  "ankle-cuff": cuff,
  "four-pressures": fourPressures,
  "raised-leg": raisedLeg,
  "artery-sound": arterySound,
  "joint-look": jointLook,
  "joint-warmth": jointWarmth,
  "joint-feel": jointFeel,
  grating,
  "knee-bulge": kneeBulge,
  kneecap,
  goniometer,
};
