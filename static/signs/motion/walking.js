// The drawings of standing and walking, brought only when one is wanted.

import { gait } from "./gait.js";
import { chairRise, oneLegStand, sway } from "./standing.js";
import { onTiptoe, tandem, turning } from "./steps.js";

export const drawings = { gait, turning, tandem, "on-tiptoe": onTiptoe, sway, "one-leg-stand": oneLegStand, "chair-rise": chairRise };
