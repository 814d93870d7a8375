/** One layout with two beds and three plantings, for trying edits on. */
import { emptyPlan } from "../../src/core/model/empty-plan.ts";
import type { Bed, Layout, Plan, Planting, RectangleShape } from "../../src/core/model/plan.ts";

export const LAYOUT = "layout-1";

export function rectangle(
  x: number,
  y: number,
  widthM: number,
  lengthM: number,
  turnDeg = 0,
): RectangleShape {
  return { shape: "rectangle", x, y, widthM, lengthM, turnDeg };
}

export function planting(
  id: string,
  code: string,
  outline: RectangleShape,
  bed?: string,
): Planting {
  return {
    id,
    code,
    variety: "v1",
    outline,
    purpose: "seed",
    flowering: "yes",
    cover: "none",
    ...(bed === undefined ? {} : { bed }),
  };
}

/** Beds A01 and A02 side by side, 10 m long; A01-1 and A01-2 in the first, one planting by itself. */
export const littlePlan: Plan = {
  ...emptyPlan("little", 2027),
  varieties: [
    { id: "v1", name: "Old Ferry", kind: "tomato" },
    { id: "v2", name: "Tarn Coral", kind: "beet" },
  ],
  surroundings: [
    {
      id: "s1",
      label: "Hedge",
      what: "hedge",
      outline: { shape: "point", x: 9, y: 9 },
      flowering: "yes",
      cover: "none",
    },
  ],
  layouts: [
    {
      id: LAYOUT,
      name: "Layout 1",
      beds: [
        { id: "b1", code: "A01", outline: rectangle(0, 0, 1, 10) },
        { id: "b2", code: "A02", outline: rectangle(3, 0, 1, 10) },
      ],
      plantings: [
        planting("p1", "A01-1", rectangle(0, -4, 1, 2), "b1"),
        planting("p2", "A01-2", rectangle(0, 1, 1, 2), "b1"),
        planting("p3", "P-1", rectangle(20, 20, 1, 1)),
      ],
    },
  ],
};

export function layoutOf(plan: Plan): Layout {
  return plan.layouts[0] as Layout;
}

export function plantingOf(plan: Plan, id: string): Planting {
  const found = layoutOf(plan).plantings.find((each) => each.id === id);
  if (!found) throw new Error(`no planting ${id}`);
  return found;
}

export function bedOf(plan: Plan, id: string): Bed {
  const found = layoutOf(plan).beds.find((each) => each.id === id);
  if (!found) throw new Error(`no bed ${id}`);
  return found;
}
