/** Placing in a bed that is used twice: on free ground, else after what is cleared there. */
import { describe, expect, test } from "vitest";
import { findPlace } from "../../../src/core/beds/find-place.ts";
import { freeStretches } from "../../../src/core/beds/place-planting.ts";
import type { Bed, Layout, Plan } from "../../../src/core/model/plan.ts";
import {
  type TrialPlanting,
  book,
  check,
  day,
  layoutOf,
  trialPlan,
} from "../../support/trial-plan.ts";

const ground = { shape: "rectangle", x: 0, y: 0, widthM: 1, lengthM: 4, turnDeg: 0 } as const;
const bed: Bed = { id: "b", code: "B01", outline: ground };
const kind = book.kind("leek");
if (!kind) throw new Error("kinds");

/** A bed of 4 m all under peas. */
function garden(peas: Partial<TrialPlanting>): { readonly plan: Plan; readonly layout: Layout } {
  const plan = trialPlan({ peas: { at: 0, kind: "pea", bed: "b", outline: ground, ...peas } });
  const layout = { ...layoutOf(plan), beds: [bed] };
  return { plan: { ...plan, layouts: [layout] }, layout };
}
const sown = { method: "sown" as const, date: day("2027-03-10") };

describe("a new planting", () => {
  test("has no place while all ground is taken to the end of the season", () => {
    const { plan, layout } = garden({ start: sown });
    expect(findPlace(plan, layout, bed, { kind, plants: 10 })).toBeNull();
  });

  test("follows what is cleared, from that day on, and overlaps nothing", () => {
    const { plan, layout } = garden({ start: sown, end: day("2027-07-01") });
    const found = findPlace(plan, layout, bed, { kind, plants: 10 });
    expect(found).toMatchObject({ after: { id: "peas" }, start: { date: day("2027-07-01") } });
    if (!found) throw new Error("no place");
    const leeks = {
      id: "leeks",
      code: "L",
      variety: "v-leeks",
      bed: "b",
      outline: found.placed.outline,
      start: found.start,
      purpose: "food" as const,
      flowering: "cut" as const,
      cover: "none" as const,
    };
    const both: Plan = {
      ...plan,
      varieties: [...plan.varieties, { id: "v-leeks", name: "Long Reach", kind: "leek" }],
      layouts: [{ ...layout, plantings: [...layout.plantings, leeks] }],
    };
    expect(check(both).findings.filter((finding) => finding.check === "overlap")).toEqual([]);
  });

  test("laid on what is cleared follows it, though other ground is free", () => {
    const half = { ...ground, y: -1, lengthM: 2 };
    const { plan, layout } = garden({ outline: half, start: sown, end: day("2027-07-01") });
    const on = findPlace(plan, layout, bed, { kind, plants: 4, at: { x: 0, y: -1 } });
    expect(on?.after?.id).toBe("peas");
    const beside = findPlace(plan, layout, bed, { kind, plants: 4, at: { x: 0, y: 1 } });
    expect(beside).toMatchObject({ after: null, start: undefined });
  });
});

test("a planting finds the ground free of what is not there when it is", () => {
  const { layout } = garden({ start: sown, end: day("2027-07-01") });
  const [peas] = layout.plantings;
  if (!peas) throw new Error("no peas");
  const leeks = (iso: string) => ({
    ...peas,
    id: "leeks",
    start: { method: "sown" as const, date: day(iso) },
    end: undefined,
  });
  const free = (iso: string) =>
    freeStretches({ ...layout, plantings: [peas, leeks(iso)] }, bed, "leeks").length;
  expect(free("2027-07-01")).toBe(1);
  expect(free("2027-06-30")).toBe(0);
});
