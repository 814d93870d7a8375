import { describe, expect, test } from "vitest";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import type { CropBook } from "../../../src/core/kinds/crop-book.ts";
import { lengthFor } from "../../../src/core/beds/place-planting.ts";
import { cutBed, cutParts, shareBed } from "../../../src/core/edits/split-bed.ts";
import type { Kind } from "../../../src/core/kinds/crop.ts";
import {
  LAYOUT,
  bedOf,
  layoutOf,
  littlePlan,
  plantingOf,
  rectangle,
} from "../../support/little-plan.ts";

const book: CropBook = cropBook();
const layout = layoutOf(littlePlan);
const wantedPlan = {
  ...littlePlan,
  varieties: littlePlan.varieties.map((variety) => ({ ...variety, wantedPlants: 6 })),
};

describe("sharing a bed among varieties", () => {
  const share = (by: "wanted" | "equal", gapM: number, bed = "b2") =>
    shareBed(wantedPlan, layout, book, { bed, varieties: ["v2", "v1"], by, gapM });

  test("equal shares fill the free ground but for the gaps", () => {
    const shared = share("equal", 1);
    if (!shared.ok) throw new Error(shared.reason);
    expect(shared.shares.map(({ stretch }) => stretch)).toEqual([
      { fromM: 0, toM: 4.5 },
      { fromM: 5.5, toM: 10 },
    ]);
    expect(shared.shares.map(({ planting }) => [planting.code, planting.variety])).toEqual([
      ["A02-1", "v2"],
      ["A02-2", "v1"],
    ]);
    expect(new Set(shared.shares.map(({ planting }) => planting.id)).size).toBe(2);
  });

  test("shares by plants wanted are as long as those plants need", () => {
    const shared = share("wanted", 0.5);
    if (!shared.ok) throw new Error(shared.reason);
    const kinds = ["beet", "tomato"].map((id) => book.kind(id) as Kind);
    const lengths = kinds.map((kind) => lengthFor(kind, 1, 6));
    expect(shared.shares.map(({ stretch: { fromM, toM } }) => toM - fromM)).toEqual([
      expect.closeTo(lengths[0] ?? 0, 9),
      expect.closeTo(lengths[1] ?? 0, 9),
    ]);
    expect(shared.shares.map(({ planting }) => planting.plants)).toEqual([6, 6]);
  });

  test("only the longest free stretch is shared, and all are shortened alike where it is too short", () => {
    // A01 is free from 2 to 5 and from 7 to 10; v1 already stands there without a number of plants.
    const shared = share("wanted", 0, "b1");
    if (!shared.ok) throw new Error(shared.reason);
    expect(shared.ground).toEqual({ fromM: 2, toM: 5 });
    expect(shared.shares.at(-1)?.stretch.toM).toBeLessThanOrEqual(5 + 1e-9);
    expect(shared.shares.map(({ planting }) => planting.code)).toEqual(["A01-3", "A01-4"]);
  });

  test("nothing is placed where there is nothing to place or no ground", () => {
    const asked = { bed: "b2", by: "equal", gapM: 0 } as const;
    expect(shareBed(littlePlan, layout, book, { ...asked, varieties: [] })).toEqual({
      ok: false,
      reason: "no varieties",
    });
    expect(share("equal", 11)).toEqual({ ok: false, reason: "gaps leave nothing" });
  });
});

describe("cutting a bed in two", () => {
  test("the near part keeps its code, plantings of the far part follow the new bed", () => {
    const next = cutBed(LAYOUT, { bed: "b1", atM: 4, pathM: 1 }, "Cut").apply(littlePlan);
    const { beds } = layoutOf(next);
    expect(beds.map(({ code }) => code)).toEqual(["A01", "A03", "A02"]);
    expect(beds[0]?.outline).toEqual(rectangle(0, -3, 1, 4));
    expect(beds[1]?.outline).toEqual(rectangle(0, 2.5, 1, 5));
    expect(plantingOf(next, "p1")).toBe(plantingOf(littlePlan, "p1"));
    expect(plantingOf(next, "p2")).toMatchObject({
      bed: beds[1]?.id,
      code: "A03-1",
      outline: plantingOf(littlePlan, "p2").outline,
    });
  });

  test("a planting across the cut, or a cut outside the bed, is refused by name", () => {
    expect(cutParts(littlePlan, layout, { bed: "b1", atM: 6, pathM: 0 })).toEqual({
      ok: false,
      reason: "across",
      codes: ["A01-2"],
    });
    expect(cutParts(littlePlan, layout, { bed: "b1", atM: 9, pathM: 1 })).toEqual({
      ok: false,
      reason: "outside",
      lengthM: 10,
    });
    expect(cutBed(LAYOUT, { bed: "b1", atM: 6, pathM: 0 }, "Cut").apply(littlePlan)).toBe(
      littlePlan,
    );
  });

  test("a code written by hand stays, and a locked bed stays whole", () => {
    const named = {
      ...layout,
      plantings: layout.plantings.map((each) =>
        each.id === "p2" ? { ...each, code: "X9" } : each,
      ),
    };
    const parts = cutParts(littlePlan, named, { bed: "b1", atM: 4, pathM: 0 });
    expect(parts.ok && parts.moved.map(({ code }) => code)).toEqual(["X9"]);
    const beds = layout.beds.map((bed) => ({ ...bed, locked: true }));
    const locked = { ...littlePlan, layouts: [{ ...layout, beds }] };
    expect(cutBed(LAYOUT, { bed: "b1", atM: 4, pathM: 0 }, "Cut").apply(locked)).toBe(locked);
    expect(bedOf(locked, "b1").locked).toBe(true);
  });
});
