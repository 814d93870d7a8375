/**
 * The shape of a GeoJSON file of plantings (RFC 7946, and docs/command-line.md for the
 * properties). Every rule carries the words for what was expected instead.
 */
import { z } from "zod";
import { dayFromIso } from "../model/day.ts";
import { covers, flowerings, groundSorts, levels, purposes } from "../model/plan.ts";
import { LIMITS, MAX_COORDINATE_M } from "../model/limits.ts";

/** A text that says what is wanted, for a problem's "expected". */
const wants = (words: string) => ({ error: words });

const position = z
  .array(z.number(wants("a finite number of degrees")), wants("a position: [longitude, latitude]"))
  .min(2, wants("a position: [longitude, latitude]"))
  .check((context) => {
    const [longitude = 0, latitude = 0] = context.value;
    const add = (index: number, message: string) =>
      context.issues.push({ code: "custom", input: context.value, path: [index], message });
    if (Math.abs(longitude) > 180) add(0, "a longitude from -180 to 180");
    if (Math.abs(latitude) > 90) add(1, "a latitude from -90 to 90");
  });

const ring = z
  .array(position, wants("a ring: a list of positions"))
  .min(4, wants("a ring of at least 4 positions, the last the same as the first"))
  .max(LIMITS.corners + 1, wants(`a ring of at most ${LIMITS.corners} corners`))
  .check((context) => {
    const first = context.value[0];
    const last = context.value.at(-1);
    if (first?.[0] === last?.[0] && first?.[1] === last?.[1]) return;
    const message = "a closed ring, the last position the same as the first";
    context.issues.push({ code: "custom", input: context.value, message });
  });

const geometry = z.discriminatedUnion(
  "type",
  [
    z.looseObject({
      type: z.literal("Polygon"),
      coordinates: z
        .array(ring, wants("a list of rings"))
        .min(1, wants("at least one ring"))
        .max(101, wants("at most 100 holes")),
    }),
    z.looseObject({ type: z.literal("Point"), coordinates: position }),
  ],
  wants("a Polygon (a planting) or a Point (a pollen source)"),
);

/** Tables leave cells empty in two ways; both mean that nothing is said. */
function isBlank(value: unknown): boolean {
  return value === null || (typeof value === "string" && value.trim() === "");
}

function maybe<T extends z.ZodType>(schema: T) {
  return z.preprocess((value) => (isBlank(value) ? undefined : value), schema.optional());
}

/** One of some words, in any case, or of the plain words that mean the same. */
function oneOf<const T extends string>(
  words: readonly T[],
  alike: Readonly<Record<string, T>> = {},
) {
  // A Map, not the object: "constructor" is no word of it.
  const others = new Map(Object.entries(alike));
  return z.unknown().transform((value, context): T => {
    const plain = String(value)
      .trim()
      .toLowerCase()
      .replace(/[\s_]+/g, "-");
    const found = words.find((word) => word === plain) ?? others.get(plain);
    if (found !== undefined && typeof value !== "object") return found;
    context.issues.push({
      code: "custom",
      input: value,
      message: `one of ${words.map((word) => `"${word}"`).join(", ")}`,
    });
    return z.NEVER;
  });
}

const date = z.unknown().transform((value, context): number => {
  const day = typeof value === "string" ? dayFromIso(value.trim()) : null;
  if (day !== null) return day;
  context.issues.push({ code: "custom", input: value, message: "a real date as YYYY-MM-DD" });
  return z.NEVER;
});

const name = z.string(wants("text")).max(LIMITS.name, wants(`at most ${LIMITS.name} characters`));
const metres = "a number of metres from 0 to 100000";

const properties = z.looseObject(
  {
    kind: z.preprocess(
      (value) => (isBlank(value) ? undefined : value),
      z.string(wants("the id, common name or botanical name of a kind")),
    ),
    variety: maybe(name),
    purpose: maybe(oneOf(purposes)),
    bloomStart: maybe(date),
    bloomEnd: maybe(date),
    isolationM: maybe(
      z.number(wants(metres)).min(0, wants(metres)).max(MAX_COORDINATE_M, wants(metres)),
    ),
    cover: maybe(
      oneOf(covers, {
        no: "none",
        false: "none",
        open: "none",
        uncovered: "none",
        caged: "cage",
        "mesh-cage": "cage",
        mesh: "cage",
        net: "cage",
        netting: "cage",
        tent: "cage",
        bag: "bags",
        bagged: "bags",
        "hand-pollination": "hand",
        "hand-pollinated": "hand",
        taped: "hand",
      }),
    ),
    level: maybe(oneOf(levels)),
    hybrid: maybe(oneOf(["true", "false"], { yes: "true", no: "false" })),
    flowering: maybe(oneOf(flowerings, { true: "yes", no: "cut", false: "cut" })),
  },
  wants("an object of properties, with a kind"),
);

export const featureSchema = z.looseObject(
  {
    type: z.literal("Feature", wants('"Feature"')),
    id: z
      .union([z.string().min(1).max(LIMITS.name), z.number()], wants("an id: text or a number"))
      .optional(),
    geometry,
    properties,
  },
  wants("a Feature object"),
);

/** What a feature written by Wideberth may be beside a planting or a pollen source. */
export const groundRoles = ["bed", ...groundSorts] as const;

/** Ground on which nothing flowers: no kind is asked for. */
export const groundSchema = z.looseObject(
  {
    type: z.literal("Feature", wants('"Feature"')),
    id: z.union([z.string().min(1).max(LIMITS.name), z.number()]).optional(),
    geometry,
    properties: z.looseObject({
      wideberth: z.enum(groundRoles),
      code: maybe(name),
      label: maybe(name),
      note: maybe(z.string(wants("text")).max(LIMITS.note)),
    }),
  },
  wants("a Feature object"),
);

/** What only a planting written by Wideberth has; whatever cannot be used is left out. */
export const ownFields = z.object({
  code: name.optional().catch(undefined),
  label: name.optional().catch(undefined),
  bed: name.optional().catch(undefined),
  lot: name.optional().catch(undefined),
  note: z.string().max(LIMITS.note).optional().catch(undefined),
  plants: z.int().min(0).max(10_000_000).optional().catch(undefined),
  rows: z.int().min(0).max(10_000_000).optional().catch(undefined),
  keepApart: z.literal(true).optional().catch(undefined),
  startMethod: z.enum(["sown", "transplanted"]).optional().catch(undefined),
  startDate: z
    .string()
    .transform((text) => dayFromIso(text) ?? undefined)
    .optional()
    .catch(undefined),
});

export const collectionSchema = z.looseObject(
  {
    type: z.literal("FeatureCollection", wants('"FeatureCollection"')),
    features: z
      .array(z.unknown(), wants("a list of features"))
      .min(1, wants("at least one feature"))
      .max(LIMITS.items, wants(`at most ${LIMITS.items} features`)),
  },
  wants("a FeatureCollection object"),
);

export type Feature = z.output<typeof featureSchema>;
export type FeatureProperties = Feature["properties"];
export type GroundFeature = z.output<typeof groundSchema>;

/** The properties Wideberth reads; all others are kept as they are. */
export const knownProperties: ReadonlySet<string> = new Set(Object.keys(properties.shape));

/** Those it writes beside, and reads again where `wideberth` says that it wrote them. */
export const writtenProperties: ReadonlySet<string> = new Set([
  ...Object.keys(ownFields.shape),
  "wideberth",
  "kindName",
]);
