/** Covers that keep pollen out of a kind and under which it still gives true seed. */
import type { Kind } from "../kinds/crop.ts";
import type { Cover } from "../model/plan.ts";
import { keepsPollenOut } from "../practice/pollen-cover.ts";
import { underCover } from "../practice/under-cover.ts";

/** In the order they are offered: flowers done by hand, which asks for no insects, before a cage. */
const COVERS = ["hand", "bags", "cage"] as const;

/** Covers of a kind, the usual first; see core/practice/under-cover.ts for who says so. */
export function coversFor(kind: Kind): readonly Exclude<Cover, "none">[] {
  return COVERS.filter((cover) => keepsPollenOut(cover, kind.carrier) && underCover(kind, cover));
}
