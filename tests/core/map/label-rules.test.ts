/** A hatch on paper is one that can be read, or the kind stands in words by the code. */
import { describe, expect, test } from "vitest";
import { isHatchReadable } from "../../../src/core/map/label-rules.ts";
import {
  type AreaMark,
  type GroupMark,
  type PagePoint,
  allMarks,
} from "../../../src/core/page/scene.ts";
import { mapInput, planOf, planting, rectangle, variety } from "../../support/paper-garden.ts";
import { a4, scenes } from "../../support/printed.ts";

/** A carrot bed of a width and length in metres, and an asparagus bed, whose hatch is a tomato's. */
function garden(widthM: number, lengthM: number) {
  return mapInput(
    planOf(
      {
        varieties: [
          variety("c", "Long Meadow", "carrot"),
          variety("t", "Old Ferry", "tomato"),
          variety("s", "Spear", "asparagus"),
        ],
      },
      [],
      [
        planting("p", "A01-1", "c", rectangle(0, 0, widthM, lengthM), { rows: 2 }),
        planting("q", "A02-1", "t", rectangle(14, 0, 4, 12), { rows: 2 }),
        planting("r", "A03-1", "s", rectangle(26, 0, 4, 12), { rows: 2 }),
      ],
    ),
  );
}

function onGround(input: ReturnType<typeof garden>, ratio: number) {
  const [page] = scenes(input, { ...a4, ratio });
  const group = page?.marks.find((mark): mark is GroupMark => mark.kind === "group");
  const marks = allMarks(group?.marks ?? []);
  return {
    words: marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])),
    hatched: marks.filter((mark): mark is AreaMark => mark.kind === "area" && mark.hatch !== null),
    white: marks.filter(
      (mark): mark is AreaMark => mark.kind === "area" && mark.hatch === null && mark.fill === 1,
    ),
  };
}

function bounds(ring: readonly PagePoint[]) {
  const [xs, ys] = [ring.map(({ x }) => x), ring.map(({ y }) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return { left, top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
}

test("a plot of 2 mm has no hatch and its kind in words, one of 10 mm has a hatch", () => {
  const small = onGround(garden(1, 12), 500);
  expect(small.hatched.some(({ hatch }) => hatch?.id === "dots")).toBe(false);
  expect(small.words.join(" ")).toContain("Long Meadow, carrot");
  const large = onGround(garden(5, 12), 500);
  expect(large.hatched.some(({ hatch }) => hatch?.id === "dots")).toBe(true);
  expect(large.words.join(" ")).not.toContain("Long Meadow, carrot");
});

test("two groups with one hatch have their kinds in words", () => {
  const { words, hatched } = onGround(garden(5, 12), 250);
  expect(hatched.filter(({ hatch }) => hatch?.id === "cross")).toHaveLength(2);
  expect(words.join(" ")).toContain("Old Ferry, tomato");
  expect(words.join(" ")).toContain("Spear, asparagus");
});

describe("words leave of a hatch what can be read", () => {
  test.each([100, 125, 200, 250, 400])("at 1:%i", (ratio) => {
    const { hatched, white } = onGround(garden(1.8, 6), ratio);
    for (const { rings } of hatched) {
      const ground = bounds(rings[0] ?? []);
      const area = ground.width * ground.height;
      const covered = white
        .map((mark) => bounds(mark.rings[0] ?? []))
        .filter(
          (box) =>
            box.left >= ground.left - 0.01 &&
            box.top >= ground.top - 0.01 &&
            box.left + box.width <= ground.left + ground.width + 0.01 &&
            box.top + box.height <= ground.top + ground.height + 0.01 &&
            box.width * box.height < area - 1,
        )
        .reduce((sum, box) => sum + box.width * box.height, 0);
      expect([ratio, (area - covered) / area > 0.35]).toEqual([ratio, true]);
    }
  });

  test("narrow is not readable, however long", () => {
    const ring = (width: number, height: number) => [
      { x: 0, y: 0 },
      { x: width, y: 0 },
      { x: width, y: height },
      { x: 0, y: height },
    ];
    expect(isHatchReadable({ rings: [ring(3, 80)] })).toBe(false);
    expect(isHatchReadable({ rings: [ring(5, 7)] })).toBe(false);
    expect(isHatchReadable({ rings: [ring(5, 12)] })).toBe(true);
  });
});
