// The drawings of the neck and its lymph nodes, brought only when one is wanted.

import { sounds } from "./belly-sounds.js";
import { nodes } from "./node-finger.js";
import { armsRaised, carotidBeat, neckSwallow, thyroidLobe, thyroidSize } from "./thyroid.js";

export const drawings = {
  node: nodes,
  "neck-swallow": neckSwallow,
  "thyroid-size": thyroidSize,
  "thyroid-lobe": thyroidLobe,
  "arms-raised": armsRaised,
  "carotid-beat": carotidBeat,
  "neck-bruit": sounds["neck-bruit"],
};
