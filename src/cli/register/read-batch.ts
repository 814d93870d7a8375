/** One batch of a register's texts read and checked: into flat arrays, and lean JSON that threads share. */
import type { CropBook } from "../../core/kinds/crop-book.ts";
import { type FeatureShape, featurePacker } from "../../core/exchange/packed-feature.ts";
import { reachOf, readRegisterFeature } from "../../core/exchange/register.ts";
import { bloomDays, isSource } from "../../core/exchange/geojson-plan.ts";
import { idText, placesOf } from "../../core/exchange/read-geojson.ts";
import type { LonLat } from "../../core/geometry/local-frame.ts";
import { parseJson } from "../../core/model/parse-json.ts";
import type { Problem } from "../../core/model/problem.ts";
import { type JsonText, type TextBatch, textsOf } from "./json-texts.ts";
import { idNumber } from "./seen-ids.ts";

/** What one text was. */
export const WAS = { ground: 0, planting: 1, source: 2, bad: 3 } as const;

/** In flat arrays, which one thread hands another without a copy. */
export interface BatchRead {
  /** Line of each text, and what it was: one of `WAS`. */
  readonly lines: Uint32Array<ArrayBuffer>;
  readonly was: Uint8Array<ArrayBuffer>;
  /** Of each feature in turn, ground and bad ones left out: whether it has an id, and its number. */
  readonly hasId: Uint8Array<ArrayBuffer>;
  readonly idNumbers: Uint32Array<ArrayBuffer>;
  /** Crossing groups in the order they are met, and the place of each feature's among them. */
  readonly groups: readonly string[];
  readonly group: Uint16Array<ArrayBuffer>;
  /** The first corner of the first feature. */
  readonly first: LonLat | null;
  /** West, south, east, north of each, degrees; east is beyond 180 across the date line. */
  readonly degrees: Float64Array<ArrayBuffer>;
  /** Metres within which others matter to each. */
  readonly reach: Float64Array<ArrayBuffer>;
  /** Earliest and latest day of bloom; none, one or two. */
  readonly days: readonly number[];
  /** All features, packed, where each ends, and their shapes. */
  readonly json: Uint8Array<SharedArrayBuffer>;
  readonly ends: Uint32Array<ArrayBuffer>;
  readonly shapes: readonly FeatureShape[];
  /** All that is wrong, by text, in the order of the bad texts. */
  readonly problems: readonly (readonly Problem[])[];
}

/** What of it can be handed over. */
export function buffersOf(read: BatchRead): readonly ArrayBuffer[] {
  const { lines, was, hasId, idNumbers, group, degrees, reach, ends } = read;
  return [lines, was, hasId, idNumbers, group, degrees, reach, ends].map(({ buffer }) => buffer);
}

export function readBatch(batch: TextBatch, file: string, book: CropBook): BatchRead {
  const [lines, was, problems]: [number[], number[], (readonly Problem[])[]] = [[], [], []];
  const [hasId, idNumbers, group]: [number[], number[], number[]] = [[], [], []];
  const [degrees, reach]: [number[], number[]] = [[], []];
  const [texts, ends]: [string[], number[]] = [[], []];
  const groups = new Map<string, number>();
  const packer = featurePacker();
  let days: readonly number[] = [];
  let first: LonLat | null = null;
  let bytes = 0;
  for (const text of textsOf(batch, file)) {
    const read = readText(text, file, book);
    lines.push(text.line);
    if (!read.ok) {
      was.push(WAS.bad);
      problems.push(read.problems);
      continue;
    }
    if (read.value === null) {
      was.push(WAS.ground);
      continue;
    }
    const { feature, kind } = read.value;
    was.push(isSource(feature) ? WAS.source : WAS.planting);
    hasId.push(feature.id === undefined ? 0 : 1);
    idNumbers.push(feature.id === undefined ? 0 : idNumber(String(feature.id)));
    const number = groups.get(kind.group) ?? groups.size;
    groups.set(kind.group, number);
    group.push(number);
    const places = placesOf(feature);
    first ??= places[0] ?? null;
    degrees.push(...sidesOf(places));
    reach.push(reachOf(read.value));
    days = outermost([...days, ...bloomDays(feature)]);
    const packed = packer.pack(read.value);
    bytes += Buffer.byteLength(packed);
    texts.push(packed);
    ends.push(bytes);
  }
  const json = new Uint8Array(new SharedArrayBuffer(bytes));
  Buffer.from(json.buffer).write(texts.join(""));
  return {
    lines: Uint32Array.from(lines),
    was: Uint8Array.from(was),
    hasId: Uint8Array.from(hasId),
    idNumbers: Uint32Array.from(idNumbers),
    groups: [...groups.keys()],
    group: Uint16Array.from(group),
    first,
    degrees: Float64Array.from(degrees),
    reach: Float64Array.from(reach),
    days,
    json,
    ends: Uint32Array.from(ends),
    shapes: packer.shapes,
    problems,
  };
}

/** The least and greatest of some numbers. */
export function outermost(values: readonly number[]): readonly number[] {
  return values.length < 2 ? values : [Math.min(...values), Math.max(...values)];
}

function readText({ line, text }: JsonText, file: string, book: CropBook) {
  const parsed = parseJson(text, file);
  if (!parsed.ok) {
    const problems = parsed.problems.map((problem) => ({
      ...problem,
      object: `line ${line}`,
      got: problem.got.replace(
        /line (\d+)/,
        (_, inText: string) => `line ${line - 1 - blank(text) + Number(inText)}`,
      ),
    }));
    return { ok: false as const, problems };
  }
  const object = `line ${line}${idText(parsed.value)}`;
  // Its place in the file is known only when the batches before are read, and not needed here.
  return readRegisterFeature(parsed.value, { file, object, index: 0 }, book);
}

/** Line breaks before the text proper. */
function blank(text: string): number {
  return text.slice(0, text.length - text.trimStart().length).split("\n").length - 1;
}

/** West, south, east, north of some places; east is beyond 180 where they lie across the date line. */
function sidesOf(places: readonly LonLat[]): readonly [number, number, number, number] {
  const west0 = places[0]?.longitude ?? 0;
  let [west, south, east, north] = [west0, Infinity, west0, -Infinity];
  for (const { longitude, latitude } of places) {
    const along = longitude - west0;
    const near = along > 180 ? longitude - 360 : along < -180 ? longitude + 360 : longitude;
    west = Math.min(west, near);
    east = Math.max(east, near);
    south = Math.min(south, latitude);
    north = Math.max(north, latitude);
  }
  return [west, south, east, north];
}
