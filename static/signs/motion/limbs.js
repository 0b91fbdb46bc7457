// The drawings of power, tone, coordination, tremor and functional signs, brought only when one is wanted.

import { aimedPath } from "./aimed.js";
import { armDrift, armsHeld } from "./arms.js";
import { muscleBulk, twitching } from "./bulk.js";
import { limbPower } from "./power.js";
import { fieldByDistance, twoPresses } from "./presses.js";
import { tapping } from "./tapping.js";
import { stretch, tone } from "./tone.js";
import { rebound, tremor, tremorCopying, unrest } from "./tremor.js";

export const drawings = {
  "limb-power": limbPower,
  "arm-drift": armDrift,
  "arms-held": armsHeld,
  "muscle-bulk": muscleBulk,
  twitching,
  tone,
  stretch,
  "aimed-path": aimedPath,
  tapping,
  rebound,
  tremor,
  "tremor-copying": tremorCopying,
  unrest,
  "two-presses": twoPresses,
  "field-by-distance": fieldByDistance,
};
