/**
 * A register in little memory: what decides which plantings matter to each other in flat arrays,
 * the features themselves as lean JSON outside the heap, parsed again area by area.
 */
import type { CropBook } from "../core/kinds/crop-book.ts";
import { type RegisterGround } from "../core/exchange/register-areas.ts";
import { leanFeature, reachOf } from "../core/exchange/register.ts";
import type { Feature } from "../core/exchange/geojson-schema.ts";
import { type ReadFeature, placesOf } from "../core/exchange/read-geojson.ts";
import { type LonLat, localFrame, placeSpan } from "../core/geometry/local-frame.ts";

const SLAB_BYTES = 16_000_000;
/**
 * Bounds are those of the corners of a box in degrees; its sides are curved on the sheet, by less
 * than this share of its size and this many metres.
 */
const MARGIN_SHARE = 0.001;
const MARGIN_M = 0.01;

/** A flat array that grows. */
function column<T extends Float64Array | Uint32Array | Uint16Array>(make: (length: number) => T) {
  let values = make(1024);
  let length = 0;
  return {
    push: (value: number): void => {
      if (length === values.length) {
        const larger = make(length * 2);
        larger.set(values);
        values = larger;
      }
      values[length] = value;
      length += 1;
    },
    at: (place: number): number => values[place] ?? 0,
    taken: (): T => values.subarray(0, length) as T,
  };
}

export type RegisterStore = ReturnType<typeof registerStore>;

export function registerStore(book: CropBook) {
  const degrees = column((length) => new Float64Array(length));
  const reach = column((length) => new Float64Array(length));
  const group = column((length) => new Uint16Array(length));
  const index = column((length) => new Uint32Array(length));
  const slabOf = column((length) => new Uint16Array(length));
  const start = column((length) => new Uint32Array(length));
  const size = column((length) => new Uint32Array(length));
  const groups = new Map<string, number>();
  const slabs: Buffer[] = [];
  const span = placeSpan();
  let used = SLAB_BYTES;
  let count = 0;

  const keep = (json: string): void => {
    const bytes = Buffer.byteLength(json);
    if (used + bytes > (slabs.at(-1)?.length ?? 0)) {
      slabs.push(Buffer.allocUnsafe(Math.max(SLAB_BYTES, bytes)));
      used = 0;
    }
    slabOf.push(slabs.length - 1);
    start.push(used);
    size.push(bytes);
    used += (slabs.at(-1) as Buffer).write(json, used);
  };

  return {
    count: (): number => count,
    add: (read: ReadFeature): void => {
      const places = placesOf(read.feature);
      for (const place of places) span.add(place);
      for (const side of sidesOf(places)) degrees.push(side);
      reach.push(reachOf(read));
      const known = groups.get(read.kind.group) ?? groups.size;
      groups.set(read.kind.group, known);
      group.push(known);
      index.push(read.index);
      keep(JSON.stringify({ kind: read.kind.id, ...leanFeature(read.feature) }));
      count += 1;
    },
    middle: (): LonLat => span.middle(),
    ground: (): RegisterGround => ({
      boxes: boxesFrom(degrees.taken(), span.middle()),
      reach: reach.taken(),
      group: group.taken(),
    }),
    feature: (place: number): Pick<ReadFeature, "index" | "feature" | "kind"> => {
      const slab = slabs[slabOf.at(place)] as Buffer;
      const from = start.at(place);
      const kept = JSON.parse(slab.toString("utf8", from, from + size.at(place))) as Feature & {
        readonly kind: string;
      };
      const kind = book.kind(kept.kind);
      if (!kind) throw new Error(`kind ${kept.kind} was known when the register was read`);
      return { index: index.at(place), feature: kept, kind };
    },
  };
}

/** West, south, east, north of some places; east is beyond 180 where they lie across the date line. */
function sidesOf(places: readonly LonLat[]): readonly [number, number, number, number] {
  const west0 = places[0]?.longitude ?? 0;
  let [west, south, east, north] = [west0, Infinity, west0, -Infinity];
  for (const { longitude, latitude } of places) {
    const along = longitude - west0;
    const near = west0 + (along > 180 ? along - 360 : along < -180 ? along + 360 : along);
    west = Math.min(west, near);
    east = Math.max(east, near);
    south = Math.min(south, latitude);
    north = Math.max(north, latitude);
  }
  return [west, south, east, north];
}

/** Bounds in sheet metres from sides in degrees. */
function boxesFrom(degrees: Float64Array, middle: LonLat): Float64Array {
  const frame = localFrame(middle);
  const boxes = new Float64Array(degrees.length);
  for (let at = 0; at < degrees.length; at += 4) {
    const [west = 0, south = 0, east = 0, north = 0] = degrees.subarray(at, at + 4);
    const corners = [west, east].flatMap((longitude) =>
      [south, north].map((latitude) => frame.toSheet({ longitude, latitude })),
    );
    const xs = corners.map(({ x }) => x);
    const ys = corners.map(({ y }) => y);
    const [minX, minY, maxX, maxY] = [
      Math.min(...xs),
      Math.min(...ys),
      Math.max(...xs),
      Math.max(...ys),
    ];
    const margin = MARGIN_M + MARGIN_SHARE * Math.max(maxX - minX, maxY - minY);
    boxes.set([minX - margin, minY - margin, maxX + margin, maxY + margin], at);
  }
  return boxes;
}
