/** Days a planting takes its ground, and days offered for raising it, in words. */
import type { RaisingOffer } from "../../core/kinds/raising-days.ts";
import { raisingCited } from "../../core/kinds/raising.ts";
import { shortDate } from "../../core/model/day.ts";
import { formOf } from "../../core/words/plurals.ts";

/** `Sow under glass on 5 Apr`. */
export function underGlassOffer({ day }: NonNullable<RaisingOffer["underGlass"]>): string {
  return `Sow under glass on ${shortDate(day)}`;
}

/** On what that rests: `6 weeks before it is set out, the middle of 5 to 7 (...)`. */
export function underGlassReason({ weeks }: NonNullable<RaisingOffer["underGlass"]>): string {
  const [least, most] = weeks.value;
  const span = least === most ? `${least} weeks` : `the middle of ${least} to ${most} weeks`;
  return `${span} before it is set out (${raisingCited(weeks.source)})`;
}

/** `Set out on 17 May`. */
export function setOutOffer({ day }: NonNullable<RaisingOffer["setOut"]>): string {
  return `Set out on ${shortDate(day)}`;
}

/** `a week after the last spring frost (common practice)`. */
export function setOutReason({ afterFrost }: NonNullable<RaisingOffer["setOut"]>): string {
  const days = afterFrost.value;
  const weeks = Math.abs(days) / 7;
  const span = formOf(weeks, { one: "a week", other: `${weeks} weeks` });
  const side = days < 0 ? "before" : "after";
  return `${span} ${side} the last spring frost given (${raisingCited(afterFrost.source)})`;
}

/** Why a day of clearing cannot be used, or null. */
export function endProblem(end: number | undefined, start: number | undefined): string | null {
  return end !== undefined && start !== undefined && end < start
    ? `It starts on ${shortDate(start)}: type a later day`
    : null;
}

/** Why a day of sowing under glass cannot be used, or null. */
export function underGlassProblem(day: number | undefined, setOut: number): string | null {
  return day !== undefined && day > setOut
    ? `It is set out on ${shortDate(setOut)}: type an earlier day`
    : null;
}

export const END_HINT = "The last day it stands; something else may start there on the same day.";
export const CLEARED_WORDS = "Cleared before it can flower, it sheds nothing.";
