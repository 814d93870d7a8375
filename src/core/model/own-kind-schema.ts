/** Schema of kinds that a grower typed in. */
import { z } from "zod";
import { count, dayRange, dayRangeFrom, distance, id, name, record, size } from "./schema-parts.ts";

/** A kind the built-in crop base lacks, or the grower's own figures for one it has (same id). */
export const ownKind = record({
  id,
  name: name.min(1),
  botanicalName: name.optional(),
  family: name.optional(),
  /** Id of the crossing group it belongs to: a built-in one, or a word of the grower's own. */
  group: id,
  /** What decides crossing within the group; left out: the botanical name, else the name. */
  species: name.optional(),
  lifeCycle: z.enum(["annual", "biennial", "perennial"]),
  carrier: z.enum(["insects", "wind", "insects and wind"]),
  breeding: z.enum(["selfing", "mostly selfing", "outcrossing"]),
  isolationM: record({
    home: distance.optional(),
    sale: distance.optional(),
    stock: distance.optional(),
  }),
  /** Where the grower has these figures from. */
  source: name.optional(),
  sownToFlower: dayRange.optional(),
  transplantedToFlower: dayRange.optional(),
  bloomDays: dayRangeFrom(1).optional(),
  flowerToSeed: dayRange.optional(),
  inRowM: size.optional(),
  betweenRowsM: size.optional(),
  plantsNeeded: count.optional(),
});
