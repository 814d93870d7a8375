/**
 * A register in little memory: what decides which plantings matter to each other in flat arrays,
 * the features themselves as lean JSON, parsed again area by area. All of it lies in memory that
 * threads share: none holds a copy.
 */
import type { CropBook } from "../../core/kinds/crop-book.ts";
import type { RegisterGround } from "../../core/exchange/register-areas.ts";
import { featureId } from "../../core/exchange/geojson-plan.ts";
import type { Feature } from "../../core/exchange/geojson-schema.ts";
import { type FeatureShape, unpackFeature } from "../../core/exchange/packed-feature.ts";
import type { ReadFeature } from "../../core/exchange/read-geojson.ts";
import { type LonLat, localFrame, placeSpan } from "../../core/geometry/local-frame.ts";
import type { BatchRead } from "./read-batch.ts";

/**
 * Bounds are those of the corners of a box in degrees; its sides are curved on the sheet, by less
 * than this share of its size and this many metres.
 */
const MARGIN_SHARE = 0.001;
const MARGIN_M = 0.01;

/** More would not fit into the memory promised. */
export const MAX_FEATURES = 2_000_000;

/**
 * Flat arrays in shared memory, from the start as long as they may ever be: what is never written of
 * them takes addresses and no memory, while one that grows lies in memory twice each time it does.
 */
function emptyColumns() {
  const memory = (width: number) => new SharedArrayBuffer(MAX_FEATURES * width);
  return {
    /** West, south, east, north of each feature. */
    sides: new Float64Array(memory(32)),
    reach: new Float64Array(memory(8)),
    group: new Uint16Array(memory(2)),
    part: new Uint16Array(memory(2)),
    start: new Uint32Array(memory(4)),
    end: new Uint32Array(memory(4)),
    index: new Uint32Array(memory(4)),
    line: new Uint32Array(memory(4)),
  };
}

/** The features of a register; what one thread hands another. */
export interface StoredFeatures {
  readonly json: readonly Uint8Array[];
  /** Shapes of each of these. */
  readonly shapes: readonly (readonly FeatureShape[])[];
  /** Of each feature: which of the texts of `json` it is in, where it begins there and ends. */
  readonly part: Uint16Array;
  readonly start: Uint32Array;
  readonly end: Uint32Array;
  /** Its place among the texts of the file, from 0. */
  readonly index: Uint32Array;
}

export type RegisterStore = ReturnType<typeof registerStore>;

export function registerStore() {
  const columns = emptyColumns();
  const groups = new Map<string, number>();
  const json: Uint8Array[] = [];
  const shapes: (readonly FeatureShape[])[] = [];
  const span = placeSpan();
  let count = 0;

  /** Number of a crossing group: they are numbered as they are met. */
  const numberOf = (group: string): number => {
    const known = groups.get(group) ?? groups.size;
    groups.set(group, known);
    return known;
  };
  const taken = <T extends Uint32Array | Uint16Array | Float64Array>(column: T, width = 1): T =>
    column.subarray(0, count * width) as T;
  const features = (): StoredFeatures => ({
    json,
    shapes,
    part: taken(columns.part),
    start: taken(columns.start),
    end: taken(columns.end),
    index: taken(columns.index),
  });
  const featureAt = (place: number): Feature => unpacked(features(), place).feature;

  return {
    count: (): number => count,
    features,
    featureAt,
    /** Line of the file on which it begins. */
    lineAt: (place: number): number => columns.line[place] as number,
    /** Its own id, else that made of its place in the file. */
    idAt: (place: number): string =>
      String(featureId({ feature: featureAt(place), index: columns.index[place] as number })),
    /**
     * @param indexes of the features of the batch: their places among the texts of the file
     * @param lines on which they begin
     */
    add: (batch: BatchRead, indexes: readonly number[], lines: readonly number[]): void => {
      if (batch.first === null) return;
      if (count === 0) span.add(batch.first);
      addSides(span, batch.degrees);
      columns.sides.set(batch.degrees, count * 4);
      columns.reach.set(batch.reach, count);
      const numbers = batch.groups.map(numberOf);
      columns.group.set(
        batch.group.map((number) => numbers[number] as number),
        count,
      );
      columns.part.fill(json.length, count, count + batch.ends.length);
      columns.start.set(batch.ends.subarray(0, -1), count + 1);
      columns.end.set(batch.ends, count);
      columns.index.set(indexes, count);
      columns.line.set(lines, count);
      json.push(batch.json);
      shapes.push(batch.shapes);
      count += batch.ends.length;
    },
    middle: (): LonLat => span.middle(),
    /** To be asked for once, when all are there: sides in degrees become metres where they lie. */
    ground: (): RegisterGround => ({
      boxes: toSheet(taken(columns.sides, 4), span.middle()),
      reach: taken(columns.reach),
      group: taken(columns.group),
    }),
  };
}

function addSides(span: ReturnType<typeof placeSpan>, degrees: Float64Array): void {
  for (let at = 0; at < degrees.length; at += 4) {
    span.add({ longitude: degrees[at] as number, latitude: degrees[at + 1] as number });
    span.add({ longitude: degrees[at + 2] as number, latitude: degrees[at + 3] as number });
  }
}

/** One feature, parsed anew. */
export function storedFeature(
  features: StoredFeatures,
  place: number,
  book: CropBook,
): Pick<ReadFeature, "index" | "feature" | "kind"> {
  const { feature, kind: kindId } = unpacked(features, place);
  const kind = book.kind(kindId);
  if (!kind) throw new Error(`kind ${kindId} was known when the register was read`);
  return { index: features.index[place] as number, feature, kind };
}

function unpacked({ json, shapes, part, start, end }: StoredFeatures, place: number) {
  const number = part[place] as number;
  const { buffer } = json[number] as Uint8Array;
  const text = Buffer.from(buffer).toString("utf8", start[place], end[place]);
  return unpackFeature(text, shapes[number] ?? []);
}

/** Bounds in sheet metres in the place of sides in degrees. */
function toSheet(sides: Float64Array, middle: LonLat): Float64Array {
  const frame = localFrame(middle);
  for (let at = 0; at < sides.length; at += 4) {
    let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
    for (let corner = 0; corner < 4; corner += 1) {
      const { x, y } = frame.toSheet({
        longitude: sides[at + (corner % 2) * 2] as number,
        latitude: sides[at + 1 + (corner >> 1) * 2] as number,
      });
      minX = Math.min(minX, x);
      minY = Math.min(minY, y);
      maxX = Math.max(maxX, x);
      maxY = Math.max(maxY, y);
    }
    const margin = MARGIN_M + MARGIN_SHARE * Math.max(maxX - minX, maxY - minY);
    sides[at] = minX - margin;
    sides[at + 1] = minY - margin;
    sides[at + 2] = maxX + margin;
    sides[at + 3] = maxY + margin;
  }
  return sides;
}
