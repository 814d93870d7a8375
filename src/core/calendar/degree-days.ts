/**
 * Daily heat. A requirement in degree-days only means something with the method, base and cap
 * that produced it, so the three travel together as one scale. Temperatures are degrees Celsius
 * and degree-days are C-days inside (1 C-day = 1.8 F-days).
 *
 * Methods: simple average; modified average, both extremes clamped (the 86/50 F rule for maize:
 * McMaster & Wilhelm 1997, Agric. For. Meteorol. 87:291, method 2); single triangle and single
 * sine with horizontal cut-off (Zalom et al. 1983, UC Leaflet 21373), each as the area above the
 * base less the area above the cap.
 */

import type { HeatMethod } from "../model/plan.ts";

export interface HeatScale {
  readonly method: HeatMethod;
  /** Lower threshold, C. */
  readonly baseC: number;
  /** Upper threshold with horizontal cut-off, C; null: none. */
  readonly capC: number | null;
}

/** Degree-days (C-day) of one day. Minimum and maximum may come in either order. */
export function degreeDays(scale: HeatScale, minimumC: number, maximumC: number): number {
  const low = Math.min(minimumC, maximumC);
  const high = Math.max(minimumC, maximumC);
  const cap = scale.capC ?? Infinity;
  switch (scale.method) {
    case "simple average":
      return Math.max(0, Math.min((low + high) / 2, cap) - scale.baseC);
    case "modified average": {
      const clamped = (value: number) => Math.min(Math.max(value, scale.baseC), cap);
      return (clamped(low) + clamped(high)) / 2 - scale.baseC;
    }
    case "single triangle":
      return above(low, high, scale.baseC, triangleTop) - above(low, high, cap, triangleTop);
    case "single sine":
      return above(low, high, scale.baseC, sineTop) - above(low, high, cap, sineTop);
  }
}

type Top = (low: number, high: number, threshold: number) => number;

/** Mean excess over a threshold in one day whose course touches low and high. */
function above(low: number, high: number, threshold: number, top: Top): number {
  if (threshold >= high) return 0;
  if (threshold <= low) return (low + high) / 2 - threshold;
  return top(low, high, threshold);
}

const triangleTop: Top = (low, high, threshold) => (high - threshold) ** 2 / (2 * (high - low));

const sineTop: Top = (low, high, threshold) => {
  const mean = (low + high) / 2;
  const swing = (high - low) / 2;
  const angle = Math.asin((threshold - mean) / swing);
  return ((mean - threshold) * (Math.PI / 2 - angle) + swing * Math.cos(angle)) / Math.PI;
};

export function celsiusFromFahrenheit(fahrenheit: number): number {
  return (fahrenheit - 32) / 1.8;
}

export function fahrenheitFromCelsius(celsius: number): number {
  return celsius * 1.8 + 32;
}
