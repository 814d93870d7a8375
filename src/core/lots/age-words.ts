/** How old a lot is, in words. */
import { civilFromDay } from "../model/day.ts";
import type { Lot } from "../model/plan.ts";
import { counted } from "../words/plurals.ts";

/** `2 years old`, `this year's`; null where no year is known. */
export function ageWords(lot: Lot, day: number): string {
  if (lot.harvestYear === undefined) {
    const came = lot.from?.on === undefined ? undefined : civilFromDay(lot.from.on).year;
    return came === undefined ? "age not known" : `came ${came}, age not known`;
  }
  const years = civilFromDay(day).year - lot.harvestYear;
  if (years <= 0) return `harvest ${lot.harvestYear}`;
  return `harvest ${lot.harvestYear}, ${counted(years, { one: "year", other: "years" })} old`;
}
