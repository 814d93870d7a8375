/** What must stay as it is when it is asked to move, change its size or go: whatever is locked. */
import { itemsById } from "../lists/changed-list.ts";
import type { Plan } from "../model/plan.ts";
import * as steps from "../words/step-words.ts";

interface HeldBack {
  readonly ids: ReadonlySet<string>;
  /** Their codes and labels. */
  readonly names: readonly string[];
}

/**
 * Of the objects asked for, those that stay.
 * @param isWithBeds beds that hold a locked planting stay as well: moved or deleted they would take it along
 */
export function heldBack(
  plan: Plan,
  layoutId: string,
  ids: readonly string[],
  isWithBeds: boolean,
): HeldBack {
  const layout = plan.layouts.find(({ id }) => id === layoutId);
  const beds = itemsById(layout?.beds ?? [], ids);
  const lockedIn = new Map<string, string>();
  for (const { bed, locked, code } of isWithBeds && beds.length > 0
    ? (layout?.plantings ?? [])
    : []) {
    if (locked === true && bed !== undefined) lockedIn.set(bed, code);
  }
  const held = new Map<string, string>();
  for (const [, { id, locked, code }] of beds) {
    const inside = lockedIn.get(id);
    if (locked === true) held.set(id, code);
    else if (inside !== undefined) held.set(id, steps.bedWith(code, inside));
  }
  for (const [, { id, locked, code }] of itemsById(layout?.plantings ?? [], ids)) {
    if (locked === true) held.set(id, code);
  }
  for (const [, { id, locked, label }] of itemsById(plan.surroundings, ids)) {
    if (locked === true) held.set(id, label === "" ? steps.unnamed : label);
  }
  return { ids: new Set(held.keys()), names: [...held.values()] };
}

/** At most so many are named. */
const NAMED_MOST = 4;

/** "B02-1 is locked and stays as it is"; null when nothing is held back. */
export function heldBackWords(
  plan: Plan,
  layoutId: string,
  ids: readonly string[],
  isWithBeds: boolean,
): string | null {
  const { names } = heldBack(plan, layoutId, ids, isWithBeds);
  if (names.length === 0) return null;
  const more = names.length - NAMED_MOST;
  const shown = [...names.slice(0, NAMED_MOST), ...(more > 0 ? [steps.more(more)] : [])].join(", ");
  return steps.keptLocked(names.length, shown);
}
