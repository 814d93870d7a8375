/**
 * The plan: one season's document. The zod schema is the file format (docs/plan-format.md);
 * the types are what the rest of the program works on. In a file dates are ISO 8601 text; inside
 * they are day numbers. Lengths are metres in sheet coordinates: x to the right, y up the sheet.
 * Turns are degrees clockwise from the sheet's up direction. Unknown fields are kept.
 */
import { z } from "zod/mini";
import { entry, seenSeason } from "./entry-schema.ts";
import { earlierCrop, groundMark, picture } from "./ground-schema.ts";
import { LIMITS, PLAN_FORMAT, PLAN_VERSION } from "./limits.ts";
import { amount, lot, renewalYears, sowing, storagePlace } from "./lot-schema.ts";
import { ownKind } from "./own-kind-schema.ts";
import {
  covers,
  flowering,
  type flowerings,
  level,
  type levels,
  lotIds,
  overwintered,
  planting,
  type purposes,
  type statedAdjustment,
} from "./planting-schema.ts";
import {
  between,
  bloomDays,
  count,
  date,
  dayRange,
  dayRangeFrom,
  distance,
  id,
  listOf,
  moreThanZero,
  name,
  note,
  record,
} from "./schema-parts.ts";
import { anyShape, area, type point, polygon, type rectangle } from "./shape-schema.ts";

/** What stands or lies around the beds and is only drawn. */
export const groundSorts = [
  "hedge",
  "fence",
  "tree",
  "building",
  "water",
  "path",
  "slope",
  "other",
] as const;
/** What is around the beds: a pollen source, or ground. */
export const surroundingSorts = ["pollen", ...groundSorts] as const;

/** Who can keep a pollen source from flowering: the grower, its owner if asked, nobody. */
export const reaches = ["ours", "ask", "none"] as const;

/** Ways to count daily heat; see core/calendar/degree-days.ts. */
export const heatMethods = [
  "simple average",
  "modified average",
  "single triangle",
  "single sine",
] as const;

const celsius = between(-90, 70);

/** Heat to first flower, C-days on one scale of method, base and cap; never mixed with another. */
const heatToFlower = record({
  method: z.enum(heatMethods),
  baseC: celsius,
  capC: z.nullable(celsius),
  /** [least, most] C-days from sowing or setting out to first flower. */
  cDays: z.tuple([moreThanZero(10_000), moreThanZero(10_000)]).check(
    z.refine(([least, most]) => least <= most, {
      message: "expected [least, most] with least first",
    }),
  ),
});

/** Monthly normals, a record of days, or both; degrees Celsius. */
const climate = record({
  /** Station and period, for the reader. */
  station: z.optional(name),
  source: z.optional(name),
  normals: z.optional(
    record({
      minC: z.array(celsius).check(z.length(12)),
      maxC: z.array(celsius).check(z.length(12)),
    }),
  ),
  days: z.optional(
    record({
      first: date,
      minC: listOf(z.nullable(celsius), LIMITS.recordedDays),
      maxC: listOf(z.nullable(celsius), LIMITS.recordedDays),
    }),
  ),
});

const variety = record({
  id,
  name,
  /** Id of a kind in the crop base or of the plan's own kinds. */
  kind: id,
  form: z.optional(id),
  hybrid: z.optional(z.boolean()),
  wantedPlants: z.optional(count),
  /** The grower's own isolation distance for this variety, metres. */
  isolationM: z.optional(distance),
  /** Id of a published figure of the kind to use instead of the default. */
  figure: z.optional(id),
  sownToFlower: z.optional(dayRange),
  transplantedToFlower: z.optional(dayRange),
  bloomDays: z.optional(dayRangeFrom(1)),
  heatToFlower: z.optional(heatToFlower),
  /** What each season showed; it widens what is forecast (core/calendar/seen-seasons.ts). */
  seen: z.optional(listOf(seenSeason, LIMITS.stays)),
  /** Ids of the lots to sow, first choice first; a planting's own go before them. */
  lots: z.optional(lotIds),
  /** Why it is grown out this season. */
  reason: z.optional(note),
  /** Seed that is to be left on the shelf, whatever is sown. */
  reserve: z.optional(amount),
  /** Clean seed wanted from this season. */
  wantedSeed: z.optional(amount),
  /** Goes before the plan's. */
  sowing: z.optional(sowing),
  /** Roots or plants of an earlier season, kept over winter to be set out in this one. */
  toSetOut: z.optional(listOf(overwintered, LIMITS.overwintered)),
  /** Is not grown out this season, and waits for another. */
  waits: z.optional(z.boolean()),
  note: z.optional(note),
});

const bed = record({
  id,
  code: name,
  outline: area,
  /** Is not moved, resized or deleted. */
  locked: z.optional(z.boolean()),
  note: z.optional(note),
});

const surrounding = record({
  id,
  label: name,
  what: z.enum(surroundingSorts),
  outline: anyShape,
  /** For pollen sources: the kind that flowers there. */
  kind: z.optional(id),
  varietyName: z.optional(name),
  flowering: z._default(flowering, "yes"),
  bloom: z.optional(bloomDays),
  cover: z._default(z.enum(covers), "none"),
  /** Bloom dates, flowering, cover and variety are the same every year: kept for the next season. */
  everyYear: z.optional(z.boolean()),
  /** Who can cut it: we, its owner if asked, or nobody. Left out: we, if it lies within the plot. */
  reach: z.optional(z.enum(reaches)),
  /** Is not moved, resized or deleted. */
  locked: z.optional(z.boolean()),
  note: z.optional(note),
});

const layout = record({
  id,
  name,
  beds: listOf(bed, LIMITS.items),
  plantings: listOf(planting, LIMITS.items),
  note: z.optional(note),
});

const site = record({
  name,
  /** Longitude and latitude (WGS 84, degrees) of the sheet's origin. */
  position: z.optional(record({ longitude: between(-180, 180), latitude: between(-90, 90) })),
  /** True bearing of the sheet's up direction, degrees clockwise from north. */
  upBearingDeg: z._default(between(-360, 360), 0),
  outline: z.optional(polygon),
  lastSpringFrost: z.optional(date),
  firstAutumnFrost: z.optional(date),
  climate: z.optional(climate),
});

/**
 * A finding the grower lives with: it stays away until the requirement changes, or the finding gets
 * worse than it was accepted. What is left out is not compared.
 */
const accepted = record({
  finding: z.string().check(z.minLength(1), z.maxLength(400)),
  reason: note,
  requiredM: z.nullable(distance),
  /** Id of the layout it was accepted in. */
  layout: z.optional(id),
  severity: z.optional(z.enum(["conflict", "caution", "unknown"])),
  /** Against whom: `p from q` for a seed parent at risk, else ids. */
  concerns: z.optional(listOf(z.string().check(z.maxLength(140)), LIMITS.items)),
  /** Distance, or depth of an overlap, metres. */
  measuredM: z.optional(distance),
  /** What else was measured, larger being worse: days open together, plants short, days late. */
  amount: z.optional(z.number()),
});

/** The plan from which this one was started: its id, and for the reader its title and season. */
const cameFrom = record({ plan: id, title: z.optional(name), season: z.optional(name) });

export const planSchema = record({
  format: z.literal(PLAN_FORMAT),
  version: z.literal(PLAN_VERSION),
  id,
  title: name,
  units: z._default(z.enum(["m", "ft"]), "m"),
  level: z._default(level, "home"),
  season: record({ name, first: date, last: date }).check(
    z.refine((season) => season.first <= season.last, {
      message: "expected the season not to end before it starts",
    }),
  ),
  site,
  ownKinds: z._default(listOf(ownKind, LIMITS.kinds), []),
  varieties: listOf(variety, LIMITS.items),
  /** The seed shelf: what seed there is, of whatever season. */
  lots: z._default(listOf(lot, LIMITS.items), []),
  storagePlaces: z._default(listOf(storagePlace, LIMITS.places), []),
  /** How codes of new lots are made; see core/lots/code-pattern.ts. */
  lotCodePattern: z.optional(name),
  sowing: z.optional(sowing),
  /** Which variety is grown for seed in which of the next seasons. */
  renewalYears: z.optional(renewalYears),
  surroundings: z._default(listOf(surrounding, LIMITS.items), []),
  earlierCrops: z._default(listOf(earlierCrop, LIMITS.items), []),
  groundMarks: z._default(listOf(groundMark, LIMITS.items), []),
  /** The field record, in no order; see core/record. */
  entries: z._default(listOf(entry, LIMITS.entries), []),
  picture: z.optional(picture),
  /** The plan of the season before, from which this one was started. */
  cameFrom: z.optional(cameFrom),
  layouts: listOf(layout, 100, 1),
  chosenLayout: z.optional(id),
  accepted: z._default(listOf(accepted, LIMITS.items), []),
});

type DeepReadonly<T> = T extends readonly unknown[] | object
  ? { readonly [Key in keyof T]: DeepReadonly<T[Key]> }
  : T;

export type Plan = DeepReadonly<z.output<typeof planSchema>>;
export type Site = DeepReadonly<z.output<typeof site>>;
export type Layout = DeepReadonly<z.output<typeof layout>>;
export type Bed = DeepReadonly<z.output<typeof bed>>;
export type Planting = DeepReadonly<z.output<typeof planting>>;
export type StatedAdjustment = DeepReadonly<z.output<typeof statedAdjustment>>;
export type OwnKind = DeepReadonly<z.output<typeof ownKind>>;
export type Lot = DeepReadonly<z.output<typeof lot>>;
export type GerminationTest = NonNullable<Lot["tests"]>[number];
export type IsolationRecord = NonNullable<Lot["isolation"]>;
export type StoragePlace = DeepReadonly<z.output<typeof storagePlace>>;
export type SeedAmount = DeepReadonly<z.output<typeof amount>>;

export type RenewalYears = DeepReadonly<z.output<typeof renewalYears>>;

export type Variety = DeepReadonly<z.output<typeof variety>>;
export type Surrounding = DeepReadonly<z.output<typeof surrounding>>;
export type Entry = DeepReadonly<z.output<typeof entry>>;
export type EarlierCrop = DeepReadonly<z.output<typeof earlierCrop>>;
export type GroundMark = DeepReadonly<z.output<typeof groundMark>>;
export type Picture = DeepReadonly<z.output<typeof picture>>;
export type RectangleShape = DeepReadonly<z.output<typeof rectangle>>;
export type PolygonShape = DeepReadonly<z.output<typeof polygon>>;
export type PointShape = DeepReadonly<z.output<typeof point>>;
export type AreaShape = RectangleShape | PolygonShape;
export type Shape = AreaShape | PointShape;
export type Climate = DeepReadonly<z.output<typeof climate>>;
export type HeatMethod = (typeof heatMethods)[number];
export type SurroundingSort = (typeof surroundingSorts)[number];
export type Cover = (typeof covers)[number];
export type Purpose = (typeof purposes)[number];
export type Flowering = (typeof flowerings)[number];
export type PurityLevel = (typeof levels)[number];
