import { useCallback, useState } from "react";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import type { Brush } from "../draw/brush.ts";
import { drawFarMark } from "../draw/draw-far-marks.ts";
import { drawGrid, sheetGrid } from "../draw/draw-grid.ts";
import { drawItems } from "../draw/draw-items.ts";
import { drawRestingPairs } from "../draw/draw-pairs.ts";
import { drawSiteOutline } from "../draw/draw-surroundings.ts";
import { groundPicture } from "../draw/ground-picture.ts";
import { useGroundPainter } from "./use-ground-painter.ts";
import { useLiveIds } from "./live-ids.ts";
import { restingPairs } from "../draw/pair-lines.ts";
import { SheetShape } from "./SheetShape.tsx";
import type { Colours } from "../draw/sheet-colours.ts";
import { outlineOf } from "../../core/geometry/outline.ts";
import { sheetItems } from "../scene/sheet-items.ts";
import { useView } from "../scene/view-store.ts";
import {
  type Resting,
  boxesOf,
  isLarge,
  lookOf,
  restingItems,
  restingLabels,
  restingMarks,
} from "./sheet-labels.ts";

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
  const isPictured = isMoving && isLarge(layout);
  const drawGround = useCallback(
    (brush: Brush) =>
      drawResting(brush, {
        plan,
        layout,
        book,
        day,
        year,
        painter,
        live,
        opened,
        hidden,
        isMoving: isMoving && !isPictured,
      }),
    [plan, layout, book, day, year, painter, live, opened, hidden, isMoving, isPictured],
  );
  const draw = useCallback(
    (brush: Brush) => {
      if (plan.site.outline) drawSiteOutline(brush, outlineOf(plan.site.outline));
      if (!hidden.has("grid")) {
        drawGrid(brush, sheetGrid(brush.view.scale, plan.units), plan.units);
      }
      if (isPictured) paintPicture(brush, drawGround, performance.now());
      else drawGround(brush);
      const { result } = usePlanStore.getState();
      const resting = { plan, layout, book, result, day, hidden, painter, isMoving };
      const words = isPictured ? [] : boxesOf(restingLabels(brush, resting));
      for (const mark of restingMarks(brush, resting, words)) drawFarMark(brush, mark);
    },
    [plan, layout, book, day, painter, isMoving, isPictured, paintPicture, drawGround, hidden],
  );
  return <SheetShape colours={colours} draw={draw} />;
}

interface Drawn extends Omit<Resting, "result"> {
  readonly year: number | null;
  readonly live: ReadonlySet<string>;
  readonly opened: string | null;
}

function drawResting(brush: Brush, drawn: Drawn): void {
  const { plan, layout, book, year, painter, live, opened, hidden } = drawn;
  const { result } = usePlanStore.getState();
  const resting = { ...drawn, result };
  const all = sheetItems(plan, layout, book);
  const items = restingItems(brush, resting).filter((item) => !live.has(item.id));
  const labels = restingLabels(brush, resting);
  const drawOnGround = () => {
    if (!hidden.has("earlier crops")) painter?.draw(brush, plan, book, all, year);
  };
  const drawUnderCodes = () => {
    if (hidden.has("conflict lines")) return;
    const lines = restingPairs(result, plan.units, live, opened);
    drawRestingPairs(brush, lines, boxesOf(labels));
  };
  drawItems(brush, items, { ...lookOf(resting), labels, drawOnGround, drawUnderCodes });
}
