/** A small drawn plan for tests of the sheet. */
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { emptyPlan } from "../../src/core/model/empty-plan.ts";
import type {
  Bed,
  Layout,
  Plan,
  Planting,
  RectangleShape,
  Surrounding,
} from "../../src/core/model/plan.ts";

export const book = cropBook();

export function rectangle(
  x: number,
  y: number,
  widthM: number,
  lengthM: number,
  turnDeg = 0,
): RectangleShape {
  return { shape: "rectangle", x, y, widthM, lengthM, turnDeg };
}

export function bedOf(id: string, outline: Bed["outline"]): Bed {
  return { id, code: id.toUpperCase(), outline };
}

export function plantingOf(
  id: string,
  outline: Planting["outline"],
  more: Partial<Planting> = {},
): Planting {
  return {
    id,
    code: id.toUpperCase(),
    variety: "v1",
    outline,
    purpose: "seed",
    flowering: "yes",
    cover: "none",
    ...more,
  };
}

export function sourceAt(id: string, x: number, y: number): Surrounding {
  return {
    id,
    label: id,
    what: "pollen",
    kind: "tomato",
    outline: { shape: "point", x, y },
    flowering: "yes",
    cover: "none",
  };
}

export function drawnPlan(
  parts: Partial<Pick<Layout, "beds" | "plantings">> &
    Partial<Pick<Plan, "surroundings" | "varieties">>,
): { readonly plan: Plan; readonly layout: Layout } {
  const { beds = [], plantings = [], surroundings = [] } = parts;
  const layout: Layout = { id: "layout-1", name: "Layout 1", beds, plantings };
  const varieties = parts.varieties ?? [{ id: "v1", name: "Amber Lantern", kind: "tomato" }];
  return {
    plan: { ...emptyPlan("drawn", 2027), varieties, surroundings, layouts: [layout] },
    layout,
  };
}
