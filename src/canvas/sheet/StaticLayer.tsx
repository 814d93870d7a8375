import { useCallback, useMemo, useState } from "react";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import type { Brush } from "../draw/brush.ts";
import type { Plan } from "../../core/model/plan.ts";
import { drawFarMark } from "../draw/draw-far-marks.ts";
import { drawNorthArrow, drawScaleBar } from "../draw/draw-furniture.ts";
import { sheetGrid } from "../draw/draw-grid.ts";
import * as said from "../scene/mark-words.ts";
import { useGroundPainter } from "./use-ground-painter.ts";
import { useLargeDrawing } from "./use-large-drawing.ts";
import { useLiveIds } from "./live-ids.ts";
import { type Ground, drawUnder, wholeSteps, workOff } from "./resting-steps.ts";
import { SheetShape } from "./SheetShape.tsx";
import type { Colours } from "../draw/sheet-colours.ts";
import { useView } from "../scene/view-store.ts";
import {
  areLabelsAtHand,
  boxesOf,
  findLabels,
  isLarge,
  restingLabels,
  restingMarks,
} from "./sheet-labels.ts";

/**
 * Everything at rest: grid, site, surroundings, beds, plantings, scale bar and north arrow. Not
 * drawn again during a drag.
 */
export function StaticLayer({ colours }: { readonly colours: Colours }) {
  const plan = usePlanStore((state) => state.plan);
  const layoutId = usePlanStore((state) => state.layoutId);
  const book = usePlanStore((state) => state.book);
  const day = useWindowStore((state) => state.day);
  const year = useWindowStore((state) => state.year);
  // Read as grown, lines, covers and open flowers are others.
  const reading = usePlanStore((state) => state.reading);
  const painter = useGroundPainter();
  const opened = useWindowStore((state) => state.openFinding);
  const hidden = useWindowStore((state) => state.hidden);
  const live = useLiveIds();
  const isMoving = useView((state) => state.isMoving);
  const [turn, setTurn] = useState(0);
  const goOn = useCallback(() => setTurn((before) => before + 1), []);
  const layout = layoutOf(plan, layoutId);
  const large = useLargeDrawing(isLarge(layout), goOn);
  const ground = useMemo(
    () => ({ plan, layout, book, day, year, painter, reading, live, opened, hidden }),
    [plan, layout, book, day, year, painter, reading, live, opened, hidden],
  );
  // Another function draws the layer again, as when there is more of a large sheet to show.
  const draw = useMemo(() => {
    const shown = { turn, large };
    return (brush: Brush) => drawStatic(brush, shown.large, ground, isMoving);
  }, [turn, large, ground, isMoving]);
  return <SheetShape colours={colours} draw={draw} />;
}

function drawStatic(
  brush: Brush,
  large: ReturnType<typeof useLargeDrawing>,
  ground: Ground,
  isMoving: boolean,
): void {
  const { result } = usePlanStore.getState();
  const drawn = { ...ground, result, isMoving };
  if (large === "coming") {
    drawUnder(brush, drawn);
    drawFurniture(brush, ground.plan);
    return;
  }
  let isReady = areLabelsAtHand(brush, drawn);
  let isCrisp = true;
  if (large) isCrisp = large.draw(brush, ground, drawn, isReady);
  else {
    if (!isReady) findLabels(brush, drawn);
    isReady = true;
    workOff(wholeSteps(brush, drawn));
  }
  const words = isCrisp ? boxesOf(restingLabels(brush, drawn)) : [];
  for (const mark of restingMarks(brush, drawn, words)) drawFarMark(brush, mark);
  drawFurniture(brush, ground.plan);
  tellDrawn(brush, isCrisp, isCrisp && isReady);
}

function drawFurniture(brush: Brush, { units, site }: Plan): void {
  const { spacing } = sheetGrid(brush.view.scale, units);
  drawScaleBar(brush, units, said.gridSpacing(spacing, units));
  drawNorthArrow(brush, site.upBearingDeg);
}

/** Says on the canvas for which view everything is drawn, and drawn with all words; nothing while a picture stands in. */
function tellDrawn({ context, view }: Brush, isDrawn: boolean, isCrisp: boolean): void {
  const { dataset } = context.canvas;
  if (isDrawn) dataset["drawnAt"] = JSON.stringify(view);
  else delete dataset["drawnAt"];
  if (isCrisp) dataset["crispAt"] = JSON.stringify(view);
  else delete dataset["crispAt"];
}
