import { describe, expect, test } from "vitest";
import { usualStart } from "../../../src/core/beds/usual-start.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import type { Kind } from "../../../src/core/kinds/crop.ts";
import { dayFromIso } from "../../../src/core/model/day.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import { layoutOf, littlePlan } from "../../support/little-plan.ts";

const day = (iso: string) => dayFromIso(iso) as number;
const kind = (id: string) => cropBook().kind(id) as Kind;
const plan: Plan = {
  ...littlePlan,
  site: { ...littlePlan.site, lastSpringFrost: day("2027-05-10") },
};
const bare = { ...layoutOf(plan), plantings: [] };

describe("the usual start of a planting, counted from the last spring frost", () => {
  test("tomatoes are set out after it, never before", () => {
    expect(usualStart(plan, bare, kind("tomato"))).toEqual({
      method: "transplanted",
      date: day("2027-05-17"),
    });
  });
  test("beans are sown in place once frost is over, hardy broad beans some weeks before", () => {
    expect(usualStart(plan, bare, kind("common-bean"))).toEqual({
      method: "sown",
      date: day("2027-05-17"),
    });
    expect(usualStart(plan, bare, kind("broad-bean"))).toEqual({
      method: "sown",
      date: day("2027-04-19"),
    });
  });
  test("spinach, which takes moving badly, is sown in place; peppers of every species are raised", () => {
    expect(usualStart(plan, bare, kind("spinach"))?.method).toBe("sown");
    for (const id of [
      "pepper",
      "hot-pepper",
      "habanero",
      "aji",
      "bird-pepper",
      "rocoto",
      "tobacco",
    ])
      expect([id, usualStart(plan, bare, kind(id))?.method]).toEqual([id, "transplanted"]);
  });
  test("biennials go out as roots or plants of last year, which flower; seedlings would not", () => {
    for (const id of ["carrot", "beet", "kale", "cabbage", "leek"]) {
      expect(usualStart(plan, bare, kind(id))).toEqual({
        method: "transplanted",
        date: day("2027-04-12"),
      });
    }
  });
  test("nothing is offered where no frost of this season is known", () => {
    expect(usualStart({ ...plan, site: littlePlan.site }, bare, kind("tomato"))).toBeUndefined();
    const old = { ...plan, site: { ...plan.site, lastSpringFrost: day("2026-05-10") } };
    expect(usualStart(old, bare, kind("tomato"))).toBeUndefined();
  });
  test("others of its kind go first, those of an earlier season do not", () => {
    const first = layoutOf(plan).plantings[0];
    if (!first) throw new Error("The little plan has plantings.");
    const started = (iso: string) => ({
      ...bare,
      plantings: [{ ...first, variety: "v1", start: { method: "sown" as const, date: day(iso) } }],
    });
    expect(usualStart(plan, started("2027-06-01"), kind("tomato"))?.date).toBe(day("2027-06-01"));
    expect(usualStart(plan, started("2026-06-01"), kind("tomato"))?.date).toBe(day("2027-05-17"));
  });
});
