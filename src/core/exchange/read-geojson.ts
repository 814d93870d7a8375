/**
 * A GeoJSON FeatureCollection (RFC 7946) to a plan: Polygons are plantings, Points are pollen
 * sources outside. Nothing is half-read: the result is a whole plan or every problem with its
 * place. Longitude and latitude are projected once, about the middle of the data.
 */
import { type CropBook, cropBook } from "../kinds/crop-book.ts";
import { kindOf } from "../kinds/own-kinds.ts";
import type { Kind } from "../kinds/crop.ts";
import { type LocalFrame, type LonLat, localFrame, middlePlace } from "../geometry/local-frame.ts";
import { isoFromDay } from "../model/day.ts";
import type { Plan } from "../model/plan.ts";
import { type Problem, type Read, refuse, shown } from "../model/problem.ts";
import { type Corner, ringProblem } from "../model/ring.ts";
import {
  type Feature,
  type GroundFeature,
  OWN_KINDS_MEMBER,
  collectionSchema,
  featureSchema,
  groundRoles,
  groundSchema,
  ownKindsSchema,
} from "./geojson-schema.ts";
import { type PlacedFeature, featureId, planFromFeatures } from "./geojson-plan.ts";

const MAX_PROBLEMS = 50;
/**
 * Farthest a feature may lie from the middle of the data: so far the projection is true to
 * 1 part in 10,000, and pollen does not matter farther.
 */
export const MAX_REACH_M = 50_000;

export function readGeojson(value: unknown, file: string, builtIn: CropBook): Read<Plan> {
  const collection = collectionSchema.safeParse(value);
  if (!collection.success) {
    const { issues } = collection.error;
    // Of another kind of object nothing else is worth saying.
    const first = issues.filter(({ path }) => path[0] === "type");
    return { ok: false, problems: problemsOf(first.length > 0 ? first : issues, value, file, "") };
  }
  const crs = crsProblem(collection.data, file);
  if (crs) return refuse(crs);
  const kinds = readOwnKinds(collection.data, file);
  if (!kinds.ok) return kinds;
  const ownKinds = kinds.value;
  const book = ownKinds.length > 0 ? cropBook(ownKinds.map(kindOf)) : builtIn;
  const problems: Problem[] = [];
  const features: ReadFeature[] = [];
  const grounds: ReadGround[] = [];
  collection.data.features.forEach((raw, index) => {
    const object = `features[${index}]${idText(raw)}`;
    if (isGround(raw)) {
      const ground = groundSchema.safeParse(raw);
      if (ground.success) grounds.push({ object, index, feature: ground.data });
      else problems.push(...problemsOf(ground.error.issues, raw, file, object));
      return;
    }
    const read = readFeature(raw, index, object, file, book);
    if (read.ok) features.push(read.value);
    else problems.push(...read.problems);
  });
  problems.push(...idProblems([...features, ...grounds], file));
  if (problems.length > 0) return { ok: false, problems: problems.slice(0, MAX_PROBLEMS) };

  const origin = middlePlace([...features, ...grounds].flatMap(({ feature }) => placesOf(feature)));
  const frame = localFrame(origin);
  const placed = features.map((read) => ({ ...read, ...placeFeature(read.feature, frame) }));
  const ground = grounds.map((read) => ({ ...read, ...placeFeature(read.feature, frame) }));
  const outlineFaults = [...placed, ...ground].flatMap((read) => outlineProblems(read, file));
  if (outlineFaults.length > 0) {
    return { ok: false, problems: outlineFaults.slice(0, MAX_PROBLEMS) };
  }
  const given = collection.data["name"];
  const name = typeof given === "string" && given.trim() !== "" ? given : baseName(file);
  const plan = planFromFeatures(placed, origin, name, ground);
  return { ok: true, value: ownKinds.length > 0 ? { ...plan, ownKinds } : plan };
}

/** The grower's own kinds that came with the features; none in files from elsewhere. */
function readOwnKinds(
  collection: Readonly<Record<string, unknown>>,
  file: string,
): Read<Plan["ownKinds"]> {
  const given = collection[OWN_KINDS_MEMBER];
  if (given === undefined) return { ok: true, value: [] };
  const read = ownKindsSchema.safeParse(given);
  if (!read.success) {
    const { issues } = read.error;
    return { ok: false, problems: problemsOf(issues, given, file, OWN_KINDS_MEMBER) };
  }
  const ids = read.data.map(({ id }) => id);
  const twice = ids.find((id, index) => ids.indexOf(id) < index);
  return twice === undefined
    ? { ok: true, value: read.data }
    : refuse({
        file,
        object: OWN_KINDS_MEMBER,
        field: "id",
        got: shown(twice),
        expected: "an id of its own for each kind",
      });
}

/** One planting or pollen source, checked but not yet placed. */
export function readFeature(
  raw: unknown,
  index: number,
  object: string,
  file: string,
  book: CropBook,
): Read<ReadFeature> {
  const parsed = featureSchema.safeParse(raw);
  if (!parsed.success) {
    return { ok: false, problems: problemsOf(parsed.error.issues, raw, file, object) };
  }
  // Written here it is the id, which may be a name that species share.
  const named = parsed.data.properties.kind;
  const kind = book.kind(named) ?? book.find(named);
  const problems = propertyProblems(parsed.data, kind, file, object);
  return kind && problems.length === 0
    ? { ok: true, value: { object, index, feature: parsed.data, kind } }
    : { ok: false, problems };
}

export interface ReadFeature {
  /** As messages name it: `features[3] "p4"`. */
  readonly object: string;
  readonly index: number;
  readonly feature: Feature;
  readonly kind: Kind;
}

interface ReadGround extends Pick<ReadFeature, "object" | "index"> {
  readonly feature: GroundFeature;
}

/** Whether Wideberth wrote the feature as a bed or other ground without a kind. */
export function isGround(raw: unknown): boolean {
  const properties = valueAt(raw, ["properties"]);
  const what = valueAt(properties, ["wideberth"]);
  return groundRoles.some((role) => role === what);
}

export function idText(raw: unknown): string {
  const id = typeof raw === "object" && raw !== null && "id" in raw ? raw.id : undefined;
  return typeof id === "string" || typeof id === "number" ? ` ${shown(id)}` : "";
}

/** RFC 7946 knows one coordinate system; older files may name another. */
function crsProblem(collection: Readonly<Record<string, unknown>>, file: string): Problem | null {
  if (collection["crs"] === undefined || collection["crs"] === null) return null;
  const text = JSON.stringify(collection["crs"]);
  if (/CRS84|EPSG:+4326/i.test(text)) return null;
  return {
    file,
    object: "",
    field: "crs",
    got: text.length > 80 ? `${text.slice(0, 77)}...` : text,
    expected: "longitude and latitude (WGS 84), as RFC 7946 wants",
  };
}

function propertyProblems(
  { properties }: Feature,
  kind: Kind | undefined,
  file: string,
  object: string,
): readonly Problem[] {
  const problems: Problem[] = [];
  const add = (field: string, got: string, expected: string) =>
    problems.push({ file, object, field: `properties.${field}`, got, expected });
  if (!kind) {
    add(
      "kind",
      shown(properties.kind),
      "the id, common name or botanical name of a kind known here",
    );
  }
  const { bloomStart: first, bloomEnd: last } = properties;
  if (first !== undefined && last !== undefined && last < first) {
    add("bloomEnd", isoFromDay(last), `a day not before bloomStart, ${isoFromDay(first)}`);
  }
  return problems;
}

/** Ids given must differ, from each other and from those made for features without one. */
function idProblems(
  features: readonly (ReadFeature | ReadGround)[],
  file: string,
): readonly Problem[] {
  const seen = new Map<string, string>();
  return features.flatMap((read) => {
    const { object } = read;
    const id = String(featureId(read));
    const earlier = seen.get(id);
    if (earlier === undefined) {
      seen.set(id, object);
      return [];
    }
    const expected = `an id of its own (${earlier} has it already)`;
    return [{ file, object, field: "id", got: shown(id), expected }];
  });
}

export function placesOf({ geometry }: Pick<Feature, "geometry">): readonly LonLat[] {
  const positions =
    geometry.type === "Point" ? [geometry.coordinates] : geometry.coordinates.flat();
  return positions.map(([longitude = 0, latitude = 0]) => ({ longitude, latitude }));
}

/** Corners on the sheet, without the closing one and without corners given twice in a row. */
export function placeFeature(
  { geometry }: Pick<Feature, "geometry">,
  frame: LocalFrame,
): Pick<PlacedFeature, "rings"> {
  const rings = geometry.type === "Point" ? [[geometry.coordinates]] : geometry.coordinates;
  return {
    rings: rings.map((positions) => {
      const open = geometry.type === "Point" ? positions : positions.slice(0, -1);
      return open
        .filter(([x, y], index) => {
          const before = open.at(index - 1);
          return open.length === 1 || before?.[0] !== x || before?.[1] !== y;
        })
        .map(([longitude = 0, latitude = 0]): Corner => {
          const { x, y } = frame.toSheet({ longitude, latitude });
          return [x, y];
        });
    }),
  };
}

export function outlineProblems(
  { object, feature, rings }: (ReadFeature | ReadGround) & Pick<PlacedFeature, "rings">,
  file: string,
): readonly Problem[] {
  const add = (field: string, got: string, expected: string): readonly Problem[] => [
    { file, object, field, got, expected },
  ];
  const reach = Math.max(...rings.flat().map(([x, y]) => Math.hypot(x, y)));
  if (reach > MAX_REACH_M) {
    return add(
      "geometry.coordinates",
      `a place ${Math.round(reach / 1000)} km from the middle of the data`,
      `all features within ${MAX_REACH_M / 1000} km of it`,
    );
  }
  if (feature.geometry.type === "Point") return [];
  return rings.flatMap((ring, index) => {
    const trouble = ringProblem(ring);
    return trouble === null
      ? []
      : add(`geometry.coordinates[${index}]`, trouble, "a simple outline");
  });
}

function problemsOf(
  issues: readonly { readonly path: readonly PropertyKey[]; readonly message: string }[],
  raw: unknown,
  file: string,
  object: string,
): readonly Problem[] {
  return issues.slice(0, MAX_PROBLEMS).map(({ path, message }) => ({
    file,
    object,
    field: path
      .map((key) => (typeof key === "number" ? `[${key}]` : `.${String(key)}`))
      .join("")
      .replace(/^\./, ""),
    got: shown(valueAt(raw, path)),
    expected: message,
  }));
}

function valueAt(raw: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === "object" && value !== null
        ? (value as Readonly<Record<PropertyKey, unknown>>)[key]
        : undefined,
    raw,
  );
}

export function baseName(file: string): string {
  const last = file.split(/[\\/]/).at(-1) ?? file;
  return last.replace(/\.[^.]+$/, "") || last;
}
