/** Alternative layouts: copy, rename, delete, choose. */
import type { Layout } from "../model/plan.ts";
import { type Edit, inLayout } from "./edit.ts";

/** A copy of a layout under a new id and name, after the original. */
export function copyLayout(sourceId: string, id: string, name: string): Edit {
  return {
    title: `Copy layout as ${name}`,
    apply: (plan) => ({
      ...plan,
      layouts: plan.layouts.flatMap((layout): readonly Layout[] =>
        layout.id === sourceId ? [layout, { ...layout, id, name }] : [layout],
      ),
    }),
  };
}

export function renameLayout(id: string, name: string): Edit {
  return {
    title: `Rename layout to ${name}`,
    apply: (plan) => inLayout(plan, id, (layout) => ({ ...layout, name })),
  };
}

/** Deletes a layout; the last one stays. */
export function removeLayout(id: string): Edit {
  return {
    title: "Delete layout",
    apply: (plan) => {
      if (plan.layouts.length === 1) return plan;
      const layouts = plan.layouts.filter((layout) => layout.id !== id);
      if (plan.chosenLayout !== id) return { ...plan, layouts };
      const { chosenLayout: _gone, ...rest } = plan;
      return { ...rest, layouts };
    },
  };
}
