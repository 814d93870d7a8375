/** What an entry says, in words: on screen, in titles of undo steps, on paper. */
import { shortDate } from "../model/day.ts";
import type { Entry } from "../model/plan.ts";
import { type Noun, counted } from "../words/plurals.ts";

/** What is counted where an entry has a count. */
const COUNTED: Readonly<Partial<Record<Entry["what"], Noun>>> = {
  "hand pollinated": { one: "flower", other: "flowers" },
};

const COVERED: Readonly<Record<NonNullable<Entry["cover"]>, string>> = {
  cage: "covered with a cage",
  bags: "covered with bags",
  hand: "flowers taped",
};

/** `rogued, 8 plants: green stems among the silver`. */
export function entryWords(entry: Entry): string {
  const { what, count, fruits, grams, note, job } = entry;
  const said = [
    entryHead(entry),
    ...(count === undefined
      ? []
      : [counted(count, COUNTED[what] ?? { one: "plant", other: "plants" })]),
    ...(fruits === undefined ? [] : [counted(fruits, { one: "fruit", other: "fruits" })]),
    ...(grams === undefined ? [] : [`${grams} g`]),
  ].join(", ");
  // A job done is told by its own words, or by its name where it has none.
  const more = what === "done" ? (note ?? job) : note;
  return more === undefined || more === "" ? said : `${said}: ${more}`;
}

function entryHead({ what, cover }: Entry): string {
  if (what === "covered") return COVERED[cover ?? "cage"];
  return what === "looked at" ? "looked at, no flower open" : what;
}

/** `B04-2: rogued, 8 plants, 2 Jun`. @param plot code or name of what it is of */
export function entryTitle(entry: Entry, plot: string): string {
  const { note: _note, ...bare } = entry;
  return `${plot}: ${entryWords(entry.what === "done" ? entry : bare)}, ${shortDate(entry.on)}`;
}
