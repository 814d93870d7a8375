/** Words of the parts of find that are fetched when they are opened. */
import { type Noun, counted } from "../../core/words/plurals.ts";

const matchNoun: Noun = { one: "match", other: "matches" };

export const nothingIsCalledThat =
  "Nothing is called that: type a code, a variety, a kind or the name of a neighbour.";
export const matches = "Matches";
export const inLayout = (layout: string) => `in ${layout}`;
export const matchesFound = (count: number) =>
  `${counted(count, matchNoun)}; Enter goes to the first`;
export const matchOf = (at: number, count: number) => `${at} of ${counted(count, matchNoun)}`;
export const foundHere = (place: string, name: string) => `${place}: ${name}.`;
export const foundElsewhere = (place: string, name: string, layout: string) =>
  `${place}: ${name}, in ${layout}.`;
