/** A little garden for tests of the arranger: beds in a row, tomatoes that need distance. */
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { emptyPlan } from "../../src/core/model/empty-plan.ts";
import type { Bed, Layout, Plan, Planting, Variety } from "../../src/core/model/plan.ts";
import { type CheckedLayout, checkLayout } from "../../src/core/checks/checked-layout.ts";
import type { CheckResult } from "../../src/core/checks/run-checks.ts";
import { dayFromIso } from "../../src/core/model/day.ts";

export const book = cropBook();

export function day(iso: string): number {
  const found = dayFromIso(iso);
  if (found === null) throw new Error(`not a date: ${iso}`);
  return found;
}

export function bed(
  id: string,
  x: number,
  y: number,
  widthM: number,
  lengthM: number,
  turnDeg = 0,
): Bed {
  return {
    id,
    code: id.toUpperCase(),
    outline: { shape: "rectangle", x, y, widthM, lengthM, turnDeg },
  };
}

export function variety(id: string, kind: string, more: Partial<Variety> = {}): Variety {
  return { id, name: `Variety ${id}`, kind, ...more };
}

export function planting(
  id: string,
  varietyId: string,
  place: Pick<Planting, "outline"> & Partial<Planting>,
): Planting {
  return {
    id,
    code: id.toUpperCase(),
    variety: varietyId,
    purpose: "seed",
    flowering: "yes",
    cover: "none",
    plants: 40,
    bloom: { first: day("2027-07-01"), last: day("2027-08-31") },
    ...place,
  };
}

export function square(x: number, y: number, size: number, turnDeg = 0): Planting["outline"] {
  return { shape: "rectangle", x, y, widthM: size, lengthM: size, turnDeg };
}

export function gardenPlan(
  varieties: readonly Variety[],
  beds: readonly Bed[],
  plantings: readonly Planting[],
  more: Partial<Plan> = {},
): Plan {
  return {
    ...emptyPlan("garden", 2027),
    varieties,
    layouts: [{ id: "layout-1", name: "Layout 1", beds, plantings }],
    ...more,
  };
}

export function firstLayout(plan: Plan): Layout {
  const layout = plan.layouts[0];
  if (!layout) throw new Error("no layout");
  return layout;
}

export function checked(plan: Plan): CheckResult {
  return checkedLayout(plan).result;
}

/** The first layout, checked. */
export function checkedLayout(plan: Plan): CheckedLayout {
  return checkLayout(plan, firstLayout(plan).id);
}
