/** Which lots are picked after a key or a press in the list. */

export interface Picked {
  readonly picked: readonly string[];
  /** The lot the keys are on. */
  readonly active: string | null;
}

export interface PickKey {
  readonly key: string;
  readonly isCommand: boolean;
  readonly isShift: boolean;
}

/** Lots a page key goes over. */
const PAGE = 10;

/**
 * What a key does: arrows, Home, End and page keys go and pick, with Shift they pick all on the
 * way, with Ctrl they only go; Space picks or drops the lot, Ctrl+A picks all. Null: not for the list.
 * @param ids of the lots listed, in their order
 */
export function afterKey(
  ids: readonly string[],
  { picked, active }: Picked,
  { key, isCommand, isShift }: PickKey,
): Picked | null {
  if (ids.length === 0) return null;
  if (key === "a" && isCommand) return { picked: ids, active: active ?? ids[0] ?? null };
  const at = active === null ? -1 : ids.indexOf(active);
  if (key === " ") return at < 0 ? null : afterPress({ picked, active }, ids[at] ?? "");
  const to = placeAfter(key, at, ids.length);
  if (to === null) return null;
  const next = ids[to] ?? null;
  if (isCommand) return { picked, active: next };
  if (!isShift || at < 0) return { picked: next === null ? [] : [next], active: next };
  const way = ids.slice(Math.min(at, to), Math.max(at, to) + 1);
  return { picked: [...new Set([...picked, ...way])], active: next };
}

function placeAfter(key: string, at: number, count: number): number | null {
  const last = count - 1;
  switch (key) {
    case "ArrowDown":
      return Math.min(at + 1, last);
    case "ArrowUp":
      return Math.max(at - 1, 0);
    case "PageDown":
      return Math.min(at + PAGE, last);
    case "PageUp":
      return Math.max(at - PAGE, 0);
    case "Home":
      return 0;
    case "End":
      return last;
    default:
      return null;
  }
}

/** Picks a lot besides the others, or drops it. */
export function afterPress({ picked }: Picked, id: string): Picked {
  const isPicked = picked.includes(id);
  return {
    picked: isPicked ? picked.filter((each) => each !== id) : [...picked, id],
    active: id,
  };
}

/** Picks all from the lot the keys are on to the one pressed. */
export function afterRange(ids: readonly string[], { picked, active }: Picked, id: string): Picked {
  const from = active === null ? -1 : ids.indexOf(active);
  const to = ids.indexOf(id);
  if (from < 0 || to < 0) return { picked: [id], active: id };
  const way = ids.slice(Math.min(from, to), Math.max(from, to) + 1);
  return { picked: [...new Set([...picked, ...way])], active: id };
}
