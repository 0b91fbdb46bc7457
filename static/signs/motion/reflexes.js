// The drawings of the reflexes, brought only when one is wanted.

import { clonus } from "../clonus.js";
import { toeStroke } from "../toe-stroke.js";
import { flick, pendulum, radiusTap } from "./answers.js";
import { navelMoves, skinStroke } from "./skin-reflexes.js";
import { tap } from "./tap.js";

export const drawings = { "skin-stroke": skinStroke, navel: navelMoves, flick, "radius-tap": radiusTap, pendulum, "tendon-tap": tap, "toe-stroke": toeStroke, clonus };
