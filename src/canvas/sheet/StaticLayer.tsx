import { useCallback, useMemo, useState } from "react";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import type { Brush } from "../draw/brush.ts";
import { drawFarMark, furnitureBoxes } from "../draw/draw-far-marks.ts";
import { drawGrid, sheetGrid } from "../draw/draw-grid.ts";
import { type ItemsDrawn, type Labels, drawItems } from "../draw/draw-items.ts";
import { drawRestingPairs } from "../draw/draw-pairs.ts";
import { drawSiteOutline } from "../draw/draw-surroundings.ts";
import { groundPicture } from "../draw/ground-picture.ts";
import { useGroundPainter } from "./use-ground-painter.ts";
import { useLiveIds } from "./live-ids.ts";
import { restingPairs } from "../draw/pair-lines.ts";
import { SheetShape } from "./SheetShape.tsx";
import type { Colours } from "../draw/sheet-colours.ts";
import { outlineOf } from "../../core/geometry/outline.ts";
import { isHidden } from "../scene/locks.ts";
import { useView } from "../scene/view-store.ts";
import {
  type Resting,
  areLabelsAtHand,
  boxesOf,
  dropLabels,
  isLarge,
  lookOf,
  prepareLabels,
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
  // Read as grown, lines, covers and open flowers are others.
  const reading = usePlanStore((state) => state.reading);
  const painter = useGroundPainter();
  const opened = useWindowStore((state) => state.openFinding);
  const hidden = useWindowStore((state) => state.hidden);
  const live = useLiveIds();
  const isMoving = useView((state) => state.isMoving);
  const [picture] = useState(groundPicture);
  const layout = layoutOf(plan, layoutId);
  const ground = useMemo(
    () => ({ plan, layout, book, day, year, painter, reading, live, opened, hidden }),
    [plan, layout, book, day, year, painter, reading, live, opened, hidden],
  );
  const draw = useCallback(
    (brush: Brush) => {
      const { result } = usePlanStore.getState();
      const resting = { ...ground, result, isMoving };
      if (plan.site.outline) drawSiteOutline(brush, outlineOf(plan.site.outline));
      if (!hidden.has("grid")) {
        drawGrid(brush, sheetGrid(brush.view.scale, plan.units), plan.units);
      }
      const isReady = areLabelsAtHand(brush, resting);
      if (isMoving) dropLabels();
      else if (!isReady) prepareLabels(brush, resting);
      const isPictured =
        isLarge(layout) && (isMoving || (!isReady && picture.shows(brush, ground)));
      if (isPictured) {
        picture.paint(brush, ground, (wide) => drawLightly(wide, resting), performance.now());
      } else {
        drawResting(brush, resting);
        if (isReady && isLarge(layout)) picture.keep(brush, ground);
      }
      const words = isPictured ? [] : boxesOf(restingLabels(brush, resting));
      for (const mark of restingMarks(brush, resting, words)) drawFarMark(brush, mark);
      tellCrisp(brush, !isPictured && isReady);
    },
    [plan, layout, ground, hidden, isMoving, picture],
  );
  return <SheetShape colours={colours} draw={draw} />;
}

interface Drawn extends Resting {
  readonly year: number | null;
  readonly live: ReadonlySet<string>;
  readonly opened: string | null;
}

function drawResting(brush: Brush, drawn: Drawn): void {
  const { plan, result, live, opened, hidden } = drawn;
  const labels = restingLabels(brush, drawn);
  const drawUnderCodes = () => {
    if (hidden.has("conflict lines")) return;
    const lines = restingPairs(result, plan.units, live, opened);
    drawRestingPairs(brush, lines, boxesOf(labels));
  };
  drawGrounds(brush, drawn, { labels, drawUnderCodes });
}

/** Says on the canvas for which view everything is drawn in full; nothing while a picture stands in. */
function tellCrisp({ context, view }: Brush, isCrisp: boolean): void {
  const { dataset } = context.canvas;
  if (isCrisp) dataset["crispAt"] = JSON.stringify(view);
  else delete dataset["crispAt"];
}

const NO_LABELS: Labels = new Map();

/** Without words and lines: most of the time goes into them. */
function drawLightly(brush: Brush, drawn: Drawn): void {
  drawGrounds(brush, drawn, { labels: NO_LABELS });
}

function drawGrounds(
  brush: Brush,
  drawn: Drawn,
  over: Pick<ItemsDrawn, "labels" | "drawUnderCodes">,
): void {
  const { plan, book, year, painter, live, hidden } = drawn;
  const all = restingItems(brush, drawn);
  const drawOnGround = () => {
    if (hidden.has("earlier crops")) return;
    const words = boxesOf(over.labels);
    const items = all.filter((item) => !isHidden(item, hidden));
    const above =
      over.labels === NO_LABELS ? null : { items, words, furniture: furnitureBoxes(brush) };
    painter?.draw(brush, { plan, book, year }, above);
  };
  const items = all.filter((item) => !live.has(item.id));
  drawItems(brush, items, { ...lookOf(drawn), ...over, drawOnGround });
}
