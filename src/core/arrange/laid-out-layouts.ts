/** Laid-out seed lists as layouts of their own, one undo step. */
import type { Edit } from "../edits/edit.ts";
import { nextId } from "../edits/edit.ts";
import { copyLayout } from "../edits/layout-edits.ts";
import { addPlantings } from "../edits/object-edits.ts";
import type { Plan, Planting } from "../model/plan.ts";

interface NewLayout {
  readonly name: string;
  readonly plantings: readonly Planting[];
}

export interface LaidOutEdit {
  readonly edit: Edit;
  /** Ids of the new layouts, in the order given. */
  readonly ids: readonly string[];
}

/** Layouts in groups of those with the same plantings, each group in the order given. */
export function alikeLayouts<T extends Pick<NewLayout, "plantings">>(
  laid: readonly T[],
): readonly (readonly [T, ...T[]])[] {
  const groups = new Map<string, [T, ...T[]]>();
  for (const one of laid) {
    const key = JSON.stringify(one.plantings);
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  return [...groups.values()];
}

/** Copies of a layout after it, each with its plantings added; the layout itself stays as it is. */
export function laidOutLayouts(
  plan: Plan,
  sourceId: string,
  layouts: readonly NewLayout[],
  title: string,
): LaidOutEdit {
  const ids: string[] = [];
  const names = new Set(plan.layouts.map(({ name }) => name));
  const edits: Edit[] = [];
  for (const { name, plantings } of layouts) {
    const id = nextId("layout-", [...plan.layouts.map((layout) => layout.id), ...ids]);
    const free = freeName(name, names);
    names.add(free);
    edits.push(copyLayout(ids.at(-1) ?? sourceId, id, free), emptied(plan, sourceId, id));
    edits.push(addPlantings(id, plantings, ""));
    ids.push(id);
  }
  return {
    ids,
    edit: { title, apply: (before) => edits.reduce((next, edit) => edit.apply(next), before) },
  };
}

/** A copy of the layout before it gets back what the source has. */
function emptied(plan: Plan, sourceId: string, id: string): Edit {
  const source = plan.layouts.find((layout) => layout.id === sourceId);
  return {
    title: "",
    apply: (before) => ({
      ...before,
      layouts: before.layouts.map((layout) =>
        layout.id === id && source ? { ...layout, plantings: source.plantings } : layout,
      ),
    }),
  };
}

function freeName(name: string, taken: ReadonlySet<string>): string {
  if (!taken.has(name)) return name;
  let number = 2;
  while (taken.has(`${name} ${number}`)) number += 1;
  return `${name} ${number}`;
}
