/** Diseases marked on the ground: a broken line, and what was seen when in words. */
import { groundDisease } from "../../core/ground/ground-diseases.ts";
import { outlineOf } from "../../core/geometry/outline.ts";
import { civilFromDay } from "../../core/model/day.ts";
import type { GroundMark, Plan } from "../../core/model/plan.ts";
import { type Brush, stroke, traceOutline } from "../draw/brush.ts";
import type { GroundNamed } from "./ground-labels.ts";
import { isInView } from "./in-view.ts";

/** Draws the lines; answers with what is to be named. */
export function drawGroundMarks(brush: Brush, { groundMarks }: Plan): readonly GroundNamed[] {
  const named: GroundNamed[] = [];
  for (const mark of groundMarks) {
    const outline = outlineOf(mark.outline);
    if (!isInView(brush, outline)) continue;
    traceOutline(brush, outline);
    stroke(brush, { colour: brush.colours.caution, widthPx: 2, dash: [9, 3, 2, 3] });
    const texts = [markWords(mark)];
    named.push({ shape: mark.outline, outline, texts, stands: "beside its edge" });
  }
  return named;
}

/** `! white rot 2024`. */
function markWords({ disease, name, seenOn }: GroundMark): string {
  const words = groundDisease(disease)?.name ?? name ?? disease;
  return `! ${words} ${civilFromDay(seenOn).year}`;
}
