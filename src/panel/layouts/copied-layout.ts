/** Id and name of a copy of a layout. */
import { nextId } from "../../core/edits/edit.ts";
import type { Plan } from "../../core/model/plan.ts";

/** The next free `Layout n`. */
export function copiedLayout(plan: Plan): { readonly id: string; readonly name: string } {
  const names = new Set(plan.layouts.map((layout) => layout.name));
  let number = plan.layouts.length + 1;
  while (names.has(`Layout ${number}`)) number += 1;
  const id = nextId(
    "layout-",
    plan.layouts.map((layout) => layout.id),
  );
  return { id, name: `Layout ${number}` };
}
