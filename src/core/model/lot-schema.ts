/**
 * Schemas of the seed shelf: lots, their germination tests, and the places where seed is kept.
 * Amounts are grams or seeds, temperatures degrees Celsius, humidity and moisture percent;
 * moisture is of the fresh weight.
 */
import { z } from "zod";
import { LIMITS } from "./limits.ts";
import { count, date, id, name, note, record } from "./schema-parts.ts";

export const amountUnits = ["g", "seeds"] as const;
/** `own`: harvested from a plot of the grower's; `received`: bought, swapped or given. */
export const lotOrigins = ["own", "received"] as const;
export const lotStates = ["in stock", "used up", "discarded"] as const;

const percent = z.number().min(0).max(100);
const celsius = z.number().min(-90).max(70);
const year = z.int().min(1900).max(2200);

/** How much seed: either weighed or counted. */
export const amount = record({
  unit: z.enum(amountUnits),
  value: z.number().min(0).max(1_000_000_000),
}).refine(({ unit, value }) => unit === "g" || Number.isInteger(value), {
  path: ["value"],
  message: "expected a whole number of seeds",
});

/** One germination test of one lot. */
const germinationTest = record({
  id,
  /** When it was counted for the last time. */
  date,
  sown: z.int().min(1).max(1_000_000),
  /** Normal seedlings. */
  sprouted: z.int().min(0).max(1_000_000),
  /** Seeds that took up no water and stayed hard; not among the sprouted. */
  hard: z.int().min(0).max(1_000_000).optional(),
  /** From sowing to the last count. */
  days: z.int().min(1).max(365).optional(),
  temperatureC: celsius.optional(),
  /** Sprouted in each of several equal parts, when the test was laid out so. */
  replicates: z.array(z.int().min(0).max(1_000_000)).min(2).max(16).optional(),
  note: note.optional(),
}).superRefine((test, context) => {
  const fault = (field: string, message: string) =>
    context.addIssue({ code: "custom", path: [field], message: `expected ${message}` });
  const { sown, sprouted, hard = 0, replicates } = test;
  if (sprouted > sown) fault("sprouted", `at most the ${sown} seeds sown`);
  else if (sprouted + hard > sown) {
    fault("hard", `at most the ${sown - sprouted} seeds that did not sprout`);
  }
  if (!replicates) return;
  const part = sown / replicates.length;
  const sum = replicates.reduce((total, each) => total + each, 0);
  if (!Number.isInteger(part)) {
    fault("replicates", `a number of parts into which ${sown} seeds go evenly`);
  } else if (replicates.some((each) => each > part)) {
    fault("replicates", `at most ${part} sprouted in each part`);
  } else if (sprouted <= sown && sum !== sprouted)
    fault("replicates", `parts that add up to ${sprouted} sprouted`);
});

/** Where a lot lay from a day on, until its next stay. */
const stay = record({
  place: id,
  /** Left out in the first stay: since it was harvested or came. */
  from: date.optional(),
  /** Its own moisture while it lies there, measured and sealed in; goes before the place's. */
  moisturePct: percent.optional(),
});

/** Where the seed is from. */
const origin = record({
  what: z.enum(lotOrigins),
  /** Own: code of the planting and name of the season it was harvested in. */
  plot: name.optional(),
  season: name.optional(),
  /** Own: plants it was saved from, and all the cleaned seed they gave. */
  plants: count.optional(),
  cleanedGrams: z.number().min(0).max(1_000_000_000).optional(),
  /** Received: from whom, and when. */
  who: name.optional(),
  on: date.optional(),
});

export const lot = record({
  id,
  /** What stands on the packet; no two lots of a plan have the same, whatever the case. */
  code: name.min(1),
  /** Id of its variety. */
  variety: id,
  harvestYear: year.optional(),
  from: origin.optional(),
  /** Lots it was split off from, or mixed of. */
  partOf: z.array(id).max(LIMITS.lotRefs).optional(),
  amount: amount.optional(),
  /** Its own count; left out: the kind's. */
  seedsPerGram: z.number().positive().max(1_000_000).optional(),
  /** In order of time; the last is where it lies now. */
  stored: z.array(stay).max(LIMITS.stays).optional(),
  tests: z.array(germinationTest).max(LIMITS.tests).optional(),
  /** Left out: not known. */
  treated: z.boolean().optional(),
  treatedWith: name.optional(),
  state: z.enum(lotStates).default("in stock"),
  /** Why it was discarded. */
  discardedBecause: name.optional(),
  note: note.optional(),
}).refine(({ treated, treatedWith }) => treatedWith === undefined || treated !== false, {
  path: ["treatedWith"],
  message: "expected nothing, as the lot is said to be untreated",
});

/** Air of a place from the first of a month until the next condition of the year takes over. */
const condition = record({
  /** 1 to 12. */
  fromMonth: z.int().min(1).max(12).default(1),
  temperatureC: celsius,
  /** Relative humidity of the air, where seed lies open to it. */
  humidityPct: percent.optional(),
  /** Moisture the seed is sealed in at. */
  moisturePct: percent.optional(),
}).refine(
  ({ humidityPct, moisturePct }) => (humidityPct === undefined) !== (moisturePct === undefined),
  {
    path: ["humidityPct"],
    message: "expected either the humidity of the air or the moisture the seed is sealed in at",
  },
);

/** A shelf, tin, fridge or freezer. */
export const storagePlace = record({
  id,
  name: name.min(1),
  /** Left out: not known. Several: one for each part of the year. */
  conditions: z.array(condition).min(1).max(12).optional(),
  note: note.optional(),
});

/** How much more is sown than must stand; fractions of 1. */
export const sowing = record({
  /** Of the seeds that can germinate, how many come up in the open. */
  emergence: z.number().positive().max(1).optional(),
  /** The same in trays and pots. */
  trayEmergence: z.number().positive().max(1).optional(),
  /** Extra plants to choose from: 0.1 is one in ten. */
  spare: z.number().min(0).max(10).optional(),
});
