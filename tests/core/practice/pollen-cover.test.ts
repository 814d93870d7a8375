import { expect, test } from "vitest";
import {
  CAGE_ROOM_M,
  isCovered,
  isSurelyCovered,
  keepsPollenIn,
  keepsPollenOut,
} from "../../../src/core/practice/pollen-cover.ts";

// Mesh and wind: Manual of Seed Saving (Timber Press). Flowers that are not bagged or taped stay
// open: common practice.
test("a cage stops insects both ways; bags and tape stop all pollen on its way in", () => {
  expect(keepsPollenOut("none", "insects")).toBe(false);
  expect(keepsPollenOut("cage", "insects")).toBe(true);
  expect(keepsPollenOut("cage", "wind")).toBe(false);
  expect(keepsPollenIn("cage", "insects")).toBe(true);
  expect(keepsPollenIn("cage", "wind")).toBe(false);
  for (const cover of ["bags", "hand"] as const) {
    expect(keepsPollenOut(cover, "wind")).toBe(true);
    expect(keepsPollenIn(cover, "insects")).toBe(false);
  }
});

test("two are surely parted by mesh only with room between", () => {
  const caged = { cover: "cage", carrier: "insects" } as const;
  const open = { cover: "none", carrier: "insects" } as const;
  const bagged = { cover: "bags", carrier: "insects" } as const;
  expect(isCovered(caged, open, 0.1) && isCovered(open, caged, 0.1)).toBe(true);
  expect(isCovered(caged, open, 0) || isCovered(open, caged, 0)).toBe(false);
  expect(isCovered(bagged, open, 0)).toBe(true);
  expect(isSurelyCovered(caged, caged, CAGE_ROOM_M)).toBe(true);
  expect(isSurelyCovered(caged, caged, CAGE_ROOM_M / 2)).toBe(false);
  expect(isSurelyCovered(bagged, open, 0)).toBe(true);
  expect(isSurelyCovered(open, bagged, 100)).toBe(false);
});
