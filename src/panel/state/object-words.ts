/** What selected objects are called, counted. */
import type { Noun } from "../../core/words/plurals.ts";

export const bedNoun: Noun = { one: "bed", other: "beds" };
export const plantingNoun: Noun = { one: "planting", other: "plantings" };
export const groundNoun: Noun = { one: "neighbour or feature", other: "neighbours and features" };
