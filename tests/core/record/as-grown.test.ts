/** The plan judged as grown, against an oracle that reckons days by calendar arithmetic alone. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { isoFromDay } from "../../../src/core/model/day.ts";
import type { CheckResult } from "../../../src/core/checks/run-checks.ts";
import type { Entry, Plan } from "../../../src/core/model/plan.ts";
import { asGrown, checkAsGrown } from "../../../src/core/record/as-grown.ts";
import { fieldChanges, standingSince } from "../../../src/core/record/field-changes.ts";
import { recordDoubts } from "../../../src/core/record/record-doubts.ts";
import { bloom, day, squareAt, source, trialPlan } from "../../support/trial-plan.ts";

let count = 0;
const entry = (of: string, on: string, what: Entry["what"], more: Partial<Entry> = {}): Entry => ({
  id: `e-${(count += 1)}`,
  of,
  on: day(`2027-${on}`),
  what,
  ...more,
});

/** Two beans 5 m apart that are kept apart by a month. */
const garden = (entries: readonly Entry[], more: Partial<Plan> = {}) =>
  trialPlan(
    {
      p: { at: 0, kind: "common-bean", bloom: bloom("06-10", "06-30"), plants: 40 },
      q: { at: 6, kind: "common-bean", bloom: bloom("08-01", "08-20"), plants: 40 },
    },
    [],
    { entries, ...more },
  );

const pairs = (plan: Plan, on: string) =>
  new Map(
    checkAsGrown(plan, "layout-1", day(`2027-${on}`)).result.pairs.map((pair) => [
      `${pair.seedParent}<-${pair.pollenSource}`,
      pair,
    ]),
  );
const standing = (plan: Plan, on: string) => pairs(plan, on).get("p<-q")?.standing;

describe("ends as grown", () => {
  const plan = (entries: readonly Entry[]) =>
    trialPlan({ p: { at: 0, kind: "common-bean", end: day("2027-07-01") } }, [], { entries });
  const endOn = (entries: readonly Entry[], on: string) =>
    asGrown(plan(entries), day(`2027-${on}`)).layouts[0]?.plantings[0]?.end;

  test("are as planned while they are to come, and then only if it was written down", () => {
    expect(endOn([], "06-30")).toBe(day("2027-07-01"));
    expect(endOn([], "07-01"), "nobody wrote that it was cleared").toBeUndefined();
    const cleared = [entry("p", "06-20", "cleared")];
    expect(endOn(cleared, "06-19"), "not cleared yet").toBe(day("2027-07-01"));
    expect(endOn(cleared, "06-20")).toBe(day("2027-06-20"));
    expect(endOn(cleared, "08-20")).toBe(day("2027-06-20"));
  });

  test("setting out keeps the day of sowing under glass", () => {
    const start = { method: "transplanted", date: day("2027-05-10") } as const;
    const sownUnderGlass = day("2027-03-20");
    const raised = trialPlan(
      { p: { at: 0, kind: "tomato", start: { ...start, sownUnderGlass } } },
      [],
      { entries: [entry("p", "05-14", "set out")] },
    );
    expect(asGrown(raised, day("2027-05-20")).layouts[0]?.plantings[0]?.start).toEqual({
      method: "transplanted",
      date: day("2027-05-14"),
      sownUnderGlass,
    });
  });
});

describe("bloom as grown", () => {
  test("without a record the verdict is the plan's", () => {
    expect(standing(garden([]), "05-01")).toBe("time");
  });

  test("a bloom that opens early meets the other, and the finding is new", () => {
    const plan = garden([entry("q", "06-20", "first flower")]);
    expect(standing(plan, "06-20")).toBe("conflict");
    const planned = checkLayout(plan, "layout-1");
    const grown = checkAsGrown(plan, "layout-1", day("2027-06-20"));
    expect(fieldChanges(planned, grown).worse.map(({ check }) => check)).toContain("isolation");
    expect(standing(plan, "06-19"), "the day before nobody had seen it").toBe("time");
  });

  test("a bloom seen to be over clears what was planned to meet", () => {
    const both = bloom("06-10", "06-30");
    const plan = trialPlan(
      {
        p: { at: 0, kind: "common-bean", bloom: bloom("06-20", "07-10") },
        q: { at: 6, kind: "common-bean", bloom: both },
      },
      [],
      {
        entries: [
          entry("q", "06-01", "first flower"),
          entry("q", "06-10", "last flower"),
          entry("p", "06-19", "looked at"),
        ],
      },
    );
    expect(checkLayout(plan, "layout-1").result.pairs[0]?.standing).toBe("conflict");
    expect(standing(plan, "06-19")).toBe("time");
    expect(pairs(plan, "06-19").get("p<-q")?.gapDays).toBe(9);
  });

  test("what nobody looked at may have opened unseen: its first day is not moved", () => {
    const entries = [
      entry("q", "06-01", "first flower"),
      entry("q", "06-08", "last flower"),
      // Nothing of p, which was to open on the tenth.
    ];
    const found = pairs(garden(entries), "07-20").get("p<-q");
    expect(found?.gapDays).toBe(1);
    expect(found?.standing).toBe("conflict");
  });

  test("what was not seen to end goes on until today", () => {
    const plan = garden([entry("p", "06-10", "first flower")]);
    expect(standing(plan, "06-20")).toBe("time");
    // Still open on 30 July, as far as anybody wrote: a day before the other opens.
    expect(standing(plan, "07-30")).toBe("conflict");
    const over = [...plan.entries, entry("p", "06-28", "last flower")];
    expect(standing({ ...plan, entries: over }, "07-30")).toBe("time");
  });

  test("what was to be cut and is seen in flower sheds pollen; what was cut sheds none", () => {
    const cut = trialPlan(
      {
        p: { at: 0, kind: "common-bean" },
        q: { at: 6, kind: "common-bean", purpose: "food", flowering: "cut" },
      },
      [],
      { entries: [entry("q", "07-03", "first flower")] },
    );
    expect(standing(cut, "07-02")).toBeUndefined();
    expect(standing(cut, "07-03")).toBe("conflict");
    const done = trialPlan(
      { p: { at: 0, kind: "common-bean" }, q: { at: 6, kind: "common-bean" } },
      [],
      { entries: [entry("q", "06-20", "cut before bloom")] },
    );
    expect(standing(done, "06-19")).toBe("conflict");
    expect(standing(done, "06-20")).toBeUndefined();
  });

  test("a first flower after a last one means that it still flowers", () => {
    const cutAndSprouted = [
      entry("p", "06-08", "first flower"),
      entry("p", "06-20", "last flower"),
      entry("p", "07-10", "first flower"),
    ];
    expect(standing(garden(cutAndSprouted.slice(0, 2)), "07-28")).toBe("time");
    // Open since the tenth of July, and nobody saw it end before the other opened.
    expect(standing(garden(cutAndSprouted), "07-28")).toBe("conflict");
  });

  test("a neighbour's bloom is seen as well", () => {
    const plan = trialPlan(
      { p: { at: 0, kind: "carrot", bloom: bloom("06-10", "07-10") } },
      [source("wild", "carrot", squareAt(6), { bloom: bloom("08-01", "09-10") })],
      { entries: [entry("wild", "06-25", "first flower")] },
    );
    const found = checkAsGrown(plan, "layout-1", day("2027-06-25")).result.pairs;
    expect(found.map((pair) => pair.standing)).toEqual(["conflict"]);
  });
});

describe("covers as grown", () => {
  const caged = (entries: readonly Entry[]) =>
    trialPlan(
      {
        p: { at: 0, kind: "carrot", cover: "cage", bloom: bloom("06-10", "06-30") },
        q: { at: 6, kind: "carrot", bloom: bloom("06-10", "06-30") },
      },
      [],
      { entries },
    );

  test("a planned one counts until its plot may flower, then only if it is written that it stands", () => {
    expect(standing(caged([]), "06-09")).toBe("cover");
    expect(standing(caged([]), "06-10")).toBe("conflict");
    const stood = caged([entry("p", "06-08", "covered", { cover: "cage" })]);
    expect(standing(stood, "06-25")).toBe("cover");
  });

  test("one that came late, or off in bloom, clears nothing", () => {
    expect(standing(caged([entry("p", "06-12", "covered")]), "06-25")).toBe("conflict");
    const torn = [entry("p", "06-08", "covered"), entry("p", "06-20", "uncovered")];
    expect(standing(caged(torn), "06-19")).toBe("cover");
    expect(standing(caged(torn), "06-20")).toBe("conflict");
  });
});

describe("since when a finding stands", () => {
  const planned = (plan: Plan) => checkLayout(plan, "layout-1");
  const sinceOf = (plan: Plan, on: string) => {
    const grown = checkAsGrown(plan, "layout-1", day(`2027-${on}`));
    const { worse } = fieldChanges(planned(plan), grown);
    return [...standingSince(planned(plan), grown, worse, day(`2027-${on}`))]
      .filter(([id]) => id.startsWith("isolation"))
      .map(([, since]) => isoFromDay(since));
  };

  test("the day of the entry that brought it, not the last one written", () => {
    const plan = garden([
      entry("q", "06-20", "first flower"),
      entry("p", "06-22", "rogued", { count: 1 }),
    ]);
    expect(sinceOf(plan, "06-25")).toEqual(["2027-06-20"]);
  });

  test("a finding that went and came back stands since it came back", () => {
    const caged = trialPlan(
      {
        p: { at: 0, kind: "carrot", cover: "cage", bloom: bloom("06-10", "06-30") },
        q: { at: 6, kind: "carrot", purpose: "food", bloom: bloom("06-10", "06-30") },
      },
      [],
      {
        entries: [
          entry("p", "06-08", "covered", { cover: "cage" }),
          entry("p", "06-20", "uncovered"),
          entry("p", "06-22", "note", { note: "wind" }),
        ],
      },
    );
    expect(sinceOf(caged, "06-24")).toEqual(["2027-06-20"]);
  });

  test("what only the passing of days brought is new since the day judged on", () => {
    const plan = garden([entry("p", "06-10", "first flower")]);
    expect(sinceOf(plan, "07-30")).toEqual(["2027-07-30"]);
  });
});

test("carried forward from another day's reading, all is the same as made fresh", () => {
  const entries = [
    entry("q", "06-20", "first flower"),
    entry("p", "06-05", "covered", { cover: "cage" }),
    entry("p", "06-18", "uncovered"),
  ];
  const plan = garden(entries);
  const days = ["06-01", "06-06", "06-19", "06-20", "08-01", "06-06"];
  let before: CheckResult | undefined;
  for (const each of days) {
    const on = day(`2027-${each}`);
    const carried = checkAsGrown(plan, "layout-1", on, before).result;
    const fresh = checkAsGrown(plan, "layout-1", on).result;
    expect(carried.findings).toEqual(fresh.findings);
    expect(carried.pairs).toEqual(fresh.pairs);
    expect(carried.stands).toEqual(fresh.stands);
    before = carried;
  }
});

test("plants standing count for the population", () => {
  const plan = garden([entry("p", "06-01", "rogued", { count: 35 })]);
  const { result } = checkAsGrown(plan, "layout-1", day("2027-06-02"));
  expect(result.standById.get("p")?.planting?.plants).toBe(5);
  const planned = checkLayout(plan, "layout-1");
  const { worse } = fieldChanges(planned, checkAsGrown(plan, "layout-1", day("2027-06-02")));
  expect(worse.map(({ check }) => check)).toContain("population");
});

test("the plan itself is left as it was", () => {
  const plan = garden([entry("q", "06-20", "first flower")]);
  const before = structuredClone(plan);
  checkAsGrown(plan, "layout-1", day("2027-09-01"));
  expect(plan).toEqual(before);
});

/** Days between two days by the calendar of the JavaScript engine. */
const calendarDays = (from: string, to: string) =>
  Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000);

test("any two blooms seen whole: conflict exactly when fewer than seven whole days lie between", () => {
  const from = day("2027-05-01");
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 60 }),
      fc.integer({ min: 0, max: 30 }),
      fc.integer({ min: 0, max: 60 }),
      fc.integer({ min: 0, max: 30 }),
      (a, aDays, b, bDays) => {
        const iso = (at: number) => isoFromDay(from + at);
        const seen = (of: string, first: number, days: number): Entry[] => [
          { id: `${of}-1`, of, on: from + first, what: "first flower" },
          { id: `${of}-2`, of, on: from + first + days, what: "last flower" },
        ];
        const plan = garden([...seen("p", a, aDays), ...seen("q", b, bDays)]);
        const [early, late] = a <= b ? [a + aDays, b] : [b + bDays, a];
        const between = calendarDays(iso(early), iso(late)) - 1;
        const expected = between >= 7 ? "time" : "conflict";
        expect(standing(plan, "12-01")).toBe(expected);
      },
    ),
    { numRuns: 300, seed: 16 },
  );
});

test("what cannot be right is told by its reason", () => {
  const entries = [
    entry("p", "05-01", "sown"),
    entry("p", "04-01", "emerged"),
    entry("p", "06-01", "rogued", { count: 50 }),
    entry("p", "06-20", "last flower"),
    entry("p", "06-25", "first flower"),
    entry("p", "06-26", "uncovered"),
    entry("nobody", "06-26", "note"),
    entry("p", "12-24", "note"),
  ];
  const doubts = recordDoubts(garden(entries), day("2027-07-01"));
  expect(doubts.map(({ doubt }) => doubt).sort()).toEqual([
    "before it was sown",
    "last flower before the first",
    "more than stood",
    "nothing was covered",
    "of an unknown plot",
    "of the future",
  ]);
});

test("clocks that ran wrong are told, and their entries kept", () => {
  const entries = [
    entry("p", "06-01", "rogued", { count: 1, id: "a", written: "2027-06-01T10:00:00Z" }),
    entry("p", "06-01", "rogued", {
      count: 2,
      id: "b",
      corrects: "a",
      written: "2027-05-31T23:00:00Z",
    }),
    entry("p", "06-20", "note", { id: "c", written: "2024-01-01T10:00:00Z" }),
    // East of Greenwich it is the next day already.
    entry("p", "06-21", "note", { id: "d", written: "2027-06-20T11:00:00Z" }),
  ];
  const plan = garden(entries);
  const doubts = recordDoubts(plan, day("2027-07-01"));
  expect(doubts.map(({ entry: each, doubt }) => `${each.id} ${doubt}`)).toEqual([
    "b written before what it corrects",
    "c written before its day",
  ]);
  expect(
    checkAsGrown(plan, "layout-1", day("2027-07-01")).result.standById.get("p")?.planting,
  ).toMatchObject({ plants: 38 });
});
