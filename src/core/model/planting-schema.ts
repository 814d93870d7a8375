/** Schema of a planting, and the words of the file that surroundings share with it. */
import { z } from "zod/mini";
import { LIMITS } from "./limits.ts";
import {
  bloomDays,
  count,
  date,
  distance,
  id,
  listOf,
  moreThanZero,
  name,
  note,
  record,
} from "./schema-parts.ts";
import { area } from "./shape-schema.ts";

export const levels = ["home", "sale", "stock"] as const;
export const purposes = ["seed", "food", "other"] as const;
export const covers = ["none", "cage", "bags", "hand"] as const;
/** `yes`: will flower; `cut`: cut or mown before bloom; `first-year`: a biennial's first season. */
export const flowerings = ["yes", "cut", "first-year"] as const;

export const level = z.enum(levels);
export const flowering = z.enum(flowerings);
export const lotIds = listOf(id, LIMITS.lotRefs);

/**
 * A change to the distance that a regulation gives, as the grower states that its condition
 * holds; see core/distances/stated-adjustments.ts for the ids. Unknown ones change nothing.
 */
export const statedAdjustment = record({
  id,
  /** Rows of the pollen parent around the seed block; left out: none. */
  borderRows: z.optional(count),
  /** Size of the field, hectares; left out: a small one. */
  fieldHa: z.optional(moreThanZero(100_000)),
});

/** How and when it starts: sown in place, or set out as transplant, root or bulb. */
const start = record({
  method: z.enum(["sown", "transplanted"]),
  date,
  /** The day its seed is sown under glass, for plants that are set out later. */
  sownUnderGlass: z.optional(date),
});

export const planting = record({
  id,
  code: name,
  variety: id,
  bed: z.optional(id),
  outline: area,
  purpose: z.enum(purposes),
  flowering: z._default(flowering, "yes"),
  start: z.optional(start),
  /**
   * The last day it stands: on it it is cleared, and the ground may be sown anew. Left out: it
   * stands to the end of the season.
   */
  end: z.optional(date),
  /**
   * The first day of the season it stood over winter into: it was begun in the season before, and
   * nothing is sown or set out for it in this one, unless its start comes after that day.
   */
  stoodInto: z.optional(date),
  plants: z.optional(count),
  rows: z.optional(count),
  /** The grower's own bloom dates, or those of a file it was read from; they win over prediction. */
  bloom: z.optional(bloomDays),
  isolationM: z.optional(distance),
  level: z.optional(level),
  adjustments: z.optional(listOf(statedAdjustment, LIMITS.adjustments)),
  cover: z._default(z.enum(covers), "none"),
  /** Ids of the lots sown here, in order of use; left out: the variety's. */
  lots: z.optional(lotIds),
  /** Two lots of one variety that must not mix. */
  keepApart: z.optional(z.boolean()),
  /** Is not moved, resized or deleted, by hand or by the arranger. */
  locked: z.optional(z.boolean()),
  note: z.optional(note),
});

/** Roots or plants of a first-year biennial, lifted and kept over winter. */
export const overwintered = record({
  /** Left out: not counted. */
  plants: z.optional(count),
  /** Code of the plot they stood in, and name of its season. */
  plot: z.optional(name),
  season: z.optional(name),
  /** Ids of the lots they were sown from. */
  lots: z.optional(lotIds),
});
