/**
 * The plan: one season's document. The zod schema is the file format (docs/plan-format.md);
 * the types are what the rest of the program works on. In a file dates are ISO 8601 text; inside
 * they are day numbers. Lengths are metres in sheet coordinates: x to the right, y up the sheet.
 * Turns are degrees clockwise from the sheet's up direction. Unknown fields are kept.
 */
import { z } from "zod";
import { dayFromIso, isoFromDay } from "./day.ts";

export const PLAN_FORMAT = "wideberth-plan";
export const PLAN_VERSION = 1;

/** Largest coordinate or size, metres: a plan covers some fields, not a country. */
export const MAX_COORDINATE_M = 100_000;
export const LIMITS = { name: 200, note: 4000, corners: 2000, items: 20_000 } as const;

/**
 * An object whose unknown fields survive reading and writing. The runtime schema is loose; the
 * static type stays exact so that a mistyped field name is still an error in our own code.
 */
function record<Fields extends z.core.$ZodLooseShape>(
  fields: Fields,
): z.ZodObject<Fields, z.core.$strip> {
  return z.looseObject(fields) as z.ZodObject<Fields, z.core.$strip>;
}

const id = z
  .string()
  .min(1)
  .max(64)
  .regex(/^[A-Za-z0-9._:-]+$/, "expected an id of letters, digits, dot, dash, colon or underscore");
const name = z.string().max(LIMITS.name);
const note = z.string().max(LIMITS.note);
const metres = z.number().min(-MAX_COORDINATE_M).max(MAX_COORDINATE_M);
const size = z.number().positive().max(MAX_COORDINATE_M);
const distance = z.number().min(0).max(MAX_COORDINATE_M);
const count = z.int().min(0).max(10_000_000);

/** ISO 8601 date in the file, day number inside. */
const date = z.codec(z.string(), z.int(), {
  decode: (text, context) => {
    const day = dayFromIso(text);
    if (day !== null) return day;
    context.issues.push({
      code: "custom",
      input: text,
      message: "expected a real date as YYYY-MM-DD",
    });
    return z.NEVER;
  },
  encode: isoFromDay,
});

const dayWindow = record({ first: date, last: date }).refine((window) => window.first <= window.last, {
  message: "the last day is before the first",
});

const dayRange = z
  .tuple([z.int().min(0).max(1000), z.int().min(0).max(1000)])
  .refine(([least, most]) => least <= most, { message: "expected [least, most] with least first" });

const corner = z.tuple([metres, metres]);
const ring = z.array(corner).min(3).max(LIMITS.corners);

/** Centre, size across and along, and the turn of the length clockwise from the sheet's up. */
const rectangle = record({
  shape: z.literal("rectangle"),
  x: metres,
  y: metres,
  widthM: size,
  lengthM: size,
  turnDeg: z.number().min(-360).max(360),
});
/** Simple outline, corners in order either way round, first corner not repeated. */
const polygon = record({
  shape: z.literal("polygon"),
  corners: ring,
  holes: z.array(ring).max(100).optional(),
});
const point = record({ shape: z.literal("point"), x: metres, y: metres });

const area = z.discriminatedUnion("shape", [rectangle, polygon]);
const anyShape = z.discriminatedUnion("shape", [rectangle, polygon, point]);

export const levels = ["home", "sale", "stock"] as const;
export const purposes = ["seed", "food", "other"] as const;
export const covers = ["none", "cage", "bags", "hand"] as const;
/** `yes`: will flower; `cut`: cut or mown before bloom; `first-year`: a biennial's first season. */
export const flowerings = ["yes", "cut", "first-year"] as const;

/** Ways to count daily heat; see core/calendar/degree-days.ts. */
export const heatMethods = [
  "simple average",
  "modified average",
  "single triangle",
  "single sine",
] as const;

const level = z.enum(levels);
const flowering = z.enum(flowerings);

const celsius = z.number().min(-90).max(70);

/** Heat to first flower, C-days on one scale of method, base and cap; never mixed with another. */
const heatToFlower = record({
  method: z.enum(heatMethods),
  baseC: celsius,
  capC: celsius.nullable(),
  /** [least, most] C-days from sowing or setting out to first flower. */
  cDays: z
    .tuple([z.number().positive().max(10_000), z.number().positive().max(10_000)])
    .refine(([least, most]) => least <= most, { message: "expected [least, most] with least first" }),
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
  bloomDays: dayRange.optional(),
  heatToFlower: heatToFlower.optional(),
  lot: name.optional(),
  note: note.optional(),
});

const bed = record({
  id,
  code: name,
  outline: area,
  note: note.optional(),
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
  cover: z.enum(covers).default("none"),
  lot: name.optional(),
  /** Two lots of one variety that must not mix. */
  keepApart: z.boolean().optional(),
  note: note.optional(),
});

const surrounding = record({
  id,
  label: name,
  what: z.enum(["pollen", "hedge", "building", "water", "path", "other"]),
  outline: anyShape,
  /** For pollen sources: the kind that flowers there. */
  kind: id.optional(),
  varietyName: name.optional(),
  flowering: flowering.default("yes"),
  bloom: dayWindow.optional(),
  cover: z.enum(covers).default("none"),
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

/** A finding the grower lives with: it stays away until the requirement changes. */
const accepted = record({
  finding: z.string().min(1).max(400),
  reason: note,
  requiredM: distance.nullable(),
});

export const planSchema = record({
  format: z.literal(PLAN_FORMAT),
  version: z.literal(PLAN_VERSION),
  id,
  title: name,
  units: z.enum(["m", "ft"]).default("m"),
  level: level.default("home"),
  season: record({ name, first: date, last: date }).refine((season) => season.first <= season.last, {
    message: "the season ends before it starts",
  }),
  site,
  varieties: z.array(variety).max(LIMITS.items),
  surroundings: z.array(surrounding).max(LIMITS.items).default([]),
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
export type Variety = DeepReadonly<z.output<typeof variety>>;
export type Surrounding = DeepReadonly<z.output<typeof surrounding>>;
export type AcceptedFinding = DeepReadonly<z.output<typeof accepted>>;
export type RectangleShape = DeepReadonly<z.output<typeof rectangle>>;
export type PolygonShape = DeepReadonly<z.output<typeof polygon>>;
export type PointShape = DeepReadonly<z.output<typeof point>>;
export type AreaShape = RectangleShape | PolygonShape;
export type Shape = AreaShape | PointShape;
export type Climate = DeepReadonly<z.output<typeof climate>>;
export type HeatMethod = (typeof heatMethods)[number];
export type Cover = (typeof covers)[number];
export type Purpose = (typeof purposes)[number];
export type Flowering = (typeof flowerings)[number];
export type PurityLevel = (typeof levels)[number];
