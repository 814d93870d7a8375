/**
 * Schema of the field record: what was seen or done at a plot on a day. An entry is never
 * rewritten: a later one corrects it by naming it, so that copies of a plan kept apart can always
 * be brought together.
 */
import { z } from "zod/mini";
import {
  between,
  count,
  date,
  dayRange,
  dayRangeFrom,
  id,
  name,
  note,
  record,
} from "./schema-parts.ts";

export const entryKinds = [
  "sown",
  "emerged",
  "set out",
  "first flower",
  "last flower",
  "covered",
  "uncovered",
  "pollinators let in",
  "hand pollinated",
  "rogued",
  "lost",
  "cut before bloom",
  "neighbour asked",
  "harvested",
  "cleared",
  "cleaned",
  "looked at",
  "done",
  "note",
] as const;

export const entry = record({
  /** Unlike any other, on whatever device it was made. */
  id,
  /** The day it was seen or done. */
  on: date,
  /** Id of the planting or surrounding. */
  of: id,
  what: z.enum(entryKinds),
  /** Plants; for hand pollination flowers. */
  count: z.optional(count),
  /** Fruits harvested. */
  fruits: z.optional(count),
  /** Clean seed, grams. */
  grams: z.optional(between(0, 1_000_000_000)),
  /** What it was covered with. */
  cover: z.optional(z.enum(["cage", "bags", "hand"])),
  /** Why, what was answered, or anything else. */
  note: z.optional(note),
  /** For `done`: which job of the season was done; unlike the others of that plot. */
  job: z.optional(name),
  /** Who made it. */
  who: z.optional(name),
  /** When it was written down, for the order of corrections made apart. */
  written: z.optional(z.iso.datetime()),
  /** Id of the entry it takes the place of. */
  corrects: z.optional(id),
  /** Together with `corrects`: the entry named was a mistake, and nothing takes its place. */
  isStruck: z.optional(z.boolean()),
}).check(
  z.refine((value) => value.isStruck !== true || value.corrects !== undefined, {
    path: ["corrects"],
    message: "expected the id of the entry that is struck out",
  }),
);

/** What one season showed of a variety: days counted from its start, as they were seen. */
export const seenSeason = record({
  /** Name of the season; one of each. */
  season: name,
  /** [least, most] days from sowing or setting out to the first flower seen. */
  sownToFlower: z.optional(dayRange),
  transplantedToFlower: z.optional(dayRange),
  /** [least, most] days from the first to the last flower seen. */
  bloomDays: z.optional(dayRangeFrom(1)),
});
