import { describe, expect, test } from "vitest";
import { firstAnswer } from "../../../src/core/renewal/first-answer.ts";
import { judgeYears } from "../../../src/core/renewal/judge-years.ts";
import { coversOfSet } from "../../../src/core/renewal/season-work.ts";
import {
  type YearsItem,
  type YearsProblem,
  canCover,
} from "../../../src/core/renewal/years-problem.ts";
import { collection, item, problemOf, together } from "./years-cases.ts";

/** Whether what stays open has a place apart from all that sheds pollen: what is open or bagged. */
function standsApart(
  problem: YearsProblem,
  grown: readonly number[],
  covered: ReadonlySet<number>,
): boolean {
  const {
    items,
    sets: [set],
  } = problem;
  const open = grown.filter((index) => !covered.has(index));
  const isExposed = (index: number) => items[index]?.isExposed === true;
  // Where there is no cover to be had, pollen from around is told of by itself.
  if (open.some((index) => isExposed(index) && canCover(problem, items[index] as YearsItem))) {
    return false;
  }
  if (open.length === 0) return true;
  const sheds = grown.filter((index) => !covered.has(index) || items[index]?.cover === "bag");
  const needM = Math.max(...open.map((index) => items[index]?.needM ?? 0));
  const places = set?.apart.find(({ metres }) => metres >= needM)?.places ?? 1;
  return sheds.length <= places;
}

function kinds(problem: YearsProblem, years: readonly number[]): readonly string[] {
  return judgeYears(problem, years).faults.map(({ kind, season }) => `${kind} ${season}`);
}

describe("seed that dies", () => {
  test("not grown by the last season that saves it", () => {
    const problem = problemOf([item(0, { deadline: 1 })]);
    expect(kinds(problem, [0b100])).toEqual(["dies 1"]);
    expect(kinds(problem, [0b000])).toEqual(["dies 1"]);
    expect(kinds(problem, [0b010])).toEqual([]);
  });

  test("fresh seed that keeps one season must be grown again, old seed may carry it", () => {
    const short = problemOf([item(0, { deadline: 0, keeps: 1 })]);
    expect(kinds(short, [0b101])).toEqual(["dies 1"]);
    expect(kinds(short, [0b111])).toEqual([]);
    const old = problemOf([item(0, { deadline: 2, keeps: 1 })]);
    expect(kinds(old, [0b101])).toEqual([]);
    expect(kinds(old, [0b001])).toEqual(["dies 2"]);
  });

  test("what may be dead already is grown at some time, or it is said", () => {
    const problem = problemOf([item(0, { isLate: true, deadline: -1 })]);
    expect(kinds(problem, [0])).toEqual(["dies 2"]);
    expect(kinds(problem, [0b100])).toEqual([]);
  });

  test("a biennial bears no seed in the first season without roots", () => {
    const problem = problemOf([item(0, { lead: 2 })]);
    expect(kinds(problem, [0b001])).toEqual(["too soon 0"]);
  });
});

describe("the garden", () => {
  test("more of a set than places apart need covers, and no more covers than there are", () => {
    const items = [0, 1, 2].map((index) => item(index));
    const sets = [together([0, 1, 2])];
    expect(kinds(problemOf(items, { sets }), [1, 1, 1])).toEqual(["together 0"]);
    const caged = problemOf(items, { sets, covers: { cage: 1, bag: 0 } });
    expect(kinds(caged, [1, 1, 0])).toEqual([]);
    expect(judgeYears(caged, [1, 1, 0]).seasons[0]?.covered).toHaveLength(1);
    expect(kinds(caged, [1, 1, 1])).toEqual(["covers 0"]);
  });

  test("the one that needs the greatest distance is the first to go under a cover", () => {
    const items = [item(0, { needM: 10 }), item(1, { needM: 10 }), item(2, { needM: 800 })];
    const apart = [
      { metres: 10, places: 3 },
      { metres: 800, places: 1 },
    ];
    const problem = problemOf(items, {
      sets: [{ members: [0, 1, 2], apart }],
      covers: { cage: 1, bag: 0 },
    });
    expect(judgeYears(problem, [1, 1, 1])).toMatchObject({ faults: [] });
    expect(judgeYears(problem, [1, 1, 1]).seasons[0]?.covered).toEqual([2]);
  });

  // Flowers that are not taped are open: The Manual of Seed Saving, Timber Press, pollinates chosen
  // flowers of a squash by hand, and the plant goes on flowering.
  test("bags over one give no place to another in the open: all of a set are bagged, or none", () => {
    const items = [item(0, { cover: "bag" }), item(1, { cover: "bag" })];
    const sets = [together([0, 1])];
    const one = problemOf(items, { sets, covers: { cage: 5, bag: 1 } });
    expect(kinds(one, [1, 1])).toEqual(["covers 0"]);
    const two = problemOf(items, { sets, covers: { cage: 0, bag: 2 } });
    expect(kinds(two, [1, 1])).toEqual([]);
    expect(judgeYears(two, [1, 1]).seasons[0]?.covered).toEqual([0, 1]);
    const apart = problemOf(items, { sets: [together([0, 1], 2)] });
    expect(kinds(apart, [1, 1])).toEqual([]);
  });

  test("one that is bagged against pollen from around takes a place as well", () => {
    const items = [item(0, { cover: "bag", isExposed: true }), item(1, { cover: "bag" })];
    const at = (places: number) =>
      problemOf(items, { sets: [together([0, 1], places)], covers: { cage: 0, bag: 2 } });
    expect(judgeYears(at(2), [1, 1]).seasons[0]?.covered).toEqual([0]);
    expect(judgeYears(at(1), [1, 1]).seasons[0]?.covered).toEqual([0, 1]);
  });

  test("what takes no cover stays in the open, and beside it nothing is bagged for nothing", () => {
    const items = [item(0, { cover: "none" }), item(1, { cover: "bag" })];
    const problem = problemOf(items, { sets: [together([0, 1])], covers: { cage: 2, bag: 2 } });
    expect(kinds(problem, [1, 1])).toEqual(["together 0"]);
    expect(kinds(problem, [1, 2])).toEqual([]);
  });

  test("property: no fewer covers keep the open ones of a set apart", () => {
    for (let seed = 1; seed <= 200; seed += 1) {
      const problem = collection(seed, 5, 3, 5);
      const [set] = problem.sets;
      if (!set) continue;
      const grown = set.members;
      const { covered, tooMany } = coversOfSet(problem, set, grown);
      const mayCover = grown.filter((index) =>
        canCover(problem, problem.items[index] as YearsItem),
      );
      const fits = Array.from({ length: 1 << mayCover.length }, (_, bits) =>
        mayCover.filter((__, at) => ((bits >> at) & 1) === 1),
      ).filter((some) => standsApart(problem, grown, new Set(some)));
      const fewest = Math.min(...fits.map((some) => some.length));
      expect(tooMany === 0 ? covered.length : Infinity, `seed ${seed}`).toBe(fewest);
    }
  });

  test("pollen from around is said wherever no cover keeps it off", () => {
    const one = item(0, { isExposed: true });
    const bare = problemOf([one], { sets: [together([0])] });
    expect(kinds(bare, [0b10])).toEqual(["exposed 1"]);
    const caged = { ...bare, covers: { cage: 1, bag: 0 } };
    expect(kinds(caged, [0b10])).toEqual([]);
  });

  test("ground is counted with a biennial's first year, and rests for the years asked", () => {
    const items = [item(0, { lead: 2, groundM2: 6 }), item(1, { groundM2: 6 })];
    expect(kinds(problemOf(items, { groundM2: 10 }), [0b10, 0b01])).toEqual(["ground 0"]);
    const rests = [{ members: [1], years: 1, before: [5] }];
    expect(kinds(problemOf(items, { groundM2: 10, rests }), [0, 0b01])).toEqual(["rest 0"]);
    expect(kinds(problemOf(items, { groundM2: 10, rests }), [0, 0b10])).toEqual([]);
    expect(kinds(problemOf(items, { groundM2: 10, rests }), [0, 0b110])).toEqual(["rest 2"]);
  });

  test("no more varieties than are to be grown", () => {
    const items = [item(0), item(1)];
    expect(kinds(problemOf(items, { mostVarieties: 1 }), [1, 1])).toEqual(["work 0"]);
  });
});

test("property: whatever the search gives without a fault, no seed dies in it", () => {
  let met = 0;
  for (let seed = 1; seed <= 60; seed += 1) {
    const problem = collection(seed, 20, 4, 3);
    const years = firstAnswer(problem);
    if (judgeYears(problem, years).faults.length > 0) continue;
    met += 1;
    // Year by year, by another way of counting than the judge's: what is alive at each season's end.
    for (const [index, one] of problem.items.entries()) {
      const grown = Array.from({ length: 4 }, (_, season) => ((years[index] ?? 0) >> season) & 1);
      if (one.isLate) {
        expect(grown.includes(1), `seed ${seed}`).toBe(true);
        continue;
      }
      let aliveTo = one.deadline;
      for (const [season, isGrown] of grown.entries()) {
        if (isGrown === 1) aliveTo = Math.max(aliveTo, season + one.keeps);
        expect(aliveTo > season || isGrown === 1, `seed ${seed}, item ${index}`).toBe(true);
      }
    }
  }
  expect(met).toBeGreaterThan(10);
});

test("what may be dead already never waits a season to be spared a growing later", () => {
  const half = { lead: 2, first: 1, deadline: -1, early: -1, isLate: true, keeps: 2 } as const;
  const problem = problemOf(
    [0, 1, 2, 3].map((index) => item(index, half)),
    { seasons: 4 },
  );
  // At once and again when its own seed ends, against once and a season later.
  const years = (bits: number) => problem.items.map(() => bits);
  const soon = judgeYears(problem, years(0b1010));
  const waited = judgeYears(problem, years(0b0100));
  expect([soon.faults, waited.faults]).toEqual([[], []]);
  expect(soon.points).toBeLessThan(waited.points);
});
