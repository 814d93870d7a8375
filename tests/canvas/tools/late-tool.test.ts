/** Drawing tools are fetched after the sheet stands: what is pressed before is not lost. */
import { beforeEach, describe, expect, test, vi } from "vitest";
import type { SheetPointer } from "../../../src/canvas/tools/tool.ts";

const pointer = (x: number, y: number): SheetPointer => ({
  px: { x, y },
  at: { x, y },
  page: { x, y },
  isShift: false,
  isFree: true,
  isCoarse: false,
  clicks: 1,
});

beforeEach(() => {
  vi.resetModules();
  vi.doUnmock("../../../src/canvas/tools/drawing-tools.ts");
});

async function parts() {
  const late = await import("../../../src/canvas/tools/late-tool.ts");
  const { tools } = await import("../../../src/canvas/tools/tool-list.ts");
  const { useSketch } = await import("../../../src/canvas/tools/sketch-store.ts");
  const { useWindowStore } = await import("../../../src/store/window/window-store.ts");
  return { late, tools, useSketch, useWindowStore };
}

describe("a tool that is not there yet", () => {
  test("does a press that was begun and ended before it came", async () => {
    const { late, tools, useSketch } = await parts();
    tools.measure.take?.();
    const gesture = tools.measure.press(pointer(0, 0));
    gesture.move(pointer(30, 40));
    gesture.end(pointer(30, 40));
    expect(useSketch.getState().measurement).toBeNull();
    await late.fetchDrawingTools();
    await vi.waitFor(() =>
      expect(useSketch.getState().measurement).toMatchObject({
        from: { x: 0, y: 0 },
        to: { x: 30, y: 40 },
      }),
    );
  });

  test.each([
    ["the press was taken back", "cancel"],
    ["another tool was taken up", "leave"],
  ] as const)("does nothing when %s", async (_, how) => {
    const { late, tools, useSketch } = await parts();
    tools.measure.take?.();
    const gesture = tools.measure.press(pointer(0, 0));
    gesture.move(pointer(30, 40));
    if (how === "cancel") gesture.cancel();
    else tools.measure.leave();
    await late.fetchDrawingTools();
    await new Promise((later) => {
      setTimeout(later);
    });
    expect(useSketch.getState().measurement).toBeNull();
  });

  test("says so when it cannot be had, and comes when asked for again", async () => {
    vi.doMock("../../../src/canvas/tools/drawing-tools.ts", () => {
      throw new Error("no network");
    });
    const { late, tools, useSketch, useWindowStore } = await parts();
    tools.measure.take?.();
    await vi.waitFor(() =>
      expect(useWindowStore.getState().announcement).toMatch(/could not be loaded/),
    );
    vi.doUnmock("../../../src/canvas/tools/drawing-tools.ts");
    await late.fetchDrawingTools();
    const gesture = tools.measure.press(pointer(0, 0));
    gesture.move(pointer(30, 40));
    expect(useSketch.getState().measurement).not.toBeNull();
  });
});
