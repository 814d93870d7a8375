/** Where layouts are drawn beside each other on a page, all at one ratio. */
import { type Bounds, boundsCentre, growBounds, joinBounds } from "../geometry/bounds.ts";
import type { Layout, Plan } from "../model/plan.ts";
import { groundMetres, standardRatios } from "../page/drawing-ratio.ts";
import { GRID_STRIP_MM, type PageFrame, pageFrame } from "../page/page-frame.ts";
import { drawnBounds } from "../map/page-plan.ts";
import { type Orientation, type PaperName, orientations } from "../page/paper.ts";
import type { Box } from "../page/scene.ts";

/** More than these on one page would be too small to read. */
export const MOST_ON_A_PAGE = 4;
/** Name and counts over a drawing, mm. */
export const CAPTION_MM = 10;
const GAP_MM = 4;
/** Clear paper around what is drawn, mm. */
const CLEARANCE_MM = 5;

export interface ComparePanes {
  readonly frame: PageFrame;
  readonly ratio: number;
  /** One for each drawing of a page, caption left out. */
  readonly boxes: readonly Box[];
  /** Ground that every drawing shows, sheet metres. */
  readonly window: Bounds;
}

/**
 * The arrangement, upright or across, with the finest standard ratio at which all ground of all
 * layouts goes into every drawing.
 * @param count drawings, of which at most MOST_ON_A_PAGE share a page
 */
export function comparePanes(
  plan: Plan,
  layouts: readonly Layout[],
  count: number,
  paper: PaperName,
): ComparePanes {
  const ground = joinBounds(layouts.map((layout) => drawnBounds(plan, layout))) as Bounds;
  const perPage = Math.min(MOST_ON_A_PAGE, Math.max(1, count));
  const choices = orientations.flatMap((orientation) => gridsOn(paper, orientation, perPage));
  const ratios = standardRatios(plan.units);
  const coarsest = ratios.at(-1) as number;
  const ratioOf = (box: Box) => ratios.find((ratio) => fits(ground, box, ratio)) ?? coarsest;
  const rated = choices.map((choice) => ({ ...choice, ratio: ratioOf(choice.boxes[0] as Box) }));
  const best = rated.reduce((kept, next) => (next.ratio < kept.ratio ? next : kept));
  const [first] = best.boxes as readonly [Box, ...Box[]];
  const centre = boundsCentre(ground);
  const halfWidth = groundMetres(first.width, best.ratio) / 2;
  const halfHeight = groundMetres(first.height, best.ratio) / 2;
  return {
    ...best,
    window: {
      minX: centre.x - halfWidth,
      maxX: centre.x + halfWidth,
      minY: centre.y - halfHeight,
      maxY: centre.y + halfHeight,
    },
  };
}

function fits(ground: Bounds, { width, height }: Box, ratio: number): boolean {
  const needed = growBounds(ground, groundMetres(CLEARANCE_MM, ratio));
  return (
    needed.maxX - needed.minX <= groundMetres(width, ratio) &&
    needed.maxY - needed.minY <= groundMetres(height, ratio)
  );
}

interface Grid {
  readonly frame: PageFrame;
  readonly boxes: readonly Box[];
}

/** Every way to put so many equal drawings into rows and columns of a page. */
function gridsOn(paper: PaperName, orientation: Orientation, count: number): readonly Grid[] {
  const frame = pageFrame(paper, orientation);
  const { left, top, width, height } = growBox(frame.drawing, GRID_STRIP_MM);
  return Array.from({ length: count }, (_, index): Grid => {
    const columns = index + 1;
    const rows = Math.ceil(count / columns);
    const each = {
      width: (width - GAP_MM * (columns - 1)) / columns,
      height: (height - GAP_MM * (rows - 1)) / rows - CAPTION_MM,
    };
    const boxes = Array.from({ length: count }, (__, place): Box => ({
      left: left + (place % columns) * (each.width + GAP_MM),
      top: top + Math.floor(place / columns) * (each.height + CAPTION_MM + GAP_MM) + CAPTION_MM,
      ...each,
    }));
    return { frame, boxes };
  });
}

function growBox({ left, top, width, height }: Box, by: number): Box {
  return { left: left - by, top: top - by, width: width + 2 * by, height: height + 2 * by };
}
