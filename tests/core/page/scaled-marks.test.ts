/** Marks set smaller keep their shape, their order and what they are part of. */
import { expect, test } from "vitest";
import { scaledMarks } from "../../../src/core/page/scaled-marks.ts";
import { type Mark, area, boxRing, figure, line, text } from "../../../src/core/page/scene.ts";

const box = { left: 30, top: 40, width: 20, height: 10 };
const marks: readonly Mark[] = [
  line(
    [
      { x: 10, y: 10 },
      { x: 30, y: 10 },
    ],
    { widthMm: 0.4, dashMm: [2, 1] },
  ),
  ...figure("A bed", box, [
    area(boxRing(box), 1, { widthMm: 0.2 }),
    { kind: "circle", centre: { x: 40, y: 45 }, radiusMm: 2, fill: 0, pen: null },
    {
      kind: "group",
      clip: box,
      marks: [text({ x: 32, y: 44 }, "A01", 10)],
    },
  ]),
];

test("half as large about a point", () => {
  const [rule, bed, dot, group] = scaledMarks(marks, { x: 10, y: 10 }, 0.5);
  expect(rule).toMatchObject({
    points: [
      { x: 10, y: 10 },
      { x: 20, y: 10 },
    ],
    pen: { widthMm: 0.2, dashMm: [1, 0.5] },
  });
  const half = { left: 20, top: 25, width: 10, height: 5 };
  expect(bed).toMatchObject({ rings: [boxRing(half)], pen: { widthMm: 0.1 } });
  expect(dot).toMatchObject({ centre: { x: 25, y: 27.5 }, radiusMm: 1 });
  expect(group).toMatchObject({ clip: half, marks: [{ at: { x: 21, y: 27 }, sizePt: 5 }] });
  // One figure stays one, with its box where it is now.
  expect(bed?.part).toMatchObject({ role: "figure", box: half });
  expect(dot?.part).toBe(bed?.part);
});

test("as it was at full size", () => {
  expect(scaledMarks(marks, { x: 1, y: 1 }, 1)).toBe(marks);
});
