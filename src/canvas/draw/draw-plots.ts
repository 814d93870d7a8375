/** Beds and plantings. Code first, hatch second, outline third, colour last. */
import type { Point } from "../../core/geometry/point.ts";
import type { Cover } from "../../core/model/plan.ts";
import type { BloomLook } from "./bloom-look.ts";
import type { LabelBox } from "../../core/page/label-box.ts";
import {
  type Brush,
  faded,
  fill,
  stroke,
  traceCircle,
  traceLine,
  traceOutline,
  turned,
} from "./brush.ts";
import { SIGN_PX, drawCoverSign, drawFlowerSign } from "./draw-signs.ts";
import { drawBox, drawWords, wordsWidth } from "./draw-text.ts";
import { hasPattern, hatchPattern, hatchTint } from "./hatch-pattern.ts";
import type { LabelSet, SheetLabel } from "./label-plan.ts";
import type { BedItem, PlantingItem, SheetItem } from "../scene/sheet-items.ts";
import { toPx } from "../scene/viewport.ts";

/** Hatch of what does not flower on the chosen day; its edge and code stay fit to be read. */
export const CLOSED_ALPHA = 0.32;
const NOT_SEED_ALPHA = 0.5;

export function drawBed(brush: Brush, item: BedItem): void {
  traceOutline(brush, item.outline);
  fill(brush, brush.colours.bed);
  stroke(brush, { colour: brush.colours.ink, widthPx: 1 });
}

/** The bed's code where it was found room for. */
export function drawBedCode(brush: Brush, { bed }: BedItem, { label, set }: SheetLabel): void {
  lettered(brush, label, set.scale, () =>
    drawWords(
      brush,
      { x: 0, y: 0 },
      { text: bed.code, face: "code", colour: brush.colours.inkSoft, hasHalo: true },
    ),
  );
}

/** Draws words about the middle of their box, along it and at their size. */
export function lettered(
  brush: Brush,
  { centre, turnDeg }: LabelBox,
  scale: number,
  draw: () => void,
): void {
  turned(brush, centre, (turnDeg * Math.PI) / 180, () => {
    brush.context.scale(scale, scale);
    draw();
  });
}

/** From the ground to words that stand beside it. */
export function drawLeader(brush: Brush, { leader }: SheetLabel): void {
  if (!leader) return;
  const { colours, context } = brush;
  traceLine(brush, leader);
  stroke(brush, { colour: colours.sheet, widthPx: 3 });
  traceLine(brush, leader);
  stroke(brush, { colour: colours.ink, widthPx: 1 });
  traceCircle(brush, leader[0], 2);
  context.fillStyle = colours.ink;
  context.fill();
}

/** Ground shorter than this shows its tint alone: a hatch could not be told from another. */
const HATCHED_FROM_PX = 7;

function longPx({ view }: Brush, { outline: { bounds } }: SheetItem): number {
  return Math.max(bounds.maxX - bounds.minX, bounds.maxY - bounds.minY) * view.scale;
}

export function hatchFill(brush: Brush, item: SheetItem): string | CanvasPattern {
  if (!item.hatch) return brush.colours.bed;
  if (longPx(brush, item) < HATCHED_FROM_PX) return hatchTint(item.hatch, brush.colours);
  return hatchPattern(brush.context, item.hatch, brush.colours, brush.view, brush.ratio);
}

/** Whether a tile has to be made for its hatch first. */
export function needsTile(brush: Brush, item: SheetItem): boolean {
  if (!item.hatch || longPx(brush, item) < HATCHED_FROM_PX) return false;
  return !hasPattern(item.hatch, brush.colours, brush.ratio);
}

/** What is not on the ground on the chosen day: where it stands on another. */
export function drawAbsent(brush: Brush, item: SheetItem): void {
  traceOutline(brush, item.outline);
  stroke(brush, { colour: brush.colours.inkSoft, widthPx: 1, dash: [1.5, 4] });
}

/** How a planting looks: in flower or not on the day chosen, and under which cover. */
export interface PlantingLook {
  readonly bloom: BloomLook;
  /** As planned; where the plan is read as grown, the one that stands. */
  readonly cover: Cover;
}

/** @param sector corners of the part of its ground its hatch is on; null: all of it */
export function drawPlanting(
  brush: Brush,
  item: PlantingItem,
  { bloom: look, cover }: PlantingLook,
  sector: readonly Point[] | null = null,
): void {
  const { colours, context } = brush;
  const isSeed = item.planting.purpose === "seed";
  const alpha = (look === "closed" ? CLOSED_ALPHA : 1) * (isSeed ? 1 : NOT_SEED_ALPHA);
  if (sector) {
    context.save();
    const places = sector.map((corner) => toPx(brush.view, corner));
    traceLine(brush, places);
    context.clip();
    stroke(brush, { colour: colours.inkSoft, widthPx: 1.5 });
  }
  traceOutline(brush, item.outline);
  const fillGround = () => fill(brush, hatchFill(brush, item));
  // Of thousands each state of the pen put away and taken up again is felt.
  if (alpha === 1) fillGround();
  else faded(brush, alpha, fillGround);
  if (sector) {
    context.restore();
    traceOutline(brush, item.outline);
  }
  if (cover !== "none") drawNet(brush, item);
  if (look === "open" || look === "perhaps") drawOpenEdge(brush, item, look);
  const ink = look === "closed" ? colours.inkSoft : colours.ink;
  stroke(
    brush,
    isSeed
      ? { colour: ink, widthPx: look === "closed" ? 1 : 1.5 }
      : { colour: colours.inkSoft, widthPx: 1.25, dash: [4, 3] },
  );
}

/** A second line inside the outline: something stands over the planting. */
function drawNet(brush: Brush, item: PlantingItem): void {
  const { context, colours } = brush;
  context.save();
  context.clip("evenodd");
  stroke(brush, { colour: colours.ink, widthPx: 8 });
  stroke(brush, { colour: colours.sheet, widthPx: 6 });
  context.restore();
  traceOutline(brush, item.outline);
}

/** In flower: a heavy double edge; perhaps in flower: broken. */
function drawOpenEdge(brush: Brush, item: PlantingItem, look: "open" | "perhaps"): void {
  const { colours } = brush;
  const dash = look === "open" ? undefined : [7, 5];
  stroke(brush, { colour: colours.ink, widthPx: 7, ...(dash ? { dash } : {}) });
  stroke(brush, { colour: colours.sheet, widthPx: 3.5 });
  traceOutline(brush, item.outline);
}

/** Room a planting's code and its signs for cover and open flowers take at full size, pixels. */
export function codeWidth(
  brush: Brush,
  { planting }: PlantingItem,
  { bloom, cover }: PlantingLook,
): number {
  const isOpen = bloom === "open" || bloom === "perhaps";
  const signs = (cover === "none" ? 0 : 1) + (isOpen ? 1 : 0);
  return wordsWidth(brush, "code", planting.code) + signs * SIGN_PX;
}

/** The code that stands on the stake, in a box of paper, with signs for cover and open flowers. */
export function drawPlantingCode(
  brush: Brush,
  item: PlantingItem,
  look: PlantingLook,
  { label, set }: SheetLabel,
): void {
  lettered(brush, label, set.scale, () =>
    drawCodeBox(brush, item, set, label.width / set.scale, look),
  );
}

function drawCodeBox(
  brush: Brush,
  { planting }: PlantingItem,
  { heightPx, sidePx }: LabelSet,
  width: number,
  { bloom: look, cover }: PlantingLook,
): void {
  const { colours } = brush;
  const isSoft = planting.purpose !== "seed" || look === "closed";
  const edge = isSoft ? colours.inkSoft : colours.ink;
  const box = { left: -width / 2, top: -heightPx / 2, width, height: heightPx };
  drawBox(brush, box, edge, 0.75);
  const start: Point = { x: box.left + sidePx, y: 0.5 };
  drawWords(brush, start, { text: planting.code, face: "code", colour: edge, align: "left" });
  let x = start.x + wordsWidth(brush, "code", planting.code) + SIGN_PX / 2 + 1;
  if (cover !== "none") {
    drawCoverSign(brush, { x, y: 0 }, cover);
    x += SIGN_PX;
  }
  if (look === "open" || look === "perhaps") drawFlowerSign(brush, { x, y: 0 });
}
