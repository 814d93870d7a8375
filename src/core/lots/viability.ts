/**
 * The seed viability equation (Ellis and Roberts 1980, Annals of Botany 45:13-30):
 * v = Ki - p / sigma, log10 sigma = KE - CW log10 m - CH t - CQ t². v and Ki are probits of the
 * germination rate, p is days, m moisture in percent of the fresh weight, t degrees Celsius.
 */
import { normalBelow, probit } from "./normal.ts";
import type { ViabilityConstants } from "./viability-sets.ts";

type Constants = Pick<ViabilityConstants, "ke" | "cw" | "ch" | "cq">;

/** Days in which the probit of germination falls by one. */
export function sigmaDays({ ke, cw, ch, cq }: Constants, moisturePct: number, celsius: number) {
  return 10 ** (ke - cw * Math.log10(moisturePct) - ch * celsius - cq * celsius * celsius);
}

/**
 * A rate seen as 0 or 1 in a test of so many seeds, moved inside by a quarter of a seed (Miller and
 * Tainter 1944), since its probit is not finite.
 */
export function insideRate(rate: number, seeds: number): number {
  return Math.min(Math.max(rate, 0.25 / seeds), (seeds - 0.25) / seeds);
}

/** Germination after days at one moisture and temperature; fractions of 1. */
export function rateAfter(rate: number, days: number, sigma: number): number {
  return normalBelow(probit(rate) - days / sigma);
}

/** Days from one rate to a lower one. */
export function daysBetween(from: number, to: number, sigma: number): number {
  return (probit(from) - probit(to)) * sigma;
}

/** Moisture, percent of fresh weight, at which sigma is so long at a temperature. */
export function moistureFor({ ke, cw, ch, cq }: Constants, sigma: number, celsius: number): number {
  return 10 ** ((ke - ch * celsius - cq * celsius * celsius - Math.log10(sigma)) / cw);
}

/** Temperature at which sigma is so long at a moisture; the greater root of the square. */
export function temperatureFor({ ke, cw, ch, cq }: Constants, sigma: number, moisturePct: number) {
  const rest = Math.log10(sigma) + cw * Math.log10(moisturePct) - ke;
  return (-ch + Math.sqrt(ch * ch - 4 * cq * rest)) / (2 * cq);
}

/** Probit lost over several places: the equation is linear in days, so the parts add up. */
export function probitLost(
  stays: readonly { readonly days: number; readonly sigma: number }[],
): number {
  return stays.reduce((sum, { days, sigma }) => sum + days / sigma, 0);
}

/** Range the equation was fitted in; beyond it inputs are taken back to its edge, and said so. */
export const EQUATION_RANGE = { moisturePct: [5, 25], celsius: [-20, 90] } as const;
/** Above this moisture it is known not to hold (abstract of "Viability of Lettuce Seeds"). */
export const TOO_DAMP_PCT = 15;
