/**
 * The shape of a GeoJSON file of plantings (RFC 7946, and docs/command-line.md for the
 * properties). Every rule carries the words for what was expected instead.
 */
import { z } from "zod/mini";
import { bases } from "../calendar/basis.ts";
import { dayFromIso } from "../model/day.ts";
import { groundSorts } from "../model/plan.ts";
import { covers, flowerings, levels, purposes } from "../model/planting-schema.ts";
import { LIMITS, MAX_COORDINATE_M } from "../model/limits.ts";
import { ownKind } from "../model/own-kind-schema.ts";
import { whole } from "../model/schema-parts.ts";

/** A text that says what is wanted, for a problem's "expected". */
const wants = (words: string) => ({ error: words });

const position = z
  .array(z.number(wants("a finite number of degrees")), wants("a position: [longitude, latitude]"))
  .check(z.minLength(2, wants("a position: [longitude, latitude]")), (context) => {
    const [longitude = 0, latitude = 0] = context.value;
    const add = (index: number, message: string) =>
      context.issues.push({ code: "custom", input: context.value, path: [index], message });
    if (Math.abs(longitude) > 180) add(0, "a longitude from -180 to 180");
    if (Math.abs(latitude) > 90) add(1, "a latitude from -90 to 90");
  });

const ring = z
  .array(position, wants("a ring: a list of positions"))
  .check(
    z.minLength(4, wants("a ring of at least 4 positions, the last the same as the first")),
    z.maxLength(LIMITS.corners + 1, wants(`a ring of at most ${LIMITS.corners} corners`)),
    (context) => {
      const first = context.value[0];
      const last = context.value.at(-1);
      if (first?.[0] === last?.[0] && first?.[1] === last?.[1]) return;
      const message = "a closed ring, the last position the same as the first";
      context.issues.push({ code: "custom", input: context.value, message });
    },
  );

const geometry = z.discriminatedUnion(
  "type",
  [
    z.looseObject({
      type: z.literal("Polygon"),
      coordinates: z
        .array(ring, wants("a list of rings"))
        .check(
          z.minLength(1, wants("at least one ring")),
          z.maxLength(101, wants("at most 100 holes")),
        ),
    }),
    z.looseObject({ type: z.literal("Point"), coordinates: position }),
  ],
  wants("a Polygon (a planting) or a Point (a pollen source)"),
);

/** Tables leave cells empty in two ways; both mean that nothing is said. */
function isBlank(value: unknown): boolean {
  return value === null || (typeof value === "string" && value.trim() === "");
}

const blankAsNothing = z.transform((value) => (isBlank(value) ? undefined : value));

function maybe<T extends z.ZodMiniType>(schema: T) {
  return z.pipe(blankAsNothing, z.optional(schema));
}

/** One of some words, in any case, or of the plain words that mean the same. */
function oneOf<const T extends string>(
  words: readonly T[],
  alike: Readonly<Record<string, T>> = {},
) {
  // A Map, not the object: "constructor" is no word of it.
  const others = new Map(Object.entries(alike));
  return z.pipe(
    z.unknown(),
    z.transform((value, context): T => {
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
    }),
  );
}

const date = z.pipe(
  z.unknown(),
  z.transform((value, context): number => {
    const day = typeof value === "string" ? dayFromIso(value.trim()) : null;
    if (day !== null) return day;
    context.issues.push({ code: "custom", input: value, message: "a real date as YYYY-MM-DD" });
    return z.NEVER;
  }),
);

const name = z
  .string(wants("text"))
  .check(z.maxLength(LIMITS.name, wants(`at most ${LIMITS.name} characters`)));
const metres = "a number of metres from 0 to 100000";

/** `oneOf` compares words joined by hyphens. */
const basesAlike = Object.fromEntries(bases.map((each) => [each.replaceAll(" ", "-"), each]));

const properties = z.looseObject(
  {
    kind: z.pipe(
      blankAsNothing,
      z.string(wants("the id, common name or botanical name of a kind")),
    ),
    variety: maybe(name),
    purpose: maybe(oneOf(purposes)),
    bloomStart: maybe(date),
    bloomEnd: maybe(date),
    bloomBasis: maybe(oneOf(bases, basesAlike)),
    isolationM: maybe(
      z
        .number(wants(metres))
        .check(z.gte(0, wants(metres)), z.lte(MAX_COORDINATE_M, wants(metres))),
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
    id: z.optional(
      z.union(
        [z.string().check(z.minLength(1), z.maxLength(LIMITS.name)), z.number()],
        wants("an id: text or a number"),
      ),
    ),
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
    id: z.optional(
      z.union([z.string().check(z.minLength(1), z.maxLength(LIMITS.name)), z.number()]),
    ),
    geometry,
    properties: z.looseObject({
      wideberth: z.enum(groundRoles),
      code: maybe(name),
      label: maybe(name),
      note: maybe(z.string(wants("text")).check(z.maxLength(LIMITS.note))),
    }),
  },
  wants("a Feature object"),
);

const orElse = z.catch;

/** What cannot be used is left out. */
function usable<T extends z.ZodMiniType>(schema: T) {
  return orElse(z.optional(schema), undefined);
}

/** `2027-05-20` to a day number. */
const isoDay = z.pipe(
  z.string(),
  z.transform((text) => dayFromIso(text) ?? undefined),
);

/** What only a planting written by Wideberth has. */
export const ownFields = z.object({
  code: usable(name),
  label: usable(name),
  bed: usable(name),
  lot: usable(name),
  note: usable(z.string().check(z.maxLength(LIMITS.note))),
  plants: usable(whole(0, 10_000_000)),
  rows: usable(whole(0, 10_000_000)),
  keepApart: usable(z.literal(true)),
  startMethod: usable(z.enum(["sown", "transplanted"])),
  startDate: usable(isoDay),
  sownUnderGlass: usable(isoDay),
  endDate: usable(isoDay),
});

/** Member of the collection in which Wideberth writes the own kinds its features are of. */
export const OWN_KINDS_MEMBER = "wideberthKinds";

export const ownKindsSchema = z.array(ownKind).check(z.maxLength(LIMITS.kinds));

export const collectionSchema = z.looseObject(
  {
    type: z.literal("FeatureCollection", wants('"FeatureCollection"')),
    features: z
      .array(z.unknown(), wants("a list of features"))
      .check(
        z.minLength(1, wants("at least one feature")),
        z.maxLength(LIMITS.items, wants(`at most ${LIMITS.items} features`)),
      ),
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
