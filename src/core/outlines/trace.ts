/** What a file of outlines holds, before it is said what each becomes. */
import type { LonLat } from "../geometry/local-frame.ts";

export type TraceSort = "area" | "line" | "point";

export interface Trace {
  /** Its place in the file's list, from 1. */
  readonly number: number;
  readonly name: string;
  readonly sort: TraceSort;
  /** What it is in the file, for the list: `track`, `Polygon`. */
  readonly what: string;
  /** In order; an area's first place is not repeated at its end. */
  readonly places: readonly LonLat[];
  readonly holes: readonly (readonly LonLat[])[];
  /** What the file itself says it is, where Wideberth wrote it. */
  readonly role: string | null;
}

export type NewTrace = Omit<Trace, "number">;

export const TRACE_LIMITS = { traces: 2000, places: 200_000 } as const;

/** A place, or null when the numbers are no longitude and latitude (WGS 84, degrees). */
export function lonLat(longitude: number, latitude: number): LonLat | null {
  const isPlace =
    Math.abs(longitude) <= 180 && Math.abs(latitude) <= 90 && !Number.isNaN(longitude + latitude);
  return isPlace ? { longitude, latitude } : null;
}

/** Without places that repeat the one before; for areas also without the closing one. */
export function distinctPlaces(places: readonly LonLat[], isClosed: boolean): readonly LonLat[] {
  const isSame = (a: LonLat | undefined, b: LonLat | undefined) =>
    a?.longitude === b?.longitude && a?.latitude === b?.latitude;
  const kept = places.filter((place, index) => index === 0 || !isSame(place, places[index - 1]));
  return isClosed && kept.length > 1 && isSame(kept[0], kept.at(-1)) ? kept.slice(0, -1) : kept;
}
