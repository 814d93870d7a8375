import type { Point } from "../../core/geometry/point.ts";

/** A line something has snapped to, and what it is. */
export interface Guide {
  readonly from: Point;
  readonly to: Point;
  readonly label: string;
  /** Gaps that are equal now. */
  readonly gaps?: readonly (readonly [Point, Point])[];
}
