/** What objects are called in titles of undo steps, in menus and in announcements. */
import type { Layout, Plan } from "./plan.ts";

/** `bed B02`, `B02-1`, `Hedge`; of several how many there are: `3 beds`, `2 plantings`, `4 objects`. */
export function objectNames(plan: Plan, layout: Layout, ids: readonly string[]): string {
  const wanted = new Set(ids);
  const beds = layout.beds.filter(({ id }) => wanted.has(id));
  const plantings = layout.plantings.filter(({ id }) => wanted.has(id));
  const surroundings = plan.surroundings.filter(({ id }) => wanted.has(id));
  const names = [
    ...beds.map(({ code }) => `bed ${code}`),
    ...plantings.map(({ code }) => code),
    ...surroundings.map(({ label }) => label),
  ];
  if (names.length === 1) return names[0] || "1 object";
  if (beds.length === names.length) return `${names.length} beds`;
  if (plantings.length === names.length) return `${names.length} plantings`;
  return `${names.length} objects`;
}
