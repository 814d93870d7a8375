import { describe, expect, test } from "vitest";
import { applyPatch, difference } from "../../../src/core/edits/patch.ts";
import {
  changePicture,
  pictureFactor,
  pictureOver,
  putPicture,
  removePicture,
  scalePicture,
} from "../../../src/core/edits/picture-edits.ts";
import { pointDistance } from "../../../src/core/geometry/point.ts";
import type { Picture, Plan } from "../../../src/core/model/plan.ts";
import { layoutOf, littlePlan } from "../../support/little-plan.ts";

const FILE = {
  name: "field.jpg",
  data: "AAAA".repeat(300_000),
  mediaType: "image/jpeg",
  widthPx: 2000,
  heightPx: 1000,
} as const;

const picture = pictureOver(FILE, littlePlan, layoutOf(littlePlan));
const withPicture = putPicture(picture).apply(littlePlan);

function pictureOf({ picture: found }: Plan): Picture {
  if (!found) throw new Error("no picture");
  return found;
}

test("a new picture covers all that is drawn, upright, its aspect kept", () => {
  const [across, up] = [picture.widthPx, picture.heightPx].map((px) => px * picture.metresPerPixel);
  // Beds and plantings reach from -0.5 to 20.5 across and from -5 to 20.5 up.
  expect(across).toBeGreaterThanOrEqual(21);
  expect(up).toBeGreaterThanOrEqual(25.5);
  expect(picture.turnDeg).toBe(0);
});

test("scaling keeps the first mark on its spot and lays the second the typed length from it", () => {
  const [from, to] = [
    { x: 2, y: 3 },
    { x: 5, y: 7 },
  ] as const;
  const factor = pictureFactor([from, to], 12);
  expect(factor).toBeCloseTo(12 / 5, 12);
  const scaled = pictureOf(scalePicture(picture, factor ?? 1, from).apply(withPicture));
  // Where the dot that lay under a mark comes to lie.
  const moved = (place: { x: number; y: number }) => ({
    x: scaled.x + ((place.x - picture.x) * scaled.metresPerPixel) / picture.metresPerPixel,
    y: scaled.y + ((place.y - picture.y) * scaled.metresPerPixel) / picture.metresPerPixel,
  });
  expect(moved(from).x).toBeCloseTo(from.x, 9);
  expect(moved(from).y).toBeCloseTo(from.y, 9);
  expect(pointDistance(moved(from), moved(to))).toBeCloseTo(12, 9);
});

test("marks on one spot and lengths of nothing give no scale", () => {
  const spot = { x: 1, y: 1 };
  expect(pictureFactor([spot, spot], 5)).toBeNull();
  expect(pictureFactor([spot, { x: 2, y: 1 }], 0)).toBeNull();
});

describe("undo", () => {
  test("of moving it holds the numbers, never the picture again", () => {
    const moved = changePicture({ x: 7 }, "Move the picture").apply(withPicture);
    const patch = difference(withPicture, moved);
    expect(JSON.stringify(patch).length).toBeLessThan(200);
    if (!patch) throw new Error("nothing changed");
    expect(applyPatch(moved, patch, "back")).toEqual(withPicture);
  });

  test("of removing it brings it back whole", () => {
    const removed = removePicture().apply(withPicture);
    expect("picture" in removed).toBe(false);
    const patch = difference(withPicture, removed);
    if (!patch) throw new Error("nothing changed");
    expect(applyPatch(removed, patch, "back")).toEqual(withPicture);
    expect(applyPatch(withPicture, patch, "forward")).toEqual(removed);
  });

  test("a change without a picture changes nothing", () => {
    expect(changePicture({ x: 7 }, "Move the picture").apply(littlePlan)).toBe(littlePlan);
  });
});
