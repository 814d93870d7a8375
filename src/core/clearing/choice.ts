/**
 * What can be done with one planting, or with all plots of one variety, as a list of choices of
 * which one is taken; and which two choices do not go together, judged by the rule of the checks.
 */
import { isolationPair } from "../checks/isolation.ts";
import type { IsolationPair } from "../checks/isolation-pair.ts";
import { OVERLAP_TOLERANCE_M, standTogether } from "../checks/overlap.ts";
import { type Stand, resolveStands } from "../checks/stand.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { boundsGap } from "../geometry/bounds.ts";
import { overlapDepth } from "../geometry/containment.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import type { Planting } from "../model/plan.ts";
import type { Priced } from "./choice-search.ts";

export interface Choice extends Priced {
  /** What would stand then; none: nothing is grown. */
  readonly stands: readonly Stand[];
}

/** How two stands are to be apart. */
export interface ClashRule {
  readonly book: CropBook;
  /** Whether time and cover do not count, so that distance alone clears. */
  readonly isByDistanceAlone?: boolean;
  /** Whether a pair that cannot be told is let pass, as it is so already; left out: none is. */
  readonly isKnownUnsure?: (parent: string, source: string) => boolean;
  /** Whether a conflict is lived with. */
  readonly isAccepted?: (a: Stand, b: Stand) => boolean;
}

/** The stand a planting would be; undefined where its kind is not known. */
export function standOf(
  { plan, layout, book }: Pick<CheckedLayout, "plan" | "layout" | "book">,
  planting: Planting,
): Stand | undefined {
  return resolveStands(
    { ...plan, surroundings: [] },
    { ...layout, plantings: [planting] },
    book,
  )[0];
}

/** Whether two stands may not be so: they would cross, it cannot be told, or they share ground. */
export function doClash(a: Stand, b: Stand, rule: ClashRule): boolean {
  if (lieOnEachOther(a, b)) return true;
  if (a.kind.group !== b.kind.group || rule.isAccepted?.(a, b) === true) return false;
  return [isolationPair(a, b, rule.book), isolationPair(b, a, rule.book)].some(
    (pair) => pair !== null && isTrouble(pair, rule),
  );
}

function isTrouble(pair: IsolationPair, rule: ClashRule): boolean {
  const { standing, relation, seedParent, pollenSource } = pair;
  if (standing === "distance" || relation === "rarely") return false;
  if (standing === "unknown") return rule.isKnownUnsure?.(seedParent, pollenSource) !== true;
  return standing === "conflict" || rule.isByDistanceAlone === true;
}

/** Whether both take the same ground at the same time, as the check of overlaps counts it. */
export function lieOnEachOther(a: Stand, b: Stand): boolean {
  if (!a.planting || !b.planting || boundsGap(a.outline.bounds, b.outline.bounds) > 0) return false;
  if (!standTogether(a, b)) return false;
  return overlapDepth(a.outline, b.outline).distanceM > OVERLAP_TOLERANCE_M;
}

/** Whether any stand of one choice clashes with any of another. */
export function choicesClash(a: Choice, b: Choice, rule: ClashRule): boolean {
  return a.stands.some((one) => b.stands.some((other) => doClash(one, other, rule)));
}
