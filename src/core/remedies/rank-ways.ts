/** Which of the ways out a grower would take first: by what is left after each. */
import type { Remedy, WayCost } from "./remedy.ts";

/** Checks whose findings say that a layout cannot be planted as it lies. */
const SPOILT_GROUND: ReadonlySet<string> = new Set(["overlap", "outside"]);

/** What is not known weighs like two cautions. No source; our choice. */
const UNKNOWN_WEIGHT = 2;

/** A variety whose seed is given up is what the season was for: like two cautions. Our choice. */
const SEED_GIVEN_UP = 2;

/**
 * Best first: what brings an overlap or sticks out of its bed stands behind everything clean; then
 * the most conflicts cleared, the fewest cautions brought (seed given up counted among them), the
 * least work, the least ground moved.
 */
export function inOrderOfWorth<R extends Remedy>(remedies: readonly R[]): readonly R[] {
  return [...remedies].sort(
    (a, b) =>
      Number(spoilsGround(a)) - Number(spoilsGround(b)) ||
      a.conflictsAfter - b.conflictsAfter ||
      weightBrought(a) - weightBrought(b) ||
      a.cost.work - b.cost.work ||
      a.cost.groundM - b.cost.groundM ||
      a.cost.days - b.cost.days,
  );
}

/** Whether it leaves a planting on another one, or out of its bed. */
export function spoilsGround({ brings }: Pick<Remedy, "brings">): boolean {
  return brings.some(({ check }) => SPOILT_GROUND.has(check));
}

/** What a way leaves behind beside conflicts. */
export function weightBrought({ brings, cost }: Pick<Remedy, "brings" | "cost">): number {
  return brings.reduce(
    (sum, { severity }) => sum + (severity === "unknown" ? UNKNOWN_WEIGHT : 1),
    cost.seedOf === null ? 0 : SEED_GIVEN_UP,
  );
}

/** One number for whoever adds up the cost of many ways; metres, and work counted as metres. */
export function disturbance({ work, groundM, days, plantsLess }: WayCost): number {
  return work + groundM + days / 2 + plantsLess / 2;
}
