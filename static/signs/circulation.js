// The drawings of the pulse, the pressure and the neck veins, brought only when one is wanted.

import { cuff } from "./cuff.js";
import { neckVeins } from "./neck-veins.js";
import { pulse } from "./pulse.js";
import { breathCuff, pulseWave } from "./pulse-wave.js";

export const drawings = { pulse, cuff, "pulse-wave": pulseWave, "breath-cuff": breathCuff, "neck-veins": neckVeins };
