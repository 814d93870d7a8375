/** Lots and plots as a line: what is known of it, and what is said to be unknown. */
import { describe, expect, test } from "vitest";
import { lotsToCopy } from "../../../src/core/edits/clip-lots.ts";
import { removeLots } from "../../../src/core/edits/lot-edits.ts";
import { lineBook } from "../../../src/core/generations/line.ts";
import { lookBack, motherLot, withForebears } from "../../../src/core/generations/line-past.ts";
import { plannedGrowings } from "../../../src/core/generations/planned-growing.ts";
import { descentOf } from "../../../src/core/lots/lot-descent.ts";
import type { Lot, Plan, Variety } from "../../../src/core/model/plan.ts";
import { type TrialPlanting, book, trialPlan } from "../../support/trial-plan.ts";

type SomeLot = Partial<Omit<Lot, "from">> & {
  readonly year?: number;
  readonly from?: readonly string[];
  readonly plants?: number;
  readonly pollen?: number;
  readonly equal?: boolean;
};

/** Lots by id; `from` are the lots they were grown from. */
function lots(all: Readonly<Record<string, SomeLot>>): readonly Lot[] {
  return Object.entries(all).map(([id, { year, from, plants, pollen, equal, ...rest }]) => ({
    id,
    code: id.toUpperCase(),
    variety: "v-p",
    state: "in stock" as const,
    ...(year === undefined ? {} : { harvestYear: year }),
    ...(from ? { grownFrom: [...from] } : {}),
    ...(from || plants !== undefined
      ? {
          from: {
            what: "own" as const,
            ...(plants === undefined ? {} : { plants }),
            ...(pollen === undefined ? {} : { pollenPlants: pollen }),
            ...(equal === undefined ? {} : { equalSeed: equal }),
          },
        }
      : {}),
    ...rest,
  }));
}

function planWith(
  kind: string,
  all: Readonly<Record<string, SomeLot>>,
  more: Partial<TrialPlanting> = {},
): Plan {
  return trialPlan({ p: { at: 0, kind, ...more } }, [], { lots: lots(all) });
}

function lineOf(kind: string, all: Readonly<Record<string, SomeLot>>, id: string) {
  const line = lineBook(planWith(kind, all), book).lot(id);
  if (!line) throw new Error(`no line for ${id}`);
  return line;
}

const CONFLICT = {
  judgedOn: 9000,
  level: "home",
  standing: "conflict",
  sources: [],
  notObserved: [],
} as const satisfies Lot["isolation"];
const APART = { ...CONFLICT, standing: "distance" } as const;
const UNSURE = { ...CONFLICT, standing: "unknown" } as const;

describe("a line of three generations", () => {
  const all = {
    a: { year: 2020 },
    b: { year: 2022, from: ["a"], plants: 100, pollen: 100, isolation: APART },
    c: { year: 2024, from: ["b"], plants: 5, pollen: 5, isolation: APART },
    d: { year: 2026, from: ["c"], plants: 100, pollen: 100, isolation: APART },
  };

  test("remembers the narrow year in its middle: F adds up over all of them", () => {
    const { past } = lineOf("kale", all, "d");
    expect(past.generations).toBe(3);
    expect(past.lost).toBeCloseTo(1 - (1 - 1 / 200) * (1 - 1 / 10) * (1 - 1 / 200), 12);
    expect(past.hasUnknown).toBe(false);
  });

  test("is a selfer's by its seed plants alone", () => {
    expect(lineOf("lettuce", all, "c").past.lost).toBeCloseTo(1 - (1 - 1 / 100) * (1 - 1 / 5), 12);
  });

  test("says so where a step was not counted, and fills nothing in", () => {
    const { plants: _gone, ...uncounted } = all.c;
    const { past } = lineOf("kale", { ...all, c: uncounted }, "d");
    expect(past.hasUnknown).toBe(true);
    expect(past.lost).toBeCloseTo(1 - (1 - 1 / 200) ** 2, 12);
    expect(
      lookBack(lineOf("kale", { ...all, c: uncounted }, "d")).unknown.map(({ lot }) => lot.code),
    ).toEqual(["C"]);
  });
});

describe("what was counted", () => {
  test("seed plants alone are a least for what crosses: they flowered too", () => {
    const line = lineOf("kale", { a: { plants: 24 } }, "a");
    expect(line.growing?.size).toMatchObject({ isAtLeast: true });
    expect(line.growing?.size.effective).toBeCloseTo(24, 9);
  });

  test("few fruits pollinated by hand tell nothing without the plants pollen was taken of", () => {
    const byHand = { ...APART, covers: [{ cover: "hand" as const, first: 9000 }] };
    const without = lineOf("summer-squash", { a: { plants: 6, isolation: byHand } }, "a");
    expect(without.growing?.size).toEqual({ effective: null, why: "no pollen plants" });
    const counted = lineOf(
      "summer-squash",
      { a: { plants: 6, pollen: 2, isolation: byHand } },
      "a",
    );
    expect(counted.growing?.size).toMatchObject({ isAtLeast: false });
    expect(counted.growing?.size.effective).toBeLessThan((4 * 6 * 2) / 8);
  });

  test("spinach without its males is not told", () => {
    const line = lineOf("spinach", { a: { plants: 40 } }, "a");
    expect(line.growing?.size).toEqual({ effective: null, why: "no males" });
  });
});

describe("a crossing is never forgotten", () => {
  const all = {
    a: { year: 2020 },
    b: { year: 2021, from: ["a"], plants: 20, isolation: CONFLICT },
    c: { year: 2022, from: ["b"], plants: 20, isolation: APART },
    clean: { year: 2021, from: ["a"], plants: 20, isolation: APART },
    mix: { partOf: ["c", "clean"], isolation: APART },
    part: { partOf: ["mix"] },
    unsure: { from: ["clean"], plants: 9, isolation: UNSURE },
  };

  test.each(["b", "c", "mix", "part"])("%s says so", (id) => {
    const line = lineOf("kale", all, id);
    expect(line.past.hasCrossing).toBe(true);
    expect(lookBack(line).notMet.map(({ lot }) => lot.id)).toEqual(["b"]);
  });

  test("its other branch does not, and what cannot be told is told apart", () => {
    expect(lineOf("kale", all, "clean").past).toMatchObject({
      hasCrossing: false,
      hasDoubt: false,
    });
    expect(lineOf("kale", all, "unsure").past).toMatchObject({
      hasCrossing: false,
      hasDoubt: true,
    });
  });

  test("nor when the crossed lot, or one between, is deleted from the shelf", () => {
    for (const gone of [["b"], ["b", "c"], ["a", "b", "mix"]]) {
      const plan = removeLots(gone, "Delete").apply(planWith("kale", all));
      const part = lineBook(plan, book).lot("part");
      expect(part?.past.hasCrossing, gone.join()).toBe(true);
      expect(part && lookBack(part).crossedBefore, gone.join()).toEqual(["B"]);
      expect(lineBook(plan, book).lot("clean")?.past.hasCrossing).toBe(false);
    }
  });

  test("nor when what was grown of it is copied to another plan", () => {
    const [copy] = lotsToCopy(planWith("kale", all), [{ lots: ["c"] }]);
    expect(copy).toMatchObject({ code: "C", crossedBefore: ["B"] });
  });

  test("a part keeps the record of a parent that is no longer on the shelf", () => {
    expect(
      lineOf("kale", { part: { partOf: [], isolation: CONFLICT } }, "part").past.hasCrossing,
    ).toBe(true);
  });
});

describe("several lots mixed", () => {
  const all = {
    wide: { plants: 100, pollen: 100 },
    narrow: { plants: 4, pollen: 4 },
    mix: { partOf: ["wide", "narrow"] },
    grown: { from: ["mix"], plants: 50, pollen: 50 },
    both: { from: ["wide", "narrow"], plants: 50, pollen: 50 },
    half: { partOf: ["grown"] },
  };

  test("the one that lost most is followed, whether mixed in the packet or on the plot", () => {
    const lost = 1 - (1 - 1 / 8) * (1 - 1 / 100);
    expect(lineOf("kale", all, "mix").past.lost).toBeCloseTo(1 / 8, 12);
    expect(lineOf("kale", all, "grown").past.lost).toBeCloseTo(lost, 12);
    expect(lineOf("kale", all, "both").past.lost).toBeCloseTo(lost, 12);
  });

  test("mixing and splitting are no generations", () => {
    expect(lineOf("kale", all, "mix").past.generations).toBe(1);
    expect(lineOf("kale", all, "half").past).toMatchObject({ generations: 2 });
    expect(lineOf("kale", all, "half").past.lost).toBe(lineOf("kale", all, "grown").past.lost);
  });
});

describe("strangers in the line", () => {
  const plan = (hybrid: boolean): Plan => {
    const base = planWith("kale", { f1: { variety: "v-other" }, a: { from: ["f1"], plants: 20 } });
    const other: Variety = { id: "v-other", name: "Frost Piper", kind: "kale", hybrid };
    return { ...base, varieties: [...base.varieties, other] };
  };

  test.each([true, false])("a parent of another variety is told, hybrid: %s", (hybrid) => {
    const line = lineBook(plan(hybrid), book).lot("a");
    expect(line && lookBack(line).strangers.length).toBeGreaterThan(0);
  });
});

describe("a lot that is its own forebear", () => {
  const all = {
    a: { from: ["c"] },
    b: { from: ["a"] },
    c: { from: ["b"] },
    d: { from: ["c"] },
    free: {},
  };

  test("is named with all the circle, and neither it nor its offspring has a line", () => {
    const lines = lineBook(planWith("kale", all), book);
    expect(lines.loops.map((loop) => loop.map(({ code }) => code))).toEqual([["A", "C", "B"]]);
    expect([...lines.broken].sort()).toEqual(["a", "b", "c", "d"]);
    expect(lines.lot("d")).toBeUndefined();
    expect(lines.lot("free")).toBeDefined();
  });

  test("two circles are two, and a lot that names itself is one", () => {
    const { loops } = descentOf(
      lots({ a: { from: ["b"] }, b: { from: ["a"] }, c: { from: ["c"] } }),
      ({ grownFrom }) => grownFrom ?? [],
    );
    expect(loops.map((loop) => loop.map(({ id }) => id))).toEqual([["a", "b"], ["c"]]);
  });

  test("a line of twenty thousand lots is walked without a stack", () => {
    const many = Object.fromEntries(
      Array.from({ length: 20_000 }, (_, at) => [
        `l${at}`,
        { plants: 50, pollen: 50, ...(at > 0 ? { from: [`l${at - 1}`] } : {}) },
      ]),
    );
    const line = lineOf("kale", many, "l19999");
    expect(line.past.generations).toBe(20_000);
    expect(withForebears(line)).toHaveLength(20_000);
  });
});

describe("the plots of the open plan", () => {
  test("tell what a harvest was sown from that does not say so itself", () => {
    const plan = planWith("kale", { a: {}, new: {} }, { code: "B1-1", lots: ["a"] });
    const harvest = { what: "own", plot: "B1-1", season: plan.season.name, plants: 30 } as const;
    const shelf = plan.lots.map((lot) => (lot.id === "new" ? { ...lot, from: harvest } : lot));
    const line = lineBook({ ...plan, lots: shelf }, book).lot("new");
    expect(line?.parents.map(({ lot }) => lot.id)).toEqual(["a"]);
    expect(line?.isReadFromPlan).toBe(true);
    const another = { ...plan, lots: shelf, season: { ...plan.season, name: "another" } };
    expect(lineBook(another, book).lot("new")?.parents).toEqual([]);
  });

  test("add the season's plants to the line", () => {
    const plan = planWith("kale", { a: { plants: 10, pollen: 10 } }, { lots: ["a"], plants: 25 });
    const [layout] = plan.layouts;
    if (!layout) throw new Error("no layout");
    const lines = lineBook(plan, book);
    const [planned, ...more] = plannedGrowings(plan, layout, "v-p", { lines, book });
    expect(more).toEqual([]);
    expect(planned?.parents.map(({ lot }) => lot.id)).toEqual(["a"]);
    expect(planned?.lostBefore).toBeCloseTo(0.05, 12);
    expect(planned?.lostAfter).toBeCloseTo(1 - 0.95 * 0.98, 12);
  });
});

describe("the first lot that still has seed", () => {
  const four = {
    a: {},
    b: { from: ["a"], plants: 20 },
    c: { from: ["b"], plants: 20 },
    d: { from: ["c"], plants: 20 },
  };

  test("is gone back to", () => {
    expect(motherLot(lineOf("kale", four, "d"))?.lot.id).toBe("a");
    const used = {
      ...four,
      a: { state: "used up" as const },
      b: { ...four.b, amount: { unit: "g" as const, value: 0 } },
    };
    expect(motherLot(lineOf("kale", used, "d"))?.lot.id).toBe("c");
    expect(motherLot(lineOf("kale", four, "a"))).toBeNull();
  });
});
