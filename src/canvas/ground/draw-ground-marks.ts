/** Diseases marked on the ground: a broken line, and what was seen when in words. */
import { groundDisease } from "../../core/ground/ground-diseases.ts";
import { outlineOf } from "../../core/geometry/outline.ts";
import { civilFromDay } from "../../core/model/day.ts";
import type { GroundMark, Plan } from "../../core/model/plan.ts";
import { visibleBounds } from "../scene/viewport.ts";
import { type Brush, stroke, traceOutline } from "../draw/brush.ts";
import { drawWords } from "../draw/draw-text.ts";
import { sideLabelPlace } from "../draw/label-place.ts";

/** Words stand so far beside the edge. */
const LABEL_GAP_PX = 9;

export function drawGroundMarks(brush: Brush, { groundMarks }: Plan): void {
  if (groundMarks.length === 0) return;
  const seen = visibleBounds(brush.view, brush, 0);
  const { caution } = brush.colours;
  for (const mark of groundMarks) {
    const outline = outlineOf(mark.outline);
    const { minX, minY, maxX, maxY } = outline.bounds;
    if (minX > seen.maxX || maxX < seen.minX || minY > seen.maxY || maxY < seen.minY) continue;
    traceOutline(brush, outline);
    stroke(brush, { colour: caution, widthPx: 2, dash: [9, 3, 2, 3] });
    const place = sideLabelPlace(outline, brush.view, LABEL_GAP_PX);
    const words = { text: markWords(mark), face: "note", colour: caution, hasHalo: true } as const;
    drawWords(brush, place.at, words, place.angle);
  }
}

/** `! white rot 2024`. */
function markWords({ disease, name, seenOn }: GroundMark): string {
  const words = groundDisease(disease)?.name ?? name ?? disease;
  return `! ${words} ${civilFromDay(seenOn).year}`;
}
