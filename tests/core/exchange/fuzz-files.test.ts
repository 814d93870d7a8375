/**
 * Ten thousand damaged files, the same ones every time: each is refused with a reason or opens as
 * a plan that is valid throughout. Nothing crashes, hangs, or lets a number in that is none.
 */
import { readFileSync, readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { planBook } from "../../../src/core/kinds/own-kinds.ts";
import { openPlanText } from "../../../src/core/exchange/open-plan.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";
import { type SeededRandom, seededRandom } from "../../properties/seeded-random.ts";

const FILES = 10_000;
/** No file of a few kilobytes may keep a person waiting, milliseconds. */
const PATIENCE_MS = 2000;

const folder = new URL("../../fixtures/", import.meta.url);
const originals = [
  "plans/small-garden.json",
  ...readdirSync(new URL("geojson/valid/", folder)).map((name) => `geojson/valid/${name}`),
].map((path) => readFileSync(new URL(path, folder), "utf8"));

/** Values that have harmed programs before. */
const BAD_VALUES = [
  "1e999",
  "-1e999",
  "1e-320",
  "-0",
  "9007199254740993",
  "1e12",
  "0",
  "-1",
  "0.5",
  "null",
  "true",
  '""',
  '"12"',
  "[]",
  "{}",
  "[[]]",
  '"__proto__"',
  '"\\u0000"',
  '"\\ud800"',
  '"\\u202etxt.exe"',
  '"2025-02-30"',
  '"0000-00-00"',
  '"<script>alert(1)</script>"',
  '"=1+1"',
  '"NaN"',
  "NaN",
  '{"__proto__":{"polluted":1}}',
  '{"constructor":{"prototype":{"polluted":1}}}',
];

/** One way of damaging a text each. */
const damages: readonly ((text: string, random: SeededRandom) => string)[] = [
  // One bit of one character.
  (text, random) => {
    const at = Math.floor(random.next() * text.length);
    const flipped = text.charCodeAt(at) ^ (1 << Math.floor(random.next() * 8));
    return text.slice(0, at) + String.fromCharCode(flipped) + text.slice(at + 1);
  },
  // The rest is missing.
  (text, random) => text.slice(0, Math.floor(random.next() * text.length)),
  // A piece is missing, or is there twice.
  (text, random) => {
    const from = Math.floor(random.next() * text.length);
    const to = from + Math.floor(random.next() * 200);
    return random.next() < 0.5
      ? text.slice(0, from) + text.slice(to)
      : text.slice(0, to) + text.slice(from);
  },
  // A value is another one. Three of ten files get this, for it gets furthest.
  replaceValue,
  replaceValue,
  replaceValue,
  // A number is another number.
  (text, random) =>
    replaceOne(text, /-?\d+(?:\.\d+)?/g, random, (number) =>
      String(Number(number) * random.pick([-1, 0, 1e3, 1e9, 1e-9, 0.5, 1e300])),
    ),
  // A field has the name of another.
  (text, random) => {
    const names = [...text.matchAll(/"(\w+)":/g)].map((found) => found[1] ?? "");
    return replaceOne(text, /"\w+":/g, random, () => `"${random.pick([...names, "__proto__"])}":`);
  },
  // Two values have changed places.
  (text, random) => {
    const values = [...text.matchAll(/(?<=: )(?:"[^"]*"|-?\d[\d.]*)/g)].map(([value]) => value);
    return replaceOne(text, /(?<=: )(?:"[^"]*"|-?\d[\d.]*)/g, random, () =>
      values.length > 0 ? random.pick(values) : "0",
    );
  },
  // Brackets without end.
  (text, random) => {
    const at = Math.floor(random.next() * text.length);
    return (
      text.slice(0, at) +
      random.pick(["[", "{", "]", "}"]).repeat(random.next() < 0.5 ? 1 : 70) +
      text.slice(at)
    );
  },
];

function replaceValue(text: string, random: SeededRandom): string {
  return replaceOne(text, /(?<=[:[,]\s*)(?:"[^"]*"(?!:)|-?\d[\d.]*)/g, random, () =>
    random.pick(BAD_VALUES),
  );
}

function replaceOne(
  text: string,
  pattern: RegExp,
  random: SeededRandom,
  change: (found: string) => string,
): string {
  const found = [...text.matchAll(pattern)];
  if (found.length === 0) return text;
  const one = random.pick(found);
  return text.slice(0, one.index) + change(one[0]) + text.slice(one.index + one[0].length);
}

function damagedFile(number: number): string {
  const random = seededRandom(number);
  let text = random.pick(originals);
  const times = 1 + Math.floor(random.next() * 3);
  for (let time = 0; time < times; time += 1) text = random.pick(damages)(text, random);
  return text;
}

/** Path of the first number that is not finite, or of a text that is not Unicode; null if none. */
function faultyPlace(value: unknown, path = ""): string | null {
  if (typeof value === "number") return Number.isFinite(value) ? null : path;
  if (typeof value !== "object" || value === null) return null;
  for (const [key, inner] of Object.entries(value)) {
    const place = faultyPlace(inner, `${path}.${key}`);
    if (place !== null) return place;
  }
  return null;
}

const book = cropBook();

/** Fails unless the plan can be saved, opened again as the same, and checked. */
function demandValid(plan: Plan, where: string): void {
  expect(faultyPlace(plan), where).toBeNull();
  const text = writePlan(plan);
  const again = readPlan(text, where, (kind) => book.kind(kind) !== undefined);
  // As text: a nought with a sign is written without it.
  expect(again.ok && writePlan(again.value), where).toBe(text);
  for (const layout of plan.layouts) {
    const { findings } = runChecks(plan, layout, planBook(plan));
    expect(faultyPlace(findings), where).toBeNull();
  }
}

test("ten thousand damaged files are refused or fully valid", () => {
  let opened = 0;
  let refused = 0;
  for (let number = 1; number <= FILES; number += 1) {
    const where = `file ${number}`;
    const text = damagedFile(number);
    const start = performance.now();
    const read = openPlanText(text, where, book);
    expect(performance.now() - start, where).toBeLessThan(PATIENCE_MS);
    if (read.ok) {
      opened += 1;
      demandValid(read.value.plan, where);
    } else {
      refused += 1;
      expect(read.problems.length, where).toBeGreaterThan(0);
      expect(read.problems.length, where).toBeLessThanOrEqual(50);
    }
  }
  expect(Reflect.get({}, "polluted")).toBeUndefined();
  // Both ways are really taken.
  expect(opened).toBeGreaterThan(FILES / 50);
  expect(refused).toBeGreaterThan(FILES / 2);
}, 60_000);

test("a plan cut off after any character is refused with the place", () => {
  const text = (originals[0] ?? "").trimEnd();
  for (let length = 0; length < text.length; length += 1) {
    const read = openPlanText(text.slice(0, length), "cut.json", book);
    expect(read.ok, `cut after ${length}`).toBe(false);
  }
});
