/**
 * A register in little memory: what decides which plantings matter to each other in flat arrays,
 * the features themselves as lean JSON, parsed again area by area. All of it lies in memory that
 * threads share: none holds a copy.
 */
import type { CropBook } from "../../core/kinds/crop-book.ts";
import type { RegisterGround } from "../../core/exchange/register-areas.ts";
import type { Feature } from "../../core/exchange/geojson-schema.ts";
import type { ReadFeature } from "../../core/exchange/read-geojson.ts";
import { type LonLat, localFrame, placeSpan } from "../../core/geometry/local-frame.ts";
import type { BatchRead } from "./read-batch.ts";

/**
 * Bounds are those of the corners of a box in degrees; its sides are curved on the sheet, by less
 * than this share of its size and this many metres.
 */
const MARGIN_SHARE = 0.001;
const MARGIN_M = 0.01;

/** A flat array in shared memory that grows. */
function column<T extends Float64Array | Uint32Array | Uint16Array>(
  width: number,
  view: (memory: SharedArrayBuffer) => T,
) {
  let values = view(new SharedArrayBuffer(1024 * width));
  let length = 0;
  return {
    push: (value: number): void => {
      if (length === values.length) {
        const larger = view(new SharedArrayBuffer(length * 2 * width));
        larger.set(values);
        values = larger;
      }
      values[length] = value;
      length += 1;
    },
    taken: (): T => values.subarray(0, length) as T,
  };
}

const doubles = () => column(8, (memory) => new Float64Array(memory));
const longs = () => column(4, (memory) => new Uint32Array(memory));
const shorts = () => column(2, (memory) => new Uint16Array(memory));

/** The features of a register; what one thread hands another. */
export interface StoredFeatures {
  readonly json: readonly Uint8Array[];
  /** Of each feature: which of the texts of `json` it is in, where it begins there and ends. */
  readonly part: Uint16Array;
  readonly start: Uint32Array;
  readonly end: Uint32Array;
  /** Its place among the texts of the file, from 0. */
  readonly index: Uint32Array;
}

export function registerStore() {
  const degrees = doubles();
  const reach = doubles();
  const group = shorts();
  const index = longs();
  const part = shorts();
  const start = longs();
  const end = longs();
  const groups = new Map<string, number>();
  const json: Uint8Array[] = [];
  const span = placeSpan();
  let count = 0;

  return {
    count: (): number => count,
    /** @param places of the features of the batch among the texts of the file */
    add: (batch: BatchRead, places: readonly number[]): void => {
      if (batch.first === null) return;
      if (count === 0) span.add(batch.first);
      for (let at = 0; at < batch.degrees.length; at += 4) {
        const [west = 0, south = 0, east = 0, north = 0] = batch.degrees.subarray(at, at + 4);
        span.add({ longitude: west, latitude: south });
        span.add({ longitude: east, latitude: north });
      }
      batch.degrees.forEach(degrees.push);
      batch.reach.forEach(reach.push);
      batch.groups.forEach((name, at) => {
        const known = groups.get(name) ?? groups.size;
        groups.set(name, known);
        group.push(known);
        part.push(json.length);
        start.push(at === 0 ? 0 : (batch.ends[at - 1] as number));
        end.push(batch.ends[at] as number);
        index.push(places[at] as number);
      });
      json.push(batch.json);
      count += batch.groups.length;
    },
    middle: (): LonLat => span.middle(),
    ground: (): RegisterGround => ({
      boxes: boxesFrom(degrees.taken(), span.middle()),
      reach: reach.taken(),
      group: group.taken(),
    }),
    features: (): StoredFeatures => ({
      json,
      part: part.taken(),
      start: start.taken(),
      end: end.taken(),
      index: index.taken(),
    }),
  };
}

/** One feature, parsed anew. */
export function storedFeature(
  { json, part, start, end, index }: StoredFeatures,
  place: number,
  book: CropBook,
): Pick<ReadFeature, "index" | "feature" | "kind"> {
  const bytes = json[part[place] as number] as Uint8Array;
  const text = Buffer.from(bytes.buffer).toString("utf8", start[place], end[place]);
  const kept = JSON.parse(text) as Feature & { readonly kind: string };
  const kind = book.kind(kept.kind);
  if (!kind) throw new Error(`kind ${kept.kind} was known when the register was read`);
  return { index: index[place] as number, feature: kept, kind };
}

/** Bounds in sheet metres from sides in degrees. */
function boxesFrom(degrees: Float64Array, middle: LonLat): Float64Array {
  const frame = localFrame(middle);
  const boxes = new Float64Array(degrees.length);
  for (let at = 0; at < degrees.length; at += 4) {
    let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
    for (let corner = 0; corner < 4; corner += 1) {
      const { x, y } = frame.toSheet({
        longitude: degrees[at + (corner % 2) * 2] as number,
        latitude: degrees[at + 1 + (corner >> 1) * 2] as number,
      });
      minX = Math.min(minX, x);
      minY = Math.min(minY, y);
      maxX = Math.max(maxX, x);
      maxY = Math.max(maxY, y);
    }
    const margin = MARGIN_M + MARGIN_SHARE * Math.max(maxX - minX, maxY - minY);
    boxes[at] = minX - margin;
    boxes[at + 1] = minY - margin;
    boxes[at + 2] = maxX + margin;
    boxes[at + 3] = maxY + margin;
  }
  return boxes;
}
