/** The decimal mark of the language the browser writes in. */
import type { DecimalMark } from "../../core/model/decimal-marks.ts";

/** As numbers of this browser's language are written. */
export function decimalMark(): DecimalMark {
  const parts = new Intl.NumberFormat().formatToParts(0.5);
  return parts.some(({ type, value }) => type === "decimal" && value === ",") ? "," : ".";
}
