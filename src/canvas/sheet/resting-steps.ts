/** Everything at rest, drawn at once or in steps. */
import { outlineOf } from "../../core/geometry/outline.ts";
import type { Brush } from "../draw/brush.ts";
import { furnitureBoxes } from "../draw/draw-far-marks.ts";
import { drawGrid, sheetGrid } from "../draw/draw-grid.ts";
import { type ItemsDrawn, type Labels, drawItemSteps } from "../draw/draw-items.ts";
import { drawRestingPairs } from "../draw/draw-pairs.ts";
import { drawSiteOutline } from "../draw/draw-surroundings.ts";
import type { Box } from "../draw/draw-text.ts";
import { restingPairSteps } from "../draw/pair-lines.ts";
import { isHidden } from "../scene/locks.ts";
import type { SheetItem } from "../scene/sheet-items.ts";
import { type Resting, boxesOf, lookOf, restingItems, restingLabels } from "./sheet-labels.ts";

/** What a drawing of it depends on, beside the view. */
export type Ground = Omit<Drawn, "result" | "isMoving">;

export interface Drawn extends Resting {
  readonly year: number | null;
  readonly live: ReadonlySet<string>;
  readonly opened: string | null;
}

/** Works steps off at once. */
export function workOff(steps: Iterator<undefined, void>): void {
  while (steps.next().done !== true);
}

/** Everything at rest, in steps. */
export function* wholeSteps(brush: Brush, drawn: Drawn): Generator<undefined, void> {
  drawUnder(brush, drawn);
  yield;
  yield* restingSteps(brush, drawn, restingItems(brush, drawn));
}

/** What lies under everything: the grid and the edge of the site. */
export function drawUnder(brush: Brush, { plan, hidden }: Drawn): void {
  if (plan.site.outline) drawSiteOutline(brush, outlineOf(plan.site.outline));
  if (!hidden.has("grid")) drawGrid(brush, sheetGrid(brush.view.scale, plan.units), plan.units);
}

/** @param within where alone it shows, pixels; left out: on the whole drawing */
export function* restingSteps(
  brush: Brush,
  drawn: Drawn,
  items: readonly SheetItem[],
  within?: Box,
): Generator<undefined, void> {
  const { plan, result, live, opened, hidden } = drawn;
  const labels = restingLabels(brush, drawn);
  const drawUnderCodes = function* () {
    if (hidden.has("conflict lines")) return;
    const lines = yield* restingPairSteps(result, plan.units, live, opened);
    yield;
    yield* drawRestingPairs(brush, lines, boxesOf(labels), within);
  };
  yield* groundSteps(brush, drawn, items, { labels, drawUnderCodes });
}

/**
 * Grounds, with what else is to be drawn over them.
 * @param over without lines there is only the ground
 */
export function groundSteps(
  brush: Brush,
  drawn: Drawn,
  all: readonly SheetItem[],
  over: Pick<ItemsDrawn, "labels" | "drawUnderCodes">,
): Generator<undefined, void> {
  const { plan, book, year, painter, live, hidden } = drawn;
  const drawOnGround = () => {
    if (!painter || hidden.has("earlier crops")) return;
    const above = over.drawUnderCodes ? aboveGround(brush, drawn, over.labels) : null;
    painter.draw(brush, { plan, book, year }, above);
  };
  const items = all.filter((item) => !live.has(item.id));
  return drawItemSteps(brush, items, { ...lookOf(drawn), ...over, drawOnGround });
}

/** What words on the ground keep clear of. */
function aboveGround(brush: Brush, drawn: Drawn, labels: Labels) {
  const items = restingItems(brush, drawn).filter((item) => !isHidden(item, drawn.hidden));
  return { items, words: boxesOf(labels), furniture: furnitureBoxes(brush) };
}
