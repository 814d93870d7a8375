/** Heat to first flower as people type it. C-days inside; F-days where degrees Fahrenheit are chosen. */
import type { HeatToFlower, Range } from "../../core/kinds/crop.ts";
import { type TemperatureUnit, temperatureText } from "../../core/calendar/temperature-text.ts";
import * as words from "./words.ts";

/** F-days in a C-day. */
const F_DAYS = 1.8;

export type ReadHeat =
  | { readonly ok: true; readonly value: Range }
  | { readonly ok: false; readonly reason: string };

const SUM = /^(\d{1,5}(?:[.,]\d+)?)(?:\s*(?:-|\u2013|to)\s*(\d{1,5}(?:[.,]\d+)?))?$/;

/** Reads `1200-1315` or `730` degree-days of a unit to C-days. */
export function readHeatSum(text: string, unit: TemperatureUnit): ReadHeat {
  const match = SUM.exec(text.normalize("NFKC").trim());
  if (!match) return { ok: false, reason: words.typeDegreeDays };
  const sums = [match[1], match[2] ?? match[1]].map((part) => {
    const sum = Number((part ?? "").replace(",", "."));
    return unit === "F" ? sum / F_DAYS : sum;
  });
  const [least = 0, most = 0] = sums;
  if (least <= 0 || most > 10_000) return { ok: false, reason: words.degreeDaysBounds };
  return least <= most
    ? { ok: true, value: [least, most] }
    : { ok: false, reason: words.smallerFirst };
}

export function heatSumText([least, most]: Range, unit: TemperatureUnit): string {
  const shown = [least, most].map((sum) => Math.round(unit === "F" ? sum * F_DAYS : sum));
  return shown[0] === shown[1] ? String(shown[0]) : shown.join("-");
}

/** `699-777 C-days, modified average, base 10 °C, cap 30 °C`. */
export function heatWords(heat: HeatToFlower, unit: TemperatureUnit): string {
  return words.heatWords({
    sum: heatSumText(heat.cDays, unit),
    unit,
    method: words.heatMethods[heat.method],
    base: temperatureText(heat.baseC, unit),
    cap: heat.capC === null ? null : temperatureText(heat.capC, unit),
  });
}
