/** Alternative layouts: copy, rename, delete, choose. */
import type { Layout, Plan } from "../model/plan.ts";
import { type Edit, inLayout, nextId } from "./edit.ts";
import * as steps from "../words/step-words.ts";

/** A free id and the next free name `Layout n` for a layout to be added. */
export function freeLayoutName(plan: Plan): { readonly id: string; readonly name: string } {
  const names = new Set(plan.layouts.map((layout) => layout.name));
  let number = plan.layouts.length + 1;
  while (names.has(steps.layout(number))) number += 1;
  const ids = plan.layouts.map((layout) => layout.id);
  return { id: nextId("layout-", ids), name: steps.layout(number) };
}

/** A copy of a layout under a new id and name, after the original. */
export function copyLayout(sourceId: string, id: string, name: string): Edit {
  return {
    title: steps.copyLayout(name),
    apply: (plan) => ({
      ...plan,
      layouts: plan.layouts.flatMap((layout): readonly Layout[] =>
        layout.id === sourceId ? [layout, { ...layout, id, name }] : [layout],
      ),
      accepted: plan.accepted.flatMap((entry) =>
        entry.layout === sourceId ? [entry, { ...entry, layout: id }] : [entry],
      ),
    }),
  };
}

export function renameLayout(id: string, name: string): Edit {
  return {
    title: steps.renameLayout(name),
    apply: (plan) => inLayout(plan, id, (layout) => ({ ...layout, name })),
  };
}

/** Deletes a layout; the last one stays. */
export function removeLayout(id: string): Edit {
  return {
    title: steps.deleteLayout,
    apply: (plan) => {
      if (plan.layouts.length === 1) return plan;
      const layouts = plan.layouts.filter((layout) => layout.id !== id);
      const accepted = plan.accepted.filter((entry) => entry.layout !== id);
      if (plan.chosenLayout !== id) return { ...plan, layouts, accepted };
      const { chosenLayout: _gone, ...rest } = plan;
      return { ...rest, layouts, accepted };
    },
  };
}
