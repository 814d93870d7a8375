/** The seed viability equation solved for rate and days, as published values give them. */
import { normalBelow, probit } from "../../src/core/lots/normal.ts";

/** Germination after days at one moisture and temperature; fractions of 1. */
export function rateAfter(rate: number, days: number, sigma: number): number {
  return normalBelow(probit(rate) - days / sigma);
}

/** Days from one rate to a lower one. */
export function daysBetween(from: number, to: number, sigma: number): number {
  return (probit(from) - probit(to)) * sigma;
}
