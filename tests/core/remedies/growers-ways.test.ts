/** Ways out a grower would take, each in a little garden made for it. */
import { describe, expect, test } from "vitest";
import { reachOf } from "../../../src/core/remedies/around-proposals.ts";
import { findRemedies } from "../../../src/core/remedies/find-remedies.ts";
import type { Remedy } from "../../../src/core/remedies/remedy.ts";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { seasonJobs } from "../../../src/core/fieldwork/season-calendar.ts";
import type { Plan, Surrounding } from "../../../src/core/model/plan.ts";
import {
  type TrialPlanting,
  bloom,
  check,
  day,
  source,
  squareAt,
  trialPlan,
} from "../../support/trial-plan.ts";

/** Ways out of the first conflict. */
function waysOf(plan: Plan): readonly Remedy[] {
  const context = checkLayout(plan, "layout-1");
  const finding = context.result.findings.find(
    ({ check: name, severity }) => name === "isolation" && severity === "conflict",
  );
  if (!finding) throw new Error("no conflict");
  return findRemedies(context, finding);
}

const titles = (plan: Plan) => waysOf(plan).map(({ title }) => title);
const pair = (kind: string, more: Partial<TrialPlanting> = {}) =>
  trialPlan({ p: { at: 0, kind, ...more }, q: { at: 6, kind, ...more } });

const point = (x: number, y = 0) => ({ shape: "point", x, y }) as const;

describe("covers offered for a kind", () => {
  test.each([
    ["summer-squash", ["Pollinate P and Q by hand"]],
    ["carrot", ["Cage P and Q and open them by turns", "Cage P", "Cage Q"]],
    ["maize", ["Pollinate P and Q by hand"]],
    ["beet", ["Bag the flowers of P and Q"]],
    ["spinach", []],
    ["kale", ["Cage P and Q and open them by turns", "Cage P", "Cage Q"]],
  ])("%s", (kind, expected) => {
    const covers = waysOf(pair(kind)).filter(({ way }) => way === "cover");
    expect(covers.map(({ title }) => title).sort()).toEqual([...expected].sort());
  });

  test("a seed parent beside a crop to eat is taped alone; the crop's own flowers are nobody's care", () => {
    const plan = trialPlan({
      p: { at: 0, kind: "summer-squash" },
      q: { at: 6, kind: "pumpkin", purpose: "food" },
    });
    const covers = waysOf(plan).filter(({ way }) => way === "cover");
    expect(covers.map(({ title }) => title)).toEqual(["Pollinate P by hand"]);
  });

  test("two cages are not opened by turns while a third stand flowers in the open", () => {
    const open = { ...source("s", "carrot", point(20)), bloom: bloom("07-01", "07-31") };
    const plan = { ...pair("carrot"), surroundings: [open] };
    expect(titles(plan).filter((title) => title.includes("by turns"))).toEqual([]);
  });

  test("a single cage says that it stays shut", () => {
    const cage = waysOf(pair("carrot")).find(({ title }) => title === "Cage P");
    expect(cage?.notes.join(" ")).toContain("It stays shut until all flowers have set");
  });
});

describe("what gives up its seed", () => {
  test("two beets for seed: one is eaten before it flowers; keeping no seed alone would not do", () => {
    expect(titles(pair("beet"))).toContain("Keep no seed of P, and use it up before it flowers");
    expect(titles(pair("beet"))).not.toContain("Keep no seed of P");
  });

  test("two squashes for seed: cutting one would throw it away", () => {
    expect(
      titles(pair("summer-squash")).filter((title) => /seed of|Cut|Use up/.test(title)),
    ).toEqual([]);
  });

  test("a squash that is eaten is not cut before bloom; a beet that is eaten is used up", () => {
    const eaten = (kind: string) =>
      titles(trialPlan({ p: { at: 0, kind }, q: { at: 6, kind, purpose: "food" } }));
    expect(eaten("summer-squash").filter((title) => /Cut|Use up/.test(title))).toEqual([]);
    expect(eaten("beet")).toContain("Use up Q before it flowers");
    expect(eaten("summer-squash")).toContain("Keep no seed of P");
  });

  test("another year takes all its plots out and marks the variety as waiting", () => {
    const plan = pair("beet");
    const way = waysOf(plan).find(({ title }) =>
      title.startsWith("Grow Variety p in another year"),
    );
    const after = way?.edit.apply(plan);
    expect(after?.layouts[0]?.plantings.map(({ id }) => id)).toEqual(["q"]);
    expect(after?.varieties.find(({ id }) => id === "v-p")?.waits).toBe(true);
    expect(way?.notes.join(" ")).toContain("keeps");
  });

  test("a variety whose last lot is dying does not wait", () => {
    const lot = {
      id: "l",
      code: "OLD-1",
      variety: "v-p",
      state: "in stock",
      harvested: day("2005-09-01"),
    } as const;
    const plan = { ...pair("beet"), lots: [lot] };
    const years = titles(plan as Plan).filter((title) => title.includes("another year"));
    expect(years.map((title) => title.slice(0, 14))).toEqual(["Grow Variety q"]);
  });

  test("a locked planting is neither moved nor taken out", () => {
    const plan = trialPlan({
      p: { at: 0, kind: "beet", locked: true },
      q: { at: 6, kind: "beet" },
    });
    for (const way of waysOf(plan).filter(({ way: sort }) =>
      /move|bed|swap|year|fewer|date/.test(sort),
    )) {
      expect(way.touches).not.toContain("p");
    }
  });
});

describe("what flowers around the beds", () => {
  const wild = source("w", "wild-carrot", point(20));
  const carrots = (around: readonly Surrounding[], more: Partial<Plan> = {}) =>
    trialPlan({ p: { at: 0, kind: "carrot" } }, around, more);

  test("a wild carrot is cut before it opens: by what day, how often, how far to look", () => {
    const plan = carrots([wild]);
    const way = waysOf(plan).find(({ title }) => title === "Cut or pull Source w before it opens");
    const notes = way?.notes.join(" ") ?? "";
    expect(notes).toContain("By 30 Jun, and look again every week until 31 Jul");
    expect(notes).toContain("Walk the ground within 1000 m");
    expect(notes).toContain("ask whose ground it is first");
    // The job reaches the season calendar, so that it is not forgotten.
    const after = way?.edit.apply(plan) ?? plan;
    const jobs = seasonJobs(checkLayout(after, "layout-1")).filter(
      ({ job }) => job === "cut before bloom",
    );
    expect(jobs.map(({ text }) => text).join()).toContain("Source w");
  });

  test("what is to be cut stays a caution: somebody must do it in time", () => {
    const plan = carrots([wild]);
    const way = waysOf(plan).find(({ title }) => title.startsWith("Cut or pull"));
    expect(way?.brings.map(({ check: name }) => name)).toEqual(["cover-care"]);
    const [caution] = check(way?.edit.apply(plan) ?? plan).findings.filter(
      ({ check: name }) => name === "cover-care",
    );
    expect(caution?.subjects).toEqual(["w"]);
  });

  test("cutting one of two is no way out of the other", () => {
    const both = carrots([wild, source("x", "wild-carrot", point(22))]);
    const way = waysOf(both).find(({ title }) => title.includes("Source"));
    const after = check(way?.edit.apply(both) ?? both);
    expect(after.findings.filter(({ severity }) => severity === "conflict").length).toBe(1);
    expect(way?.conflictsAfter).toBe(1);
  });

  test("the cut is of this year: the next season asks again", () => {
    const plan = carrots([{ ...wild, everyYear: true }]);
    const way = waysOf(plan).find(({ title }) => title.startsWith("Cut or pull"));
    expect(way?.edit.apply(plan).surroundings[0]).toMatchObject({ flowering: "cut" });
    expect(way?.edit.apply(plan).surroundings[0]?.everyYear).toBeUndefined();
  });

  test("what nobody can reach is not cut, and what lies within the plot is ours", () => {
    expect(
      titles(carrots([{ ...wild, reach: "none" }])).filter((title) => title.includes("Source")),
    ).toEqual([]);
    const corners = [
      [-5, -5],
      [40, -5],
      [40, 5],
      [-5, 5],
    ] as const;
    const outline = { shape: "polygon", corners } as const;
    const site = { name: "Plot", upBearingDeg: 0, outline };
    expect(reachOf({ site }, wild)).toBe("ours");
    expect(reachOf({ site }, { ...wild, outline: point(80) })).toBe("ask");
    expect(reachOf({ site: { name: "Plot", upBearingDeg: 0 } }, wild)).toBe("ask");
  });

  test("a neighbour is asked for what he would do: cut a chard, not a squash", () => {
    const of = (kind: string) =>
      waysOf(trialPlan({ p: { at: 0, kind } }, [source("n", kind, squareAt(6))])).filter(
        ({ way }) => way === "ask",
      );
    expect(new Set(of("chard").map(({ title }) => title))).toEqual(
      new Set([
        "Ask at Source n: chard used up or cut before it flowers",
        "Ask at Source n: Variety p grown there too",
      ]),
    );
    expect(of("summer-squash").map(({ title }) => title)).toEqual([
      "Ask at Source n: Variety p grown there too",
    ]);
    for (const way of of("chard")) {
      expect(way.cost.askedOf).toBe("n");
      expect(way.notes.join(" ")).toContain("once they have said yes");
    }
  });

  test("at stock level a neighbour's lot of the same name would not do", () => {
    const plan = trialPlan({ p: { at: 0, kind: "chard" } }, [source("n", "chard", squareAt(6))], {
      level: "stock",
    });
    expect(titles(plan).filter((title) => title.includes("grown there too"))).toEqual([]);
  });
});

describe("fewer plants", () => {
  // Lettuce wants 5 m at home and 12 plants to keep a variety (Hartland Seed Library).
  const long = (plants: number) =>
    trialPlan({
      p: {
        at: 0,
        kind: "lettuce",
        plants,
        rows: 2,
        outline: { shape: "rectangle", x: 0, y: 0, widthM: 1, lengthM: 8, turnDeg: 90 },
      },
      q: { at: 6, kind: "lettuce", plants: 12 },
    });

  test("a block gives way at the near end, and keeps what a variety needs", () => {
    const fewer = waysOf(long(40)).filter(
      ({ way, touches }) => way === "fewer plants" && touches[0] === "p",
    );
    expect(fewer.length).toBeGreaterThan(0);
    for (const way of fewer) {
      const [planting] = way.edit.apply(long(40)).layouts[0]?.plantings ?? [];
      expect(planting?.plants).toBeGreaterThanOrEqual(12);
      expect(planting?.plants).toBeLessThan(40);
      expect(way.cost.plantsLess).toBe(40 - (planting?.plants ?? 0));
    }
  });

  test("not below the figure that keeps a variety", () => {
    expect(waysOf(long(12)).filter(({ way }) => way === "fewer plants")).toEqual([]);
  });
});

describe("guards", () => {
  // 7 CFR 201.76 footnote 12: 370 ft with 2 border rows, 85 ft with 16.
  test("rows of the same maize, as many as the printed table asks for at that distance", () => {
    const maize = (at: number) =>
      trialPlan(
        {
          p: { at: 0, kind: "maize", variety: { figure: "us-certified" } },
          q: { at, kind: "maize", purpose: "food" },
        },
        [],
        { level: "sale" },
      );
    const rows = (at: number) =>
      waysOf(maize(at))
        .filter(({ way }) => way === "guard")
        .map(({ title }) => title);
    expect(rows(1 + 371 * 0.3048)).toContain("Plant 2 guard rows of the same variety around P");
    expect(rows(1 + 86 * 0.3048)).toContain("Plant 16 guard rows of the same variety around P");
    expect(rows(1 + 80 * 0.3048)).toEqual([]);
  });

  test("no guard for a kind without a printed figure", () => {
    for (const kind of ["beet", "squash", "carrot"].map((id) =>
      id === "squash" ? "summer-squash" : id,
    )) {
      expect(waysOf(pair(kind)).filter(({ way }) => way === "guard")).toEqual([]);
    }
  });
});
