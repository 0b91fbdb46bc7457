// The drawing of a tap on a tendon, apart from the other reflexes: it is what is done most.

import { tap } from "./tap.js";

export const drawings = { "tendon-tap": tap };
