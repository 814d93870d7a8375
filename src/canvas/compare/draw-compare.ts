/** One layout drawn by itself, and what differs from another marked on it: by line, sign and words. */
import type { CheckResult } from "../../core/checks/run-checks.ts";
import { type Difference, layoutDifferences } from "../../core/compare/layout-differences.ts";
import type { CropBook } from "../../core/kinds/crop-book.ts";
import { changeWords } from "../../core/compare/compare-words.ts";
import { shapeCentre, outlineOf } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { Layout, Plan } from "../../core/model/plan.ts";
import { type Brush, stroke, traceLine, traceOutline } from "../draw/brush.ts";
import { furnitureBoxes } from "../draw/draw-far-marks.ts";
import { drawItems, itemLabels } from "../draw/draw-items.ts";
import { drawRestingPairs } from "../draw/draw-pairs.ts";
import { drawSiteOutline } from "../draw/draw-surroundings.ts";
import { BOX, type Box, boxWidth, drawBox, drawWords, isFree } from "../draw/draw-text.ts";
import { restingPairSteps } from "../draw/pair-lines.ts";
import { type SheetItem, sheetItems } from "../scene/sheet-items.ts";
import { held, toPx, visibleBounds } from "../scene/viewport.ts";

const REACH_PX = 60;
/** An arrow ends so far before a middle, and its barbs are so long, pixels. */
const SHORT_PX = 14;
const BARB_PX = 10;
const NONE_LIVE: ReadonlySet<string> = new Set();

export interface ComparePane {
  readonly layout: Layout;
  readonly result: CheckResult;
  /** Layout whose differences are marked; null: none are. */
  readonly against: Layout | null;
}

/** The layout with its conflicts, then marks of what differs. */
export function drawPane(
  brush: Brush,
  plan: Plan,
  book: CropBook,
  { layout, result, against }: ComparePane,
  isOverlaid: boolean,
): void {
  if (plan.site.outline) drawSiteOutline(brush, outlineOf(plan.site.outline));
  const items = sheetItems(plan, layout, book);
  const seen = items.within(visibleBounds(brush.view, brush, REACH_PX));
  const look = { standById: result.standById, day: null };
  // The scale bar is drawn over all of it: no words go where it lies.
  const furniture = furnitureBoxes(brush);
  const labels = itemLabels(brush, seen, look, furniture);
  const words = [...labels.values()].map(({ label }) => label);
  const drawUnderCodes = function* () {
    const lines = yield* restingPairSteps(result, plan.units, NONE_LIVE, null);
    yield* drawRestingPairs(brush, lines, words);
  };
  drawItems(brush, seen, { ...look, labels, drawUnderCodes });
  if (against) {
    const before = sheetItems(plan, against, book).byId;
    const taken: Box[] = [...furniture, ...words.map(({ bounds }) => bounds)];
    for (const difference of layoutDifferences(against, layout)) {
      drawDifference(brush, plan, difference, {
        before:
          isOverlaid || !items.byId.has(difference.id)
            ? oldItem(before, against, difference)
            : undefined,
        after: items.byId.get(difference.id),
        taken,
      });
    }
  }
}

/** The object in the first layout, which may have had another id there. */
function oldItem(
  items: ReadonlyMap<string, SheetItem>,
  { beds, plantings }: Layout,
  { what, id, fromCode }: Difference,
): SheetItem | undefined {
  const list = what === "bed" ? beds : plantings;
  return items.get(id) ?? items.get(list.find(({ code }) => code === fromCode)?.id ?? "");
}

interface Marked {
  readonly before: SheetItem | undefined;
  readonly after: SheetItem | undefined;
  readonly taken: Box[];
}

function drawDifference(brush: Brush, plan: Plan, difference: Difference, marked: Marked): void {
  const { colours, view } = brush;
  const { before, after, taken } = marked;
  const isAdded = difference.changes.some(({ kind }) => kind === "added");
  if (before) {
    traceOutline(brush, before.outline);
    stroke(brush, { colour: colours.held, widthPx: 2, dash: [3, 4] });
  }
  if (after) {
    traceOutline(brush, after.outline);
    stroke(brush, { colour: colours.held, widthPx: isAdded ? 4 : 2.5 });
  }
  const shown = after ?? before;
  if (!shown) return;
  const middle = toPx(view, shapeCentre(shown.shape));
  if (before && after) drawMove(brush, toPx(view, shapeCentre(before.shape)), middle);
  const code = difference.toCode ?? difference.fromCode ?? "";
  const words = changeWords(difference, plan).join(", ");
  drawNote(brush, middle, after ? words : `${code} ${words}`, taken);
}

/** An arrow from where it lay towards where it lies, short of the code in its middle. */
function drawMove(brush: Brush, from: Point, to: Point): void {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length < SHORT_PX * 2) return;
  const [dx, dy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const tip = { x: to.x - dx * SHORT_PX, y: to.y - dy * SHORT_PX };
  const barb = (side: number) => ({
    x: tip.x - dx * BARB_PX + side * dy * BARB_PX * 0.5,
    y: tip.y - dy * BARB_PX - side * dx * BARB_PX * 0.5,
  });
  traceLine(brush, [from, tip]);
  stroke(brush, { colour: brush.colours.held, widthPx: 1.5 });
  traceLine(brush, [barb(1), tip, barb(-1)]);
  stroke(brush, { colour: brush.colours.held, widthPx: 2 });
}

/** Words below or above the place, where nothing else is said yet. */
function drawNote(brush: Brush, at: Point, text: string, taken: Box[]): void {
  const width = boxWidth(brush, "plain", text);
  const left = held(at.x - width / 2, 4, Math.max(4, brush.widthPx - width - 4));
  for (const offset of [14, -33, 34, -53, 54]) {
    const box = { left, top: at.y + offset, width, height: BOX.heightPx };
    if (!isFree(brush, box, taken)) continue;
    taken.push(box);
    drawBox(brush, box, brush.colours.held);
    drawWords(
      brush,
      { x: left + width / 2, y: box.top + BOX.heightPx / 2 },
      { text, face: "plain", colour: brush.colours.ink },
    );
    return;
  }
}
