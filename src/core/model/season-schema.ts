/** Schemas of what joins a plan to the season before it. */
import { z } from "zod/mini";
import { LIMITS } from "./limits.ts";
import { count, id, listOf, name, record } from "./schema-parts.ts";

/** The plan from which this one was started. */
export const cameFrom = record({
  /** Its id. */
  plan: id,
  /** Its title, for the reader. */
  title: z.optional(name),
  /** Name of its season. */
  season: z.optional(name),
});

/** Roots or plants of a first-year biennial, lifted and kept over winter. */
export const overwintered = record({
  /** Left out: not counted. */
  plants: z.optional(count),
  /** Code of the plot they stood in, and name of its season. */
  plot: z.optional(name),
  season: z.optional(name),
  /** Ids of the lots they were sown from. */
  lots: z.optional(listOf(id, LIMITS.lotRefs)),
});
