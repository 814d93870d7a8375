import { useCallback, useState } from "react";
import type { CropBook } from "../../core/kinds/crop-book.ts";
import type { DayNumber } from "../../core/model/day.ts";
import type { Layout, Plan } from "../../core/model/plan.ts";
import type { HideableKind } from "../../store/window/hideable-kinds.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import type { Brush } from "../draw/brush.ts";
import { drawFarMarks } from "../draw/draw-far-marks.ts";
import { drawGrid, sheetGrid } from "../draw/draw-grid.ts";
import { drawItems } from "../draw/draw-items.ts";
import { drawRestingPairs } from "../draw/draw-pairs.ts";
import { drawSiteOutline } from "../draw/draw-surroundings.ts";
import { groundBoxes } from "../draw/ground-boxes.ts";
import { groundPicture } from "../draw/ground-picture.ts";
import type { GroundPainter } from "../ground/ground-painter.ts";
import { useGroundPainter } from "./use-ground-painter.ts";
import { useLiveIds } from "./live-ids.ts";
import { restingPairs } from "../draw/pair-lines.ts";
import { SheetShape } from "./SheetShape.tsx";
import type { Colours } from "../draw/sheet-colours.ts";
import { outlineOf } from "../../core/geometry/outline.ts";
import { type PlantingItem, sheetItems } from "../scene/sheet-items.ts";
import { useView } from "../scene/view-store.ts";
import { visibleBounds } from "../scene/viewport.ts";

/** Codes and labels may reach out of what they belong to. */
const REACH_PX = 60;

/** With no more objects than these, drawing them is as quick as moving a picture of them. */
const FEW_OBJECTS = 250;

/** Everything at rest: grid, site, surroundings, beds, plantings. Not drawn again during a drag. */
export function StaticLayer({ colours }: { readonly colours: Colours }) {
  const plan = usePlanStore((state) => state.plan);
  const layoutId = usePlanStore((state) => state.layoutId);
  const book = usePlanStore((state) => state.book);
  const day = useWindowStore((state) => state.day);
  const year = useWindowStore((state) => state.year);
  const painter = useGroundPainter();
  const opened = useWindowStore((state) => state.openFinding);
  const hidden = useWindowStore((state) => state.hidden);
  const live = useLiveIds();
  const isMoving = useView((state) => state.isMoving);
  const [paintPicture] = useState(groundPicture);
  const layout = layoutOf(plan, layoutId);
  const drawGround = useCallback(
    (brush: Brush) =>
      drawResting(brush, { plan, layout, book, day, year, painter, live, opened, hidden }),
    [plan, layout, book, day, year, painter, live, opened, hidden],
  );
  const isPictured = isMoving && layout.plantings.length + layout.beds.length > FEW_OBJECTS;
  const draw = useCallback(
    (brush: Brush) => {
      if (plan.site.outline) drawSiteOutline(brush, outlineOf(plan.site.outline));
      if (!hidden.has("grid")) {
        drawGrid(brush, sheetGrid(brush.view.scale, plan.units), plan.units);
      }
      if (isPictured) paintPicture(brush, drawGround, performance.now());
      else drawGround(brush);
      if (hidden.has("surroundings")) return;
      drawFarMarks(brush, plan, layout, book, () =>
        groundBoxes(brush, sheetItems(plan, layout, book)),
      );
    },
    [plan, layout, book, isPictured, paintPicture, drawGround, hidden],
  );
  return <SheetShape colours={colours} draw={draw} />;
}

interface Resting {
  readonly plan: Plan;
  readonly layout: Layout;
  readonly book: CropBook;
  readonly day: DayNumber | null;
  readonly year: number | null;
  readonly painter: GroundPainter | null;
  readonly live: ReadonlySet<string>;
  readonly opened: string | null;
  readonly hidden: ReadonlySet<HideableKind>;
}

function drawResting(brush: Brush, resting: Resting): void {
  const { plan, layout, book, day, year, painter, live, opened, hidden } = resting;
  const all = sheetItems(plan, layout, book);
  const items = all
    .within(visibleBounds(brush.view, brush, REACH_PX))
    .filter((item) => !live.has(item.id));
  const { result } = usePlanStore.getState();
  const drawOnGround = () => {
    if (!hidden.has("earlier crops")) painter?.draw(brush, plan, book, all, year);
  };
  const sectorOf = ({ planting }: PlantingItem) =>
    painter?.sectorOf(layout.plantings, planting) ?? null;
  drawItems(brush, items, { standById: result.standById, day, hidden, sectorOf, drawOnGround });
  if (hidden.has("conflict lines")) return;
  drawRestingPairs(brush, restingPairs(result, plan.units, live, opened));
}
