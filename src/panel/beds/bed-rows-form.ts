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
import { shiftOnSheet } from "../../core/geometry/turned-bounds.ts";
import { outlineOf } from "../../core/geometry/outline.ts";
import { spotOnPlot, suggestedBed } from "./new-bed.ts";

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

/** Beds of a first row, and the path between them, metres. No source; our choice. */
const USUAL_COUNT = 6;
const BED_PATH_M = 0.5;

/** The sizes and paths of the rows made last in this window, a block further; else the usual ones. */
export function suggestedRows(plan: Plan, layout: Layout): TypedRows {
  const { code, widthM, lengthM, turnDeg, x, y } = suggestedBed(plan, layout);
  const anchor = last?.rows.anchor ?? "corner";
  const block = blockOnPlot(plan, layout, widthM, lengthM);
  const first = { widthM, lengthM, turnDeg, x, y, ...block?.first };
  const usual: TypedRows = {
    count: block?.count ?? USUAL_COUNT,
    rows: 1,
    pathM: BED_PATH_M,
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

/** As many first beds as give the most ground on a plot that has an edge; null where it has none. */
function blockOnPlot({ site }: Plan, layout: Layout, widthM: number, mostM: number) {
  if (!site.outline || layout.beds.length > 0) return null;
  const plot = outlineOf(site.outline);
  const blocks = Array.from({ length: USUAL_COUNT }, (_, index) => {
    const count = USUAL_COUNT - index;
    const acrossM = count * widthM + (count - 1) * BED_PATH_M;
    const spot = spotOnPlot(plot, acrossM, mostM);
    if (!spot) return [];
    const { turnDeg, lengthM } = spot;
    // The middle of the block becomes that of its first bed, at its left end.
    const shift = shiftOnSheet((widthM - acrossM) / 2, 0, turnDeg);
    const micrometres = (metres: number) => Math.round(metres * 1e6) / 1e6;
    const at = { x: micrometres(spot.x + shift.x), y: micrometres(spot.y + shift.y) };
    return [{ count, first: { widthM, lengthM, turnDeg, ...at } }];
  }).flat();
  const groundOf = (block: (typeof blocks)[number]) => block.count * block.first.lengthM;
  return blocks.toSorted((a, b) => groundOf(b) - groundOf(a))[0] ?? null;
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
