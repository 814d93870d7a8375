/** Words of the field record in the window. */
import type { JobName } from "../../core/fieldwork/season-calendar.ts";
import { longDate, shortDate } from "../../core/model/day.ts";
import type { Entry } from "../../core/model/plan.ts";
import { entryWords } from "../../core/record/entry-words.ts";
import { capital } from "../../core/checks/wording.ts";

/** What each kind of entry is called where it is picked. */
export const entryLabels: Readonly<Record<Entry["what"], string>> = {
  sown: "Sown",
  emerged: "Up",
  "set out": "Set out",
  "first flower": "First flower",
  "last flower": "Last flower",
  covered: "Covered",
  uncovered: "Cover off",
  "pollinators let in": "Pollinators let in",
  "hand pollinated": "Hand pollinated",
  rogued: "Rogued",
  lost: "Lost",
  "cut before bloom": "Cut before bloom",
  "neighbour asked": "Neighbour asked",
  harvested: "Harvested",
  cleared: "Ground cleared",
  cleaned: "Seed cleaned",
  "looked at": "Looked: no flower open",
  done: "Job done",
  note: "Note",
};

export const coverOptions: readonly {
  readonly value: NonNullable<Entry["cover"]>;
  readonly label: string;
}[] = [
  { value: "cage", label: "Mesh cage" },
  { value: "bags", label: "Bags" },
  { value: "hand", label: "Flowers taped" },
];

/** `Rogued, 8 plants: green stems among the silver`. */
export function lineWords(entry: Entry): string {
  return capital(entryWords(entry));
}

/** `Mara`, or nothing where nobody said. */
export function byWords({ who }: Entry): string {
  return who === undefined ? "" : who;
}

/** What it said before it was corrected. */
export function beforeWords(before: Entry): string {
  return `corrected; written first as: ${entryWords(before)}, ${shortDate(before.on)}`;
}

/** Who struck it out, and when that was written. */
export function struckWords(struck: Entry): string {
  const by = struck.who === undefined ? "" : ` by ${struck.who}`;
  return `struck out${by}${struck.written === undefined ? "" : `, ${struck.written.slice(0, 10)}`}`;
}

/** Names an entry for a button: `rogued, 8 plants, of 2 Jun 2027`. */
export function nameOfEntry(entry: Entry): string {
  return `${entryWords(entry)}, of ${longDate(entry.on)}`;
}

export const recordWords = {
  heading: "Field record",
  none: "Nothing is written down yet.",
  add: "Add an entry ...",
  addTitle: (plot: string) => `Add an entry for ${plot}`,
  correctTitle: (plot: string) => `Correct an entry of ${plot}`,
  correct: "Correct",
  strike: "Strike out",
  what: "What",
  day: "Day",
  dayNeeded: "Type the day it was seen or done",
  noteNeeded: "Type what is to be noted",
  gramsNeeded: "Type the grams of clean seed",
  answerNeeded: "Type what the neighbour answered",
  counts: { plants: "Plants", flowers: "Flowers" },
  fruits: "Fruits",
  grams: "Clean seed, g",
  cover: "With",
  notes: { why: "Why", answer: "Answer" },
  note: "Note",
  who: "Your name",
  whoHint: "Goes with what you write down; kept on this device",
  keep: "Add",
  keepName: "Apply",
  keepCorrection: "Apply",
  correctionHint:
    "The entry stays in the record with its correction beside it, so that copies on other phones can be brought together.",
} as const;

/** What is expected rather than done: a tick says that it was seen. */
export const expectedHints: Readonly<Partial<Record<JobName, string>>> = {
  "first flower": "tick when you see the first flower open",
  "last flower": "tick when the last flower is over",
  "seed ripe": "tick when it is harvested",
};
export const doneOn = (day: string) => `done ${day}`;
export const doneBy = (day: string, who: string) => `done ${day}, ${who}`;
