/**
 * Ground that plantings would rather not lie on for what grew there before: seed parents where
 * volunteers may come up, and anything where its family grew a short while ago.
 */
import { earlierGrounds, liesOn, shunnedGrounds, yearsSince } from "../checks/volunteers.ts";
import type { Stand } from "../checks/stand.ts";
import type { Outline } from "../geometry/outline.ts";
import type { Plan } from "../model/plan.ts";

/** Years that ground rests from a family of plants. Common practice: three or four; no source. */
export const ROTATION_YEARS = 3;

/** Ground of earlier crops as one planting sees it. */
export interface RotationWishes {
  /** Something it can cross with grew there too few years ago, or none is known to be enough. */
  readonly volunteers: readonly Outline[];
  /** Its family grew there no more than ROTATION_YEARS ago; grounds of `volunteers` left out. */
  readonly family: readonly Outline[];
}

const NONE: RotationWishes = { volunteers: [], family: [] };

export function rotationWishes(stand: Stand, crops: Plan["earlierCrops"]): RotationWishes {
  if (crops.length === 0) return NONE;
  const { family } = stand.kind;
  const shunned = shunnedGrounds(stand, crops, stand.book);
  const related = earlierGrounds(crops, stand.book).filter((ground) => {
    if (family === "" || ground.kind.family !== family || shunned.includes(ground)) return false;
    const since = yearsSince(ground.crop, stand.season);
    return since >= 0 && since <= ROTATION_YEARS;
  });
  return {
    volunteers: shunned.map(({ outline }) => outline),
    family: related.map(({ outline }) => outline),
  };
}

/** Which of the two wishes an outline goes against: 1 or 0 of each. */
export function wishesMissed(
  { volunteers, family }: RotationWishes,
  outline: Outline,
): { readonly volunteers: 0 | 1; readonly family: 0 | 1 } {
  return {
    volunteers: volunteers.some((ground) => liesOn(outline, ground)) ? 1 : 0,
    family: family.some((ground) => liesOn(outline, ground)) ? 1 : 0,
  };
}
