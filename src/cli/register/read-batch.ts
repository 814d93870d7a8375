/** One batch of a register's texts read and checked: into flat arrays, and lean JSON that threads share. */
import type { CropBook } from "../../core/kinds/crop-book.ts";
import { leanFeature, reachOf, readRegisterFeature } from "../../core/exchange/register.ts";
import { bloomDays, isSource } from "../../core/exchange/geojson-plan.ts";
import { type ReadFeature, idText, placesOf } from "../../core/exchange/read-geojson.ts";
import type { LonLat } from "../../core/geometry/local-frame.ts";
import { parseJson } from "../../core/model/parse-json.ts";
import type { Problem } from "../../core/model/problem.ts";
import { type JsonText, type TextBatch, textsOf } from "./json-texts.ts";

/** What one text was. */
export const WAS = { ground: 0, planting: 1, source: 2, bad: 3 } as const;

export interface BatchRead {
  /** Line of each text, and what it was: one of `WAS`. */
  readonly lines: Uint32Array;
  readonly was: Uint8Array;
  /** Of each feature in turn, ground and bad ones left out: its own id, null when it has none. */
  readonly ids: readonly (string | null)[];
  /** As messages name it. */
  readonly objects: readonly string[];
  readonly groups: readonly string[];
  /** The first corner of the first feature. */
  readonly first: LonLat | null;
  /** West, south, east, north of each, degrees; east is beyond 180 across the date line. */
  readonly degrees: Float64Array;
  /** Metres within which others matter to each. */
  readonly reach: Float64Array;
  /** Earliest and latest day of bloom; none, one or two. */
  readonly days: readonly number[];
  /** All features as JSON, and where each ends. */
  readonly json: Uint8Array<SharedArrayBuffer>;
  readonly ends: Uint32Array;
  /** All that is wrong, by text, in the order of the bad texts. */
  readonly problems: readonly (readonly Problem[])[];
}

export function readBatch(batch: TextBatch, file: string, book: CropBook): BatchRead {
  const [lines, was, ids, objects]: [number[], number[], (string | null)[], string[]] = [
    [],
    [],
    [],
    [],
  ];
  const [groups, degrees, reach]: [string[], number[], number[]] = [[], [], []];
  const [texts, ends, problems]: [string[], number[], (readonly Problem[])[]] = [[], [], []];
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
    const { feature, kind, object } = read.value;
    was.push(isSource(feature) ? WAS.source : WAS.planting);
    ids.push(feature.id === undefined ? null : String(feature.id));
    objects.push(object);
    groups.push(kind.group);
    const places = placesOf(feature);
    first ??= places[0] ?? null;
    degrees.push(...sidesOf(places));
    reach.push(reachOf(read.value));
    days = outermost([...days, ...bloomDays(feature)]);
    const json = leanJson(read.value);
    bytes += Buffer.byteLength(json);
    texts.push(json);
    ends.push(bytes);
  }
  const json = new Uint8Array(new SharedArrayBuffer(bytes));
  Buffer.from(json.buffer).write(texts.join(""));
  return {
    lines: Uint32Array.from(lines),
    was: Uint8Array.from(was),
    ids,
    objects,
    groups,
    first,
    degrees: Float64Array.from(degrees),
    reach: Float64Array.from(reach),
    days,
    json,
    ends: Uint32Array.from(ends),
    problems,
  };
}

function leanJson({ feature, kind }: ReadFeature): string {
  return JSON.stringify({ kind: kind.id, ...leanFeature(feature) });
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
