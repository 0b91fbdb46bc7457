// The drawings of cortical feeling and of the level on the trunk, brought only when one is wanted.

import { handTouch, trunkLine, twoTouches } from "./touch.js";

export const drawings = { "hand-touch": handTouch, "two-touches": twoTouches, "trunk-line": trunkLine };
