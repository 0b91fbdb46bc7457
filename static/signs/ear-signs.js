// The drawings of the ears, brought only when one is wanted.

import { drum } from "./drum.js";
import { forkEar, forkMiddle, whisper } from "./hearing.js";

export const drawings = {
  drum,
  whisper,
  "fork-middle": forkMiddle,
  "fork-ear": forkEar,
};
