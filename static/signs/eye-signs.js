// The drawings of the eyes, brought only when one is wanted.

import { acuityChart, letterChart } from "./acuity.js";
import { fieldTarget } from "./field.js";
import { macula, opticDisc, retina, retinalVessels } from "./fundus.js";
import { eyeMovement } from "./gaze.js";
import { redReflex, redTarget } from "./glow.js";
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
  "acuity-chart": acuityChart,
  "letter-chart": letterChart,
  "field-target": fieldTarget,
  "red-target": redTarget,
  "red-reflex": redReflex,
  "optic-disc": opticDisc,
  "retinal-vessels": retinalVessels,
  macula,
  "retina-red": retina,
  "retina-white": retina,
};
