/** The bar of an outline being drawn: what its buttons do. */
import { describe, expect, test, vi } from "vitest";
import { outlineBar } from "../../../src/canvas/tools/outline-bar.ts";
import { STRAIGHT, type Shaping } from "../../../src/canvas/tools/outline-shaping.ts";

const corners = [
  { x: 0, y: 0 },
  { x: 4, y: 0 },
  { x: 4, y: 3 },
];

function pressCancel(shaping: Shaping) {
  const acts = {
    pick: vi.fn(),
    back: vi.fn(),
    type: vi.fn(),
    typeCorner: vi.fn(),
    shape: vi.fn(),
    close: vi.fn(),
    drop: vi.fn(),
  };
  const bar = outlineBar({ corners, shaping, target: "bed", fault: null }, acts);
  bar.actions.find(({ label }) => label === "Cancel")?.act();
  return acts;
}

describe("Cancel in the bar of an outline", () => {
  test("gives up a curve alone: the corners set before stay", () => {
    for (const shaping of [{ kind: "via" }, { kind: "end", via: { x: 5, y: 2 } }] as const) {
      const { shape, drop } = pressCancel(shaping);
      expect(shape).toHaveBeenCalledExactlyOnceWith(STRAIGHT);
      expect(drop).not.toHaveBeenCalled();
    }
  });

  test("between corners gives up the outline", () => {
    const { shape, drop } = pressCancel(STRAIGHT);
    expect(drop).toHaveBeenCalledOnce();
    expect(shape).not.toHaveBeenCalled();
  });
});
