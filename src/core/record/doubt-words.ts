/** What is doubtful about entries, in words. */
import type { Doubt } from "./record-doubts.ts";

/** In words, after "Entry of 3 June 2027, rogued:". */
export const doubtWords: Readonly<Record<Doubt, string>> = {
  "of the future": "it is dated after today",
  "of an unknown plot": "the plan has no plot or neighbour of that id",
  "before it was sown": "it is dated before the plot was sown or set out",
  "last flower before the first": "the last flower is dated before the first",
  "nothing was covered": "no cover was written down before it",
  "more than stood": "it counts more plants than stood there",
  "corrected twice apart": "two people corrected the same entry apart; the later one holds",
  "written before its day":
    "it was written down before the day it is dated: a clock was wrong, or the day is",
  "written before what it corrects":
    "by its clock it was written before what it corrects: a clock jumped back; it holds all the same",
};
