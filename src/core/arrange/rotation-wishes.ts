/**
 * Ground that plantings would rather not lie on for what grew or was seen there before: seed
 * parents where volunteers may come up, anything where a disease that harms it is marked, and
 * anything where hosts of its diseases grew too few years ago.
 */
import type { Stand } from "../checks/stand.ts";
import type { Outline } from "../geometry/outline.ts";
import { earlierGrounds, liesOn, yearsSince } from "../ground/earlier-grounds.ts";
import { harmfulGrounds } from "../ground/ground-marks.ts";
import { hasRotationRows, hostGrounds } from "../ground/rotation.ts";
import { shunnedGrounds } from "../ground/volunteers.ts";
import type { Plan } from "../model/plan.ts";

/**
 * Years that ground rests from a family of plants whose kind no source names a disease for. Common
 * practice: three or four; no source.
 */
export const ROTATION_YEARS = 3;

/** Ground with what lies around it that counts as well, metres. */
interface Shunned {
  readonly outline: Outline;
  readonly rimM: number;
}

/** Ground of earlier years as one planting sees it. */
export interface RotationWishes {
  /** Something it can cross with grew there too few years ago, or none is known to be enough. */
  readonly volunteers: readonly Shunned[];
  /** A disease that harms it was seen there. */
  readonly marks: readonly Outline[];
  /**
   * Hosts of its diseases grew there too few years ago; where no source names any for its kind, its
   * family no more than ROTATION_YEARS ago. Grounds of `volunteers` are left out.
   */
  readonly kin: readonly Outline[];
}

export type Missed = Readonly<Record<keyof RotationWishes, 0 | 1>>;

type Ground = Pick<Plan, "earlierCrops" | "groundMarks">;

const NONE: RotationWishes = { volunteers: [], marks: [], kin: [] };

export function rotationWishes(
  stand: Stand,
  { earlierCrops, groundMarks }: Ground,
): RotationWishes {
  if (earlierCrops.length + groundMarks.length === 0) return NONE;
  const shunned = shunnedGrounds(stand, earlierCrops).map(({ ground }) => ground);
  const hosts = hasRotationRows(stand)
    ? hostGrounds(stand, earlierCrops).map(({ ground }) => ground)
    : familyGrounds(stand, earlierCrops);
  return {
    volunteers: shunned.map(({ outline, rimM }) => ({ outline, rimM })),
    marks: harmfulGrounds(stand, groundMarks).map(({ outline }) => outline),
    kin: hosts.filter((ground) => !shunned.includes(ground)).map(({ outline }) => outline),
  };
}

function familyGrounds({ kind, season, book }: Stand, crops: Plan["earlierCrops"]) {
  return earlierGrounds(crops, book).filter((ground) => {
    if (kind.family === "" || ground.kind.family !== kind.family) return false;
    const since = yearsSince(ground.crop, season);
    return since >= 0 && since <= ROTATION_YEARS;
  });
}

/** Which of the wishes an outline goes against: 1 or 0 of each. */
export function wishesMissed({ volunteers, marks, kin }: RotationWishes, outline: Outline): Missed {
  const isOn = (ground: Outline) => liesOn(outline, ground);
  return {
    volunteers: volunteers.some((each) => liesOn(outline, each.outline, each.rimM)) ? 1 : 0,
    marks: marks.some(isOn) ? 1 : 0,
    kin: kin.some(isOn) ? 1 : 0,
  };
}
