/** A small plan for the panels' tests: two beds, three tomatoes, a neighbour. */
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { emptyPlan } from "../../src/core/model/empty-plan.ts";
import { dayFromIso } from "../../src/core/model/day.ts";
import type { Bed, Layout, Plan, Planting, RectangleShape } from "../../src/core/model/plan.ts";

export const book = cropBook();

export const day = (iso: string): number => dayFromIso(iso) ?? Number.NaN;

export function rectangle(x: number, y: number, lengthM = 4): RectangleShape {
  return { shape: "rectangle", x, y, widthM: 1, lengthM, turnDeg: 0 };
}

export function bedAt(number: number, x: number): Bed {
  return { id: `bed-${number}`, code: `B0${number}`, outline: rectangle(x, 0, 10) };
}

export function plantingAt(number: number, x: number, more: Partial<Planting> = {}): Planting {
  return {
    id: `planting-${number}`,
    code: `B01-${number}`,
    variety: `variety-${number}`,
    outline: rectangle(x, 0),
    purpose: "seed",
    flowering: "yes",
    cover: "none",
    ...more,
  };
}

export function smallPlan(plantings: readonly Planting[] = []): { plan: Plan; layout: Layout } {
  const empty = emptyPlan("small", 2027);
  const layout: Layout = {
    id: "layout-1",
    name: "Layout 1",
    beds: [bedAt(1, 0), bedAt(2, 3)],
    plantings,
  };
  const varieties = [1, 2, 3].map((number) => ({
    id: `variety-${number}`,
    name: ["Amber Lantern", "Old Ferry", "Mossgate Plum"][number - 1] ?? "",
    kind: "tomato",
    wantedPlants: 10 * number,
  }));
  return { plan: { ...empty, varieties, layouts: [layout] }, layout };
}
