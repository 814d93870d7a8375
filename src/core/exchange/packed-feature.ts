/**
 * A feature of a register as a short JSON text, about half as long as GeoJSON: only what checks
 * read of it, and the names of its properties once for all features that have the same.
 */
import { type Feature, knownProperties, writtenProperties } from "./geojson-schema.ts";
import type { ReadFeature } from "./read-geojson.ts";

/** What many features have alike. */
export interface FeatureShape {
  readonly type: Feature["geometry"]["type"];
  /** Names of the properties, in their order. */
  readonly names: readonly string[];
}

/** Kind, number of the shape, own id or null, longitudes and latitudes ring by ring, values. */
type Packed = readonly [
  kind: string,
  shape: number,
  id: string | number | null,
  rings: readonly (readonly number[])[],
  ...values: readonly unknown[],
];

export interface FeaturePacker {
  readonly pack: (read: Pick<ReadFeature, "feature" | "kind">) => string;
  /** Those met so far: to be kept with the texts. */
  readonly shapes: readonly FeatureShape[];
}

export function featurePacker(): FeaturePacker {
  const shapes: FeatureShape[] = [];
  const numbers = new Map<string, number>();
  const numberOf = (shape: FeatureShape): number => {
    const key = [shape.type, ...shape.names].join(" ");
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, shapes.length);
    return shapes.push(shape) - 1;
  };
  return {
    shapes,
    pack: ({ feature: { id, geometry, properties }, kind }) => {
      const read = Object.entries(properties).filter(
        ([name, value]) => isRead(name) && value !== undefined,
      );
      const shape = numberOf({ type: geometry.type, names: read.map(([name]) => name) });
      const values = read.map(([, value]) => value);
      const packed: Packed = [kind.id, shape, id ?? null, flatRings(geometry), ...values];
      return JSON.stringify(packed);
    },
  };
}

function isRead(name: string): boolean {
  return knownProperties.has(name) || writtenProperties.has(name) || name === "wideberth";
}

/** Without heights, which nobody reads, and without the corner that closes a ring. */
function flatRings(geometry: Feature["geometry"]): Packed[3] {
  if (geometry.type === "Point") return [geometry.coordinates.slice(0, 2)];
  return geometry.coordinates.map((ring) =>
    ring.slice(0, -1).flatMap(([longitude = 0, latitude = 0]) => [longitude, latitude]),
  );
}

/** The feature again, with the id of its kind. */
export function unpackFeature(
  text: string,
  shapes: readonly FeatureShape[],
): { readonly feature: Feature; readonly kind: string } {
  const [kind, number, id, rings, ...values] = JSON.parse(text) as Packed;
  const shape = shapes[number];
  if (!shape) throw new Error(`shape ${number}`);
  const properties = Object.fromEntries(shape.names.map((name, at) => [name, values[at]]));
  const coordinates = shape.type === "Point" ? rings[0] : rings.map(closedRing);
  const feature: Partial<Feature> = {
    ...(id === null ? {} : { id }),
    geometry: { type: shape.type, coordinates } as Feature["geometry"],
    properties: properties as Feature["properties"],
  };
  // What it is, a Feature, is not kept: nobody asks it of one.
  return { feature: feature as Feature, kind };
}

function closedRing(flat: readonly number[]): readonly (readonly number[])[] {
  const ring: (readonly number[])[] = [];
  for (let at = 0; at < flat.length; at += 2) ring.push([flat[at] ?? 0, flat[at + 1] ?? 0]);
  return [...ring, ring[0] ?? []];
}
