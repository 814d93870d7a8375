/** Schema of kinds that a grower typed in. */
import { z } from "zod/mini";
import { count, dayRange, dayRangeFrom, distance, id, name, record, size } from "./schema-parts.ts";

/** A kind the built-in crop base lacks, or the grower's own figures for one it has (same id). */
export const ownKind = record({
  id,
  name: name.check(z.minLength(1)),
  botanicalName: z.optional(name),
  family: z.optional(name),
  /** Id of the crossing group it belongs to: a built-in one, or a word of the grower's own. */
  group: id,
  /** What decides crossing within the group; left out: the botanical name, else the name. */
  species: z.optional(name),
  lifeCycle: z.enum(["annual", "biennial", "perennial"]),
  carrier: z.enum(["insects", "wind", "insects and wind"]),
  breeding: z.enum(["selfing", "mostly selfing", "outcrossing"]),
  isolationM: record({
    home: z.optional(distance),
    sale: z.optional(distance),
    stock: z.optional(distance),
  }),
  /** Where the grower has these figures from. */
  source: z.optional(name),
  sownToFlower: z.optional(dayRange),
  transplantedToFlower: z.optional(dayRange),
  bloomDays: z.optional(dayRangeFrom(1)),
  flowerToSeed: z.optional(dayRange),
  inRowM: z.optional(size),
  betweenRowsM: z.optional(size),
  plantsNeeded: z.optional(count),
});
