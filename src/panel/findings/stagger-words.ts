/** Sowing dates that clear a pair, in words. */
import type { StaggerOffer } from "../../core/remedies/stagger.ts";
import { days } from "../../core/checks/day-words.ts";
import { shortDate } from "../../core/model/day.ts";
import { formOf } from "../../core/words/plurals.ts";

/** `Sow B02-1 23 days later, on 28 May`. */
export function offerTitle(offer: StaggerOffer, code: string, isSown: boolean): string {
  const way = offer.startShift < 0 ? "earlier" : "later";
  const verb = isSown ? "Sow" : "Set out";
  return `${verb} ${code} ${days(Math.abs(offer.startShift))} ${way}, on ${shortDate(offer.start)}`;
}

/** What the date gains and costs, sentence by sentence. */
export function offerNotes(offer: StaggerOffer): readonly string[] {
  const { gapDays, guardDays, frost, conflictsAfter, isBounded } = offer;
  return [
    shrinkWords(offer),
    `Then ${days(gapDays)} lie between the two blooms, ${guardDays} wanted${gapDays === guardDays ? ": no slack" : ""}.`,
    ...(frost === "before last frost"
      ? ["That is before the last spring frost given, which this kind stands when young."]
      : []),
    ...(frost === "seed after first frost"
      ? ["Its last seed may come after the first autumn frost."]
      : []),
    ...(isBounded ? [] : ["Frost dates are missing, so no more than three weeks are offered."]),
    conflictsAfter === 0
      ? "No conflict is left."
      : `${formOf(conflictsAfter, { one: "1 conflict is", other: `${conflictsAfter} conflicts are` })} left.`,
  ];
}

/** How days of sowing become days of bloom. */
function shrinkWords({ startShift, bloomShift, counted }: StaggerOffer): string {
  const [sowing, bloom] = [Math.abs(startShift), Math.abs(bloomShift)];
  if (counted === "days") return `Counted in days, bloom moves as far: ${days(bloom)}.`;
  const share = Math.round((bloom / sowing) * 100);
  return `${days(sowing)} of sowing become ${days(bloom)} of bloom (${share} %), counted in heat.`;
}

/** What holds for all dates offered. */
export function offersNote(offers: readonly StaggerOffer[]): string {
  const isInDays = offers.some((offer) => offer.counted === "days");
  return isInDays
    ? "Apart in time alone: a late spring can undo it. Bloom moves less than sowing does: maize sown in May 14 days later silks about 9 days later. Leave more days than these."
    : "Apart in time alone: a late spring can undo it.";
}

/** Dates without frost trouble first, then the smaller move. */
export function inOrderOfUse(offers: readonly StaggerOffer[]): readonly StaggerOffer[] {
  const weight = (offer: StaggerOffer) =>
    (offer.frost === null ? 0 : 1000) + Math.abs(offer.startShift);
  return [...offers].sort((a, b) => weight(a) - weight(b));
}

/** Why there is no date to offer. */
export function noOfferWords(hasOwnDates: boolean, hasStart: boolean): string {
  if (hasOwnDates) return "Their bloom dates are typed: change those in the particulars.";
  if (!hasStart) return "Neither has a start that could be moved.";
  return "No start that the frosts allow keeps the two far enough apart without a new conflict.";
}
