/** Laws of the 16 walks over a grid, and the walk through a garden. */
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { walkingNumbers } from "../../../src/core/fieldwork/walking-order.ts";
import { gardenPlan } from "../../support/paper-garden.ts";
import { type Walk, allWalks, walkNumber } from "../../support/walk-number.ts";

const size = fc.integer({ min: 1, max: 12 });
const walk = fc.constantFrom(...allWalks);

function numbered(each: Walk, rows: number, columns: number) {
  const cells = Array.from({ length: rows * columns }, (_, index) => ({
    row: Math.floor(index / columns),
    column: index % columns,
  }));
  return cells
    .map((cell) => ({ ...cell, number: walkNumber(each, cell.row, cell.column, rows, columns) }))
    .sort((a, b) => a.number - b.number);
}

test("every walk gives each cell one number, from 1 on without gaps", () => {
  fc.assert(
    fc.property(walk, size, size, (each, rows, columns) => {
      const numbers = numbered(each, rows, columns).map(({ number }) => number);
      expect(numbers).toEqual(numbers.map((_, index) => index + 1));
    }),
  );
});

test("a serpentine walk goes only from neighbour to neighbour", () => {
  fc.assert(
    fc.property(walk, size, size, (each, rows, columns) => {
      fc.pre(each.isSerpentine);
      const cells = numbered(each, rows, columns);
      cells.slice(1).forEach(({ row, column }, index) => {
        const before = cells[index];
        const steps = Math.abs(row - (before?.row ?? 0)) + Math.abs(column - (before?.column ?? 0));
        expect(steps).toBe(1);
      });
    }),
  );
});

test("the walk begins in the corner it names", () => {
  fc.assert(
    fc.property(walk, size, size, (each, rows, columns) => {
      const row = each.from.startsWith("near") ? 0 : rows - 1;
      const column = each.from.endsWith("left") ? 0 : columns - 1;
      expect(walkNumber(each, row, column, rows, columns)).toBe(1);
    }),
  );
});

test("starting from the other side twice is starting from where one was", () => {
  const mirrored = (each: Walk, side: "left" | "right"): Walk => ({
    ...each,
    from: each.from.startsWith("near") ? `near ${side}` : `far ${side}`,
  });
  fc.assert(
    fc.property(walk, size, size, (each, rows, columns) => {
      const turned = mirrored(each, each.from.endsWith("left") ? "right" : "left");
      for (const { row, column, number } of numbered(each, rows, columns)) {
        expect(walkNumber(turned, row, columns - 1 - column, rows, columns)).toBe(number);
      }
    }),
  );
});

test("from two rows and columns on, the 16 walks are all different", () => {
  const atLeastTwo = fc.integer({ min: 2, max: 9 });
  fc.assert(
    fc.property(atLeastTwo, atLeastTwo, (rows, columns) => {
      const orders = allWalks.map((each) =>
        numbered(each, rows, columns)
          .map(({ row, column }) => `${row},${column}`)
          .join(" "),
      );
      expect(new Set(orders).size).toBe(16);
    }),
  );
});

test("the walk through the garden goes up one column of beds and down the next", () => {
  const [layout] = gardenPlan().layouts;
  if (!layout) throw new Error("no layout");
  const numbers = walkingNumbers(layout);
  const codes = [...layout.plantings]
    .sort((a, b) => (numbers.get(a.id) ?? 0) - (numbers.get(b.id) ?? 0))
    .map(({ code }) => code);
  expect(codes).toEqual([
    "A04-1",
    "A03-1",
    "A02-1",
    "A01-1",
    "A01-2",
    "B01-1",
    "B01-2",
    "B02-1",
    "B03-1",
    "B03-2",
    "B04-1",
  ]);
});
