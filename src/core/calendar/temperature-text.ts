/** Temperatures as people write them. Degrees Celsius inside, to a hundredth. */
import { celsiusFromFahrenheit, fahrenheitFromCelsius } from "./degree-days.ts";

export type TemperatureUnit = "C" | "F";

const TEMPERATURE = /^([+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+))\s*(?:\u00B0\s*)?([CF])?$/i;
/** What thermometers have shown on earth, and some to spare; the plan file takes no more. */
const LIMITS_C = { least: -90, most: 70 } as const;

/**
 * Reads `46.8`, `3,5`, `-2 C` or `41°F` to degrees Celsius; null for anything else or beyond
 * -90 to 70 C. A unit written with the number goes before the one given.
 */
export function readTemperature(text: string, unit: TemperatureUnit): number | null {
  const match = TEMPERATURE.exec(
    text
      .normalize("NFKC")
      .replace(/[\u2212\u2013]/g, "-")
      .trim(),
  );
  if (!match) return null;
  const value = Number((match[1] ?? "").replace(",", "."));
  const isFahrenheit = (match[2]?.toUpperCase() ?? unit) === "F";
  const celsius = hundredths(isFahrenheit ? celsiusFromFahrenheit(value) : value);
  return celsius >= LIMITS_C.least && celsius <= LIMITS_C.most ? celsius : null;
}

/** A temperature in a unit, to a tenth, without the unit. */
export function temperatureText(celsius: number, unit: TemperatureUnit): string {
  const value = unit === "F" ? fahrenheitFromCelsius(celsius) : celsius;
  return String(Math.round(value * 10) / 10 + 0);
}

function hundredths(value: number): number {
  return Math.round(value * 100) / 100 + 0;
}
