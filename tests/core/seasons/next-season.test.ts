/** The step to the next season, against what a grower would write down by hand. */
import { describe, expect, test } from "vitest";
import { mergeEntries } from "../../../src/core/record/merge-entries.ts";
import type { Entry, Lot, Plan, Surrounding } from "../../../src/core/model/plan.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { keptSeasonOf } from "../../../src/core/seasons/kept-season.ts";
import { nextSeason } from "../../../src/core/seasons/next-season.ts";
import { type KeptSeason, nextSeasonFaults } from "../../../src/core/seasons/next-season-faults.ts";
import {
  nextSeasonReport,
  stillRunning,
  unshelvedWords,
} from "../../../src/core/seasons/next-season-words.ts";
import type { PlotFate } from "../../../src/core/seasons/plot-fate.ts";
import {
  type NextSeasonChoices,
  chosenFates,
  grownLayoutId,
  offeredChoices,
} from "../../../src/core/seasons/season-choices.ts";
import { seasonAhead, titleAhead, yearsAhead } from "../../../src/core/seasons/season-ahead.ts";
import { faultWords } from "../../../src/core/seasons/season-words.ts";
import { storedKinds } from "../../../src/core/seasons/stored-roots.ts";
import { unshelvedPlots } from "../../../src/core/seasons/unshelved.ts";
import { cropsOfPlan } from "../../../src/core/edits/earlier-crops.ts";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { changeSeason, seasonLater } from "../../../src/core/edits/change-season.ts";
import { groupOf, withCopies } from "../../../src/core/edits/copies.ts";
import { changePlantings } from "../../../src/core/edits/object-edits.ts";
import { seasonJobs } from "../../../src/core/fieldwork/season-calendar.ts";
import { sowingRows } from "../../../src/core/lots/sowing.ts";
import { grownOf } from "../../../src/core/seasons/crops-ahead.ts";
import { newPlanting } from "../../../src/core/edits/new-planting.ts";
import { writePlan } from "../../../src/core/model/read-plan.ts";
import { bloom, day, layoutOf, source, squareAt, trialPlan } from "../../support/trial-plan.ts";

/** In the winter after the season of 2027. */
const WINTER = day("2028-01-15");

let count = 0;
const entry = (of: string, on: string, what: Entry["what"], more: Partial<Entry> = {}): Entry => ({
  id: `e-${(count += 1)}`,
  of,
  on: day(`2027-${on}`),
  what,
  ...more,
});

const offered = (plan: Plan, more: Partial<NextSeasonChoices> = {}): NextSeasonChoices => ({
  ...offeredChoices(plan, { id: "next", on: WINTER }),
  ...more,
});
const nextOf = (plan: Plan, more: Partial<NextSeasonChoices> = {}) =>
  nextSeason(plan, offered(plan, more));

/** Fate and seed of each plot, by id. */
function told(plan: Plan): Readonly<Record<string, readonly string[]>> {
  const plots = chosenFates(plan, offered(plan));
  return Object.fromEntries(
    plots.map(({ planting, fate, wentToSeed }) => [planting.id, [fate, wentToSeed]]),
  );
}
const byId = (plots: readonly PlotFate[], id: string) =>
  plots.find(({ planting }) => planting.id === id);

describe("what became of a plot", () => {
  test("from the plan, where nothing is written of it", () => {
    const plan = trialPlan({
      seed: { at: 0, kind: "common-bean" },
      eaten: { at: 2, kind: "lettuce", purpose: "food", flowering: "cut", bloom: null },
      roots: { at: 4, kind: "carrot", flowering: "first-year", bloom: null },
      dinner: { at: 6, kind: "carrot", purpose: "food", flowering: "first-year", bloom: null },
      kale: { at: 8, kind: "kale", flowering: "first-year", bloom: null },
      chives: { at: 10, kind: "chives" },
      open: { at: 12, kind: "tomato", purpose: "food", bloom: null },
    });
    expect(told(plan)).toEqual({
      seed: ["over", "yes"],
      eaten: ["over", "no"],
      roots: ["lifted", "no"],
      dinner: ["over", "no"],
      kale: ["standing", "no"],
      chives: ["standing", "yes"],
      open: ["over", "unknown"],
    });
  });

  test("a biennial sown this season has no seed, whatever the plan says of flowering", () => {
    const start = { method: "sown" as const, date: day("2027-05-01") };
    const plan = trialPlan({ beet: { at: 0, kind: "beet", bloom: null, start } });
    expect(told(plan)).toEqual({ beet: ["lifted", "no"] });
    // Seen in flower it bolted, and shed seed.
    const entries = [entry("beet", "08-01", "first flower")];
    expect(told({ ...plan, entries })).toEqual({ beet: ["over", "yes"] });
  });

  test("what was sown in autumn stands over winter", () => {
    const start = { method: "sown" as const, date: day("2027-10-10") };
    const plan = trialPlan({
      rye: { at: 0, kind: "rye", purpose: "other", bloom: null, start },
      late: {
        at: 2,
        kind: "lettuce",
        purpose: "food",
        bloom: null,
        start: { ...start, date: day("2027-07-20") },
      },
    });
    // Lettuce of late July stays leafy or bolts: nobody knows.
    expect(told(plan)).toEqual({ rye: ["standing", "unknown"], late: ["over", "unknown"] });
  });

  test("roots set out in autumn, or sown late, are not lifted", () => {
    const start = (method: "sown" | "transplanted", on: string) => ({ method, date: day(on) });
    const plan = trialPlan({
      beet: { at: 0, kind: "beet", bloom: null, start: start("transplanted", "2027-10-10") },
      onion: { at: 2, kind: "onion", bloom: null, start: start("sown", "2027-09-05") },
      june: { at: 4, kind: "onion", bloom: null, start: start("sown", "2027-04-05") },
    });
    expect(told(plan)).toEqual({
      beet: ["standing", "no"],
      onion: ["standing", "no"],
      june: ["lifted", "no"],
    });
  });

  test("lost or cut before bloom it left no seed; lost when seed was ripe it had some", () => {
    const beans = { kind: "common-bean", plants: 40, bloom: bloom("07-01", "07-31") };
    const plan = trialPlan(
      {
        early: { at: 0, ...beans },
        late: { at: 2, ...beans },
        some: { at: 4, ...beans },
        cut: { at: 6, ...beans },
        seen: { at: 8, ...beans, flowering: "cut" },
      },
      [],
      {
        entries: [
          entry("early", "06-10", "lost", { count: 40 }),
          entry("late", "10-20", "lost", { count: 40 }),
          entry("some", "06-10", "lost", { count: 39 }),
          entry("cut", "06-20", "cut before bloom"),
          entry("seen", "07-02", "first flower"),
        ],
      },
    );
    expect(told(plan)).toEqual({
      early: ["over", "no"],
      late: ["over", "yes"],
      some: ["over", "yes"],
      cut: ["over", "no"],
      seen: ["over", "yes"],
    });
  });

  test("never sown it leaves nothing, where sowings are written down as a rule", () => {
    const plan = trialPlan({
      a: { at: 0, kind: "common-bean" },
      b: { at: 2, kind: "common-bean" },
      c: { at: 4, kind: "common-bean" },
    });
    const sown = [entry("a", "05-10", "sown"), entry("b", "05-10", "set out")];
    expect(told({ ...plan, entries: sown })["c"]).toEqual(["never", "no"]);
    expect(nextOf({ ...plan, entries: sown }).earlierCrops.map(({ code }) => code)).toEqual([
      "A",
      "B",
    ]);
    // One plot is written of by its harvest alone: sowings are not kept, and c may have stood.
    const loose = [entry("a", "05-10", "sown"), entry("b", "09-10", "harvested")];
    expect(told({ ...plan, entries: loose })["c"]).toEqual(["over", "yes"]);
    // Before the season is over it may still be sown.
    const during = chosenFates(
      { ...plan, entries: sown },
      offered(plan, { on: day("2027-06-01") }),
    );
    expect(byId(during, "c")?.fate).toBe("over");
    // Said to have grown all the same, it is not known to be without seed.
    const raised = offered(plan, { fates: new Map([["c", "over"]]) });
    expect(byId(chosenFates({ ...plan, entries: sown }, raised), "c")?.wentToSeed).toBe("unknown");
  });

  test("entries after the day it is made on are still to come", () => {
    const plan = trialPlan({ a: { at: 0, kind: "common-bean" } }, [], {
      entries: [entry("a", "06-20", "cut before bloom")],
    });
    const before = chosenFates(plan, offered(plan, { on: day("2027-06-19") }));
    expect(byId(before, "a")?.wentToSeed).toBe("yes");
  });

  test("kinds that are stored over winter are biennials of the crop base", () => {
    const book = cropBook();
    for (const id of storedKinds) expect(book.kind(id)?.lifeCycle, id).toBe("biennial");
  });
});

describe("the ground", () => {
  const outline = {
    shape: "polygon" as const,
    corners: [
      [0.1234567, 0.7654321],
      [3.3333333, 0.25],
      [2.0000001, 4.9999999],
    ] as [number, number][],
  };

  test("carries what grew on it, to the last digit, with variety, year, code and source", () => {
    const plan = trialPlan(
      { p: { at: 0, kind: "common-bean", outline, bloom: bloom("07-01", "08-01") } },
      [],
      {
        earlierCrops: [{ id: "e1", outline: squareAt(3), kind: "beet", year: 2025 }],
        entries: [entry("p", "09-30", "harvested", { count: 12 })],
      },
    );
    const [old, crop, ...more] = nextOf(plan).earlierCrops;
    expect(more).toEqual([]);
    expect(old).toBe(plan.earlierCrops[0]);
    expect(crop).toEqual({
      id: "e2",
      outline,
      kind: "common-bean",
      varietyName: "Variety p",
      year: 2027,
      code: "P",
      wentToSeed: "yes",
      knownFrom: "record",
    });
  });

  test("has the year of the harvest, where a season crosses New Year", () => {
    const season = { name: "2027/28", first: day("2027-07-01"), last: day("2028-06-30") };
    const dated = (first: string, last: string) => ({ first: day(first), last: day(last) });
    const plan = trialPlan(
      {
        autumn: { at: 0, kind: "spinach", bloom: dated("2027-09-01", "2027-09-20") },
        spring: { at: 2, kind: "spinach", bloom: dated("2028-05-01", "2028-05-20") },
      },
      [],
      { season },
    );
    const next = nextOf(plan, { on: day("2028-07-02") });
    expect(next.earlierCrops.map(({ year }) => year)).toEqual([2027, 2028]);
    expect(next.season).toEqual({
      name: "2028/29",
      first: day("2028-07-01"),
      last: day("2029-06-30"),
    });
  });

  test("is told the same when last season's file is taken over", () => {
    const plan = trialPlan({ a: { at: 0, kind: "beet" }, b: { at: 2, kind: "common-bean" } });
    const entries = [entry("a", "05-10", "sown"), entry("a", "06-01", "cut before bloom")];
    const written = { ...plan, entries };
    const { crops } = cropsOfPlan(written, trialPlan({}), grownOf(written, WINTER));
    expect(crops).toMatchObject([{ kind: "beet", wentToSeed: "no", knownFrom: "record" }]);
    expect(nextOf(written).earlierCrops).toEqual(crops.map((crop) => ({ ...crop, id: "e1" })));
    expect(cropsOfPlan(plan, trialPlan({})).crops).toHaveLength(2);
  });

  test("is not told twice of one crop", () => {
    const plan = trialPlan({ p: { at: 0, kind: "common-bean" } });
    const entered = {
      id: "e7",
      outline: squareAt(0),
      kind: "common-bean",
      year: 2027,
      varietyName: "Variety p",
    };
    expect(nextOf({ ...plan, earlierCrops: [entered] }).earlierCrops).toEqual([entered]);
  });
});

describe("over the winter", () => {
  const sown = { method: "sown" as const, date: day("2027-06-15") };
  const lots: readonly Lot[] = [
    { id: "lot-1", code: "A-25", variety: "v-beet", state: "in stock" },
    { id: "lot-2", code: "K-25", variety: "v-kale", state: "in stock" },
  ];
  const plan = trialPlan(
    {
      kale: {
        at: 0,
        kind: "kale",
        flowering: "first-year",
        bloom: null,
        start: sown,
        plants: 30,
        lots: ["lot-2"],
        cover: "cage",
      },
      beet: {
        at: 2,
        kind: "beet",
        flowering: "first-year",
        bloom: null,
        start: sown,
        plants: 60,
        lots: ["lot-1"],
      },
      bean: { at: 4, kind: "common-bean" },
    },
    [],
    {
      lots,
      site: {
        name: "S",
        upBearingDeg: 0,
        lastSpringFrost: day("2027-05-10"),
        firstAutumnFrost: day("2027-10-12"),
      },
    },
  );

  test("what stands keeps its ground, lots and numbers, locked, and flowers now", () => {
    const [kale, ...more] = layoutOf(nextOf(plan)).plantings;
    expect(more).toEqual([]);
    expect(kale).toEqual({
      id: "kale",
      code: "KALE",
      variety: "v-kale",
      outline: squareAt(0),
      purpose: "seed",
      flowering: "yes",
      cover: "none",
      start: sown,
      plants: 30,
      lots: ["lot-2"],
      locked: true,
      stoodInto: day("2028-01-01"),
    });
    // It is no crop of the past: it stands there.
    expect(nextOf(plan).earlierCrops.map(({ kind }) => kind)).toEqual(["beet", "common-bean"]);
  });

  test("nothing is sown for what stands, nor for its copy in another place before it is dated", () => {
    const next = nextOf(plan);
    const sowingOf = (of: Plan) =>
      sowingRows(of, layoutOf(of), cropBook()).map(({ planting }) => planting.code);
    expect(sowingOf(next)).toEqual([]);
    const jobs = seasonJobs(checkLayout(next, "layout-1"));
    expect(jobs.filter(({ job }) => job === "sow")).toEqual([]);
    // Sown anew, it is sown.
    const again = changePlantings(
      "layout-1",
      ["kale"],
      { start: { method: "sown", date: day("2028-06-15") } },
      "Sow",
    ).apply(next);
    expect(sowingOf(again)).toEqual(["KALE"]);
    const copied = withCopies(next, "layout-1", groupOf(next, layoutOf(next), ["kale"]), [
      { x: 5, y: 0 },
    ]);
    expect(sowingOf(copied)).toHaveLength(1);
    const moved = changeSeason(seasonLater(next.season, 1), "move").apply(next);
    expect(sowingOf(moved)).toEqual([]);
  });

  test("what was lost over the summer is not among those that stand", () => {
    const entries = [entry("kale", "08-01", "lost", { count: 11 })];
    expect(layoutOf(nextOf({ ...plan, entries })).plantings[0]?.plants).toBe(19);
  });

  test("roots in store head the seed list, and are set out with their lot and numbers", () => {
    const entries = [entry("beet", "10-20", "harvested", { count: 48 })];
    const next = nextOf({ ...plan, entries });
    const [first] = next.varieties;
    expect(first).toMatchObject({
      id: "v-beet",
      wantedPlants: 48,
      toSetOut: [{ plants: 48, plot: "BEET", season: "2027", lots: ["lot-1"] }],
      reason: "In store over winter, to set out in spring: 48 plants of BEET from season 2027.",
    });
    expect(next.earlierCrops[0]).toMatchObject({ kind: "beet", wentToSeed: "no" });
    const bed = { id: "b", code: "B", outline: squareAt(20) };
    if (!first) throw new Error("no beet");
    const placed = newPlanting(next, { ...layoutOf(next), beds: [bed] }, bed, first, {
      plants: 48,
      rows: 1,
      outline: squareAt(20),
    });
    expect(placed).toMatchObject({
      start: { method: "transplanted", date: day("2028-04-12") },
      lots: ["lot-1"],
      flowering: "yes",
    });
  });

  test("left in the ground or eaten, as the grower says", () => {
    const standing = nextOf(plan, {
      fates: new Map([
        ["beet", "standing"],
        ["kale", "over"],
      ]),
    });
    expect(layoutOf(standing).plantings.map(({ id }) => id)).toEqual(["beet"]);
    expect(standing.earlierCrops).toMatchObject([
      { kind: "kale", wentToSeed: "no" },
      { kind: "common-bean" },
    ]);
    expect(standing.varieties[0]).not.toHaveProperty("toSetOut");
  });
});

describe("what stands around", () => {
  const known: Partial<Surrounding> = {
    varietyName: "Old Ferry",
    flowering: "cut",
    cover: "cage",
    bloom: bloom("06-10", "09-20"),
  };
  const plan = trialPlan({}, [
    source("asked", "tomato", squareAt(0), known),
    source("yearly", "tomato", squareAt(2), { ...known, everyYear: true }),
    { ...source("hedge", "tomato", squareAt(4)), what: "hedge" },
  ]);

  test("is asked again, unless it is the same every year", () => {
    const [asked, yearly, hedge] = nextOf(plan).surroundings;
    expect(asked).toEqual({
      id: "asked",
      label: "Source asked",
      what: "pollen",
      kind: "tomato",
      outline: squareAt(0),
      flowering: "yes",
      cover: "none",
    });
    expect(yearly).toMatchObject({
      ...known,
      bloom: { first: day("2028-06-10"), last: day("2028-09-20") },
    });
    expect(hedge).toBe(plan.surroundings[2]);
  });

  test("can be left out, or said to be the same", () => {
    const neighbours = new Map([
      ["asked", "same"],
      ["yearly", "leave"],
    ] as const);
    const next = nextOf(plan, { neighbours });
    expect(next.surroundings.map(({ id }) => id)).toEqual(["asked", "hedge"]);
    expect(next.surroundings[0]).toMatchObject({ varietyName: "Old Ferry", cover: "cage" });
  });
});

describe("the new plan", () => {
  test("is another one, of the season after, that remembers where it came from", () => {
    const plan = trialPlan({ p: { at: 0, kind: "common-bean" } }, [], {
      title: "Rooks Acre 2027",
      chosenLayout: "layout-1",
      accepted: [{ finding: "isolation|p|q", reason: "so be it", requiredM: null }],
      entries: [entry("p", "05-10", "sown")],
      site: { name: "S", upBearingDeg: 0, lastSpringFrost: day("2027-05-10") },
    });
    const before = writePlan(plan);
    const next = nextOf(plan);
    expect(writePlan(plan), "the plan before is only read").toBe(before);
    expect(next).toMatchObject({
      id: "next",
      title: "Rooks Acre 2028",
      season: { name: "2028", first: day("2028-01-01"), last: day("2028-12-31") },
      site: { lastSpringFrost: day("2028-05-10") },
      entries: [],
      accepted: [],
      cameFrom: { plan: "trial", title: "Rooks Acre 2027", season: "2027" },
    });
    expect(next).not.toHaveProperty("chosenLayout");
  });

  test("of 29 February has 28 in a year without one", () => {
    const season = { name: "2028", first: day("2028-02-29"), last: day("2029-02-28") };
    const plan = trialPlan({}, [], {
      season,
      site: { name: "S", upBearingDeg: 0, lastSpringFrost: day("2028-02-29") },
    });
    const next = nextOf(plan);
    expect(next.site.lastSpringFrost).toBe(day("2029-02-28"));
    // A day on, where the last of February is taken.
    expect(next.season).toMatchObject({ first: day("2029-03-01") });
  });

  test("follows a season longer than a year from the day after it ends", () => {
    const long = { name: "2027", first: day("2027-01-01"), last: day("2028-03-31") };
    expect(seasonAhead(long)).toMatchObject({ first: day("2028-04-01"), last: day("2029-03-31") });
    expect(yearsAhead(long, seasonAhead(long))).toBe(1);
    expect(titleAhead("Garden", long, seasonAhead(long))).toBe("Garden 2028");
  });

  test("takes the layout that the record is of, else the chosen one", () => {
    const plan = trialPlan({ p: { at: 0, kind: "common-bean" }, q: { at: 2, kind: "beet" } });
    const [first] = plan.layouts;
    if (!first) throw new Error("no layout");
    const [p, q] = first.plantings;
    if (!p || !q) throw new Error("no plantings");
    const layouts = [
      { ...first, plantings: [p] },
      { ...first, id: "layout-2", name: "Second", plantings: [q] },
    ];
    const two: Plan = { ...plan, layouts };
    expect(grownLayoutId(two)).toBe("layout-1");
    expect(grownLayoutId({ ...two, chosenLayout: "layout-2" })).toBe("layout-2");
    // None chosen, none recorded: the one somebody looks at was grown, not the first attempt.
    expect(grownLayoutId(two, "layout-2")).toBe("layout-2");
    expect(grownLayoutId(two, "gone")).toBe("layout-1");
    expect(grownLayoutId({ ...two, chosenLayout: "layout-1" }, "layout-2")).toBe("layout-1");
    expect(offeredChoices(two, { id: "next", on: WINTER, open: "layout-2" }).layout).toBe(
      "layout-2",
    );
    const entries = [entry("p", "05-10", "sown")];
    expect(grownLayoutId({ ...two, chosenLayout: "layout-2", entries })).toBe("layout-1");
    expect(mergeEntries(entries, entries).entries).toEqual(entries);
  });
});

describe("the seed list", () => {
  const lot = (id: string, variety: string, more: Partial<Lot> = {}): Lot => ({
    id,
    code: id.toUpperCase(),
    variety,
    state: "in stock",
    ...more,
  });
  const plan = trialPlan(
    {
      fine: { at: 0, kind: "tomato", variety: { wantedPlants: 12, reason: "sold out" } },
      gone: { at: 2, kind: "common-bean", variety: { wantedPlants: 30 } },
    },
    [],
    {
      lots: [
        lot("lot-1", "v-fine", {
          harvestYear: 2027,
          amount: { unit: "g", value: 30 },
          from: { what: "own", plot: "FINE", season: "2027" },
        }),
        lot("lot-2", "v-gone", { state: "used up" }),
      ],
      storagePlaces: [
        {
          id: "s",
          name: "Shelf",
          conditions: [{ fromMonth: 1, temperatureC: 10, humidityPct: 40 }],
        },
      ],
    },
  );

  test("begins with what must be renewed, and why; what is fine is wanted only when asked for", () => {
    const { varieties } = nextOf(plan);
    expect(varieties.map(({ id }) => id)).toEqual(["v-gone", "v-fine"]);
    expect(varieties[0]).toMatchObject({
      reason:
        "No seed of it is left on the shelf. It was grown for seed as GONE, of which no lot is on the shelf yet.",
    });
    expect(varieties[0]?.wantedPlants).toBeGreaterThan(0);
    expect(varieties[1]).not.toHaveProperty("wantedPlants");
    expect(varieties[1]).not.toHaveProperty("reason");
    const kept = nextOf(plan, { keepsWanted: true }).varieties;
    expect(kept[1]).toMatchObject({ id: "v-fine", wantedPlants: 12 });
  });

  test("says which harvests are on no shelf yet", () => {
    const plots = chosenFates(plan, offered(plan));
    const ids = (from: Plan, on: number) =>
      unshelvedPlots(from, plots, on).map(({ planting }) => planting.id);
    expect(ids(plan, WINTER)).toEqual(["gone"]);
    // In summer nothing is due on the shelf but what is written down as harvested.
    expect(ids(plan, day("2027-08-01"))).toEqual([]);
    const entries = [entry("gone", "07-30", "harvested")];
    expect(ids({ ...plan, entries }, day("2027-08-01"))).toEqual(["gone"]);
  });

  test("this season's harvests keep what they were sown from, though their plots stay behind", () => {
    const plots = plan.layouts[0]?.plantings.map((planting) =>
      planting.id === "fine" ? { ...planting, lots: ["lot-0"] } : planting,
    );
    const before = lot("lot-0", "v-fine", { harvestYear: 2024 });
    const sown: Plan = {
      ...plan,
      lots: [before, ...plan.lots],
      layouts: plan.layouts.map((layout) => ({ ...layout, plantings: plots ?? [] })),
    };
    const lots = new Map(nextOf(sown).lots.map((each) => [each.id, each]));
    expect(lots.get("lot-1")?.grownFrom).toEqual(["lot-0"]);
    expect(lots.get("lot-2")).toBe(sown.lots[2]);
  });

  test("loses no lot and no storage place", () => {
    const next = nextOf(plan);
    expect(next.lots).toBe(plan.lots);
    expect(next.storagePlaces).toBe(plan.storagePlaces);
  });
});

describe("the report", () => {
  const plan = trialPlan(
    {
      bean: { at: 0, kind: "common-bean" },
      beet: { at: 2, kind: "beet", flowering: "first-year", bloom: null, plants: 1 },
    },
    [],
    {
      title: "Garden 2027",
      site: { name: "S", upBearingDeg: 0, lastSpringFrost: day("2027-05-10") },
    },
  );

  test("says what comes along, what became of plots, and what heads the seed list", () => {
    const choices = offered(plan);
    const plots = chosenFates(plan, choices);
    expect(nextSeasonReport(plan, nextSeason(plan, choices), plots)).toEqual([
      '"Garden 2028", season 2028, 1 Jan 2028 to 31 Dec 2028, from "Garden 2027"',
      "0 beds, the site S.",
      "Frosts a year on: 10 May 2028.",
      "2 varieties on the seed list.",
      "Of 2 plots: 2 become earlier crops of their ground; 1 with roots or plants to set out in spring.",
      "BEET Variety beet: lifted, in store",
      "seed list: Variety beet: In store over winter, to set out in spring: 1 plant of BEET from season 2027.",
    ]);
    expect(unshelvedWords(plots.slice(0, 1))).toContain(
      "is on the shelf yet of: BEAN Variety bean.",
    );
    expect(unshelvedWords([])).toBe("");
  });

  test("says what a season still running means", () => {
    expect(stillRunning(plan, day("2027-12-31"))).toContain("runs until 31 Dec 2027");
    expect(stillRunning(plan, day("2028-01-01"))).toBe("");
  });
});

describe("nothing is made", () => {
  const plan = trialPlan({ p: { at: 0, kind: "common-bean" } });
  const faultsOf = (
    from: Plan,
    more: Partial<NextSeasonChoices> = {},
    kept: readonly KeptSeason[] = [],
  ) =>
    nextSeasonFaults(from, offered(from, more), kept).map((fault) =>
      faultWords(fault, from, cropBook()),
    );

  test("of a season that exists already, which is named", () => {
    const next = nextOf(plan);
    const kept = keptSeasonOf(writePlan(next));
    expect(kept).toEqual({
      planId: "next",
      title: "New plan 2028",
      season: next.season,
      cameFrom: "trial",
    });
    if (!kept) throw new Error("not read");
    expect(faultsOf(plan, {}, [kept])).toEqual([
      '"New plan 2028" was started from this plan already, for season 2028 (1 Jan 2028 to 31 Dec 2028). Open that one, or choose other days.',
    ]);
    expect(faultsOf(plan, {}, [{ ...kept, cameFrom: "another" }])).toEqual([]);
    const later = { name: "2029", first: day("2029-01-01"), last: day("2029-12-31") };
    expect(faultsOf(plan, { season: later }, [kept])).toEqual([]);
    expect(keptSeasonOf("no plan")).toBeNull();
    expect(
      keptSeasonOf('{"id":"x","season":{"first":"2028-02-30","last":"2028-12-31"}}'),
    ).toBeNull();
  });

  test("of seasons that overlap, and of one that ends before it starts", () => {
    const season = { name: "2028", first: day("2027-12-31"), last: day("2028-12-31") };
    expect(faultsOf(plan, { season })).toEqual([
      "Season 2027 runs until 31 Dec 2027: the next one cannot begin before it is over.",
    ]);
    expect(faultsOf(plan, { season: { ...season, first: day("2029-01-01") } })).toEqual([
      "The new season would end before it starts.",
    ]);
    expect(
      faultsOf(plan, { title: " ", season: { ...offered(plan).season, name: "" } }),
    ).toHaveLength(2);
  });

  test("of earlier crops of the future, each named", () => {
    const crop = { outline: squareAt(0), kind: "beet" };
    const earlierCrops = [
      { id: "e1", ...crop, year: 2027 },
      { id: "e2", ...crop, year: 2029, varietyName: "Ember" },
    ];
    expect(faultsOf({ ...plan, earlierCrops })).toEqual([
      "Earlier crops of years still to come: beet Ember, 2029. Season 2027 ends in 2027; change their years under Earlier crops, or remove them.",
    ]);
  });
});
