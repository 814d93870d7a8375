/**
 * The plan: one season's document. The zod schema is the file format (docs/plan-format.md);
 * the types are what the rest of the program works on. In a file dates are ISO 8601 text; inside
 * they are day numbers. Lengths are metres in sheet coordinates: x to the right, y up the sheet.
 * Turns are degrees clockwise from the sheet's up direction. Unknown fields are kept.
 */
import { z } from "zod";
import { earlierCrop, picture } from "./ground-schema.ts";
import { LIMITS } from "./limits.ts";
import { amount, lot, sowing, storagePlace } from "./lot-schema.ts";
import { ownKind } from "./own-kind-schema.ts";
import {
  count,
  date,
  dayRange,
  dayRangeFrom,
  dayWindow,
  distance,
  id,
  name,
  note,
  record,
} from "./schema-parts.ts";
import { anyShape, area, type point, polygon, type rectangle } from "./shape-schema.ts";

export const PLAN_FORMAT = "wideberth-plan";
export const PLAN_VERSION = 3;

export const levels = ["home", "sale", "stock"] as const;
export const purposes = ["seed", "food", "other"] as const;
export const covers = ["none", "cage", "bags", "hand"] as const;
/** `yes`: will flower; `cut`: cut or mown before bloom; `first-year`: a biennial's first season. */
export const flowerings = ["yes", "cut", "first-year"] as const;
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

/** Ways to count daily heat; see core/calendar/degree-days.ts. */
export const heatMethods = [
  "simple average",
  "modified average",
  "single triangle",
  "single sine",
] as const;

const level = z.enum(levels);
const flowering = z.enum(flowerings);

const lotIds = z.array(id).max(LIMITS.lotRefs);

const celsius = z.number().min(-90).max(70);

/** Heat to first flower, C-days on one scale of method, base and cap; never mixed with another. */
const heatToFlower = record({
  method: z.enum(heatMethods),
  baseC: celsius,
  capC: celsius.nullable(),
  /** [least, most] C-days from sowing or setting out to first flower. */
  cDays: z
    .tuple([z.number().positive().max(10_000), z.number().positive().max(10_000)])
    .refine(([least, most]) => least <= most, {
      message: "expected [least, most] with least first",
    }),
});

/** Monthly normals, a record of days, or both; degrees Celsius. */
const climate = record({
  /** Station and period, for the reader. */
  station: name.optional(),
  source: name.optional(),
  normals: record({
    minC: z.array(celsius).length(12),
    maxC: z.array(celsius).length(12),
  }).optional(),
  days: record({
    first: date,
    minC: z.array(celsius.nullable()).max(2000),
    maxC: z.array(celsius.nullable()).max(2000),
  }).optional(),
});

const variety = record({
  id,
  name,
  /** Id of a kind in the crop base or of the plan's own kinds. */
  kind: id,
  form: id.optional(),
  hybrid: z.boolean().optional(),
  wantedPlants: count.optional(),
  /** The grower's own isolation distance for this variety, metres. */
  isolationM: distance.optional(),
  /** Id of a published figure of the kind to use instead of the default. */
  figure: id.optional(),
  sownToFlower: dayRange.optional(),
  transplantedToFlower: dayRange.optional(),
  bloomDays: dayRangeFrom(1).optional(),
  heatToFlower: heatToFlower.optional(),
  /** Ids of the lots to sow, first choice first; a planting's own go before them. */
  lots: lotIds.optional(),
  /** Why it is grown out this season. */
  reason: note.optional(),
  /** Seed that is to be left on the shelf, whatever is sown. */
  reserve: amount.optional(),
  /** Clean seed wanted from this season. */
  wantedSeed: amount.optional(),
  /** Goes before the plan's. */
  sowing: sowing.optional(),
  note: note.optional(),
});

const bed = record({
  id,
  code: name,
  outline: area,
  /** Is not moved, resized or deleted. */
  locked: z.boolean().optional(),
  note: note.optional(),
});

/**
 * A change to the distance that a regulation gives, as the grower states that its condition
 * holds; see core/distances/stated-adjustments.ts for the ids. Unknown ones change nothing.
 */
const statedAdjustment = record({
  id,
  /** Rows of the pollen parent around the seed block; left out: none. */
  borderRows: count.optional(),
  /** Size of the field, hectares; left out: a small one. */
  fieldHa: z.number().positive().max(100_000).optional(),
});

const planting = record({
  id,
  code: name,
  variety: id,
  bed: id.optional(),
  outline: area,
  purpose: z.enum(purposes),
  flowering: flowering.default("yes"),
  /** How and when it starts: sown in place, or set out as transplant, root or bulb. */
  start: record({ method: z.enum(["sown", "transplanted"]), date }).optional(),
  plants: count.optional(),
  rows: count.optional(),
  /** The grower's own bloom dates; they win over prediction. */
  bloom: dayWindow.optional(),
  isolationM: distance.optional(),
  level: level.optional(),
  adjustments: z.array(statedAdjustment).max(LIMITS.adjustments).optional(),
  cover: z.enum(covers).default("none"),
  /** Ids of the lots sown here, in order of use; left out: the variety's. */
  lots: lotIds.optional(),
  /** Two lots of one variety that must not mix. */
  keepApart: z.boolean().optional(),
  /** Is not moved, resized or deleted, by hand or by the arranger. */
  locked: z.boolean().optional(),
  note: note.optional(),
});

const surrounding = record({
  id,
  label: name,
  what: z.enum(surroundingSorts),
  outline: anyShape,
  /** For pollen sources: the kind that flowers there. */
  kind: id.optional(),
  varietyName: name.optional(),
  flowering: flowering.default("yes"),
  bloom: dayWindow.optional(),
  cover: z.enum(covers).default("none"),
  /** Is not moved, resized or deleted. */
  locked: z.boolean().optional(),
  note: note.optional(),
});

const layout = record({
  id,
  name,
  beds: z.array(bed).max(LIMITS.items),
  plantings: z.array(planting).max(LIMITS.items),
  note: note.optional(),
});

const site = record({
  name,
  /** Longitude and latitude (WGS 84, degrees) of the sheet's origin. */
  position: record({
    longitude: z.number().min(-180).max(180),
    latitude: z.number().min(-90).max(90),
  }).optional(),
  /** True bearing of the sheet's up direction, degrees clockwise from north. */
  upBearingDeg: z.number().min(-360).max(360).default(0),
  outline: polygon.optional(),
  lastSpringFrost: date.optional(),
  firstAutumnFrost: date.optional(),
  climate: climate.optional(),
});

/**
 * A finding the grower lives with: it stays away until the requirement changes, or the finding gets
 * worse than it was accepted. What is left out is not compared.
 */
const accepted = record({
  finding: z.string().min(1).max(400),
  reason: note,
  requiredM: distance.nullable(),
  /** Id of the layout it was accepted in. */
  layout: id.optional(),
  severity: z.enum(["conflict", "caution", "unknown"]).optional(),
  /** Against whom: `p from q` for a seed parent at risk, else ids. */
  concerns: z.array(z.string().max(140)).max(LIMITS.items).optional(),
  /** Distance, or depth of an overlap, metres. */
  measuredM: distance.optional(),
  /** What else was measured, larger being worse: days open together, plants short, days late. */
  amount: z.number().optional(),
});

export const planSchema = record({
  format: z.literal(PLAN_FORMAT),
  version: z.literal(PLAN_VERSION),
  id,
  title: name,
  units: z.enum(["m", "ft"]).default("m"),
  level: level.default("home"),
  season: record({ name, first: date, last: date }).refine(
    (season) => season.first <= season.last,
    {
      message: "expected the season not to end before it starts",
    },
  ),
  site,
  ownKinds: z.array(ownKind).max(LIMITS.kinds).default([]),
  varieties: z.array(variety).max(LIMITS.items),
  /** The seed shelf: what seed there is, of whatever season. */
  lots: z.array(lot).max(LIMITS.items).default([]),
  storagePlaces: z.array(storagePlace).max(LIMITS.places).default([]),
  /** How codes of new lots are made; see core/lots/code-pattern.ts. */
  lotCodePattern: name.optional(),
  sowing: sowing.optional(),
  surroundings: z.array(surrounding).max(LIMITS.items).default([]),
  earlierCrops: z.array(earlierCrop).max(LIMITS.items).default([]),
  picture: picture.optional(),
  layouts: z.array(layout).min(1).max(100),
  chosenLayout: id.optional(),
  accepted: z.array(accepted).max(LIMITS.items).default([]),
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
export type StoragePlace = DeepReadonly<z.output<typeof storagePlace>>;
export type SeedAmount = DeepReadonly<z.output<typeof amount>>;

export type Variety = DeepReadonly<z.output<typeof variety>>;
export type Surrounding = DeepReadonly<z.output<typeof surrounding>>;
export type EarlierCrop = DeepReadonly<z.output<typeof earlierCrop>>;
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
