import { beforeEach, describe, expect, test } from "vitest";
import { dayFromIso } from "../../../src/core/model/day.ts";
import { emptyPlan } from "../../../src/core/model/empty-plan.ts";
import type { Bed, Plan, Planting, Variety } from "../../../src/core/model/plan.ts";
import { plantVariety } from "../../../src/store/plan/plant-variety.ts";
import { usePlanStore } from "../../../src/store/plan/plan-store.ts";
import { useWindowStore } from "../../../src/store/window/window-store.ts";

const bed: Bed = {
  id: "bed-1",
  code: "A01",
  outline: { shape: "rectangle", x: 0, y: 0, widthM: 1.2, lengthM: 10, turnDeg: 0 },
};

function opened(varieties: readonly Variety[], plantings: readonly Planting[] = []): void {
  const plan: Plan = {
    ...emptyPlan("planting", 2027),
    varieties,
    layouts: [{ id: "layout-1", name: "Layout 1", beds: [bed], plantings }],
  };
  usePlanStore.getState().openPlan(plan);
}

function placed(): readonly Planting[] {
  return usePlanStore.getState().plan.layouts[0]?.plantings ?? [];
}

const lantern: Variety = { id: "v1", name: "Amber Lantern", kind: "tomato", wantedPlants: 8 };

beforeEach(() => opened([lantern]));

test("a placed variety is selected, kept for seed, and one undo step", () => {
  plantVariety("v1", "bed-1");
  const [planting] = placed();
  expect(planting).toMatchObject({
    code: "A01-1",
    variety: "v1",
    bed: "bed-1",
    purpose: "seed",
    flowering: "yes",
    cover: "none",
    plants: 8,
  });
  expect(planting?.start).toBeUndefined();
  const { past } = usePlanStore.getState();
  const { selection } = useWindowStore.getState();
  expect(selection).toEqual([planting?.id]);
  expect(past.map(({ title }) => title)).toEqual(["Place Amber Lantern in bed A01"]);
});

describe("plants placed", () => {
  test("are those still wanted", () => {
    plantVariety("v1", "bed-1");
    const first = placed()[0] as Planting;
    opened([lantern], [{ ...first, plants: 5 }]);
    plantVariety("v1", "bed-1");
    expect(placed()[1]?.plants).toBe(3);
  });

  test("are one when all have their place, and ten when no number is wanted", () => {
    plantVariety("v1", "bed-1");
    plantVariety("v1", "bed-1");
    expect(placed()[1]?.plants).toBe(1);
    const { wantedPlants: _wanted, ...unasked } = lantern;
    opened([unasked]);
    plantVariety("v1", "bed-1");
    expect(placed()[0]?.plants).toBe(10);
  });
});

test("it starts as the latest planting of its kind does", () => {
  plantVariety("v1", "bed-1");
  const first = placed()[0] as Planting;
  const ferry: Variety = { id: "v2", name: "Old Ferry", kind: "tomato" };
  opened(
    [lantern, ferry],
    [
      { ...first, id: "p1", start: { method: "sown", date: 20_900 } },
      { ...first, id: "p2", code: "A01-2", start: { method: "transplanted", date: 20_950 } },
    ],
  );
  plantVariety("v2", "bed-1", { at: { x: 0, y: 4 } });
  expect(placed()[2]).toMatchObject({
    id: "p3",
    code: "A01-3",
    start: { method: "transplanted", date: 20_950 },
  });
});

describe("where the last spring frost is known", () => {
  const frosted = () => {
    const { plan, openPlan } = usePlanStore.getState();
    openPlan({
      ...plan,
      site: { ...plan.site, lastSpringFrost: dayFromIso("2027-05-08") as number },
    });
  };

  test("it starts as is usual for its kind, and the step says so", () => {
    frosted();
    plantVariety("v1", "bed-1");
    const start = { method: "transplanted", date: dayFromIso("2027-05-15") };
    expect(placed()[0]).toMatchObject({ start });
    const { past } = usePlanStore.getState();
    expect(past.at(-1)?.title).toBe("Place Amber Lantern in bed A01, set out 15 May");
  });

  test("a day that is not said yet stays so, whatever others of its kind do", () => {
    frosted();
    plantVariety("v1", "bed-1");
    plantVariety("v1", "bed-1", { start: null });
    expect(placed()[1]?.start).toBeUndefined();
    expect(usePlanStore.getState().past.at(-1)?.title).toBe("Place Amber Lantern in bed A01");
  });
});

describe("it says why nothing is placed", () => {
  test("in a bed that is full", () => {
    const whole: Planting = {
      id: "p1",
      code: "A01-1",
      variety: "v1",
      bed: "bed-1",
      outline: bed.outline,
      purpose: "seed",
      flowering: "yes",
      cover: "none",
    };
    opened([lantern], [whole]);
    plantVariety("v1", "bed-1");
    expect(placed()).toHaveLength(1);
    expect(useWindowStore.getState().announcement).toBe("Bed A01 is full.");
  });

  test("of a kind nobody knows", () => {
    opened([{ ...lantern, kind: "no-such-kind" }]);
    plantVariety("v1", "bed-1");
    expect(placed()).toEqual([]);
    expect(useWindowStore.getState().announcement).toContain("Amber Lantern");
  });
});
