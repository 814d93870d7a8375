/** What is locked is not moved, turned, resized or deleted, and that is said. */
import { describe, expect, test } from "vitest";
import type { Edit } from "../../../src/core/edits/edit.ts";
import { moveObjects, setOutline, turnObjects } from "../../../src/core/edits/move-objects.ts";
import { removeObjects } from "../../../src/core/edits/object-edits.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import {
  LAYOUT,
  bedOf,
  layoutOf,
  littlePlan,
  plantingOf,
  rectangle,
} from "../../support/little-plan.ts";

/** The little plan with these locked. */
function lockedPlan(...ids: readonly string[]): Plan {
  const lock = <T extends { readonly id: string }>(item: T): T =>
    ids.includes(item.id) ? { ...item, locked: true } : item;
  const layout = layoutOf(littlePlan);
  return {
    ...littlePlan,
    surroundings: littlePlan.surroundings.map(lock),
    layouts: [{ ...layout, beds: layout.beds.map(lock), plantings: layout.plantings.map(lock) }],
  };
}

const said = (edit: Edit, plan: Plan) => edit.note?.(plan) ?? null;

describe("a locked planting", () => {
  const plan = lockedPlan("p1");

  test.each([
    ["moved", moveObjects(LAYOUT, ["p1"], 1, 0)],
    ["turned", turnObjects(LAYOUT, ["p1"], { x: 0, y: 0 }, 10)],
    ["resized", setOutline(LAYOUT, "p1", rectangle(0, 0, 1, 1))],
    ["deleted", removeObjects(LAYOUT, ["p1"])],
  ])("is not %s", (_, edit) => {
    expect(edit.apply(plan)).toBe(plan);
    expect(said(edit, plan)).toBe("A01-1 is locked and stays as it is");
  });

  test("stays while the others move", () => {
    const edit = moveObjects(LAYOUT, ["p1", "p2"], 0, 0.5);
    const next = edit.apply(plan);
    expect(plantingOf(next, "p1")).toBe(plantingOf(plan, "p1"));
    expect(plantingOf(next, "p2").outline).not.toEqual(plantingOf(plan, "p2").outline);
    expect(said(edit, plan)).toBe("A01-1 is locked and stays as it is");
  });

  test("keeps its bed where it is, whose size may change", () => {
    const move = moveObjects(LAYOUT, ["b1"], 1, 0);
    expect(move.apply(plan)).toBe(plan);
    expect(said(move, plan)).toBe("A01 with A01-1 is locked and stays as it is");
    expect(removeObjects(LAYOUT, ["b1"]).apply(plan)).toBe(plan);
    const wider = setOutline(LAYOUT, "b1", rectangle(0, 0, 1.5, 10));
    expect(bedOf(wider.apply(plan), "b1").outline).toMatchObject({ widthM: 1.5 });
    expect(said(wider, plan)).toBeNull();
  });
});

describe("a locked bed", () => {
  const plan = lockedPlan("b1");

  test("stays, but what grows in it can be moved", () => {
    expect(moveObjects(LAYOUT, ["b1"], 1, 0).apply(plan)).toBe(plan);
    const next = moveObjects(LAYOUT, ["p1"], 0, 0.5).apply(plan);
    expect(plantingOf(next, "p1").outline).toMatchObject({ y: -3.5 });
  });

  test("and another one are named together", () => {
    expect(said(removeObjects(LAYOUT, ["b1", "b2"]), lockedPlan("b1", "b2"))).toBe(
      "A01, A02 are locked and stay as they are",
    );
  });
});

test("nothing is said where nothing is locked", () => {
  expect(said(moveObjects(LAYOUT, ["p1", "b1"], 1, 0), littlePlan)).toBeNull();
});
