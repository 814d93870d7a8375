/** From a wanted first flower back to a start. */
import type { DayNumber } from "../model/day.ts";
import type { DayWindow } from "./bloom-window.ts";

/**
 * The start, within the days given, whose likely first flower lies nearest to a wanted day.
 * Later starts never flower earlier, so the days are halved, not tried one by one; a start whose
 * first flower is not known counts as too late.
 * @param flowerOf likely first flower of a start, or null
 */
export function startForFlower(
  wanted: DayNumber,
  within: DayWindow,
  flowerOf: (start: DayNumber) => DayNumber | null,
): DayNumber {
  const flower = (start: DayNumber) => flowerOf(start) ?? Infinity;
  let [low, high] = [within.first, within.last];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (flower(middle) >= wanted) high = middle;
    else low = middle + 1;
  }
  const before = low - 1;
  const isBeforeNearer = before >= within.first && wanted - flower(before) <= flower(low) - wanted;
  return isBeforeNearer ? before : low;
}
