/** Rows of equal beds while they are typed, and what is remembered of the last ones. */
import {
  BED_ROWS_MOST,
  type BedAnchor,
  type BedRows,
  anchorOf,
  bedsInRows,
  blockBeside,
  middleOf,
} from "../../core/edits/bed-rows.ts";
import type { Bed, Layout, Plan } from "../../core/model/plan.ts";
import { suggestedBed } from "./new-bed.ts";

/** Its x and y are those of the anchor of the first bed. */
export interface TypedRows extends BedRows {
  readonly anchor: BedAnchor;
}

interface LastRows {
  readonly rows: TypedRows;
  readonly planId: string;
  /** The bed made last: as long as it is the newest, the next block lies beside it. */
  readonly bedId: string;
}

let last: LastRows | null = null;

/** The sizes and paths of the rows made last in this window, a block further; else the usual ones. */
export function suggestedRows(plan: Plan, layout: Layout): TypedRows {
  const { code, widthM, lengthM, turnDeg, x, y } = suggestedBed(plan, layout);
  const anchor = last?.rows.anchor ?? "corner";
  const first = { widthM, lengthM, turnDeg, x, y };
  const usual: TypedRows = {
    count: 6,
    rows: 1,
    pathM: 0.5,
    rowPathM: 1,
    direction: "right",
    firstCode: code,
    scheme: "series",
    isThereAndBack: false,
    ...first,
    ...anchorOf(first, anchor),
    anchor,
  };
  if (!last || last.planId !== plan.id) return usual;
  const before = last.rows;
  const isNewest = layout.beds.at(-1)?.id === last.bedId;
  if (!isNewest) return { ...before, firstCode: code, x: usual.x, y: usual.y };
  const middle = blockBeside({ ...before, ...middleOf(before, before.anchor) });
  return { ...before, firstCode: code, ...anchorOf({ ...before, ...middle }, anchor) };
}

export function rememberRows(rows: TypedRows, planId: string, bedId: string): void {
  last = { rows, planId, bedId };
}

export function isOverMost({ count, rows }: BedRows): boolean {
  return count * rows > BED_ROWS_MOST;
}

/** None when they are more than are drawn at once. */
export function rowsDrawn(plan: Plan, layout: Layout, typed: TypedRows): readonly Bed[] {
  if (isOverMost(typed)) return [];
  return bedsInRows(plan, layout, { ...typed, ...middleOf(typed, typed.anchor) });
}

/** The same beds, their place given for another anchor. */
export function anchoredBy(typed: TypedRows, anchor: BedAnchor): TypedRows {
  const middle = middleOf(typed, typed.anchor);
  return { ...typed, anchor, ...anchorOf({ ...typed, ...middle }, anchor) };
}
