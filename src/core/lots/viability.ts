/**
 * The seed viability equation (Ellis and Roberts 1980, Annals of Botany 45:13-30):
 * v = Ki - p / sigma, log10 sigma = KE - CW log10 m - CH t - CQ t². v and Ki are probits of the
 * germination rate, p is days, m moisture in percent of the fresh weight, t degrees Celsius.
 */
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

/** Range the equation was fitted in; beyond it inputs are taken back to its edge, and said so. */
export const EQUATION_RANGE = { moisturePct: [5, 25], celsius: [-20, 90] } as const;
/** Above this moisture it is known not to hold (abstract of "Viability of Lettuce Seeds"). */
export const TOO_DAMP_PCT = 15;
