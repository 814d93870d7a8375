import { describe, expect, test } from "vitest";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import type { Bed, Planting, RectangleShape } from "../../../src/core/model/plan.ts";
import {
  alongBedOf,
  bedNeighbours,
  freeStarts,
  isWithinBed,
  lengthened,
  onOtherBed,
  onStretch,
} from "../../../src/core/beds/bed-stretch.ts";
import { lengthFor } from "../../../src/core/beds/place-planting.ts";
import {
  bedOf,
  layoutOf,
  littlePlan,
  planting,
  plantingOf,
  rectangle,
} from "../../support/little-plan.ts";

const bedShape: RectangleShape = {
  shape: "rectangle",
  x: 3,
  y: -2,
  widthM: 1.2,
  lengthM: 10,
  turnDeg: 35,
};
const bed: Bed = { id: "bed-1", code: "B01", outline: bedShape };

function onBed(outline: Planting["outline"]): Planting {
  return {
    id: "planting-1",
    code: "B01-1",
    variety: "variety-1",
    bed: "bed-1",
    outline,
    purpose: "seed",
    flowering: "yes",
    cover: "none",
  };
}

test("a planting turned with its bed has a stretch that can be typed back", () => {
  const along = alongBedOf(onBed(bedShape), [bed]);
  expect(along?.stretch.fromM).toBeCloseTo(0, 9);
  expect(along?.stretch.toM).toBeCloseTo(10, 9);
  if (!along) throw new Error("no stretch");
  const moved = onStretch(along, { fromM: 2.5, toM: 6 });
  expect(moved.lengthM).toBeCloseTo(3.5, 9);
  const again = alongBedOf(onBed(moved), [bed]);
  expect(again?.stretch.fromM).toBeCloseTo(2.5, 9);
  expect(again?.stretch.toM).toBeCloseTo(6, 9);
});

test("width and place across the bed stay", () => {
  const narrow = { ...bedShape, widthM: 0.4, x: bedShape.x + 0.2, lengthM: 2 };
  const along = alongBedOf(onBed(narrow), [bed]);
  if (!along) throw new Error("no stretch");
  const same = onStretch(along, along.stretch);
  expect(same.x).toBeCloseTo(narrow.x, 9);
  expect(same.y).toBeCloseTo(narrow.y, 9);
  expect(same.widthM).toBe(0.4);
});

test("a planting that lies otherwise, is no rectangle or has no bed has no stretch", () => {
  expect(alongBedOf(onBed({ ...bedShape, turnDeg: 80 }), [bed])).toBeNull();
  expect(alongBedOf(onBed(bedShape), [])).toBeNull();
  const corners: [number, number][] = [
    [0, 0],
    [1, 0],
    [0, 1],
  ];
  expect(alongBedOf(onBed({ shape: "polygon", corners }), [bed])).toBeNull();
});

test("half a turn is the same lie", () => {
  expect(alongBedOf(onBed({ ...bedShape, turnDeg: -145 }), [bed])).not.toBeNull();
});

describe("sliding along a bed", () => {
  // A01 is 10 m long; A01-1 lies from 0 to 2 (world -5 to -3), A01-2 from 5 to 7.
  const layout = layoutOf(littlePlan);
  const first = bedOf(littlePlan, "b1");
  const second = plantingOf(littlePlan, "p2");
  const along = alongBedOf(second, layout.beds);
  if (!along) throw new Error("no stretch");

  test("starts that keep clear of the neighbours", () => {
    expect(freeStarts(layout, first, second, 2)).toEqual([{ fromM: 2, toM: 8 }]);
    expect(freeStarts(layout, first, plantingOf(littlePlan, "p1"), 2)).toEqual([
      { fromM: 0, toM: 3 },
      { fromM: 7, toM: 8 },
    ]);
  });

  test("the neighbours on either side", () => {
    const { before, after } = bedNeighbours(layout, along.bed, second);
    expect([before?.code, before?.stretch, after]).toEqual(["A01-1", { fromM: 0, toM: 2 }, null]);
  });

  test("what reaches beyond either end is not within the bed", () => {
    expect(isWithinBed(along, { fromM: 0, toM: 10 })).toBe(true);
    expect(isWithinBed(along, { fromM: -0.01, toM: 2 })).toBe(false);
    expect(isWithinBed(along, { fromM: 9, toM: 10.01 })).toBe(false);
  });

  test("made longer it grows to the far end and then towards its neighbour before", () => {
    const made = (lengthM: number) => {
      const outline = lengthened(layout, along, second, lengthM);
      const again = outline && alongBedOf({ ...second, outline }, layout.beds);
      return again && [again.stretch.fromM, again.stretch.toM];
    };
    expect(made(3)).toEqual([5, 8]);
    expect(made(6)).toEqual([4, 10]);
    expect(made(8)).toEqual([2, 10]);
    expect(made(8.5)).toBeNull();
  });
});

describe("moving to another bed", () => {
  const layout = layoutOf(littlePlan);
  const tomato = cropBook().kind("tomato");

  test("takes the first free stretch and keeps its size in a bed as wide", () => {
    const found = onOtherBed(layout, plantingOf(littlePlan, "p2"), bedOf(littlePlan, "b2"), tomato);
    expect(found).toEqual({ ok: true, outline: rectangle(3, -4, 1, 2) });
  });

  test("says how much is free where it does not fit", () => {
    const long = planting("p9", "A02-1", rectangle(3, 0, 1, 9), "b2");
    expect(onOtherBed(layout, long, bedOf(littlePlan, "b1"), tomato)).toEqual({
      ok: false,
      longestM: 3,
      neededM: 9,
    });
  });

  test("covers a wider bed from edge to edge, as long as its plants need there", () => {
    const wide: Bed = { id: "b3", code: "A03", outline: rectangle(8, 0, 4, 10) };
    const kind = cropBook().kind("lettuce");
    const own = { ...plantingOf(littlePlan, "p2"), plants: 12 };
    const found = onOtherBed(layout, own, wide, kind);
    if (!found.ok || !kind) throw new Error("it has room");
    expect(found.outline).toMatchObject({ widthM: 4, lengthM: lengthFor(kind, 4, 12) });
  });
});
