// The drawings of the spine and the back, brought only when one is wanted.

import { femoralStretch, legRaise, loinsOpening, neckTurn, pit, sideBend, wallGap } from "./leg-raise.js";
import { ribHump, spineFingers, spineLook, spineTap, struck } from "./spine-figure.js";

export const drawings = {
  "spine-look": spineLook,
  "rib-hump": ribHump,
  "spine-fingers": spineFingers,
  "spine-tap": spineTap,
  "loin-tap": struck,
  "sacroiliac-press": struck,
  "back-muscle": pit,
  "sacral-pit": pit,
  "leg-raise": legRaise,
  "femoral-stretch": femoralStretch,
  "neck-turn": neckTurn,
  schober: loinsOpening,
  "side-bend": sideBend,
  "wall-gap": wallGap,
};
