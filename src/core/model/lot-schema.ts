/**
 * Schemas of the seed shelf: lots, their germination tests, and the places where seed is kept.
 * Amounts are grams or seeds, temperatures degrees Celsius, humidity and moisture percent;
 * moisture is of the fresh weight.
 */
import { z } from "zod/mini";
import { LIMITS } from "./limits.ts";
import {
  between,
  count,
  date,
  distance,
  id,
  listOf,
  moreThanZero,
  name,
  note,
  record,
  whole,
} from "./schema-parts.ts";

export const amountUnits = ["g", "seeds"] as const;
/** `own`: harvested from a plot of the grower's; `received`: bought, swapped or given. */
export const lotOrigins = ["own", "received"] as const;
export const lotStates = ["in stock", "used up", "discarded"] as const;

const percent = between(0, 100);
const celsius = between(-90, 70);
const year = whole(1900, 2200);

/** How much seed: either weighed or counted. */
export const amount = record({
  unit: z.enum(amountUnits),
  value: between(0, 1_000_000_000),
}).check(
  z.refine(({ unit, value }) => unit === "g" || Number.isInteger(value), {
    path: ["value"],
    message: "expected a whole number of seeds",
  }),
);

/** One germination test of one lot. */
const germinationTest = record({
  id,
  /** When it was counted for the last time. */
  date,
  sown: whole(1, 1_000_000),
  /** Normal seedlings. */
  sprouted: whole(0, 1_000_000),
  /** Seeds that took up no water and stayed hard; not among the sprouted. */
  hard: z.optional(whole(0, 1_000_000)),
  /** From sowing to the last count. */
  days: z.optional(whole(1, 365)),
  temperatureC: z.optional(celsius),
  /** Sprouted in each of several equal parts, when the test was laid out so. */
  replicates: z.optional(listOf(whole(0, 1_000_000), 16, 2)),
  note: z.optional(note),
}).check(
  z.superRefine((test, context) => {
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
  }),
);

/** Where a lot lay from a day on, until its next stay. */
const stay = record({
  place: id,
  /** Left out in the first stay: since it was harvested or came. */
  from: z.optional(date),
  /** Its own moisture while it lies there, measured and sealed in; goes before the place's. */
  moisturePct: z.optional(percent),
});

/** Where the seed is from. */
const origin = record({
  what: z.enum(lotOrigins),
  /** Own: code of the planting and name of the season it was harvested in. */
  plot: z.optional(name),
  season: z.optional(name),
  /** Own: id of that planting in the plan of that season. */
  planting: z.optional(id),
  /** Own: plants it was saved from, and all the cleaned seed they gave. */
  plants: z.optional(count),
  cleanedGrams: z.optional(between(0, 1_000_000_000)),
  /** Own: plants that shed pollen then, those it was saved from among them. */
  pollenPlants: z.optional(count),
  /** Own: the same amount of seed was taken from each of the plants it was saved from. */
  equalSeed: z.optional(z.boolean()),
  /** Received: from whom, and when. */
  who: z.optional(name),
  on: z.optional(date),
});

const basis = z.enum(["seen", "own", "published", "planned end", "rule of thumb"]);

/** When it flowered, as far as it was known on the day it was judged. */
const frozenBloom = record({
  first: date,
  last: date,
  /** On what each end rests. */
  opens: basis,
  closes: basis,
});

/** Days a cover was written to stand; `last` left out: it stood still. */
const frozenCover = record({
  cover: z.enum(["cage", "bags", "hand"]),
  first: date,
  last: z.optional(date),
});

/** Which of `distance`, `time` and `cover` kept the two apart, or what nothing did. */
const standing = z.enum(["distance", "time", "cover", "conflict", "unknown"]);

/** One pollen source of its crossing group. */
const isolationSource = record({
  /** Id in the plan it was judged in, which other plans need not have. */
  id,
  /** Code and variety, or a neighbour's name. */
  name,
  kind: z.optional(id),
  /** Nearest, outline to outline. */
  metres: distance,
  requiredM: z.optional(distance),
  /** How readily the two cross. */
  relation: z.optional(z.enum(["freely", "sometimes", "rarely"])),
  bloom: z.optional(frozenBloom),
  /** Days both were open; left out: not known. */
  togetherDays: z.optional(count),
  /** Those of them on which both were seen in flower. */
  seenTogetherDays: z.optional(count),
  covers: z.optional(listOf(frozenCover, LIMITS.stays)),
  standing,
  /** What kept them apart, in words. */
  because: z.optional(note),
});

/**
 * How a lot was isolated while it grew: worked out once, when it was harvested, and kept with it.
 * Nothing in it is looked up again, so it is true in other plans and other years.
 */
const isolation = record({
  /** The day the record was judged on: entries after it are not in it. */
  judgedOn: date,
  /** Purity level it was held to, and what that asked. */
  level: z.enum(["home", "sale", "stock"]),
  requiredM: z.optional(distance),
  /** Whose figure that is, in words. */
  figure: z.optional(note),
  /** Strictest level whose published distances nothing stood against; left out: none. */
  levelMet: z.optional(z.enum(["home", "sale", "stock"])),
  /** What that level asked. */
  levelMetM: z.optional(distance),
  /** The weakest of its sources; `distance` where there was none. */
  standing,
  bloom: z.optional(frozenBloom),
  /** Days its own covers stood. */
  covers: z.optional(listOf(frozenCover, LIMITS.stays)),
  /** Plants standing then. */
  plants: z.optional(count),
  /** Within twice the distance it needs, or twice what the level met asked; the least secure first. */
  sources: listOf(isolationSource, LIMITS.isolationSources),
  /** Sources within that reach that found no room in the list. */
  moreSources: z.optional(count),
  /** What nobody wrote down, in plain sentences. */
  notObserved: listOf(note, LIMITS.isolationSources),
});

export const lot = record({
  id,
  /** What stands on the packet; no two lots of a plan have the same, whatever the case. */
  code: name.check(z.minLength(1)),
  /** Id of its variety. */
  variety: id,
  harvestYear: z.optional(year),
  from: z.optional(origin),
  /** Lots it was split off from, or mixed of. */
  partOf: z.optional(listOf(id, LIMITS.lotRefs)),
  /** Own: lots its plants were sown from. */
  grownFrom: z.optional(listOf(id, LIMITS.lotRefs)),
  /** Codes of lots it comes from that were not kept apart and are no longer on the shelf. */
  crossedBefore: z.optional(listOf(name, LIMITS.lotRefs)),
  /**
   * Said by hand, and goes before what its record says: true: its seed may have crossed; false: its
   * plants were looked through and are true.
   */
  mayHaveCrossed: z.optional(z.boolean()),
  /** Own: how it was isolated, frozen at harvest. */
  isolation: z.optional(isolation),
  amount: z.optional(amount),
  /** Its own count; left out: the kind's. */
  seedsPerGram: z.optional(moreThanZero(1_000_000)),
  /** In order of time; the last is where it lies now. */
  stored: z.optional(listOf(stay, LIMITS.stays)),
  tests: z.optional(listOf(germinationTest, LIMITS.tests)),
  /** Left out: not known. */
  treated: z.optional(z.boolean()),
  treatedWith: z.optional(name),
  state: z._default(z.enum(lotStates), "in stock"),
  /** Why it was discarded. */
  discardedBecause: z.optional(name),
  note: z.optional(note),
}).check(
  z.refine(({ treated, treatedWith }) => treatedWith === undefined || treated !== false, {
    path: ["treatedWith"],
    message: "expected nothing, as the lot is said to be untreated",
  }),
);

/** Air of a place from the first of a month until the next condition of the year takes over. */
const condition = record({
  /** 1 to 12. */
  fromMonth: z._default(whole(1, 12), 1),
  temperatureC: celsius,
  /** Relative humidity of the air, where seed lies open to it. */
  humidityPct: z.optional(percent),
  /** Moisture the seed is sealed in at. */
  moisturePct: z.optional(percent),
}).check(
  z.refine(
    ({ humidityPct, moisturePct }) => (humidityPct === undefined) !== (moisturePct === undefined),
    {
      path: ["humidityPct"],
      message: "expected either the humidity of the air or the moisture the seed is sealed in at",
    },
  ),
);

/** A shelf, tin, fridge or freezer. */
export const storagePlace = record({
  id,
  name: name.check(z.minLength(1)),
  /** Left out: not known. Several: one for each part of the year. */
  conditions: z.optional(listOf(condition, 12, 1)),
  note: z.optional(note),
});

/** How much more is sown than must stand; fractions of 1. */
export const sowing = record({
  /** Of the seeds that can germinate, how many come up in the open. */
  emergence: z.optional(moreThanZero(1)),
  /** The same in trays and pots. */
  trayEmergence: z.optional(moreThanZero(1)),
  /** Extra plants to choose from: 0.1 is one in ten. */
  spare: z.optional(between(0, 10)),
});

/** Of one variety in one year: grown for seed, or kept free of it by hand. */
const yearChoice = record({
  variety: id,
  /** Calendar year in which that season begins. */
  year,
  grown: z.boolean(),
  /** Set by the grower: a search leaves it as it is. */
  byHand: z.optional(z.boolean()),
});

/**
 * Which variety is grown for seed in which of the next seasons; see core/renewal. What is of a year
 * gone by, or of a variety that is no longer in the plan, says nothing.
 */
export const renewalYears = record({
  /** Seasons laid out, the plan's own first. */
  seasons: z.optional(whole(2, 6)),
  /** Which end of a lot's band it must be grown again before. */
  end: z.optional(z.enum(["earliest", "likely"])),
  /** Ground for seed in one season, square metres; left out: all beds. */
  groundM2: z.optional(moreThanZero(100_000_000)),
  /** Varieties in one season that can stand in cages, and in bags or be pollinated by hand. */
  cages: z.optional(whole(0, 10_000)),
  bags: z.optional(whole(0, 10_000)),
  /** Varieties that may be grown for seed in one season; left out: no limit. */
  mostVarieties: z.optional(whole(1, LIMITS.items)),
  /** Ids of varieties that are not laid out. */
  leftOut: z.optional(listOf(id, LIMITS.items)),
  choices: listOf(yearChoice, 6 * LIMITS.items),
});
