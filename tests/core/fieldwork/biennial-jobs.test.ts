/** Between a biennial's two years: lifting, store, looking over, setting out, in the calendar. */
import { describe, expect, test } from "vitest";
import { rootStoreOf, storeVerdict } from "../../../src/core/calendar/root-store.ts";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { storeCaution } from "../../../src/core/fieldwork/biennial-jobs.ts";
import { type Job, seasonJobs } from "../../../src/core/fieldwork/season-calendar.ts";
import { isoFromDay } from "../../../src/core/model/day.ts";
import type { Climate } from "../../../src/core/model/plan.ts";
import { type TrialTraits, day, layoutOf, trialPlan } from "../../support/trial-plan.ts";

function jobs(kind: string, traits: TrialTraits, climate?: Climate): readonly Job[] {
  const site = {
    name: "Garden",
    upBearingDeg: 0,
    lastSpringFrost: day("2027-05-12"),
    firstAutumnFrost: day("2027-10-08"),
    ...(climate ? { climate } : {}),
  };
  const plan = trialPlan({ p: { at: 0, kind, bloom: null, ...traits } }, [], { site });
  return seasonJobs(checkLayout(plan, layoutOf(plan).id));
}

const firstYear: TrialTraits = {
  flowering: "first-year",
  start: { method: "sown", date: day("2027-05-01") },
};

describe("a first-year stand kept for seed", () => {
  test("is lifted, stored, looked over and set out the next spring", () => {
    const found = jobs("beet", firstYear).map(({ job, day: on }) => [job, isoFromDay(on)]);
    expect(found).toEqual([
      ["sow", "2027-05-01"],
      ["lift roots", "2027-10-08"],
      ["store roots", "2027-10-08"],
      ["look over roots", "2027-11-05"],
      ["set out roots", "2028-04-14"],
    ]);
  });

  test("is stored as printed, with each source's own limit", () => {
    const store = jobs("beet", firstYear).find(({ job }) => job === "store roots");
    expect(store?.text).toContain("0 °C, 90 to 95 % humidity");
    expect(store?.text).toContain("7 to 8 weeks (USDA Handbook 66");
    expect(store?.text).toContain("17 to 26 weeks (UMass Extension)");
    expect(store?.caution).toMatch(/27 weeks .* longer than is printed for food/);
  });

  test("that is eaten is only lifted", () => {
    const found = jobs("beet", { ...firstYear, purpose: "food" }).map(({ job }) => job);
    expect(found).toEqual(["sow", "lift roots"]);
  });

  // Nieuwhof 1969 by OECD 2016, second hand: cabbage stands -12 to -14 C for long.
  test.each([
    [-9, "may be left"],
    [-13, "lift it, or some of it"],
  ])("cabbage where %i C was the coldest: %s", (coldest, words) => {
    const climate = { days: { first: day("2020-01-01"), minC: [coldest], maxC: [0] } };
    const lift = jobs("cabbage", firstYear, climate).find(({ job }) => job === "lift roots");
    expect(lift?.text).toContain("-12 to -14 °C");
    expect(lift?.text).toContain(words);
  });
});

// Cabbage: above 16 C the cold is undone, 0 to 12 C works (OECD 2016 and an older study).
test.each([
  [6, null],
  [15, "too little cold"],
])("cabbage after a winter of %i C: %s", (celsius, words) => {
  const climate = { normals: { minC: Array(12).fill(celsius), maxC: Array(12).fill(celsius) } };
  const lift = jobs("cabbage", firstYear, climate).find(({ job }) => job === "lift roots");
  if (words === null) expect(lift?.caution).toBeNull();
  else expect(lift?.caution).toContain(words);
  const eaten = jobs("cabbage", { ...firstYear, purpose: "food" }, climate);
  expect(eaten.find(({ job }) => job === "lift roots")?.caution).toBeNull();
});

/** Printed for food: USDA Handbook 66, 1954, as copied by a third party; UMass Extension. */
test.each([
  ["carrot", 16, 20],
  ["parsnip", 24, 26],
  ["onion", 28, 28],
  ["kohlrabi", 4, 8],
  ["beet", 7, 26],
  ["rutabaga", 8, 21],
  ["turnip", 16, 22],
  ["winter-radish", 8, 17],
  ["cabbage", 12, 26],
] as const)("%s keeps surely %i weeks, by some %i", (kind, surely, most) => {
  const store = rootStoreOf(kind);
  if (!store) throw new Error("no store");
  const verdicts = [surely, most, most + 1].map((weeks) => storeVerdict(store, weeks));
  expect(verdicts).toEqual(["within", surely === most ? "within" : "longer", "longest"]);
});

describe("what is set out this season", () => {
  const setOut = (on: string, kind = "carrot") =>
    jobs(kind, { start: { method: "transplanted", date: day(on) } }).find(
      ({ job }) => job === "set out",
    )?.caution;

  test("is held against its weeks in store since the autumn frost before", () => {
    expect(setOut("2027-04-20")).toMatch(/28 weeks .* longer than is printed for food/);
    expect(setOut("2027-02-10")).toMatch(/18 weeks .* sources differ/);
    expect(setOut("2027-04-20", "leek")).toBeNull();
  });

  test("in autumn, before or just after the frost, was in no store", () => {
    expect(setOut("2027-10-20")).toBeNull();
    expect(storeCaution({ id: "carrot" }, 0)).toBeNull();
  });
});

test("seed is taken alike from the plants of all plots of a variety", () => {
  const half = { kind: "kale", bloom: { first: day("2027-05-01"), last: day("2027-06-01") } };
  const variety = { id: "v", name: "Long Acre" };
  const plan = trialPlan({
    p: { at: 0, ...half, variety, plants: 15 },
    q: { at: 3, ...half, variety, plants: 15 },
    r: { at: 900, ...half, plants: 8 },
  });
  const ripe = seasonJobs(checkLayout(plan, layoutOf(plan).id)).filter(
    ({ job }) => job === "seed ripe",
  );
  expect(ripe.map(({ text }) => text.replace(/^.*\)\. /, ""))).toEqual([
    "Take equal seed from each of at least 20 plants, all its plots together",
    "Take equal seed from each of at least 20 plants, all its plots together",
    "Take equal seed from all 8 plants",
  ]);
});
