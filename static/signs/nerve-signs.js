// The drawings of smell, shoulders and neck, brought only when one is wanted.

import { headTurn, shoulders, smelt } from "./neck-turn.js";

export const drawings = { smelt, shoulders, "head-turn": headTurn };
