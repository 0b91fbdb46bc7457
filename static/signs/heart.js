// The drawings of the heart, brought only when one is wanted.

import { apexBeat, heave, thrill } from "./heart-hand.js";
import { heartSound } from "./heart-sound.js";

export const drawings = { "heart-sound": heartSound, "apex-beat": apexBeat, heave, thrill };
