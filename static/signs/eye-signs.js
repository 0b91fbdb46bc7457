// The drawings of the eyes, brought only when one is wanted.

import { eyeMovement } from "./gaze.js";
import { lidFollowing, lidsLookingUp } from "./lid-watch.js";
import { lids } from "./lids.js";
import { eyesNear } from "./near.js";
import { orbitView } from "./orbit-view.js";
import { pupils } from "./pupils.js";

export const drawings = {
  pupils,
  lids,
  "eye-movement": eyeMovement,
  "eyes-near": eyesNear,
  "lids-looking-up": lidsLookingUp,
  "lid-following": lidFollowing,
  "eyes-from-the-side": orbitView,
};
