/** What objects are called in titles of undo steps and in announcements. */
import type { Layout, Plan } from "../../core/model/plan.ts";

/** The code or label of one object, or how many there are. */
export function objectNames(plan: Plan, layout: Layout, ids: readonly string[]): string {
  if (ids.length !== 1) return `${ids.length} objects`;
  const [id] = ids;
  const bed = layout.beds.find((entry) => entry.id === id);
  if (bed) return `bed ${bed.code}`;
  const planting = layout.plantings.find((entry) => entry.id === id);
  if (planting) return planting.code;
  return plan.surroundings.find((entry) => entry.id === id)?.label || "1 object";
}
