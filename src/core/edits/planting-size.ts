/** Giving a planting another size and the plants that belong to it, in one step. */
import type { AreaShape } from "../model/plan.ts";
import type { Edit } from "./edit.ts";
import { heldBack, heldBackWords } from "../beds/held-back.ts";
import { setOutline } from "./move-objects.ts";
import { changePlantings } from "./object-edits.ts";

export interface PlantingSize {
  readonly outline: AreaShape;
  readonly plants: number;
  readonly rows: number;
}

/** Outline, plants and rows at once; a locked planting stays as it is. */
export function setPlantsAndOutline(
  layoutId: string,
  id: string,
  { outline, plants, rows }: PlantingSize,
  title: string,
): Edit {
  return {
    title,
    note: (plan) => heldBackWords(plan, layoutId, [id], false),
    apply: (plan) => {
      if (heldBack(plan, layoutId, [id], false).ids.size > 0) return plan;
      const resized = setOutline(layoutId, id, outline, title).apply(plan);
      return changePlantings(layoutId, [id], { plants, rows }, title).apply(resized);
    },
  };
}
