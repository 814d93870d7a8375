/** What a known length makes of the picture under the drawing, and in words. */
import { pictureFactor } from "../../core/edits/picture-edits.ts";
import type { Point } from "../../core/geometry/point.ts";
import { type LengthUnit, formatLength, parseLength } from "../../core/model/length.ts";
import { MAX_COORDINATE_M } from "../../core/model/limits.ts";
import { decimalMark } from "../../store/window/decimal-mark.ts";
import type { Picture } from "../../core/model/plan.ts";
import * as words from "./dialog-words.ts";

type ScaleRead =
  | { readonly ok: true; readonly factor: number; readonly words: string }
  | { readonly ok: false; readonly reason: string };

/** What a typed length between two marks makes of the picture, in words too. */
export function scaleOf(
  text: string,
  units: LengthUnit,
  picture: Picture,
  from: Point,
  to: Point,
): ScaleRead {
  const length = parseLength(text, units, false, decimalMark());
  if (!length.ok) return length;
  const factor = pictureFactor([from, to], length.metres);
  if (factor === null) return { ok: false, reason: words.lengthNeeded };
  const across = picture.widthPx * picture.metresPerPixel * factor;
  if (across > MAX_COORDINATE_M) return { ok: false, reason: words.wouldBeTooWide };
  const times = factor >= 1 ? factor : 1 / factor;
  const said = factor >= 1 ? words.becomesLarger : words.becomesSmaller;
  return {
    ok: true,
    factor,
    words: said(Number(times.toPrecision(3)), formatLength(across, units)),
  };
}
