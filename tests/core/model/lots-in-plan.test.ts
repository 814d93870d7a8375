/** The seed shelf in a plan file: what is refused, and what a version 2 file becomes. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { problemText } from "../../../src/core/model/problem.ts";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";
import { isKnownKind } from "../../support/small-garden.ts";

const fixture = (version: number) =>
  readFileSync(
    new URL(`../../fixtures/plans/frozen-version-${version}.json`, import.meta.url),
    "utf8",
  );

function changed(path: readonly (string | number)[], value: unknown, version = 3): string {
  const plan = JSON.parse(fixture(version)) as Record<string, unknown>;
  let at: Record<string, unknown> = plan;
  for (const key of path.slice(0, -1)) at = at[String(key)] as Record<string, unknown>;
  const last = String(path.at(-1));
  if (value === undefined) delete at[last];
  else at[last] = value;
  return JSON.stringify(plan);
}

function refusals(text: string): readonly string[] {
  const read = readPlan(text, "plan.json", isKnownKind);
  if (read.ok) throw new Error("it was read");
  return read.problems.map(problemText);
}

const LOT = ["lots", 0] as const;
const TEST = [...LOT, "tests", 0] as const;
const NAMED = 'plan.json: lots[0] "PL-24-01"';
const IN_TEST = 'plan.json: lots[0].tests[0] "t1"';

describe("a shelf is refused by name and field:", () => {
  test.each<[string, readonly (string | number)[], unknown, string]>([
    [
      "a negative amount",
      [...LOT, "amount", "value"],
      -1,
      `${NAMED}, amount.value: got -1, expected at least 0.`,
    ],
    [
      "half a seed",
      [...LOT, "amount"],
      { unit: "seeds", value: 2.5 },
      `${NAMED}, amount.value: got 2.5, expected a whole number of seeds.`,
    ],
    [
      "more sprouted than sown",
      [...TEST, "sprouted"],
      101,
      `${IN_TEST}, sprouted: got 101, expected at most the 100 seeds sown.`,
    ],
    [
      "more hard than did not sprout",
      [...TEST, "hard"],
      17,
      `${IN_TEST}, hard: got 17, expected at most the 16 seeds that did not sprout.`,
    ],
    [
      "parts that do not add up",
      [...TEST, "replicates"],
      [20, 20, 20, 20],
      `${IN_TEST}, replicates: got a list of 4, expected parts that add up to 84 sprouted.`,
    ],
    [
      "uneven parts",
      [...TEST, "replicates"],
      [28, 28, 28],
      `${IN_TEST}, replicates: got a list of 3, expected a number of parts into which 100 seeds go evenly.`,
    ],
    [
      "a part with more sprouted than it has seeds",
      [...TEST, "replicates"],
      [26, 20, 19, 19],
      `${IN_TEST}, replicates: got a list of 4, expected at most 25 sprouted in each part.`,
    ],
    [
      "a test before the harvest",
      [...TEST, "date"],
      "2023-12-31",
      `${NAMED}, tests[0].date: got 2023-12-31, expected a day in its harvest year 2024 or later.`,
    ],
    [
      "seed that came before it was harvested",
      ["lots", 1, "from", "on"],
      "2021-06-01",
      'plan.json: lots[1] "PL-22", from.on: got 2021-06-01, expected a day in its harvest year 2022 or later.',
    ],
    [
      "moisture over 100",
      [...LOT, "stored", 1, "moisturePct"],
      100.5,
      "plan.json: lots[0].stored[1], moisturePct: got 100.5, expected at most 100.",
    ],
    [
      "moisture of a place over 100",
      ["storagePlaces", 1, "conditions", 0, "moisturePct"],
      101,
      "plan.json: storagePlaces[1].conditions[0], moisturePct: got 101, expected at most 100.",
    ],
    [
      "humidity and moisture at once",
      ["storagePlaces", 1, "conditions", 0, "humidityPct"],
      40,
      "plan.json: storagePlaces[1].conditions[0], humidityPct: got 40, expected either the humidity of the air or the moisture the seed is sealed in at.",
    ],
    [
      "two conditions from one month",
      ["storagePlaces", 0, "conditions", 1, "fromMonth"],
      5,
      'plan.json: storagePlaces[0] "Kitchen shelf", conditions[1].fromMonth: got 5, expected a month no other condition begins in.',
    ],
    [
      "a code used twice, in another case",
      ["lots", 1, "code"],
      " pl-24-01",
      'plan.json: lots[1] " pl-24-01", code: got " pl-24-01", expected a code of its own (lots[0] has it already).',
    ],
    [
      "a code of spaces",
      [...LOT, "code"],
      "  ",
      'plan.json: lots[0] "  ", code: got "  ", expected a code.',
    ],
    [
      "a lot of a variety that is not there",
      [...LOT, "variety"],
      "v9",
      `${NAMED}, variety: got "v9", expected the id of a variety in this plan.`,
    ],
    [
      "a place that is not there",
      [...LOT, "stored", 0, "place"],
      "cellar",
      `${NAMED}, stored[0].place: got "cellar", expected the id of a storage place in this plan.`,
    ],
    [
      "stays out of order",
      [...LOT, "stored", 0, "from"],
      "2025-03-01",
      `${NAMED}, stored[1].from: got 2025-01-12, expected a day from 2025-03-01 on.`,
    ],
    [
      "a later stay without a day",
      [...LOT, "stored", 1, "from"],
      undefined,
      `${NAMED}, stored[1].from: got nothing, expected the day it was moved there.`,
    ],
    [
      "a treatment of untreated seed",
      [...LOT, "treatedWith"],
      "thiram",
      `${NAMED}, treatedWith: got "thiram", expected nothing, as the lot is said to be untreated.`,
    ],
    [
      "a planting that names a lot that is not there",
      ["layouts", 0, "plantings", 0, "lots"],
      ["lot-9"],
      'plan.json: layouts[0].plantings[0] "A01-1", lots[0]: got "lot-9", expected the id of a lot in this plan.',
    ],
    [
      "a variety that names one",
      ["varieties", 0, "lots"],
      ["lot-1", "lot-9"],
      'plan.json: varieties[0] "Plum Lantern", lots[1]: got "lot-9", expected the id of a lot in this plan.',
    ],
  ])("%s", (_, path, value, refusal) => {
    expect(refusals(changed(path, value))).toEqual([refusal]);
  });
});

describe("a version 2 file", () => {
  function migrated(lots: readonly unknown[], varietyLot?: string) {
    const raw = JSON.parse(fixture(2)) as {
      varieties: Record<string, unknown>[];
      layouts: { plantings: Record<string, unknown>[] }[];
    };
    lots.forEach((lot, index) => {
      const planting = raw.layouts[0]?.plantings[index];
      if (planting) planting["lot"] = lot;
    });
    if (varietyLot !== undefined && raw.varieties[0]) raw.varieties[0]["lot"] = varietyLot;
    return JSON.stringify(raw);
  }
  function read(text: string) {
    const plan = readPlan(text, "old.json", isKnownKind);
    if (!plan.ok) throw new Error(plan.problems.map(problemText).join("\n"));
    return plan.value;
  }

  test("has a lot for each text, named by the planting and variety that had it", () => {
    const plan = read(migrated(["PL-24", "OK-23"], "pl-24 "));
    expect(plan.version).toBe(3);
    expect(plan.lots).toEqual([
      { id: "lot-1", code: "pl-24", variety: "v1", state: "in stock" },
      { id: "lot-2", code: "OK-23", variety: "v2", state: "in stock" },
    ]);
    expect(plan.varieties.map(({ lots }) => lots)).toEqual([["lot-1"], undefined]);
    expect(plan.layouts[0]?.plantings.map(({ lots }) => lots)).toEqual([["lot-1"], ["lot-2"]]);
    expect(plan.layouts[0]?.plantings[0]).not.toHaveProperty("lot");
    expect(readPlan(writePlan(plan), "old.json", isKnownKind)).toEqual({ ok: true, value: plan });
  });

  test("with one text for two varieties keeps both lots, told apart by a number", () => {
    const plan = read(migrated(["24", "24"]));
    expect(plan.lots.map(({ code, variety }) => [code, variety])).toEqual([
      ["24", "v1"],
      ["24-2", "v2"],
    ]);
  });

  test("without lots, or with empty ones, has an empty shelf", () => {
    expect(read(migrated(["", "  "])).lots).toEqual([]);
    expect(read(fixture(1)).lots).toEqual([]);
  });

  test("with something else for a lot is refused, as it was before", () => {
    expect(refusals(migrated([7]))).toEqual([
      'plan.json: layouts[0].plantings[0] "A01-1", lots: got 7, expected a list.',
    ]);
  });

  test("with lists that are none is refused, not tripped over", () => {
    for (const [path, value] of [
      [["varieties"], 3],
      [["layouts"], null],
      [["layouts", 0, "plantings"], "none"],
      [["layouts", 0], 5],
    ] as const) {
      expect(refusals(changed(path, value, 2)).length).toBeGreaterThan(0);
    }
  });
});
