/** Fills the panel of a map sheet; what finds no room is counted there and stands in the notes. */
import { type FlowItem, flowInto } from "./flow.ts";
import type { Box, Mark } from "./scene.ts";

/**
 * Sets the items in turn. Where not all go in, as many are left out as the closing words take.
 * @param closing what is said of the items left out, in order
 */
export function fillPanel(
  items: readonly FlowItem[],
  columns: readonly Box[],
  closing: (rest: readonly FlowItem[]) => readonly FlowItem[],
): { readonly marks: readonly Mark[]; readonly rest: readonly FlowItem[] } {
  const all = flowInto(items, columns);
  if (all.rest.length === 0) return all;
  let kept = items.length - all.rest.length;
  for (;;) {
    while (kept > 0 && items[kept - 1]?.isHeading === true) kept -= 1;
    const rest = items.slice(kept);
    const tried = flowInto([...items.slice(0, kept), ...closing(rest)], columns);
    if (tried.rest.length === 0 || kept === 0) return { marks: tried.marks, rest };
    kept -= 1;
  }
}
