/** Words that every object answers to are no words of ours: fed to each list of words there is. */
import { describe, expect, test } from "vitest";
import { readNormals } from "../../src/core/calendar/read-normals.ts";
import { readGeojson } from "../../src/core/exchange/read-geojson.ts";
import { readVarietiesCsv } from "../../src/core/exchange/read-varieties-csv.ts";
import { csvColumns } from "../../src/core/exchange/varieties-csv.ts";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { findSource } from "../../src/core/kinds/sources.ts";
import { emptyPlan } from "../../src/core/model/empty-plan.ts";
import { parseLength } from "../../src/core/model/length.ts";
import { readPlanValue, writePlan } from "../../src/core/model/read-plan.ts";
import { trialPlan } from "../support/trial-plan.ts";

const WORDS = [
  "__proto__",
  ...Object.getOwnPropertyNames(Object.prototype),
  ...Object.getOwnPropertyNames(Array.prototype).slice(0, 8),
].filter((word, at, all) => all.indexOf(word) === at);
const book = cropBook();

const square = [
  [10, 50],
  [10.0001, 50],
  [10.0001, 50.0001],
  [10, 50],
];
const collection = (properties: string) =>
  JSON.parse(
    `{"type":"FeatureCollection","features":[{"type":"Feature","geometry":{"type":"Polygon","coordinates":[${JSON.stringify(square)}]},"properties":${properties}}]}`,
  ) as unknown;

describe.each(WORDS)("the word %s", (word) => {
  test.each(["kind", "purpose", "cover", "level", "hybrid", "flowering", "bloomStart"])(
    "is no %s in GeoJSON",
    (field) => {
      const fields = { kind: "tomato", [field]: word };
      const read = readGeojson(collection(JSON.stringify(fields)), "field.geojson", book);
      expect(read.ok ? [] : read.problems.map((problem) => problem.field)).toEqual([
        `properties.${field}`,
      ]);
    },
  );

  test("is kept as a property of GeoJSON that is not read", () => {
    const read = readGeojson(
      collection(`{"kind":"tomato","${word}":"kept"}`),
      "field.geojson",
      book,
    );
    const [planting] = read.ok ? (read.value.layouts[0]?.plantings ?? []) : [];
    const { properties } = planting as unknown as { readonly properties?: object };
    // The one name that sets what an object is made from is left out, whatever it holds.
    expect(Object.entries(properties ?? {})).toEqual(word === "__proto__" ? [] : [[word, "kept"]]);
    expect(Object.getPrototypeOf({})).toBe(Object.prototype);
  });

  test("is no column of a seed list, and no cell of one", () => {
    const plan = emptyPlan("seed", 2027);
    const asHeading = readVarietiesCsv(`name,kind,${word}\nA,tomato,x`, "a.csv", plan, book);
    expect(asHeading.ok && asHeading.value.unknownColumns).toEqual([word]);
    for (const column of csvColumns.slice(3)) {
      if (["lot", "note"].includes(column)) continue;
      const text = `name,kind,${column}\nA,tomato,${word}`;
      const read = readVarietiesCsv(text, "a.csv", plan, book);
      expect(read.ok && read.value.rejected.flatMap((row) => row.problems)).toMatchObject([
        { column },
      ]);
    }
    const asKind = readVarietiesCsv(`name,kind\nA,${word}`, "a.csv", plan, book);
    expect(asKind.ok && asKind.value.rejected).toHaveLength(1);
  });

  test("is no unit, kind, source or month", () => {
    expect(parseLength(`5 ${word}`, "m")).toMatchObject({ ok: false });
    expect(parseLength(`5 ${word.toLowerCase()}`, "m")).toMatchObject({
      ok: false,
      reason: expect.not.stringContaining("100 km") as string,
    });
    expect(book.find(word)).toBeUndefined();
    expect(book.kind(word)).toBeUndefined();
    expect(findSource(word)).toBeUndefined();
    const rows = Array.from({ length: 12 }, (_, month) => `${month === 0 ? word : ""} 1 2`);
    expect(readNormals(rows.join("\n"), "C").ok).toBe(false);
  });

  test("is no word of a plan file", () => {
    const plan = trialPlan({ p: { at: 0, kind: "tomato" } });
    for (const [from, to] of [
      ['"cover": "none"', `"cover": "${word}"`],
      ['"purpose": "seed"', `"purpose": "${word}"`],
      ['"flowering": "yes"', `"flowering": "${word}"`],
      ['"units": "m"', `"units": "${word}"`],
      ['"kind": "tomato"', `"kind": "${word}"`],
    ] as const) {
      const text = writePlan(plan);
      expect(text).toContain(from);
      const value = JSON.parse(text.replace(from, to)) as unknown;
      expect(readPlanValue(value, "plan.json", (kind) => book.kind(kind) !== undefined).ok).toBe(
        false,
      );
    }
  });
});
