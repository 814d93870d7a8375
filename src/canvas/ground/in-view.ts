/** Whether ground lies in the window at all. */
import type { Outline } from "../../core/geometry/outline.ts";
import type { Brush } from "../draw/brush.ts";
import { visibleBounds } from "../scene/viewport.ts";

export function isInView(brush: Brush, { bounds }: Outline): boolean {
  const seen = visibleBounds(brush.view, brush, 0);
  return (
    bounds.minX <= seen.maxX &&
    bounds.maxX >= seen.minX &&
    bounds.minY <= seen.maxY &&
    bounds.maxY >= seen.minY
  );
}
