/** A band of germination in words. */
import type { Rates } from "./normal.ts";

/** `70 to 92 %`, outwards to whole percents: never one lonely number. */
export function bandWords([least, most]: Rates): string {
  const low = Math.floor(least * 100 + 1e-9);
  const high = Math.ceil(most * 100 - 1e-9);
  return low === high ? `about ${low} %` : `${low} to ${high} %`;
}
