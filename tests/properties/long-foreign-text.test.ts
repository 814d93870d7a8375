/**
 * Readers of foreign text fed the worst of every pattern in them: one text of 200,000 characters
 * costs about what ten of 20,000 cost. With time growing by the square it would be ten times as
 * much. Best of some rounds, in one run; no time is asserted by itself.
 */
import { expect, test } from "vitest";
import { readDegrees as readSideDegrees } from "../../src/canvas/tools/typed-side.ts";
import { nextBlockCode } from "../../src/core/beds/code-series.ts";
import { readDailyTemperatures } from "../../src/core/calendar/read-daily-temperatures.ts";
import { readNormals } from "../../src/core/calendar/read-normals.ts";
import { readTemperature } from "../../src/core/calendar/temperature-text.ts";
import { readVarietiesCsv } from "../../src/core/exchange/read-varieties-csv.ts";
import { icalendar } from "../../src/core/files/icalendar.ts";
import { csvFile, plainCell } from "../../src/core/formats/csv-file.ts";
import { xmlElements } from "../../src/core/formats/xml-elements.ts";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { readMeasures } from "../../src/core/labels/label-measures.ts";
import { parseLength } from "../../src/core/model/length.ts";
import { parseJson } from "../../src/core/model/parse-json.ts";
import { readTraces } from "../../src/core/outlines/read-traces.ts";
import { exportFileName } from "../../src/core/page/file-name.ts";
import { readHeatSum } from "../../src/panel/bloom/heat-text.ts";
import { readDay } from "../../src/panel/form/day-text.ts";
import { readFieldArea } from "../../src/panel/particulars/field-area.ts";
import { readPosition } from "../../src/core/formats/position-text.ts";
import { readCount, readRatio, readTurn } from "../../src/panel/form/number-text.ts";
import { readRange } from "../../src/panel/form/range-text.ts";
import { littlePlan } from "../support/little-plan.ts";

const LONG = 200_000;
const PARTS = 10;
/** A line is ten times from a square: halfway between 1 and 10 on the scale of ratios. */
const MOST = 10 ** 0.5;
const ROUNDS = 5;

/** Runs of one sign with something before and after it, and pairs taken in turn. */
const SIGNS = [" ", "0", "1", "a", "-", ".", ",", "'", '"', "=", "&", "<", "\u00B0", "\n"];
const PAIRS = ["1 ", "1,", "1.", "a ", "a=", "&a", "<a", "' ", "-_", "1'", "1;", "\t1"];
const worst = (length: number) =>
  [...SIGNS, ...PAIRS].flatMap((unit) => {
    const run = unit.repeat(length / unit.length);
    return [`${run}\u0000`, `1${run}x`];
  });

const book = cropBook();
const plan = littlePlan;
const [layout] = plan.layouts;
if (!layout) throw new Error("no layout");
const readers: readonly (readonly [string, (text: string) => unknown])[] = [
  ["a length", (text) => parseLength(text, "m", true)],
  ["a side's direction", readSideDegrees],
  ["a code", nextBlockCode],
  ["a temperature", (text) => readTemperature(text, "C")],
  ["a table of normals", (text) => readNormals(`Jan ${text}`, "C")],
  [
    "a table of days",
    (text) => readDailyTemperatures(`date,min,max\n2026-01-01,${text}`, "x", "C"),
  ],
  [
    "a seed list's name",
    (text) => readVarietiesCsv(`name,kind\n"${text}",tomato`, "x", plan, book),
  ],
  ["a seed list", (text) => readVarietiesCsv(text, "x", plan, book)],
  ["an XML text", (text) => xmlElements(`<a b="${text.replaceAll(/[<"]/g, "y")}">${text}</a>`)],
  ["an XML element", (text) => xmlElements(`<a ${text}`)],
  ["a waypoint's name", (text) => readTraces(waypoint(text), "x")],
  ["JSON", (text) => parseJson(text, "x")],
  ["JSON with a fault after a text", (text) => parseJson(`{"a": ${JSON.stringify(text)} ;}`, "x")],
  ["a label's size", readMeasures],
  ["a file name", (name) => exportFileName({ ...plan, title: name }, layout, name, "x")],
  ["a calendar", (title) => icalendar({ ...plan, title }, layout, [], "20260101T000000Z")],
  ["a cell", (text) => plainCell(csvFile(["a"], [[text]]))],
  ["a sum of heat", (text) => readHeatSum(text, "C")],
  ["a day", (text) => readDay(text, { first: 0, last: 364 })],
  ["an area", (text) => readFieldArea(text, "m")],
  ["a count", readCount],
  ["a turn", readTurn],
  ["a scale", readRatio],
  ["degrees", (text) => readPosition(text, "latitude")],
  ["a span of days", readRange],
  ["a kind's name", (text) => book.find(text)],
];

function waypoint(text: string): string {
  const name = text.replaceAll(/[<&\u0000]/g, "y");
  return `<gpx><wpt lat="1" lon="2"><name>${name}</name></wpt></gpx>`;
}

/** How much longer one takes than the other; the least of some rounds, for a busy machine. */
function timesLonger(work: () => void, other: () => void): number {
  let least = Infinity;
  for (let round = 0; round < ROUNDS && least > MOST; round += 1) {
    // What is done in no time cannot be compared; a square of this length takes seconds.
    least = Math.min(least, milliseconds(work) / Math.max(milliseconds(other), 10));
  }
  return least;
}

function milliseconds(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

test("a reader that takes the square of a text's length is found", () => {
  const square = (text: string) => /\s*days?$/.test(text);
  const [long, short] = [" ".repeat(LONG / 8), " ".repeat(LONG / 8 / PARTS)];
  const ratio = timesLonger(
    () => square(`${long}x`),
    () => Array.from({ length: PARTS }, () => square(`${short}x`)),
  );
  expect(ratio).toBeGreaterThan(MOST);
});

test.each(readers)("%s of any length is read in time with it", (_, read) => {
  const short = worst(LONG / PARTS);
  const slow = worst(LONG).flatMap((text, index) => {
    const part = short[index] ?? "";
    const ratio = timesLonger(
      () => read(text),
      () => Array.from({ length: PARTS }, () => read(part)),
    );
    return ratio > MOST ? [`${JSON.stringify(text.slice(0, 8))}: ${ratio.toFixed(1)}`] : [];
  });
  expect(slow).toEqual([]);
});
