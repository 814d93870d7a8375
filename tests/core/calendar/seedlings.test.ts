/** Seedlings of this spring against roots and plants that have stood a winter (common practice). */
import { describe, expect, test } from "vitest";
import { plantingBloom } from "../../../src/core/calendar/planting-bloom.ts";
import { bloomSetting, isRaisedForThis, isSeedlingOf } from "../../../src/core/calendar/growing.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import type { Planting } from "../../../src/core/model/plan.ts";
import { day, layoutOf, trialPlan } from "../../support/trial-plan.ts";

type Start = NonNullable<Planting["start"]>;

const setOut = (date: string, glass?: string): Start => ({
  method: "transplanted",
  date: day(date),
  ...(glass === undefined ? {} : { sownUnderGlass: day(glass) }),
});

describe("what is sown under glass in the spring it is set out in", () => {
  test("has seen no winter; sown in the summer before, it has", () => {
    expect(isRaisedForThis(setOut("2027-04-21", "2027-03-01"))).toBe(true);
    expect(isRaisedForThis(setOut("2027-04-12", "2026-12-28"))).toBe(true);
    expect(isRaisedForThis(setOut("2027-04-12", "2026-07-15"))).toBe(false);
    expect(isRaisedForThis(setOut("2027-04-12"))).toBe(false);
    expect(isRaisedForThis({ method: "sown", date: day("2027-04-12") })).toBe(false);
  });

  test("is of this season, as what is sown in place is", () => {
    const season = { name: "2027", first: day("2027-01-01"), last: day("2027-12-31") };
    expect(isSeedlingOf(season, { method: "sown", date: day("2027-04-12") })).toBe(true);
    expect(isSeedlingOf(season, setOut("2027-04-21", "2027-03-01"))).toBe(true);
    expect(isSeedlingOf(season, setOut("2027-04-12"))).toBe(false);
    expect(isSeedlingOf(season, { method: "sown", date: day("2026-08-12") })).toBe(false);
  });

  test("no bloom is told of kale raised so, as none is of kale sown; of a plant of last year it is", () => {
    const bloomOf = (start: Start) => {
      const plan = trialPlan({ p: { at: 0, kind: "kale", bloom: null, start } });
      const [planting] = layoutOf(plan).plantings;
      const [variety] = plan.varieties;
      const kind = cropBook().kind("kale");
      if (!planting || !variety || !kind) throw new Error("no kale");
      return plantingBloom(planting, variety, kind, bloomSetting(plan));
    };
    expect(bloomOf(setOut("2027-04-12", "2027-03-01"))).toBeNull();
    expect(bloomOf({ method: "sown", date: day("2027-04-12") })).toBeNull();
    expect(bloomOf(setOut("2027-04-12"))).not.toBeNull();
  });
});
