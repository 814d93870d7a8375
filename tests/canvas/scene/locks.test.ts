/** What is locked or left out is not taken hold of; its lock sign is. */
import { describe, expect, test } from "vitest";
import { handleSizes } from "../../../src/canvas/scene/handles.ts";
import { itemHandles } from "../../../src/canvas/scene/item-handles.ts";
import { isTakeable, lockSignAt, lockSignPlace } from "../../../src/canvas/scene/locks.ts";
import { sheetItems } from "../../../src/canvas/scene/sheet-items.ts";
import type { HideableKind } from "../../../src/store/window/hideable-kinds.ts";
import { bedOf, book, drawnPlan, plantingOf, rectangle } from "../../support/drawn-plan.ts";

const view = { scale: 20, x: 100, y: 300 };
const nothing = new Set<HideableKind>();
const beds = [
  { ...bedOf("b1", rectangle(0, 0, 2, 6)), locked: true },
  bedOf("b2", rectangle(0, 7.5, 2, 6)),
  bedOf("b3", rectangle(20, 0, 2, 6)),
];
const plantings = [plantingOf("p1", rectangle(20, 0, 2, 2), { bed: "b3" })];
const { plan, layout } = drawnPlan({ beds, plantings });
const items = sheetItems(plan, layout, book);
const item = (id: string) => {
  const found = items.byId.get(id);
  if (!found) throw new Error(`no ${id}`);
  return found;
};

describe("a locked bed", () => {
  test("is taken by no click, drag or region, and has no handles", () => {
    expect(isTakeable(item("b1"), nothing)).toBe(false);
    expect(isTakeable(item("b2"), nothing)).toBe(true);
    expect(itemHandles(item("b1"), items, view, handleSizes(false))).toEqual([]);
  });

  test("is selected by its lock sign, a target of 24 pixels", () => {
    const at = lockSignPlace(item("b1"), view);
    const hit = (dx: number, dy: number) =>
      lockSignAt(items.list, { x: at.x + dx, y: at.y + dy }, view, nothing)?.id;
    expect([hit(0, 0), hit(12, 0), hit(0, -12)]).toEqual(["b1", "b1", "b1"]);
    expect(hit(13, 0)).toBeUndefined();
  });
});

test("what is left out of the sheet is not taken either", () => {
  expect(isTakeable(item("p1"), new Set<HideableKind>(["plantings"]))).toBe(false);
  expect(isTakeable(item("b3"), new Set<HideableKind>(["plantings"]))).toBe(true);
});

describe("the turning handle", () => {
  const turnOf = (id: string) =>
    itemHandles(item(id), items, view, handleSizes(false)).find(
      ({ handle }) => handle.kind === "turn",
    )?.at;

  test("stands beside a bed whose code is over its far end", () => {
    const at = turnOf("b3");
    expect(at?.x).toBeGreaterThan(100 + 20 * 20);
    expect(at?.y).toBeCloseTo(300);
  });

  test("but not over a neighbour", () => {
    const small = drawnPlan({
      beds: [bedOf("b1", rectangle(0, 0, 2, 6)), bedOf("b2", rectangle(0, 7.5, 2, 6))],
    });
    const both = sheetItems(small.plan, small.layout, book);
    const [first] = both.list;
    const turn =
      first &&
      itemHandles(first, both, view, handleSizes(false)).find(
        ({ handle }) => handle.kind === "turn",
      );
    // The far end has the other bed's edge within 1.5 m, 30 pixels: the handle goes to the right.
    expect(turn?.at.x).toBeGreaterThan(100 + 20);
    expect(turn?.at.y).toBeCloseTo(300);
  });
});
