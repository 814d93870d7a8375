import { bandWords } from "../../../src/core/lots/band-words.ts";
import { describe, expect, test } from "vitest";
import { ageingIn, moistureRange } from "../../../src/core/lots/ageing.ts";
import { livesElsewhere, placeRules, sealedLimit } from "../../../src/core/lots/better-place.ts";
import { estimateOf } from "../../../src/core/lots/estimate.ts";
import { noteWords, startWords, yearsWords } from "../../../src/core/lots/lot-words.ts";
import { constantsOf } from "../../../src/core/lots/viability-sets.ts";
import { sigmaDays } from "../../../src/core/lots/viability.ts";
import { monthly } from "../../../src/core/lots/storage-clock.ts";
import { rateAfter } from "../../support/viability-after.ts";
import type { Kind } from "../../../src/core/kinds/crop.ts";
import type { Lot, StoragePlace } from "../../../src/core/model/plan.ts";
import { book, day } from "../../support/trial-plan.ts";

const kind = (id: string): Kind => {
  const found = book.kind(id);
  if (!found) throw new Error(id);
  return found;
};
const lot = (more: Partial<Lot>): Lot => ({
  id: "lot-1",
  code: "L-1",
  variety: "v",
  state: "in stock",
  ...more,
});
const sealed = (id: string, temperatureC: number, moisturePct: number): StoragePlace => ({
  id,
  name: id,
  conditions: [{ fromMonth: 1, temperatureC, moisturePct }],
});
const tested = (iso: string, sown: number, sprouted: number) => [
  { id: "t1", date: day(iso), sown, sprouted },
];
const FREEZER = sealed("freezer", -18, 6);
const SHED: StoragePlace = {
  id: "shed",
  name: "Shed",
  conditions: [
    { fromMonth: 5, temperatureC: 24, humidityPct: 65 },
    { fromMonth: 10, temperatureC: 6, humidityPct: 70 },
  ],
};

describe("a band", () => {
  const lettuce = lot({
    tests: tested("2026-01-01", 400, 380),
    stored: [{ place: "a" }, { place: "b", from: day("2026-05-01") }],
  });
  const places = [sealed("a", 22, 7), sealed("b", 5, 6)];
  const estimate = estimateOf(lettuce, kind("lettuce"), places);

  test("is the exact limits of the test on the day of the test", () => {
    const [least = 0, most = 0] = estimate?.at(day("2026-01-01")) ?? [];
    expect(least).toBeCloseTo(0.9239, 3);
    expect(most).toBeCloseTo(0.9692, 3);
  });

  test("adds the losses of both places, and holds the equation's own value", () => {
    const set = constantsOf({ species: "Lactuca sativa" })?.sets[0];
    if (!set) throw new Error("no lettuce");
    const lost = 120 / sigmaDays(set, 7, 22) + 245 / sigmaDays(set, 6, 5);
    const exact = rateAfter(0.95, lost, 1);
    expect(100 * exact).toBeCloseTo(89.471, 3);
    const [least = 1, most = 0] = estimate?.at(day("2027-01-01")) ?? [];
    expect(least).toBeLessThan(exact);
    expect(most).toBeGreaterThan(exact);
    expect(estimate?.likelyAt(day("2027-01-01"))).toBeCloseTo(exact, 2);
  });

  test("never rises, and falls under a rate on the day it says", () => {
    const under = estimate?.under(0.8);
    const [earliest, latest] = [under?.earliest ?? 0, under?.latest ?? 0];
    expect(earliest).toBeLessThan(latest);
    expect(estimate?.at(earliest - 1)[0]).toBeGreaterThan(0.8);
    expect(estimate?.at(earliest)[0]).toBeLessThanOrEqual(0.8);
    expect(estimate?.at(latest - 1)[1]).toBeGreaterThan(0.8);
    expect(estimate?.at(latest)[1]).toBeLessThanOrEqual(0.8);
  });

  test("has one likely day, asked for alone or with both edges, in one place and in two", () => {
    for (const each of [estimate, estimateOf(lot({ harvestYear: 2024 }), kind("carrot"), [])]) {
      for (const rate of [0.1, 0.5, 0.8, 0.9, 0.99]) {
        expect(each?.likelyUnder(rate)).toBe(each?.under(rate).likely);
      }
    }
  });

  test("is kept with its lot for as long as kind and places are the same", () => {
    expect(estimateOf(lettuce, kind("lettuce"), places)).toBe(estimate);
    expect(estimateOf(lettuce, kind("kale"), places)).not.toBe(estimate);
    expect(estimateOf(lettuce, kind("lettuce"), [FREEZER])?.at(day("2027-01-01"))).not.toEqual(
      estimate?.at(day("2027-01-01")),
    );
  });

  test("starts anew with a later test, which always wins", () => {
    const again = lot({
      ...lettuce,
      tests: [
        ...(lettuce.tests ?? []),
        { id: "t2", date: day("2027-01-01"), sown: 400, sprouted: 200 },
      ],
    });
    const [least = 0, most = 1] =
      estimateOf(again, kind("lettuce"), places)?.at(day("2027-01-01")) ?? [];
    expect([least < 0.5, most > 0.5, most < 0.56]).toEqual([true, true, true]);
  });

  test("through the seasons falls faster in summer, and its days fit its band", () => {
    const shed = estimateOf(
      lot({ tests: tested("2026-01-01", 400, 380), stored: [{ place: "shed" }] }),
      kind("lettuce"),
      [SHED],
    );
    const loss = (from: string, to: string) =>
      (shed?.likelyAt(day(from)) ?? 0) - (shed?.likelyAt(day(to)) ?? 0);
    expect(loss("2026-05-01", "2026-08-01")).toBeGreaterThan(2 * loss("2026-01-01", "2026-04-01"));
    const { earliest, latest } = shed?.under(0.6) ?? {};
    expect(shed?.at((earliest ?? 0) - 1)[0]).toBeGreaterThan(0.6);
    expect(shed?.at(earliest ?? 0)[0]).toBeLessThanOrEqual(0.6);
    expect(shed?.at((latest ?? 0) - 1)[1]).toBeGreaterThan(0.6);
    expect(shed?.at(latest ?? 0)[1]).toBeLessThanOrEqual(0.6);
  });
});

describe("a lot that nobody tested, in a room", () => {
  // The years that the sources of kinds print: within them, at their middle, it is likely too old.
  test("likely falls under its standard in the middle of the years of handbooks", () => {
    let reached = 0;
    for (const each of book.kinds) {
      const years = each.seedLifeYears?.value;
      const untested: Lot = {
        id: "u",
        code: "U",
        variety: "v",
        state: "in stock",
        harvestYear: 2020,
      };
      const estimate = years && estimateOf(untested, each, []);
      if (!estimate) continue;
      reached += 1;
      const standard = (each.germinationPercent?.value ?? 50) / 100;
      const { earliest, likely, latest } = estimate.under(standard);
      const lived = ((likely ?? Infinity) - estimate.startDay) / 365;
      const [least, most] = years[0] === years[1] ? [years[0] * 0.75, years[1] * 1.25] : years;
      expect(lived, each.id).toBeGreaterThanOrEqual(Math.sqrt(least * most) - 0.02);
      expect(lived, each.id).toBeLessThanOrEqual(most);
      expect(earliest ?? Infinity, each.id).toBeLessThanOrEqual(likely ?? Infinity);
      expect(likely ?? Infinity, each.id).toBeLessThanOrEqual(latest ?? Infinity);
      for (const age of [0, 1, 3, 8, 20]) {
        const on = estimate.startDay + age * 365;
        const [low, high] = estimate.at(on);
        const now = estimate.likelyAt(on);
        expect(now, each.id).toBeGreaterThanOrEqual(low - 1e-12);
        expect(now, each.id).toBeLessThanOrEqual(high + 1e-12);
      }
    }
    expect(reached).toBeGreaterThan(50);
  });
});

describe("what an estimate rests on", () => {
  test("kinds without constants follow handbook years and say so", () => {
    const carrot = estimateOf(lot({ harvestYear: 2024 }), kind("carrot"), []);
    expect(carrot?.notes).toEqual(["handbook", "room assumed"]);
    expect(carrot?.from).toBe("harvest");
    expect(startWords(carrot as NonNullable<typeof carrot>)).toContain("2024");
  });

  test("stand-ins, two sets and clamps are named", () => {
    expect(ageingIn(kind("kale"), FREEZER.conditions?.[0] as never)?.notes).toContain("proxy");
    expect(noteWords("proxy", kind("kale"))).toContain("Brassica napus");
    expect(ageingIn(kind("onion"), FREEZER.conditions?.[0] as never)?.notes).toContain("two sets");
    expect(
      ageingIn(kind("lettuce"), { fromMonth: 1, temperatureC: 20, moisturePct: 3 })?.notes,
    ).toContain("dry clamp");
    expect(
      ageingIn(kind("pea"), { fromMonth: 1, temperatureC: 25, humidityPct: 85 })?.notes,
    ).toEqual(expect.arrayContaining(["too damp", "humidity clamp"]));
  });

  test("drier than the range is reckoned no better than its edge", () => {
    const at = (moisturePct: number) =>
      ageingIn(kind("lettuce"), { fromMonth: 1, temperatureC: 20, moisturePct });
    expect(at(2)?.slow).toBe(at(4.5)?.slow);
  });

  test("an ordinary room widens to handbook years: tomato is not dead in a year and a half", () => {
    const tomato = estimateOf(lot({ harvestYear: 2024 }), kind("tomato"), []);
    const { latest } = tomato?.under(0.75) ?? {};
    expect(((latest ?? 0) - (tomato?.startDay ?? 0)) / 365).toBeGreaterThan(3);
    expect(tomato?.notes).toContain("handbook");
  });

  test("a hot, damp shed is not saved by handbook years", () => {
    const damp: StoragePlace = {
      id: "d",
      name: "d",
      conditions: [{ fromMonth: 1, temperatureC: 32, humidityPct: 75 }],
    };
    for (const id of ["tomato", "carrot"]) {
      const inDamp = estimateOf(lot({ harvestYear: 2024, stored: [{ place: "d" }] }), kind(id), [
        damp,
      ]);
      const inRoom = estimateOf(lot({ id: "x", harvestYear: 2024 }), kind(id), []);
      expect(inDamp?.under(0.5).latest ?? 0).toBeLessThan((inRoom?.under(0.5).earliest ?? 0) + 400);
    }
  });

  test("nothing is said of a lot without test, year and arrival, or of a kind nobody knows", () => {
    expect(estimateOf(lot({}), kind("tomato"), [])).toBeNull();
    expect(estimateOf(lot({ harvestYear: 2024 }), kind("cosmos"), [])).toBeNull();
  });

  test("seed of unknown age that came may be old: its band is wide from the first day", () => {
    const came = estimateOf(
      lot({ from: { what: "received", on: day("2026-01-10") } }),
      kind("lettuce"),
      [],
    );
    expect(came?.at(day("2026-01-10"))[0]).toBeLessThan(0.5);
  });

  test("a test that failed or passed whole stays a band", () => {
    for (const [sprouted, words] of [
      [0, "0 to 31 %"],
      [10, "69 to 100 %"],
    ] as const) {
      const estimate = estimateOf(
        lot({ tests: tested("2026-01-01", 10, sprouted) }),
        kind("lettuce"),
        [],
      );
      expect(bandWords(estimate?.at(day("2026-01-01")) ?? [0, 0])).toBe(words);
    }
  });
});

describe("a better place", () => {
  test("a freezer box keeps lettuce for decades, a warm room for some years at most", () => {
    const lettuce = lot({ tests: tested("2026-01-01", 100, 95), stored: [{ place: "room" }] });
    const room: StoragePlace = {
      id: "room",
      name: "Room",
      conditions: [{ fromMonth: 1, temperatureC: 20, humidityPct: 50 }],
    };
    const lives = livesElsewhere(
      lettuce,
      kind("lettuce"),
      { storagePlaces: [room, FREEZER] },
      day("2026-01-01"),
    );
    const life = (id: string) => lives.find(({ place }) => place.id === id)?.years ?? [0, 0];
    expect(lives.map(({ isOwn }) => isOwn)).toEqual([true, true, false, false]);
    expect(life("room")[0]).toBeLessThan(2);
    expect(life("freezer")[0] ?? 999).toBeGreaterThan(10);
    expect(yearsWords([4.7, 8.2])).toBe("4 to 9 years");
    expect(yearsWords([20.4, null])).toBe("20 years to over 100");
    expect(yearsWords([null, null])).toBe("over 100 years");
  });

  test("the hundred rule looks at the worst part of the year; sealed places have none", () => {
    expect(placeRules(SHED).hundred?.keeps).toBe(false);
    expect(placeRules(SHED).hundred?.sum).toBeCloseTo(140.2, 9);
    expect(placeRules(FREEZER).hundred).toBeNull();
  });

  test("sealed packs have the moisture of the regulation, 6 % where it has no row", () => {
    expect([sealedLimit("pepper"), sealedLimit("beet"), sealedLimit("dill")]).toEqual([
      4.5, 7.5, 6,
    ]);
    expect(sealedLimit("quinoa")).toBe(6);
  });

  test("moisture follows the seasons, over New Year too", () => {
    const months = monthly(SHED.conditions ?? []).map((month) => moistureRange(kind("pea"), month));
    expect(months[0]).toEqual(months[11]);
    expect(months[0]).not.toEqual(months[5]);
  });
});
