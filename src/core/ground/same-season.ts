/** Plantings that stood on a piece of ground earlier in the same season. */
import type { Stand } from "../checks/stand.ts";
import { endOf } from "../calendar/ground-time.ts";
import { type DayNumber, civilFromDay } from "../model/day.ts";
import type { Planting } from "../model/plan.ts";
import type { EarlierGround } from "./earlier-grounds.ts";
import { rimOf } from "./shed-seed.ts";

interface Cleared {
  readonly stand: Stand;
  readonly end: DayNumber;
  readonly ground: EarlierGround;
}

/** For a planting, the ground of all that was cleared before it started. */
export function groundsOfThisSeason(
  stands: readonly Stand[],
): (stand: Stand) => readonly EarlierGround[] {
  const cleared = stands.flatMap((stand): readonly Cleared[] => {
    const end = stand.planting && endOf(stand.planting);
    if (!stand.planting || end === null) return [];
    return [{ stand, end, ground: groundOf(stand, stand.planting, end) }];
  });
  return (stand) => {
    const start = stand.planting?.start?.date;
    if (start === undefined || cleared.length === 0) return [];
    return cleared
      .filter((each) => each.stand !== stand && each.end <= start)
      .map(({ ground }) => ground);
  };
}

/** As an earlier crop of the year it was cleared in. */
function groundOf(
  { id, kind, outline, variety, ripe, shedsPollen }: Stand,
  planting: Planting,
  end: DayNumber,
): EarlierGround {
  const boreNone = !shedsPollen || (ripe !== null && end < ripe.earliest);
  const name = variety?.name ?? "";
  return {
    crop: {
      id,
      outline: planting.outline,
      kind: kind.id,
      year: civilFromDay(end).year,
      wentToSeed: boreNone ? "no" : planting.purpose === "seed" ? "yes" : "unknown",
      ...(name === "" ? {} : { varietyName: name }),
    },
    kind,
    outline,
    rimM: boreNone ? 0 : rimOf(kind),
  };
}
