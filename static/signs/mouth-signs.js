// The drawings of the mouth, brought only when one is wanted.

import { mouthLining, teeth, tongueSurface } from "./mouth-look.js";
import { palate, throatTouch } from "./palate.js";
import { halfTongue, tongueOut, tonguePush } from "./tongue.js";

export const drawings = {
  palate,
  "throat-touch": throatTouch,
  "tongue-out": tongueOut,
  "tongue-push": tonguePush,
  "half-tongue": halfTongue,
  "mouth-lining": mouthLining,
  "tongue-surface": tongueSurface,
  teeth,
};
