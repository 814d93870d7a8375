/** What to renew and by when, against the years of handbooks and the standards of 7 CFR 201.31. */
import { describe, expect, test } from "vitest";
import { renewVariety } from "../../../src/core/edits/sown-lots.ts";
import { plantedWords, renewalReason } from "../../../src/core/lots/renewal-words.ts";
import { fineVarieties, renewals } from "../../../src/core/lots/renewal.ts";
import { unshelvedVarieties } from "../../../src/core/lots/lot-book.ts";
import type { Lot, Plan } from "../../../src/core/model/plan.ts";
import { book, day, layoutOf, trialPlan } from "../../support/trial-plan.ts";

const lot = (id: string, more: Partial<Lot>): Lot => ({
  id,
  code: id.toUpperCase(),
  variety: "v-a",
  state: "in stock",
  ...more,
});
const fresh = (date: string, sprouted: number) => [
  { id: "t1", date: day(date), sown: 100, sprouted },
];

function shelfPlan(lots: readonly Lot[], more: Partial<Plan> = {}): Plan {
  return {
    ...trialPlan({
      a: {
        at: 0,
        kind: "lettuce",
        plants: 100,
        start: { method: "sown", date: day("2027-04-10") },
      },
      b: {
        at: 5,
        kind: "lettuce",
        variety: { id: "v-a" },
        plants: 100,
        start: { method: "sown", date: day("2027-03-10") },
      },
    }),
    lots,
    ...more,
  };
}

describe("what is on the list", () => {
  const today = day("2027-01-15");
  const causes = (lots: readonly Lot[], more: Partial<Plan["varieties"][number]> = {}) => {
    const plan = shelfPlan(lots);
    const varieties = plan.varieties.slice(0, 1).map((each) => ({ ...each, ...more }));
    return renewals({ ...plan, varieties }, book, today);
  };

  test.each<[string, Lot, string]>([
    ["used up", lot("l", { state: "used up" }), "gone"],
    ["empty", lot("l", { amount: { unit: "g", value: 0 }, harvestYear: 2026 }), "gone"],
    ["tested far under 80 %", lot("l", { tests: fresh("2027-01-10", 40) }), "dead"],
    ["tested just under 80 %", lot("l", { tests: fresh("2027-01-10", 78) }), "doubtful"],
    ["of unknown age", lot("l", {}), "unknown"],
  ])("a lot %s", (_, one, cause) => {
    expect(causes([one])[0]?.cause).toBe(cause);
  });

  test("a good lot in a freezer is not on the list; in a room it is, in time", () => {
    const plan = shelfPlan(
      [lot("l", { tests: fresh("2027-01-10", 98), stored: [{ place: "box" }] })],
      {
        storagePlaces: [
          {
            id: "box",
            name: "Box",
            conditions: [{ fromMonth: 1, temperatureC: -18, moisturePct: 5.5 }],
          },
        ],
      },
    );
    expect(renewals(plan, book, today)).toEqual([]);
    const [soon] = causes([lot("l", { tests: fresh("2027-01-10", 85) })]);
    expect(soon?.cause).toBe("soon");
    expect(soon?.latest).toBeGreaterThan(today);
  });

  test("one good lot saves the variety, whatever lies beside it", () => {
    const [row] = causes([
      lot("bad", { tests: fresh("2027-01-10", 20) }),
      lot("good", { tests: fresh("2027-01-10", 85) }),
    ]);
    expect([row?.cause, row?.lot?.id]).toEqual(["soon", "good"]);
  });

  test("of two that hold longer than a century the likelier to come up today is sown", () => {
    const ice = { fromMonth: 1, temperatureC: -20, moisturePct: 4 };
    const plan = shelfPlan(
      [90, 95, 88].map((sprouted) =>
        lot(`l-${sprouted}`, {
          tests: fresh("2027-01-10", sprouted),
          stored: [{ place: "ice" }],
          amount: { unit: "seeds", value: 1 },
        }),
      ),
      { storagePlaces: [{ id: "ice", name: "Ice", conditions: [ice] }] },
    );
    const [row] = renewals(plan, book, today);
    expect([row?.cause, row?.likely, row?.lot?.id]).toEqual(["short", null, "l-95"]);
  });

  test("less than the reserve is said, with both numbers", () => {
    const [row] = causes(
      [lot("l", { tests: fresh("2027-01-10", 98), amount: { unit: "seeds", value: 120 } })],
      {
        reserve: { unit: "seeds", value: 400 },
      },
    );
    expect(row?.cause).toBe("short");
    expect(row && renewalReason(row)).toBe("120 good seeds are left; 400 are to be kept.");
  });

  test("one press wants the population, sows the best lot, and carries the reason", () => {
    const plan = shelfPlan([
      lot("bad", { tests: fresh("2027-01-10", 20) }),
      lot("good", { tests: fresh("2027-01-10", 60) }),
    ]);
    const [row] = renewals(plan, book, today);
    if (!row) throw new Error("nothing to renew");
    const reason = renewalReason(row);
    const next = renewVariety(row, reason).apply(plan);
    expect(next.varieties[0]).toMatchObject({
      wantedPlants: book.kind("lettuce")?.population?.maintenance?.value,
      lots: ["good"],
      reason:
        "Its best lot GOOD lies wholly under 80 % (7 CFR 201.31): sow it this season, and thicker.",
    });
    const more = {
      ...plan,
      varieties: plan.varieties.map((each) => ({ ...each, wantedPlants: 999 })),
    };
    expect(renewVariety(row, reason).apply(more).varieties[0]?.wantedPlants).toBe(999);
  });

  test("the dead come before the doubtful, these before what is due later", () => {
    const plan = {
      ...trialPlan({
        a: { at: 0, kind: "lettuce" },
        b: { at: 5, kind: "lettuce" },
        c: { at: 9, kind: "lettuce" },
      }),
      lots: [
        lot("a", { tests: fresh("2027-01-10", 85) }),
        lot("b", { variety: "v-b", tests: fresh("2027-01-10", 78) }),
        lot("c", { variety: "v-c", tests: fresh("2027-01-10", 30) }),
      ],
    };
    expect(renewals(plan, book, today).map(({ variety }) => variety.id)).toEqual([
      "v-c",
      "v-b",
      "v-a",
    ]);
  });
});

describe("by when", () => {
  const today = day("2026-11-20");
  /** Tomato falls from 95 to 75 % in the 4 to 5 years of the handbook list of 1912. */
  const due = (sprouted: number, kind = "tomato", more: Partial<Lot> = {}) => {
    const plan = {
      ...trialPlan({ a: { at: 0, kind, plants: 10 } }),
      lots: [lot("l", { tests: fresh("2026-11-01", sprouted), ...more })],
    };
    return renewals(plan, book, today)[0];
  };

  test("tomato of 95 % waits: handbooks give it more than four years in a room", () => {
    expect(due(95)).toBeUndefined();
  });

  test("tomato of 88 % must be ripe anew before it falls, tomato of 80 % is grown out at once", () => {
    const [later, now] = [due(88), due(80)];
    expect([later?.cause, later?.seasonsLeft, later?.by]).toEqual(["soon", 1, "2028"]);
    expect(later && renewalReason(later)).toBe(
      "Its best lot L will likely fall under 75 % (7 CFR 201.31) in 2029, at the earliest in 2026: it can wait until the season of 2028, if a test each winter bears it out.",
    );
    expect([now?.cause, now?.seasonsLeft, now?.by]).toEqual(["soon", 0, "2027"]);
    expect(now && renewalReason(now)).toContain("the last season that brings fresh seed before");
  });

  test("fresh seed of the named season is ripe before the old lot falls", () => {
    let waiting = 0;
    for (let sprouted = 76; sprouted <= 98; sprouted += 1) {
      for (const kind of [
        "tomato",
        "lettuce",
        "pea",
        "beet",
        "leek",
        "onion",
        "carrot",
        "parsnip",
      ]) {
        const renewal = due(sprouted, kind);
        if (!renewal || renewal.seasonsLeft === 0) continue;
        waiting += 1;
        const ripe = day("2027-12-31") + 365.25 * (renewal.seasonsLeft + renewal.leadYears - 1);
        expect(renewal.likely ?? Infinity).toBeGreaterThanOrEqual(ripe);
      }
    }
    expect(waiting).toBeGreaterThan(8);
  });

  test("a biennial is grown out a season earlier than its years alone would say", () => {
    const [leek, onion] = [due(88, "leek"), due(88, "tomato")];
    expect([leek?.leadYears, onion?.leadYears]).toEqual([2, 1]);
    const years = ((leek?.likely ?? 0) - day("2027-12-31")) / 365.25;
    expect(leek?.seasonsLeft).toBe(Math.max(0, Math.floor(years) - 1));
  });

  test("a season over New Year has both years", () => {
    const plan = {
      ...trialPlan({ a: { at: 0, kind: "tomato" } }),
      season: { name: "s", first: day("2026-07-01"), last: day("2027-06-30") },
      lots: [lot("l", { tests: fresh("2026-07-01", 88) })],
    };
    expect(renewals(plan, book, day("2026-07-02"))[0]?.by).toBe("2027/28");
  });
});

describe("the stock that counts", () => {
  const today = day("2027-01-15");

  test("is what holds the standard: a heap of dead seed is no reserve", () => {
    const plan = shelfPlan([
      lot("dead", { tests: fresh("2027-01-10", 10), amount: { unit: "seeds", value: 5000 } }),
      lot("good", { tests: fresh("2027-01-10", 98), amount: { unit: "seeds", value: 20 } }),
    ]);
    const varieties = plan.varieties.map((each) => ({
      ...each,
      reserve: { unit: "seeds" as const, value: 300 },
    }));
    const [row] = renewals({ ...plan, varieties }, book, today);
    expect([row?.cause, row?.stockSeeds, row?.lot?.id]).toEqual(["short", 20, "good"]);
  });

  test("is short without a reserve when it does not grow the variety out once", () => {
    const few = (value: number) =>
      renewals(
        shelfPlan([lot("l", { tests: fresh("2027-01-10", 98), amount: { unit: "seeds", value } })]),
        book,
        today,
      )[0];
    const row = few(5);
    expect(row?.cause).toBe("short");
    expect(row && renewalReason(row)).toBe(
      `5 good seeds are left; growing it out once takes about ${row?.growOutSeeds}.`,
    );
    expect(few(row?.growOutSeeds ?? 0)?.cause).not.toBe("short");
  });

  test("is less what the layout sows, and the plots that renew it are named", () => {
    const plan = shelfPlan([
      lot("l", { tests: fresh("2027-01-10", 98), amount: { unit: "seeds", value: 380 } }),
    ]);
    const layout = layoutOf(plan);
    const [row] = renewals(plan, book, today, { layout });
    expect([row?.cause, row?.stockSeeds]).toEqual(["short", 4]);
    expect(row && renewalReason(row)).toContain("sowing leaves 4 good seeds, should the crop fail");
    expect(row?.plots.length).toBe(2);
    expect(row && plantedWords(row)).toMatch(/^200 plants are in this layout for seed \(/);
  });
});

test("a lot that keeps for long but is weak does not call a good one doubtful", () => {
  const box = {
    id: "box",
    name: "Box",
    conditions: [{ fromMonth: 1, temperatureC: -18, moisturePct: 5.5 }],
  };
  const plan = shelfPlan(
    [
      lot("frozen", { tests: fresh("2027-01-10", 74), stored: [{ place: "box" }] }),
      lot("room", { tests: fresh("2027-01-10", 90) }),
    ],
    { storagePlaces: [box] },
  );
  const [row] = renewals(plan, book, day("2027-01-15"));
  expect([row?.cause, row?.lot?.id]).toEqual(["soon", "room"]);
});

test("what needs nothing is named; a hybrid is not", () => {
  const plan = {
    ...trialPlan({
      a: { at: 0, kind: "tomato" },
      b: { at: 5, kind: "tomato" },
      c: { at: 9, kind: "tomato", variety: { hybrid: true } },
    }),
    lots: [
      lot("a", { tests: fresh("2027-01-10", 30) }),
      lot("b", { variety: "v-b", tests: fresh("2027-01-10", 99) }),
      lot("c", { variety: "v-c", tests: fresh("2027-01-10", 99) }),
    ],
  };
  const due = renewals(plan, book, day("2027-01-15"));
  expect(due.map(({ variety }) => variety.id)).toEqual(["v-a"]);
  expect(fineVarieties(plan, due).map(({ id }) => id)).toEqual(["v-b"]);
});

test("varieties of which no lot is entered are named apart: nothing can be said of them", () => {
  const plan = {
    ...trialPlan({
      a: { at: 0, kind: "tomato" },
      b: { at: 5, kind: "tomato" },
      c: { at: 9, kind: "tomato", variety: { hybrid: true } },
    }),
    lots: [lot("a", { tests: fresh("2027-01-10", 99) })],
  };
  expect(unshelvedVarieties(plan).map(({ id }) => id)).toEqual(["v-b"]);
  expect(renewals(plan, book, day("2027-01-15")), "none of them is due, none is fine").toEqual([]);
});
