import { useCallback } from "react";
import type { CropBook } from "../core/crops/crop-book.ts";
import type { DayNumber } from "../core/model/day.ts";
import type { Layout, Plan } from "../core/model/plan.ts";
import { layoutOf, usePlanStore } from "../store/plan-store.ts";
import type { Brush } from "./brush.ts";
import { contentCorner } from "./content-bounds.ts";
import { drawFarMarks } from "./draw-far-marks.ts";
import { drawGrid, sheetGrid } from "./draw-grid.ts";
import { drawItems } from "./draw-items.ts";
import { drawRestingPairs } from "./draw-pairs.ts";
import { drawSiteOutline } from "./draw-surroundings.ts";
import { groundBoxes } from "./ground-boxes.ts";
import { useLiveIds } from "./live-ids.ts";
import { restingPairs } from "./pair-lines.ts";
import { SheetShape } from "./SheetShape.tsx";
import type { Colours } from "./sheet-colours.ts";
import { outlineFor, sheetItems } from "./sheet-items.ts";
import { visibleBounds } from "./viewport.ts";

/** Codes and labels may reach out of what they belong to. */
const REACH_PX = 60;

/** Everything at rest: grid, site, surroundings, beds, plantings. Not drawn again during a drag. */
export function StaticLayer({ colours }: { readonly colours: Colours }) {
  const plan = usePlanStore((state) => state.plan);
  const layoutId = usePlanStore((state) => state.layoutId);
  const book = usePlanStore((state) => state.book);
  const day = usePlanStore((state) => state.day);
  const opened = usePlanStore((state) => state.openFinding);
  const live = useLiveIds();
  const draw = useCallback(
    (brush: Brush) =>
      drawResting(brush, { plan, layout: layoutOf(plan, layoutId), book, day, live, opened }),
    [plan, layoutId, book, day, live, opened],
  );
  return <SheetShape colours={colours} draw={draw} />;
}

interface Resting {
  readonly plan: Plan;
  readonly layout: Layout;
  readonly book: CropBook;
  readonly day: DayNumber | null;
  readonly live: ReadonlySet<string>;
  readonly opened: string | null;
}

function drawResting(brush: Brush, resting: Resting): void {
  const { plan, layout, book, day, live, opened } = resting;
  const grid = sheetGrid(brush.view.scale, plan.units);
  if (plan.site.outline) drawSiteOutline(brush, outlineFor(plan.site.outline));
  drawGrid(brush, grid, contentCorner(plan, layout));
  const all = sheetItems(plan, layout, book);
  const items = all
    .within(visibleBounds(brush.view, brush, REACH_PX))
    .filter((item) => !live.has(item.id));
  drawItems(brush, items, day);
  const { result } = usePlanStore.getState();
  drawFarMarks(brush, plan, layout, book, groundBoxes(brush, all));
  drawRestingPairs(brush, restingPairs(result, plan.units, live, opened));
}
