// The drawings of touch, pin, vibration and position, of cortical feeling and of the level on the trunk.

import { skinTouch } from "../skin-touch.js";
import { handTouch, trunkLine, twoTouches } from "./touch.js";

export const drawings = { "skin-touch": skinTouch, "hand-touch": handTouch, "two-touches": twoTouches, "trunk-line": trunkLine };
