/**
 * Brings two copies of one plan together: entries of the field record as a union, changes to the
 * plan itself side by side, each taken or left by whoever merges. Nothing is overwritten unseen.
 */
import { patched } from "../edits/edit.ts";
import type { Entry, Layout, Plan } from "../model/plan.ts";
import { mergeEntries } from "./merge-entries.ts";

type Item = { readonly id: string };

export interface PlanDifference {
  /** What names it, e.g. `varieties/v3`, `layouts/l1/plantings/p2` or `site`. */
  readonly id: string;
  /** `added`: only in theirs; `missing`: only in ours; `changed`: in both, not the same. */
  readonly how: "added" | "missing" | "changed";
  /** Fields that differ, when it is changed. */
  readonly fields: readonly string[];
  /** Code or name, as a person knows it. */
  readonly name: string;
  readonly isTaken: boolean;
}

export type MergedPlans =
  | {
      readonly ok: true;
      readonly plan: Plan;
      readonly entries: { readonly added: number };
      readonly clashes: readonly Entry[];
      readonly differences: readonly PlanDifference[];
      /** Ids to be taken that name no difference. */
      readonly unknown: readonly string[];
    }
  | { readonly ok: false; readonly got: string; readonly expected: string };

/** Lists of a plan compared thing by thing; `layouts` are compared list by list inside. */
const LISTS = [
  "varieties",
  "lots",
  "storagePlaces",
  "ownKinds",
  "surroundings",
  "earlierCrops",
  "groundMarks",
] as const;
const LAYOUT_LISTS = ["beds", "plantings"] as const;
const LAYOUT_FIELDS = ["name", "note"] as const;
/** Single things compared whole. */
const FIELDS = [
  "title",
  "units",
  "level",
  "site",
  "picture",
  "chosenLayout",
  "accepted",
  "lotCodePattern",
  "sowing",
  "renewalYears",
] as const;

/**
 * @param take ids of differences to take from theirs; the others stay as ours
 * @returns refused when theirs is another plan or another season
 */
export function mergePlans(ours: Plan, theirs: Plan, take: ReadonlySet<string>): MergedPlans {
  if (ours.id !== theirs.id) {
    return {
      ok: false,
      got: `the plan "${theirs.title}" (${theirs.id})`,
      expected: `a copy of "${ours.title}" (${ours.id})`,
    };
  }
  if (ours.season.first !== theirs.season.first || ours.season.last !== theirs.season.last) {
    return {
      ok: false,
      got: `season ${theirs.season.name}`,
      expected: `season ${ours.season.name}`,
    };
  }
  const { entries, clashes } = mergeEntries(ours.entries, theirs.entries);
  const found: PlanDifference[] = [];
  const merged = withLayouts(
    withFields(withLists(ours, theirs, take, found), theirs, take, found),
    theirs,
    take,
    found,
  );
  const ids = new Set(found.map(({ id }) => id));
  return {
    ok: true,
    plan: { ...merged, entries },
    entries: { added: entries.length - ours.entries.length },
    clashes,
    differences: found,
    unknown: [...take].filter((id) => !ids.has(id)),
  };
}

function withLists(
  ours: Plan,
  theirs: Plan,
  take: ReadonlySet<string>,
  found: PlanDifference[],
): Plan {
  return LISTS.reduce(
    (plan, list) => ({
      ...plan,
      [list]: mergedList<Item>(list, plan[list], theirs[list], take, found),
    }),
    ours,
  );
}

function withFields(
  ours: Plan,
  theirs: Plan,
  take: ReadonlySet<string>,
  found: PlanDifference[],
): Plan {
  return FIELDS.reduce((plan, field) => {
    if (isSame(plan[field], theirs[field])) return plan;
    const isTaken = take.has(field);
    found.push({ id: field, how: "changed", fields: [field], name: field, isTaken });
    return isTaken ? { ...plan, [field]: theirs[field] } : plan;
  }, ours);
}

function withLayouts(
  ours: Plan,
  theirs: Plan,
  take: ReadonlySet<string>,
  found: PlanDifference[],
): Plan {
  const inBoth = ours.layouts.map((layout) => {
    const other = theirs.layouts.find(({ id }) => id === layout.id);
    if (!other) {
      found.push(difference(`layouts/${layout.id}`, "missing", layout, [], take));
      return layout;
    }
    return LAYOUT_LISTS.reduce(
      (next, list) => {
        const items = mergedList<Item>(
          `layouts/${layout.id}/${list}`,
          next[list],
          other[list],
          take,
          found,
        );
        return { ...next, [list]: items };
      },
      withLayoutFields(layout, other, take, found),
    );
  });
  const kept = inBoth.filter(({ id }) => !isTakenAway(`layouts/${id}`, found));
  const added = theirs.layouts.filter(({ id }) => !ours.layouts.some((layout) => layout.id === id));
  for (const layout of added) {
    found.push(difference(`layouts/${layout.id}`, "added", layout, [], take));
  }
  const taken = added.filter(({ id }) => take.has(`layouts/${id}`));
  // A plan keeps at least one layout.
  return { ...ours, layouts: kept.length + taken.length > 0 ? [...kept, ...taken] : ours.layouts };
}

function withLayoutFields(
  ours: Layout,
  theirs: Layout,
  take: ReadonlySet<string>,
  found: PlanDifference[],
): Layout {
  const fields = LAYOUT_FIELDS.filter((field) => ours[field] !== theirs[field]);
  if (fields.length === 0) return ours;
  const id = `layouts/${ours.id}`;
  found.push(difference(id, "changed", ours, fields, take));
  return take.has(id) ? patched(ours, { name: theirs.name, note: theirs.note }) : ours;
}

function isTakenAway(id: string, found: readonly PlanDifference[]): boolean {
  return found.some((each) => each.id === id && each.how === "missing" && each.isTaken);
}

function mergedList<T extends Item>(
  path: string,
  ours: readonly T[],
  theirs: readonly T[],
  take: ReadonlySet<string>,
  found: PlanDifference[],
): readonly T[] {
  const others = new Map(theirs.map((item) => [item.id, item]));
  const known = new Set(ours.map(({ id }) => id));
  const merged = ours.flatMap((item) => {
    const id = `${path}/${item.id}`;
    const other = others.get(item.id);
    if (!other) {
      found.push(difference(id, "missing", item, [], take));
      return take.has(id) ? [] : [item];
    }
    if (isSame(item, other)) return [item];
    found.push(difference(id, "changed", item, differingFields(item, other), take));
    return [take.has(id) ? other : item];
  });
  for (const item of theirs) {
    if (known.has(item.id)) continue;
    const id = `${path}/${item.id}`;
    found.push(difference(id, "added", item, [], take));
    if (take.has(id)) merged.push(item);
  }
  return merged;
}

function difference(
  id: string,
  how: PlanDifference["how"],
  item: Item,
  fields: readonly string[],
  take: ReadonlySet<string>,
): PlanDifference {
  return { id, how, fields, name: nameOf(item), isTaken: take.has(id) };
}

function nameOf(item: Item): string {
  for (const field of ["code", "name", "label"]) {
    const value = Object.entries(item).find(([name]) => name === field)?.[1];
    if (typeof value === "string" && value !== "") return value;
  }
  return item.id;
}

function differingFields(a: Item, b: Item): readonly string[] {
  const [ours, theirs] = [new Map(Object.entries(a)), new Map(Object.entries(b))];
  return [...new Set([...ours.keys(), ...theirs.keys()])].filter(
    (field) => !isSame(ours.get(field), theirs.get(field)),
  );
}

/** Equal as a file would have them, whatever the order of fields. */
function isSame(a: unknown, b: unknown): boolean {
  return stableText(a) === stableText(b);
}

function stableText(value: unknown): string {
  return (
    JSON.stringify(value, (_, inner: unknown) =>
      typeof inner === "object" && inner !== null && !Array.isArray(inner)
        ? Object.fromEntries(Object.entries(inner).sort(([x], [y]) => (x < y ? -1 : 1)))
        : inner,
    ) ?? "nothing"
  );
}

/** In words: `B02-1: outline, plants differ`. */
export function describeDifference({ how, name, fields }: PlanDifference): string {
  if (how === "added") return `${name} is new there`;
  return how === "missing" ? `${name} is not there` : `${name} differs in ${fields.join(", ")}`;
}
