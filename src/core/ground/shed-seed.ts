/** How far shed seed lies from the plants that shed it. Known for rape alone. */
import type { Kind } from "../kinds/crop.ts";

/** Share of the shed seed that lies within r metres: 1 - exp(-SCALE r^SHAPE); rape-seed-shed. */
const SCALE = 1.3893;
const SHAPE = 2.08686;
/** The rim holds all but one seed in a thousand. Ours. */
const RIM_SHARE = 0.999;

/** Metres from the plants within which a share, 0 to 1, of the seed a crop of rape sheds lies. */
export function reachOf(share: number): number {
  return (-Math.log(1 - share) / SCALE) ** (1 / SHAPE);
}

const RAPE_RIM_M = reachOf(RIM_SHARE);

/** How far around its ground the seed of a kind counts, metres: rape's rim, else the ground alone. */
export function rimOf({ id }: Pick<Kind, "id">): number {
  return id === "oilseed-rape" ? RAPE_RIM_M : 0;
}
