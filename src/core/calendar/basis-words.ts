/** On what bloom windows rest, and weeks, in words. */
import type { Basis } from "./basis.ts";

/** After "rests on": `your own dates or figures`. */
export const basisWord: Readonly<Record<Basis, string>> = {
  seen: "what was seen this season",
  own: "your own dates or figures",
  published: "a published figure",
  "planned end": "the day it is to be cleared",
  "rule of thumb": "a rule of thumb",
};
