/**
 * How a layout is cut into map sheets. The ratio is never changed to make things fit: what does
 * not go on one sheet goes on several that overlap, numbered row by row, with an index on each.
 */
import { type Bounds, boundsCentre, growBounds, joinBounds } from "../geometry/bounds.ts";
import { outlineOf } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Layout, Plan } from "../model/plan.ts";
import { groundMetres, paperMm, standardRatios } from "../page/drawing-ratio.ts";
import { type PageFrame, pageFrame } from "../page/page-frame.ts";
import type { Orientation, PaperName } from "../page/paper.ts";
import { ownBounds } from "./own-ground.ts";

/** Neighbouring sheets repeat at least this much of the drawing, mm on paper. */
export const OVERLAP_MM = 15;
/** Clear paper kept around what is drawn, mm. */
const CLEARANCE_MM = 7;
/** Room that the line round something takes, mm. */
const LINE_MM = 1;
/** Room that the code of a planting wants at the smallest type, mm. */
const CODE_MM = { width: 8.5, height: 4 } as const;
/**
 * So many sheets a map is offered on at the most, so that codes go into the plots; of many plots
 * one for each so many. A garden of twenty plots is not pinned together from sixteen. Ours.
 */
const OFFERED = { sheets: 4, plotsOnEach: 8 } as const;
/** A map of more sheets than this is not made unasked: it is most likely a mistyped ratio. */
export const MAX_SHEETS = 200;
/** More than anybody prints, also when asked. */
export const MOST_SHEETS = 2000;

export interface MapSheet {
  /** Counted row by row from the top left; empty sheets keep theirs. */
  readonly number: number;
  readonly row: number;
  readonly column: number;
  /** Ground seen on the sheet, sheet metres. */
  readonly window: Bounds;
}

export interface SheetPlan {
  readonly frame: PageFrame;
  readonly ratio: number;
  readonly rows: number;
  readonly columns: number;
  /** Ground covered by all sheets together. */
  readonly whole: Bounds;
  /** Sheets with something of one's own on them; none when there would be more than may be. */
  readonly sheets: readonly MapSheet[];
}

/** Ground that must be on the map: beds and plantings, or whatever else there is. */
export function drawnBounds(plan: Plan, layout: Layout): Bounds {
  const ground = joinBounds(
    [...layout.beds, ...layout.plantings].map((item) => outlineOf(item.outline).bounds),
  );
  if (ground) return ground;
  if (plan.site.outline) return outlineOf(plan.site.outline).bounds;
  return (
    joinBounds(plan.surroundings.map((item) => outlineOf(item.outline).bounds)) ?? {
      minX: 0,
      minY: 0,
      maxX: 10,
      maxY: 10,
    }
  );
}

/**
 * The ratio offered first: the finest standard one at which the layout goes on one sheet. Where
 * the codes would not go into the plantings there, the coarsest at which they do, on several; where
 * that takes too many, the finest that does not, and codes stand beside their plots with a line.
 */
export function suggestRatio(
  plan: Plan,
  layout: Layout,
  paper: PaperName,
  orientation: Orientation,
): number {
  const onOne = oneSheetRatio(plan, layout, paper, orientation);
  const ratios = standardRatios(plan.units).filter((ratio) => ratio <= onOne);
  const readable = ratios.findLast((ratio) => isReadable(layout, ratio));
  if (readable === undefined || readable === onOne) return onOne;
  const most = Math.max(OFFERED.sheets, layout.plantings.length / OFFERED.plotsOnEach);
  const isFew = (ratio: number) => {
    const { length } = planSheets(plan, layout, { paper, orientation }, ratio).sheets;
    // None: more than may be made.
    return length > 0 && length <= most;
  };
  return ratios.find((ratio) => ratio >= readable && isFew(ratio)) ?? onOne;
}

/** How a map is offered first. */
export interface SuggestedSheets {
  readonly orientation: Orientation;
  readonly ratio: number;
}

/** The way the paper lies that takes fewest sheets at a legible ratio; then the finer ratio. */
export function suggestSheets(plan: Plan, layout: Layout, paper: PaperName): SuggestedSheets {
  const tried = (["landscape", "portrait"] as const).map((orientation) => {
    const ratio = suggestRatio(plan, layout, paper, orientation);
    const { sheets } = planSheets(plan, layout, { paper, orientation }, ratio);
    return { orientation, ratio, sheets: sheets.length };
  });
  const [lying, standing] = tried;
  if (!lying || !standing) throw new RangeError("No way to lay the paper");
  const isBetter =
    standing.sheets < lying.sheets ||
    (standing.sheets === lying.sheets && standing.ratio < lying.ratio);
  const { orientation, ratio } = isBetter ? standing : lying;
  return { orientation, ratio };
}

/** Whether codes go into all plantings but a tenth; those get leader lines. */
function isReadable({ plantings }: Layout, ratio: number): boolean {
  const small = plantings.filter(({ outline }) => {
    const { minX, minY, maxX, maxY } = outlineOf(outline).bounds;
    const sides =
      outline.shape === "rectangle"
        ? [outline.widthM, outline.lengthM]
        : [maxX - minX, maxY - minY];
    const [short = 0, long = 0] = sides.map((side) => paperMm(side, ratio)).sort((a, b) => a - b);
    return short < CODE_MM.height || long < CODE_MM.width;
  });
  return small.length * 10 <= plantings.length;
}

/** The finest standard ratio at which the layout goes on one sheet; the coarsest when none does. */
export function oneSheetRatio(
  plan: Plan,
  layout: Layout,
  paper: PaperName,
  orientation: Orientation,
): number {
  const ratios = standardRatios(plan.units);
  const { drawing } = pageFrame(paper, orientation);
  const ground = drawnBounds(plan, layout);
  const fits = (ratio: number) => {
    const needed = growBounds(ground, groundMetres(CLEARANCE_MM, ratio));
    return (
      needed.maxX - needed.minX <= groundMetres(drawing.width, ratio) &&
      needed.maxY - needed.minY <= groundMetres(drawing.height, ratio)
    );
  };
  return ratios.find(fits) ?? (ratios.at(-1) as number);
}

/** What a map is printed on. */
export interface SheetPaper {
  readonly paper: PaperName;
  readonly orientation: Orientation;
  /** Sheets it may take; absent: MAX_SHEETS. */
  readonly mostSheets?: number;
}

/**
 * Cuts a layout into sheets at a ratio.
 * @param stakes places that are shown as well where there is room to spare, sheet metres
 */
export function planSheets(
  plan: Plan,
  layout: Layout,
  { paper, orientation, mostSheets = MAX_SHEETS }: SheetPaper,
  ratio: number,
  stakes: readonly Point[] = [],
): SheetPlan {
  const frame = pageFrame(paper, orientation);
  const ground = growBounds(drawnBounds(plan, layout), groundMetres(CLEARANCE_MM, ratio));
  const width = groundMetres(frame.drawing.width, ratio);
  const height = groundMetres(frame.drawing.height, ratio);
  const overlap = groundMetres(OVERLAP_MM, ratio);
  const columns = countOf(ground.maxX - ground.minX, width, overlap);
  const rows = countOf(ground.maxY - ground.minY, height, overlap);
  const whole = aroundSurroundings(
    plan,
    ground,
    stakes.map(({ x, y }) =>
      growBounds({ minX: x, maxX: x, minY: y, maxY: y }, groundMetres(CLEARANCE_MM, ratio)),
    ),
    {
      width: columns * (width - overlap) + overlap,
      height: rows * (height - overlap) + overlap,
      line: groundMetres(LINE_MM, ratio),
    },
  );
  const own = ownBounds(plan, layout);
  const count = rows * columns;
  const all = Array.from({ length: count > mostSheets ? 0 : count }, (_, index) =>
    sheetAt({ frame, ratio, columns, whole }, index),
  );
  const isEmpty = ({ window }: MapSheet) => !own.some((bounds) => meets(bounds, window));
  const sheets = all.filter((sheet) => count === 1 || !isEmpty(sheet));
  return { frame, ratio, rows, columns, whole, sheets };
}

/** A sheet by its place in the grid, counted row by row from 0, whether it is printed or not. */
function sheetAt(
  { frame, ratio, columns, whole }: Pick<SheetPlan, "frame" | "ratio" | "columns" | "whole">,
  index: number,
): MapSheet {
  const [width, height] = [frame.drawing.width, frame.drawing.height].map((side) =>
    groundMetres(side, ratio),
  ) as [number, number];
  const overlap = groundMetres(OVERLAP_MM, ratio);
  const row = Math.floor(index / columns);
  const column = index % columns;
  const minX = whole.minX + column * (width - overlap);
  const maxY = whole.maxY - row * (height - overlap);
  const window = { minX, maxX: minX + width, minY: maxY - height, maxY };
  return { number: index + 1, row, column, window };
}

/** Sheets of the grid that are not printed: nothing of one's own is on them. */
export function leftOutSheets(plan: SheetPlan): readonly MapSheet[] {
  const printed = new Set(plan.sheets.map(({ number }) => number));
  return Array.from({ length: plan.rows * plan.columns }, (_, index) =>
    sheetAt(plan, index),
  ).filter(({ number }) => !printed.has(number));
}

/** Whether a place is on a sheet that is printed. */
export function isPrintedAt({ sheets }: Pick<SheetPlan, "sheets">, { x, y }: Point): boolean {
  return sheets.some(
    ({ window: { minX, maxX, minY, maxY } }) => x >= minX && x <= maxX && y >= minY && y <= maxY,
  );
}

function countOf(needed: number, shown: number, overlap: number): number {
  return Math.max(1, Math.ceil((needed - overlap) / (shown - overlap) - 1e-9));
}

/** Room of all sheets together, and for the line round something, metres on the ground. */
interface SheetRoom {
  readonly width: number;
  readonly height: number;
  readonly line: number;
}

/**
 * The ground the sheets cover, centred on what must be on them. Where there is room to spare it
 * shifts to take in surroundings as well, the nearest first.
 */
function aroundSurroundings(
  plan: Plan,
  ground: Bounds,
  first: readonly Bounds[],
  { width, height, line }: SheetRoom,
): Bounds {
  let held = ground;
  const fits = ({ minX, maxX, minY, maxY }: Bounds) =>
    maxX - minX <= width && maxY - minY <= height;
  const centre = boundsCentre(ground);
  const near = plan.surroundings
    .map((item) => outlineOf(item.outline).bounds)
    .map((bounds) => {
      const middle = boundsCentre(bounds);
      return { bounds, away: Math.hypot(middle.x - centre.x, middle.y - centre.y) };
    })
    .sort((a, b) => a.away - b.away);
  // With room for a name beside it; where there is none, at least whole.
  const clearance = Math.min(width, height) * 0.04;
  const wishes = [
    ...first.map((bounds) => [bounds]),
    ...near.map(({ bounds }) => [growBounds(bounds, clearance), growBounds(bounds, line)]),
    ...(plan.site.outline ? [[growBounds(outlineOf(plan.site.outline).bounds, line)]] : []),
  ];
  for (const wish of wishes) {
    const joined = wish.map((bounds) => joinBounds([held, bounds]) as Bounds);
    held = joined.find((each) => fits(each)) ?? held;
  }
  const middle = boundsCentre(held);
  return {
    minX: middle.x - width / 2,
    maxX: middle.x + width / 2,
    minY: middle.y - height / 2,
    maxY: middle.y + height / 2,
  };
}

/** Whether two upright boxes share ground. */
export function meets(a: Bounds, b: Bounds): boolean {
  return a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;
}
