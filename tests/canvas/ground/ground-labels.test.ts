/** Years of earlier crops and diseases on the sheet: off codes, plantings and each other. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type LabelsWanted, planLabels } from "../../../src/canvas/draw/label-plan.ts";
import { meetsRings } from "../../../src/core/page/label-box.ts";
import { ringsInPixels } from "../../../src/canvas/draw/label-room.ts";
import { type GroundNamed, planGroundLabels } from "../../../src/canvas/ground/ground-labels.ts";
import { type SheetItem, sheetItems } from "../../../src/canvas/scene/sheet-items.ts";
import type { Size, View } from "../../../src/canvas/scene/viewport.ts";
import { outlineOf } from "../../../src/core/geometry/outline.ts";
import type { Shape } from "../../../src/core/model/plan.ts";
import { labelsMeet } from "../../../src/core/page/label-box.ts";
import { bedOf, book, drawnPlan, plantingOf, rectangle } from "../../support/drawn-plan.ts";

const SIZE: Size = { widthPx: 600, heightPx: 400 };
const VIEW: View = { scale: 20, x: 20, y: 380 };
const widthPx = (text: string) => text.length * 6.8;
const wordsPx = (item: SheetItem) =>
  item.what === "planting" ? item.planting.code.length * 7.3 : 24;

const crop = (shape: Shape, texts = ["2025 leek, 2024 bean", "2025 leek"]): GroundNamed => ({
  shape,
  outline: outlineOf(shape),
  texts,
  stands: "on its ground",
});
const mark = (shape: Shape): GroundNamed => ({
  shape,
  outline: outlineOf(shape),
  texts: ["! white rot 2024"],
  stands: "beside its edge",
});

/** Beds of 1.2 x 9 m above each other, a planting on the left part of each. */
function garden(beds: number, plantedM: number) {
  return drawnPlan({
    beds: Array.from({ length: beds }, (_, row) =>
      bedOf(`a0${row + 1}`, rectangle(6, 2 + row * 2, 1.2, 9, 90)),
    ),
    plantings: Array.from({ length: plantedM > 0 ? beds : 0 }, (_, row) =>
      plantingOf(`a0${row + 1}-1`, rectangle(1.5 + plantedM / 2, 2 + row * 2, 1.2, plantedM, 90), {
        bed: `a0${row + 1}`,
      }),
    ),
  });
}

function planned(named: readonly GroundNamed[], beds = 5, plantedM = 4) {
  const { plan, layout } = garden(beds, plantedM);
  const items = sheetItems(plan, layout, book).list;
  const wanted: LabelsWanted = { items, wordsPx };
  const taken = [...planLabels(VIEW, SIZE, wanted).values()].map(({ label }) => label);
  const labels = planGroundLabels(VIEW, SIZE, named, { widthPx, items, taken, furniture: [] });
  return { labels, taken, items };
}

const bedGround = (row: number) => rectangle(6, 2 + row * 2, 1.2, 9, 90);

describe("the words of the ground's past", () => {
  test("years move off the planting of this season, onto the free part of their ground", () => {
    const { labels, taken, items } = planned([crop(bedGround(0))]);
    const [found] = labels;
    expect(found?.text).toBe("2025 leek");
    const label = found?.label;
    if (!label) throw new Error("no label");
    for (const item of items) {
      if (item.what !== "planting") continue;
      const { rings, box } = ringsInPixels(VIEW, item);
      expect(meetsRings(label, rings, box)).toBe(false);
    }
    for (const code of taken) expect(labelsMeet(label, code)).toBe(false);
  });

  test("years have their fullest words on bare ground, and none where it is all planted", () => {
    expect(planned([crop(bedGround(0))], 5, 0).labels[0]?.text).toBe("2025 leek, 2024 bean");
    expect(planned([crop(bedGround(0))], 5, 9).labels).toEqual([null]);
  });

  test("two crops on grounds that overlap do not lie on each other", () => {
    const { labels } = planned(
      [crop(rectangle(6, 6, 6, 9, 90)), crop(rectangle(7, 6, 6, 9, 90))],
      0,
      0,
    );
    const [one, other] = labels;
    if (!one || !other) throw new Error("both have room");
    expect(labelsMeet(one.label, other.label)).toBe(false);
  });

  test("a disease is named beside its ground, off codes, also where two are marked side by side", () => {
    const marks = [mark(bedGround(1)), mark(bedGround(2))];
    const { labels, taken } = planned(marks);
    expect(labels.map((found) => found?.text)).toEqual(["! white rot 2024", "! white rot 2024"]);
    const [one, other] = labels;
    if (!one || !other) throw new Error("both are named");
    expect(labelsMeet(one.label, other.label)).toBe(false);
    for (const code of taken) {
      expect(labelsMeet(one.label, code)).toBe(false);
      expect(labelsMeet(other.label, code)).toBe(false);
    }
  });

  test("a disease in sight always has its name; what is out of sight has none", () => {
    const away = rectangle(500, 500, 2, 2);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 28, noNaN: true }),
        fc.double({ min: 1, max: 18, noNaN: true }),
        fc.double({ min: 0.3, max: 9, noNaN: true }),
        fc.integer({ min: 0, max: 7 }),
        (x, y, size, beds) => {
          const { labels } = planned([mark(rectangle(x, y, size, size)), mark(away)], beds, 9);
          expect(labels[0]?.text).toBe("! white rot 2024");
          expect(labels[1]).toBeNull();
        },
      ),
      { numRuns: 60 },
    );
  });
});
