/**
 * Every row of the tables of 7 CFR Part 201 (2015 annual edition) that lots are held against, as
 * copied beside the tests: conditions of tests (201.58), sealed packs (201.36c), how far the parts
 * of a test may lie apart (201.55), how far a test may fall short of a label (201.63).
 */
import { describe, expect, test } from "vitest";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { sealedLimit } from "../../../src/core/lots/better-place.ts";
import { meetsWithTolerance, replicatesAgree } from "../../../src/core/lots/germination.ts";
import { testConditions } from "../../../src/core/lots/test-conditions.ts";
import { testRows } from "../../../src/core/lots/test-table.ts";
import { fixtureRows } from "../../support/fixture-rows.ts";

const tests = fixtureRows("us-germination-tests.tsv");
const tolerances = fixtureRows("us-germination-tolerances.tsv");

describe("conditions of tests", () => {
  test.each(testRows.map(([kinds, row]) => [row.row, kinds, row] as const))(
    "%s",
    (name, _, carried) => {
      const printed = tests.find(({ kind }) => kind === name);
      expect({
        substrata: carried.substrata,
        temperature: carried.temperature,
        other: carried.otherTemperature ?? "",
        first: carried.firstDays === null ? "none" : String(carried.firstDays),
        last: String(carried.lastDays),
        hard: carried.canBeHard === true ? "y" : "n",
      }).toEqual({
        substrata: printed?.substrata,
        temperature: printed?.temperature,
        other: printed?.other,
        first: printed?.first,
        last: printed?.last,
        hard: printed?.hard,
      });
    },
  );

  test("rows not carried are of kinds the crop base does not have", () => {
    const carried = new Set(testRows.map(([, { row }]) => row));
    const names = new Set(cropBook().kinds.map(({ name }) => name.toLowerCase()));
    const missing = tests.filter(({ kind = "" }) => !carried.has(kind));
    expect(missing.filter(({ kind = "" }) => names.has(kind.toLowerCase()))).toEqual([]);
    expect(missing.length).toBeLessThan(tests.length / 3);
  });
});

test.each(testRows.flatMap(([kinds, { row }]) => kinds.map((kind) => [kind, row] as const)))(
  "a sealed pack of %s has at most the moisture of 201.36c",
  (kind, row) => {
    const printed = tests.find((each) => each.kind === row)?.sealed ?? "";
    expect(sealedLimit(kind)).toBe(Number(printed.replace("*", "")));
    expect(testConditions(kind)?.row).toBe(row);
  },
);

describe("parts of a test", () => {
  const ranges = tolerances.filter(({ table }) => table === "replicate_range");

  test.each(
    ranges.flatMap(({ high, low, four, two }) => [
      [high, four, two],
      [low, four, two],
    ]),
  )("at a mean of %s %%: four within %s, two within %s points", (mean, four, two) => {
    const about = (parts: number, range: number) => {
      // Two at the ends, the others in the middle, so that the mean stays.
      const ends = [Number(mean) - Math.floor(range / 2), Number(mean) + Math.ceil(range / 2)];
      const replicates = parts === 4 ? [...ends, Number(mean), Number(mean)] : ends;
      return replicates.some((each) => each < 0 || each > 100)
        ? null
        : replicatesAgree({ sown: parts * 100, replicates });
    };
    for (const [parts, printed] of [
      [4, four],
      [2, two],
    ] as const) {
      if (printed === "" || printed === undefined) continue;
      // An odd range moves the mean of two by half a point, which may round to another row.
      if (parts === 2 && Number(printed) % 2 === 1) continue;
      const most = about(parts, Number(printed));
      if (most) expect(most).toMatchObject({ allowedPct: Number(printed), agree: true });
      const beyond = about(parts, Number(printed) + (parts === 2 ? 2 : 1));
      if (beyond) expect(beyond.agree).toBe(false);
    }
  });

  test("are all there", () => {
    expect(ranges).toHaveLength(49);
  });
});

describe("a test against a label", () => {
  const rows = tolerances.filter(({ table }) => table === "germination_tolerance");
  /** Means at both ends of a row that two tests can have which are just as far apart as allowed. */
  const meansOf = (low: string | undefined, high: string | undefined, most: number) =>
    [Number(low) + most, Math.floor(Number(high)) - most].filter(
      (mean) => mean >= Number(low) && mean <= Number(high) && mean - most / 2 >= 0,
    );

  test("four of the six rows are wide enough to be tried at their ends", () => {
    const tried = rows.filter(
      ({ low, high, allowed }) => meansOf(low, high, Number(allowed)).length > 0,
    );
    expect([tried.length, rows.length]).toEqual([4, 6]);
  });

  test.each(rows.map(({ high, low, allowed }) => [low, high, allowed] as const))(
    "a mean of %s to %s %% may fall short by %s points",
    (low, high, allowed) => {
      const most = Number(allowed);
      for (const mean of meansOf(low, high, most)) {
        expect(meetsWithTolerance(mean - most / 2, mean + most / 2, 400)).toEqual({
          meanPct: mean,
          allowedPct: most,
          meets: true,
        });
        expect(meetsWithTolerance(mean - most / 2 - 1, mean + most / 2 + 1, 400)?.meets).toBe(
          false,
        );
        expect(meetsWithTolerance(mean - most / 2, mean + most / 2, 200)?.allowedPct).toBe(
          most + 2,
        );
      }
      expect(meetsWithTolerance(Number(low), Number(low), 400)?.allowedPct).toBe(most);
      expect(meetsWithTolerance(Number(high), Number(high), 400)?.allowedPct).toBe(most);
    },
  );
});
