import { readFileSync } from "node:fs";
import loadHighs from "highs";
import { describe, expect, test } from "vitest";
import { planBook } from "../../../src/core/kinds/own-kinds.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { estimateOf } from "../../../src/core/lots/estimate.ts";
import { standardOf } from "../../../src/core/lots/ageing.ts";
import { dayFromCivil } from "../../../src/core/model/day.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";
import { withoutItems } from "../../../src/core/renewal/years-problem.ts";
import { canAllBe } from "../../../src/core/renewal/solve-years.ts";
import { clashesOf } from "../../../src/core/renewal/smallest-clash.ts";
import { mergePlans } from "../../../src/core/record/merge-plans.ts";
import { nextSeason } from "../../../src/core/seasons/next-season.ts";
import { offeredChoices } from "../../../src/core/seasons/season-choices.ts";
import { firstAnswer } from "../../../src/core/renewal/first-answer.ts";
import { judgeYears } from "../../../src/core/renewal/judge-years.ts";
import {
  clearYears,
  seasonSeedList,
  seedListLines,
  setByHand,
  setYears,
  takeYears,
} from "../../../src/core/renewal/years-edits.ts";
import { type PlanYears, yearsOfPlan } from "../../../src/core/renewal/years-of-plan.ts";
import { seasonNames } from "../../../src/core/renewal/years-settings.ts";
import { yearsTable } from "../../../src/core/renewal/years-table.ts";
import { faultWords, partName, clashWords } from "../../../src/core/renewal/fault-words.ts";
import { cautionsOf } from "../../../src/core/renewal/years-words.ts";

const text = readFileSync(
  new URL("../../../sample-plots/seed-collection.json", import.meta.url),
  "utf8",
);
const TODAY = dayFromCivil({ year: 2026, month: 12, day: 1 });

function read(json: string): Plan {
  const found = readPlan(json, "seed-collection.json", (id) => cropBook().kind(id) !== undefined);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
}

const collection = read(text);

function look(plan: Plan): PlanYears {
  return yearsOfPlan(plan, plan.layouts[0] as Plan["layouts"][number], planBook(plan), TODAY);
}

function rowOf(years: PlanYears, name: string) {
  const index = years.rows.findIndex(({ variety }) => variety.name === name);
  const [row, item] = [years.rows[index], years.problem.items[index]];
  if (!row || !item) throw new Error(`no row ${name}`);
  return { index, row, item };
}

function changed(name: string, change: (lot: Plan["lots"][number]) => Plan["lots"][number]): Plan {
  const variety = collection.varieties.find((each) => each.name === name);
  return {
    ...collection,
    lots: collection.lots.map((lot) => (lot.variety === variety?.id ? change(lot) : lot)),
  };
}

describe("the seed shelf as years", () => {
  test("sixty varieties of the sample are laid out, of twenty crossing groups", () => {
    const years = look(collection);
    expect(years.rows).toHaveLength(60);
    expect(new Set(years.rows.map(({ kind }) => kind.group)).size).toBe(20);
    expect(years.not).toEqual([]);
  });

  test("a lot without year or test is asked for and never taken for alive", () => {
    const { row, item } = rowOf(look(collection), "Marl Pit");
    expect(row.standing).toBe("unknown");
    expect(item).toMatchObject({ isLate: true, deadline: -1 });
    const years = look(collection);
    const cautions = cautionsOf(judgeYears(years.problem, years.years), namesOf(collection));
    expect(cautions.find(({ names }) => names.includes("Marl Pit"))?.words).toMatch(
      /test it first/,
    );
  });

  test("a kind without a figure of seed life says so", () => {
    expect(rowOf(look(collection), "Paper Bell").row).toMatchObject({
      standing: "no figure",
      fresh: null,
    });
  });

  test("a deadline is the last season that ends before the lot's end, by the end counted with", () => {
    for (const end of ["likely", "earliest"] as const) {
      const plan = setYears({ end }, "").apply(collection);
      const years = look(plan);
      let met = 0;
      for (const [index, row] of years.rows.entries()) {
        const item = years.problem.items[index];
        if (!item || row.standing !== "keeps" || !row.lot || item.deadline > 50) continue;
        met += 1;
        const estimate = estimateOf(row.lot, row.kind, plan.storagePlaces);
        const day = estimate?.under(standardOf(row.kind))[end] ?? Infinity;
        const endOf = (later: number) => dayFromCivil({ year: 2027 + later, month: 12, day: 31 });
        expect(endOf(item.deadline), row.variety.name).toBeLessThanOrEqual(day + 1);
        expect(endOf(item.deadline + 1), row.variety.name).toBeGreaterThan(day - 1);
      }
      expect(met).toBeGreaterThan(4);
    }
  });

  test("a variety of which no seed is left is not laid out, and named", () => {
    const plan = changed("Kiln Long", (lot) => ({ ...lot, state: "used up" }));
    expect(look(plan).not.map(({ variety, why }) => [variety.name, why])).toEqual([
      ["Kiln Long", "gone"],
    ]);
  });

  test("roots in store bear seed in the first season, other biennials cannot", () => {
    const years = look(collection);
    expect(rowOf(years, "Long Acre").item.first).toBe(0);
    expect(years.problem.byHand[rowOf(years, "Long Acre").index]?.grown).toBe(1);
    expect(rowOf(years, "Stump Ridge").item).toMatchObject({ first: 1, lead: 2 });
  });
});

describe("the garden as years", () => {
  test("a neighbour's squash reaches what it crosses with on every bed, and nothing else", () => {
    const years = look(collection);
    const exposed = years.rows.flatMap(({ variety }, index) =>
      years.problem.items[index]?.isExposed === true ? [variety.name] : [],
    );
    expect(exposed).toEqual(["Ferry Marrow", "Coble Yellow", "Rickyard"]);
  });

  test("onions stand apart in both gardens, selfers in many beds, squashes alone", () => {
    const years = look(collection);
    const places = new Map(
      years.problem.sets.map((set) => [
        partName(years.rows, set.members),
        set.apart.map((each) => each.places),
      ]),
    );
    expect(places.get("onion")).toEqual([2]);
    expect(places.get("pea")?.[0]).toBeGreaterThan(3);
    expect(places.get("squash and pumpkin (maxima squash)")).toEqual([1]);
  });

  test("without a bed nothing that crosses shares a season", () => {
    const [layout] = collection.layouts;
    const bare = { ...collection, layouts: [{ ...(layout as Plan["layouts"][number]), beds: [] }] };
    const years = look(bare);
    expect(years.problem.groundM2).toBe(Infinity);
    expect(years.problem.sets.every(({ apart }) => apart.every(({ places }) => places === 1))).toBe(
      true,
    );
  });
});

function namesOf(plan: Plan) {
  const years = look(plan);
  return { years, seasons: seasonNames(plan, years.problem.seasons), units: plan.units };
}

const laidOut = takeYears(
  look(collection).rows,
  firstAnswer(look(collection).problem),
  "Lay out the years",
).apply(collection);

describe("edits", () => {
  test("what is found is kept in the plan, and read again from its file", () => {
    const again = read(writePlan(laidOut));
    expect(look(again).years).toEqual(firstAnswer(look(collection).problem));
    expect(judgeYears(look(again).problem, look(again).years).faults).toEqual([]);
  });

  test("what is set by hand stays through another search, and is judged at once", () => {
    const { row } = rowOf(look(laidOut), "Blue Cairn");
    const plan = setByHand(row, 0, false, "Set by hand").apply(laidOut);
    const judged = judgeYears(look(plan).problem, look(plan).years);
    expect(judged.faults.map((fault) => faultWords(fault, namesOf(plan)))).toEqual([
      "Blue Cairn must be grown for seed by 2027: after it, what is left is likely under its standard.",
    ]);
    const again = takeYears(look(plan).rows, firstAnswer(look(plan).problem), "").apply(plan);
    const { index } = rowOf(look(again), "Blue Cairn");
    expect((look(again).years[index] ?? 0) & 1).toBe(0);
    const free = clearYears(false, "").apply(again);
    expect(look(free).problem.byHand[index]).toEqual({ grown: 0, notGrown: 0 });
    expect(clearYears(true, "").apply(again).renewalYears?.choices).toEqual([]);
  });

  test("one press makes the season's seed list: plants, lot and reason", () => {
    const names = namesOf(laidOut);
    const lines = seedListLines(names);
    const plan = seasonSeedList(names, "Seed list").apply(laidOut);
    const listed = plan.varieties.filter(({ wantedPlants }) => wantedPlants !== undefined);
    expect(listed).toHaveLength(lines.length);
    expect(lines.length).toBeGreaterThan(10);
    for (const { row, isSown } of lines) {
      const variety = listed.find(({ id }) => id === row.variety.id);
      expect(variety?.wantedPlants).toBe(row.plants);
      expect(variety?.reason).toContain("its turn is");
      if (isSown) expect(variety?.lots?.[0]).toBe(row.lot?.id);
    }
    // A biennial is sown the season before its turn.
    const parsnip = listed.find(({ name }) => name === "Deep Furrow");
    expect(parsnip?.reason).toContain("its turn is 2028");
  });

  test("years gone by and varieties deleted say nothing, and the plan opens", () => {
    const choices = [
      { variety: "v1", year: 2020, grown: true },
      { variety: "long-gone", year: 2028, grown: true },
    ];
    const plan = read(writePlan({ ...collection, renewalYears: { choices } }));
    expect(look(plan).years.every((bits) => bits === 0)).toBe(true);
  });

  test.each([
    [{ seasons: 9, choices: [] }, "seasons", "at most 6"],
    [{ cages: -1, choices: [] }, "cages", "at least 0"],
    [{ groundM2: 0, choices: [] }, "groundM2", "more than 0"],
    [{ choices: [{ variety: "v1", year: 2027, grown: "yes" }] }, "grown", "true or false"],
  ])("bad input names its field: %j", (renewalYears, field, expected) => {
    const json = JSON.stringify({ ...(JSON.parse(text) as object), renewalYears });
    const found = readPlan(json, "x.json", () => true);
    if (found.ok) throw new Error("read");
    expect(found.problems[0]?.field).toContain(field);
    expect(found.problems[0]?.expected).toContain(expected);
  });
});

test("the table marks turns, the ends of lots, covers and what was set by hand", () => {
  const plan = setByHand(rowOf(look(laidOut), "Copper Lane").row, 2, true, "").apply(laidOut);
  const table = yearsTable(plan, planBook(plan), look(plan));
  const lines = table.parts.flatMap((part) => part.lines);
  expect(lines).toHaveLength(60);
  const copper = lines.find(({ row }) => row.variety.name === "Copper Lane");
  expect(copper?.cells[2]).toMatchObject({ grown: "seed", byHand: true });
  const covered = lines.filter(({ cells }) => cells.some(({ isCovered }) => isCovered));
  expect(covered.length).toBeGreaterThan(2);
  expect(lines.some(({ cells }) => cells.some(({ endsLikely }) => endsLikely))).toBe(true);
  expect(lines.some(({ cells }) => cells.some(({ grown }) => grown === "first-year"))).toBe(true);
});

describe("what cannot be", () => {
  test("three squashes and one garden in two seasons are named", async () => {
    const squashes = ["Blue Cairn", "Tithe Turban", "Harrow Grey"];
    const old = squashes.reduce<Plan>(
      (plan, name) => {
        const variety = plan.varieties.find((each) => each.name === name);
        const lots = plan.lots.map((lot) =>
          lot.variety === variety?.id ? { ...lot, harvestYear: 2023, stored: [], tests: [] } : lot,
        );
        return { ...plan, lots };
      },
      setYears({ seasons: 2, bags: 1 }, "").apply(collection),
    );
    const highs = await loadHighs();
    const names = namesOf(old);
    const { problem, rows } = names.years;
    expect(canAllBe(problem, highs, 20)).toBe(false);
    const clashes = clashesOf(problem, highs, () => 20);
    const named = clashes.map(
      ({ items }) => new Set(items.map((index) => rows[index]?.variety.name)),
    );
    // The cottage garden's side of the family has the same trouble.
    expect(named).toContainEqual(new Set(squashes));
    expect(named).toContainEqual(new Set(["Coble Yellow", "Ferry Marrow", "Rickyard"]));
    const left = new Set(clashes.flatMap(({ items }) => items));
    expect(canAllBe(withoutItems(problem, left), highs, 20)).toBe(true);
    const clash = clashes[named.findIndex((each) => each.has("Blue Cairn"))];
    if (!clash) throw new Error("no clash");
    const words = clashWords(clash.items, clash.isSmallest, names);
    expect(words).toContain("2 seasons (2027 to 2028)");
    expect(words).toContain("(maxima squash)");
    for (const name of squashes) expect(words).toContain(name);
  });
});

test("a helper's copy with other years is told as a difference, and can be taken", () => {
  const merged = mergePlans(collection, laidOut, new Set(["renewalYears"]));
  if (!merged.ok) throw new Error("not merged");
  expect(merged.differences.map(({ id }) => id)).toEqual(["renewalYears"]);
  expect(merged.plan.renewalYears).toEqual(laidOut.renewalYears);
});

test("the step to the next season takes the years along, and what is past says nothing more", () => {
  const next = nextSeason(laidOut, offeredChoices(laidOut, { id: "next", on: TODAY }));
  expect(next.renewalYears).toEqual(laidOut.renewalYears);
  const [before, after] = [look(laidOut), look(next)];
  let met = 0;
  for (const [index, row] of after.rows.entries()) {
    const was = before.rows.findIndex(({ variety }) => variety.id === row.variety.id);
    expect(after.years[index]).toBe((before.years[was] ?? 0) >> 1);
    met += after.years[index] ?? 0;
  }
  expect(met).toBeGreaterThan(20);
});
