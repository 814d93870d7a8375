/** Panels follow a gesture some times a second, and everything that is kept at once. */
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { changePlantings } from "../../../src/core/edits/object-edits.ts";
import { moveObjects } from "../../../src/core/edits/move-objects.ts";
import { previewHere, useCounted, useFollowed } from "../../../src/panel/state/followed-plan.ts";
import { usePlanStore } from "../../../src/store/plan/plan-store.ts";
import { useWindowStore } from "../../../src/store/window/window-store.ts";
import { plantingAt, rectangle, smallPlan } from "../../support/small-plan.ts";

const { plan, layout } = smallPlan([plantingAt(1, 0), plantingAt(2, 3)]);
let updates = 0;
let stop: () => void;

beforeEach(() => {
  vi.useFakeTimers();
  usePlanStore.getState().openPlan(plan);
  updates = 0;
  stop = useFollowed.subscribe(() => {
    updates += 1;
  });
});

afterEach(() => {
  stop();
  vi.useRealTimers();
});

function movedTo(x: number) {
  return changePlantings(layout.id, ["planting-1"], { outline: rectangle(x, 0) }, "Move");
}

test("sixty frames of a drag are eight looks for the panels, and the last is the newest", () => {
  for (let frame = 1; frame <= 60; frame += 1) {
    usePlanStore.getState().preview(movedTo(frame / 10));
    vi.advanceTimersByTime(16);
  }
  vi.advanceTimersByTime(200);
  expect(updates).toBe(8);
  expect(useFollowed.getState().shown).toBe(usePlanStore.getState().shown);
  expect(useFollowed.getState().result).toBe(usePlanStore.getState().result);
});

test("sixty frames over more than a thousand plantings are three looks, the last of the newest", () => {
  const many = Array.from({ length: 1001 }, (_, place) => plantingAt(place + 1, place * 3));
  usePlanStore.getState().openPlan(smallPlan(many).plan);
  updates = 0;
  for (let frame = 1; frame <= 60; frame += 1) {
    usePlanStore.getState().preview(movedTo(frame / 10));
    vi.advanceTimersByTime(16);
  }
  expect(updates).toBe(2);
  vi.advanceTimersByTime(500);
  expect(updates).toBe(3);
  expect(useFollowed.getState().shown).toBe(usePlanStore.getState().shown);
});

test("counts follow each frame of a few moved, and once the hand rests where hundreds are", () => {
  // In two rows, each too near what stands across from it until the second moves away.
  const many = Array.from({ length: 800 }, (_, place) =>
    plantingAt(place + 1, 0, {
      variety: `variety-${(place % 3) + 1}`,
      outline: rectangle((place % 400) * 3, place < 400 ? 0 : 3),
    }),
  );
  const opened = smallPlan(many);
  const moved = (ids: readonly string[], dy: number) => moveObjects(opened.layout.id, ids, 0, dy);
  const counts = () => useCounted.getState().counts;
  usePlanStore.getState().openPlan(opened.plan);
  const atFirst = counts();
  expect(atFirst).toEqual(usePlanStore.getState().result.counts);
  usePlanStore.getState().preview(moved(["planting-401"], 0.4));
  expect(counts()).toEqual(usePlanStore.getState().result.counts);
  expect(counts()).not.toBe(atFirst);
  usePlanStore.getState().cancelPreview();
  const before = counts();
  const second = many.slice(650).map(({ id }) => id);
  for (let frame = 1; frame <= 120; frame += 1) {
    usePlanStore.getState().preview(moved(second, 500 + frame));
    vi.advanceTimersByTime(16);
  }
  // Two seconds of frames, and none of them has counted.
  expect(counts()).toBe(before);
  vi.advanceTimersByTime(200);
  expect(counts()).toEqual(usePlanStore.getState().result.counts);
  expect(counts()).not.toEqual(before);
  expect(useFollowed.getState().result).toBe(usePlanStore.getState().result);
});

test("what is kept, taken back or opened is shown at once", () => {
  usePlanStore.getState().preview(movedTo(5));
  usePlanStore.getState().commit(movedTo(5));
  expect(useFollowed.getState().shown).toBe(usePlanStore.getState().plan);
  usePlanStore.getState().preview(movedTo(7));
  usePlanStore.getState().cancelPreview();
  expect(useFollowed.getState().shown).toBe(usePlanStore.getState().plan);
  expect(useFollowed.getState().previewing).toBeNull();
  vi.advanceTimersByTime(1000);
  expect(useFollowed.getState().shown).toBe(usePlanStore.getState().plan);
});

test("a panel's own preview is shown in the same frame", () => {
  previewHere(movedTo(4));
  expect(useFollowed.getState().shown).toBe(usePlanStore.getState().shown);
  expect(useFollowed.getState().previewing).not.toBeNull();
});

test("what changes nothing of the plan is no look at all", () => {
  useWindowStore.getState().select(["planting-1"]);
  useWindowStore.getState().showDay(100);
  vi.advanceTimersByTime(1000);
  expect(updates).toBe(0);
});
