/**
 * Years between crops, row by row against copies of the tables they come from: 7 CFR 201.76 Table
 * 5, Annex 1 of the seed certification guidance of England and Wales, and the rotation list of the
 * University of Connecticut; and how far shed rape seed lies (Colbach 2000, as coded in RCALI).
 */
import { describe, expect, test } from "vitest";
import { landTable } from "../../../src/core/ground/land-table.ts";
import { ukRules, yearsAsked } from "../../../src/core/ground/land-rules.ts";
import { rotationTable } from "../../../src/core/ground/rotation-table.ts";
import { reachOf, rimOf } from "../../../src/core/ground/shed-seed.ts";
import { isAmong } from "../../../src/core/ground/taxa.ts";
import { type UsClass, usLandYears } from "../../../src/core/ground/us-land.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import type { Kind } from "../../../src/core/kinds/crop.ts";
import { fixtureRows, kindsOf } from "../../support/fixture-rows.ts";

const book = cropBook();
function kindOf(id: string): Kind {
  const kind = book.kind(id);
  if (!kind) throw new Error(`no kind "${id}"`);
  return kind;
}

describe("7 CFR 201.76 Table 5", () => {
  const rows = fixtureRows("us-7cfr-201-76.tsv").flatMap((row) =>
    kindsOf(row)
      // Printed for maize and sweet corn alone.
      .filter((kind) => kind !== "popcorn")
      .map((kind) => [kind, row.class as UsClass, Number(row.land_years), row.crop] as const),
  );

  test.each(rows)("land years of %s, %s: %i (%s)", (kind, seedClass, years) => {
    expect(usLandYears(kindOf(kind), seedClass)).toBe(years);
  });

  test("holds rows enough to mean something", () => {
    expect(rows.length).toBeGreaterThan(70);
  });
});

describe("Annex 1 of England and Wales", () => {
  const rows = fixtureRows("uk-annex-1-previous-cropping.tsv");
  const numbers = (text: string) => (text.match(/\d+/g) ?? []).map(Number);

  test("has no row more and none less", () => {
    const key = (row: Readonly<Record<"crop" | "column", string>>, seedClass: string) =>
      `${row.crop} | ${seedClass} | ${row.column}`;
    expect(landTable.map((row) => key(row, row.seedClass))).toEqual(
      rows.map((row) => key({ crop: row.crop ?? "", column: row.column ?? "" }, row.class ?? "")),
    );
  });

  test.each(rows.map((row, index) => [row.crop, row.class, row.column, index] as const))(
    "%s, %s, %s",
    (_crop, _class, _column, index) => {
      const [printed, ours] = [rows[index], landTable[index]];
      if (!printed || !ours) throw new Error("no such row");
      expect(ours.printed).toBe(printed.years);
      const years = ours.parts.map((part) => part.years);
      // The longest of the years printed; those of a transplanted crop and of laxer classes stand in the words.
      const most = Math.max(...numbers(ours.printed));
      expect(Math.max(0, ...years)).toBe(most);
      for (const each of years) expect(numbers(ours.printed)).toContain(each);
      const isSeedBearing = /seed-bearing|beet seed crop/i.test(printed.rule ?? "");
      expect(ours.parts.some(({ isSeedOnly }) => isSeedOnly === true)).toBe(isSeedBearing);
      const isOfFamily = /crucifer/.test(printed.rule ?? "");
      expect(ours.parts.some(({ of }) => of.includes("Brassicaceae"))).toBe(isOfFamily);
    },
  );

  const asked = (
    crop: string,
    earlier: string,
    column: "good practice" | "minimum",
    wentToSeed: "yes" | "no" | "unknown" = "unknown",
  ) => {
    const years = ukRules(kindOf(crop), column).flatMap(
      (rule) => yearsAsked(rule, kindOf(crop), kindOf(earlier), wentToSeed) ?? [],
    );
    return years.length === 0 ? null : Math.max(...years);
  };

  test("field pea and field bean count each other in good practice, their species at least", () => {
    expect(asked("pea", "broad-bean", "good practice")).toBe(2);
    expect(asked("pea", "broad-bean", "minimum")).toBeNull();
    expect(asked("pea", "pea", "minimum")).toBe(1);
    expect(asked("pea", "common-bean", "good practice")).toBeNull();
  });

  test("broad and French bean count beans and peas for 4 years", () => {
    expect(asked("broad-bean", "common-bean", "good practice")).toBe(4);
    expect(asked("common-bean", "pea", "good practice")).toBe(4);
    expect(asked("common-bean", "runner-bean", "good practice")).toBe(4);
    expect(asked("common-bean", "soybean", "good practice")).toBeNull();
    expect(asked("soybean", "soybean", "good practice")).toBe(5);
    expect(asked("soybean", "pea", "good practice")).toBe(2);
  });

  test("crucifers count any crucifer, at least those that bore seed", () => {
    for (const kind of ["oilseed-rape", "mustard", "black-mustard", "white-mustard"]) {
      expect(asked(kind, "radish", "good practice", "no")).toBe(5);
      expect(asked(kind, "cabbage", "minimum", "no")).toBeNull();
      expect(asked(kind, "cabbage", "minimum", "yes")).toBe(2);
      expect(asked(kind, "cabbage", "minimum", "unknown"), "not known to have borne none").toBe(2);
    }
    expect(asked("turnip", "cabbage", "minimum", "no")).toBe(2);
    expect(ukRules(kindOf("cabbage"), "minimum")[0]).toMatchObject({ isStretched: true });
  });

  test("beet counts beet seed for 5 years and any beet for 2", () => {
    for (const kind of ["beet", "chard", "sugar-beet", "fodder-beet"]) {
      expect(asked(kind, "chard", "good practice", "yes")).toBe(5);
      expect(asked(kind, "chard", "good practice", "no")).toBe(2);
      expect(asked(kind, "beet", "minimum", "no")).toBe(2);
    }
    expect(asked("beet", "spinach", "good practice")).toBeNull();
  });

  test("cereals are held to the class of certified seed, stock seed to that of basic seed", () => {
    expect(asked("wheat", "barley", "good practice")).toBe(2);
    expect(asked("wheat", "barley", "minimum")).toBeNull();
    expect(asked("wheat", "wheat", "minimum")).toBe(1);
    expect(asked("rye", "rye", "good practice")).toBe(1);
    expect(asked("flax", "flax", "good practice")).toBe(5);
    expect(asked("flax", "flax", "minimum")).toBe(2);
  });

  test("says nothing of vegetables it does not list", () => {
    for (const kind of ["carrot", "onion", "lettuce", "tomato", "cucumber", "spinach"])
      expect([kind, ukRules(kindOf(kind), "good practice")]).toEqual([kind, []]);
  });
});

describe("years without hosts of a disease", () => {
  const rows = fixtureRows("rotation-years.tsv");

  test.each(rows.map((row) => [row.kind ?? "", row.disease ?? "", row.years ?? ""] as const))(
    "%s, %s: %s",
    (kind, disease, years) => {
      const words = disease.replace(",", " and").toLowerCase();
      const ours = rotationTable.find(
        (row) => row.printedFor === kind && row.disease.toLowerCase() === words,
      );
      if (/never/.test(years)) expect(ours?.years).toBeNull();
      else {
        const [least = 0, most = least] = (years.match(/\d+/g) ?? []).map(Number);
        expect(ours?.years).toEqual([least, most]);
      }
    },
  );

  test("there is no row that is not printed", () => {
    expect(rotationTable).toHaveLength(rows.length);
  });

  test("every crop and host of a row is of kinds we carry", () => {
    for (const { crop, hosts, disease } of rotationTable) {
      for (const taxon of [...crop, ...hosts]) {
        const among = book.kinds.filter((kind) => isAmong(kind, [taxon], kind));
        expect([disease, taxon, among.length > 0]).toEqual([disease, taxon, true]);
      }
    }
  });
});

describe("shed rape seed", () => {
  // Read off the published density, integrated over rings of a tenth of a millimetre.
  const density = (r: number) =>
    (1.3893 * 2.08686 * r ** 0.08686 * Math.exp(-1.3893 * r ** 2.08686)) / (2 * Math.PI);

  test.each([0.5, 1, 1.776, 2.157])("the share within %f m is the density summed up", (metres) => {
    const step = 1e-4;
    let sum = 0;
    for (let r = step / 2; r < metres; r += step) sum += density(r) * 2 * Math.PI * r * step;
    expect(reachOf(sum)).toBeCloseTo(metres, 4);
  });

  test("99 % lies within 1.776 m and 99.9 % within 2.157 m", () => {
    expect(reachOf(0.99)).toBeCloseTo(1.776, 3);
    expect(reachOf(0.999)).toBeCloseTo(2.157, 3);
    expect(rimOf(kindOf("oilseed-rape"))).toBeCloseTo(2.157, 3);
    expect(rimOf(kindOf("cabbage"))).toBe(0);
  });
});
