/** Where the walker stands on the sheet. */
import { useMemo } from "react";
import { localFrame } from "../../core/geometry/local-frame.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { Site } from "../../core/model/plan.ts";
import { type Fix, usePosition } from "../../store/window/position.ts";

export interface PlaceOnSheet {
  readonly at: Point;
  readonly accuracyM: number;
}

/** Null while it is not known, or where the sheet lies nowhere on the earth. */
export function usePlaceOnSheet(site: Site): PlaceOnSheet | null {
  const fix = usePosition((state) => state.fix);
  return useMemo(() => placeOnSheet(site, fix), [site, fix]);
}

export function placeOnSheet(site: Site, fix: Fix | null): PlaceOnSheet | null {
  if (!site.position || !fix) return null;
  const frame = localFrame(site.position, site.upBearingDeg);
  return { at: frame.toSheet(fix.place), accuracyM: fix.accuracyM };
}
