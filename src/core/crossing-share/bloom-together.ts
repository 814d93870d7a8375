/** How much of a source's pollen meets open flowers, as a range: bloom is never known to the day. */
import { type Bloom, overlapDays } from "../calendar/bloom-window.ts";
import type { Shares } from "./distance-bins.ts";

/**
 * Spread of tassels and silks of one stand of maize, days: 2 for a hybrid (shed by day, Angevin et
 * al. 2008, sd 2.05), 4.5 for an open-pollinated stand whose silks come over 18 days.
 */
const MAIZE_SD_DAYS: Shares = [2, 4.5];

/** Peaks farther apart than this were not measured: two weeks, the offset trials and handbooks use. */
const MOST_DAYS_APART = 14;

/**
 * Pollen met against flowering on the same day, lower and upper, by exp(-D^2 / 4 s^2) for two
 * normal bloom curves of spread s whose peaks lie D days apart. D runs over what the windows leave
 * open, s over what was measured. Never 0: late silks of a mixed stand are met by late tassels.
 * Null where the peaks lie more than two weeks apart whatever the windows leave open: how thin the
 * ends of bloom are there nobody measured.
 * @param receives bloom of the seed parent, or null when no date is known: then anything, 0 to 1
 */
export function maizeTogether(receives: Bloom | null, sheds: Bloom | null): Shares | null {
  if (!receives || !sheds) return [0, 1];
  const apart = Math.abs(peak(receives) - peak(sheds));
  const slack = (outerSlack(receives) + outerSlack(sheds)) / 2;
  if (apart - slack > MOST_DAYS_APART) return null;
  const [least, most] = MAIZE_SD_DAYS;
  return [met(apart + slack, least), met(Math.max(0, apart - slack), most)];
}

/**
 * For every other kind: the share of the seed parent's likely days on which the source likely
 * flowers, up to all of them while the outer windows meet. Null when even these do not meet.
 */
export function daysTogether(receives: Bloom | null, sheds: Bloom | null): Shares | null {
  if (!receives || !sheds) return [0, 1];
  if (overlapDays(receives.outer, sheds.outer) === 0) return null;
  const days = receives.likely.last - receives.likely.first + 1;
  return [overlapDays(receives.likely, sheds.likely) / days, 1];
}

function met(days: number, sd: number): number {
  return Math.exp(-(days * days) / (4 * sd * sd));
}

function peak({ likely }: Bloom): number {
  return (likely.first + likely.last) / 2;
}

/** Days by which first flower may shift either way. */
function outerSlack({ likely, outer }: Bloom): number {
  return Math.max(0, likely.first - outer.first, outer.last - likely.last);
}
