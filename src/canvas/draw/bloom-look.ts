/** How a stand looks on the day of the day cursor. */
import type { Stand } from "../../core/checks/stand.ts";
import type { DayNumber } from "../../core/model/day.ts";

/** `off`: no day is chosen; `open`: likely in flower; `perhaps`: possibly; `closed`: not, or unknown. */
export type BloomLook = "off" | "open" | "perhaps" | "closed";

export function bloomLook(stand: Stand | undefined, day: DayNumber | null): BloomLook {
  if (day === null) return "off";
  const bloom = stand?.shedsPollen ? stand.bloom : null;
  if (!bloom) return "closed";
  if (bloom.likely.first <= day && day <= bloom.likely.last) return "open";
  return bloom.outer.first <= day && day <= bloom.outer.last ? "perhaps" : "closed";
}
