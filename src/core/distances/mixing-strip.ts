/** The strip that keeps plants and harvest of two plantings apart where pollen asks for none. */
import type { IsolationFigure } from "../kinds/crop.ts";
import { METRES_PER_FOOT } from "../model/length.ts";

/** The law names no number; one State reads its 0 ft as 10 ft, for cowpea. */
export const MIXING_STRIP = { metres: 10 * METRES_PER_FOOT, source: "oklahoma-cowpea" } as const;

/** What the source of a published 0 says of nearness, in its own words where it has any. */
export function stripWordsOf(figure: IsolationFigure): string {
  return /^0 (ft|m)$/.test(figure.published)
    ? "0 means enough space to prevent mechanical mixing, not touching"
    : figure.published;
}
