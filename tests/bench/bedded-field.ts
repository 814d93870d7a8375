/** The made-up field laid into beds, for benchmarks of what looks for ground. */
import type { Bed, Layout, Plan, Planting } from "../../src/core/model/plan.ts";
import { fieldPlan } from "./field.ts";

/** Beds of 30 m in rows of ten with so many plantings of 3 m in each, in eight crossing groups. */
export function beddedPlan(bedCount: number, inEach: number): Plan {
  const plan = fieldPlan(bedCount * inEach, 8);
  const layout = plan.layouts[0] as Layout;
  const middle = (bed: number) => ({ x: (bed % 10) * 3, y: Math.floor(bed / 10) * 36 });
  const beds = Array.from({ length: bedCount }, (_, index): Bed => ({
    id: `b${index}`,
    code: `B${index}`,
    outline: { shape: "rectangle", ...middle(index), widthM: 1.2, lengthM: 30, turnDeg: 0 },
  }));
  const plantings = layout.plantings.map((planting, index): Planting => {
    const bed = Math.floor(index / inEach);
    const { x, y } = middle(bed);
    const along = y - 12 + (index % inEach) * 7;
    const outline = { shape: "rectangle", x, y: along, widthM: 1, lengthM: 3, turnDeg: 0 } as const;
    return { ...planting, bed: `b${bed}`, outline };
  });
  return { ...plan, layouts: [{ ...layout, beds, plantings }] };
}
