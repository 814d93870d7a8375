/** A drag of the sheet from the press to the release, as the store sees it. */
import { beforeEach, expect, test, vi } from "vitest";
import { sheetItems } from "../../../src/canvas/scene/sheet-items.ts";
import type { SnapLines } from "../../../src/canvas/snap/snap.ts";
import { snapTargets } from "../../../src/canvas/snap/snap-targets.ts";
import { moveGesture } from "../../../src/canvas/tools/move-gesture.ts";
import type { SheetPointer } from "../../../src/canvas/tools/tool.ts";
import * as checks from "../../../src/core/checks/run-checks.ts";
import { layoutOf } from "../../../src/core/model/layouts.ts";
import { usePlanStore } from "../../../src/store/plan/plan-store.ts";
import { useWindowStore } from "../../../src/store/window/window-store.ts";
import { gardenPlan } from "../../support/garden-plan.ts";

vi.mock("../../../src/core/checks/run-checks.ts", async (original) => {
  const real = await original<typeof checks>();
  return { ...real, runChecks: vi.fn(real.runChecks) };
});

const store = () => usePlanStore.getState();
const inWindow = () => useWindowStore.getState();
const runs = vi.mocked(checks.runChecks);

function pointerAt(x: number, y: number): SheetPointer {
  return {
    px: { x: x * 10, y: y * 10 },
    at: { x, y },
    page: { x: 0, y: 0 },
    isShift: false,
    isFree: true,
    isCoarse: false,
    clicks: 1,
  };
}

function firstPlanting() {
  const { plan, layoutId, book } = store();
  const items = sheetItems(plan, layoutOf(plan, layoutId), book);
  const item = items.list.find(({ what }) => what === "planting");
  if (item?.shape.shape !== "rectangle") throw new Error("the garden has no planting");
  return { items, item, shape: item.shape };
}

beforeEach(() => {
  store().openPlan(gardenPlan());
  runs.mockClear();
});

test("every move is checked once, and the release not at all", () => {
  const { item, shape } = firstPlanting();
  inWindow().select([item.id]);
  const gesture = moveGesture(pointerAt(shape.x, shape.y), item);
  for (const by of [1, 2, 3]) gesture.move(pointerAt(shape.x + by, shape.y));
  expect(runs).toHaveBeenCalledTimes(3);
  const { shown, result } = store();
  gesture.end(pointerAt(shape.x + 3, shape.y));
  expect(runs).toHaveBeenCalledTimes(3);
  expect([store().plan, store().result]).toEqual([shown, result]);
  expect(store().plan).toBe(shown);
  expect(store().past).toHaveLength(1);
});

test("let go elsewhere it ends there", () => {
  const { item, shape } = firstPlanting();
  inWindow().select([item.id]);
  const gesture = moveGesture(pointerAt(shape.x, shape.y), item);
  gesture.move(pointerAt(shape.x + 1, shape.y));
  gesture.end(pointerAt(shape.x + 2, shape.y));
  const moved = layoutOf(store().plan, store().layoutId).plantings.find(({ id }) => id === item.id);
  expect(moved?.outline).toMatchObject({ x: shape.x + 2 });
  expect(runs).toHaveBeenCalledTimes(2);
});

test("lines of what rests are made once for each frame, and are the same as made anew", () => {
  const { items, item, shape } = firstPlanting();
  const ground = { items, moving: new Set([item.id]) };
  const frame = () => ({ origin: { x: shape.x, y: shape.y }, turnDeg: shape.turnDeg });
  const kept = frame();
  const mover = (by: number) => ({ what: item.what, shape: { ...shape, x: shape.x + by } });
  const atRest = ({ x, y }: SnapLines) =>
    [...x, ...y].filter(({ label }) => label !== "equal gaps");
  const first = atRest(snapTargets(ground, kept, mover(0)));
  const second = atRest(snapTargets(ground, kept, mover(0.5)));
  expect(first.length).toBeGreaterThan(4);
  expect(first.filter((line) => second.includes(line)).length).toBeGreaterThan(4);
  expect(snapTargets(ground, kept, mover(0.5))).toEqual(snapTargets(ground, frame(), mover(0.5)));
});
