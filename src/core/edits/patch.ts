/**
 * The difference between two plans, kept for undo. Only what changed is held, so a thousand edits
 * of a large plan stay small; applying a patch forward or back restores the exact content and
 * leaves untouched items the same objects.
 */

export type Patch =
  | { readonly op: "set"; readonly before: unknown; readonly after: unknown }
  | { readonly op: "fields"; readonly fields: readonly (readonly [string, Patch])[] }
  | { readonly op: "items"; readonly items: readonly (readonly [number, Patch])[] }
  | {
      readonly op: "splice";
      readonly at: number;
      readonly removed: readonly unknown[];
      readonly added: readonly unknown[];
    };

type Fields = Readonly<Record<string, unknown>>;

/** The patch from before to after, or null when they are the same object or equal primitives. */
export function difference(before: unknown, after: unknown): Patch | null {
  if (Object.is(before, after)) return null;
  if (Array.isArray(before) && Array.isArray(after)) return listDifference(before, after);
  if (isFields(before) && isFields(after)) return fieldDifference(before, after);
  return { op: "set", before, after };
}

function isFields(value: unknown): value is Fields {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function fieldDifference(before: Fields, after: Fields): Patch | null {
  const fields: (readonly [string, Patch])[] = [];
  for (const key of new Set([...Object.keys(before), ...Object.keys(after)])) {
    const patch = difference(before[key], after[key]);
    if (patch) fields.push([key, patch]);
  }
  return fields.length > 0 ? { op: "fields", fields } : null;
}

function listDifference(before: readonly unknown[], after: readonly unknown[]): Patch | null {
  if (before.length === after.length) {
    const items: (readonly [number, Patch])[] = [];
    before.forEach((item, index) => {
      const patch = difference(item, after[index]);
      if (patch) items.push([index, patch]);
    });
    return items.length > 0 ? { op: "items", items } : null;
  }
  const shorter = Math.min(before.length, after.length);
  let at = 0;
  while (at < shorter && Object.is(before[at], after[at])) at += 1;
  let tail = 0;
  while (
    tail < shorter - at &&
    Object.is(before[before.length - 1 - tail], after[after.length - 1 - tail])
  ) {
    tail += 1;
  }
  return {
    op: "splice",
    at,
    removed: before.slice(at, before.length - tail),
    added: after.slice(at, after.length - tail),
  };
}

/** Goes forward (before to after) or back along a patch made by difference. */
export function applyPatch<T>(value: T, patch: Patch, direction: "forward" | "back"): T {
  return patchedValue(value, patch, direction) as T;
}

function patchedValue(value: unknown, patch: Patch, direction: "forward" | "back"): unknown {
  switch (patch.op) {
    case "set":
      return direction === "forward" ? patch.after : patch.before;
    case "fields": {
      const next: Record<string, unknown> = { ...(value as Fields) };
      for (const [key, inner] of patch.fields) {
        const changed = patchedValue(next[key], inner, direction);
        if (changed === undefined) delete next[key];
        else next[key] = changed;
      }
      return next;
    }
    case "items": {
      const next = [...(value as readonly unknown[])];
      for (const [index, inner] of patch.items) {
        next[index] = patchedValue(next[index], inner, direction);
      }
      return next;
    }
    case "splice": {
      const next = [...(value as readonly unknown[])];
      const [gone, come] =
        direction === "forward" ? [patch.removed, patch.added] : [patch.added, patch.removed];
      next.splice(patch.at, gone.length, ...come);
      return next;
    }
  }
}
