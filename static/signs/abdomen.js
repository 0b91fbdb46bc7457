// The drawings of the belly, brought only when one is wanted.

import { borders } from "./belly-borders.js";
import { hands } from "./belly-hands.js";
import { bellyMovement, bellyScars, bellyShape, bellyVeins } from "./belly-look.js";
import { bellyDeep, bellyPress, bellyRelease, bellyTap } from "./belly-press.js";
import { sounds } from "./belly-sounds.js";
import { rectum } from "./rectum.js";

export const drawings = {
  "belly-shape": bellyShape,
  "belly-veins": bellyVeins,
  "belly-scars": bellyScars,
  "belly-movement": bellyMovement,
  "belly-press": bellyPress,
  "belly-deep": bellyDeep,
  "belly-tap": bellyTap,
  "belly-release": bellyRelease,
  ...borders,
  ...hands,
  ...sounds,
  ...rectum,
};
