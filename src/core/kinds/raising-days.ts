/** Days offered for sowing under glass and for setting out, from the last spring frost and the kind. */
import type { DayNumber } from "../model/day.ts";
import type { Planting } from "../model/plan.ts";
import type { Kind, Range, Sourced } from "./crop.ts";
import { setOutAfterFrost, weeksUnderGlass } from "./raising.ts";

const WEEK_DAYS = 7;

export interface RaisingOffer {
  readonly setOut: {
    readonly day: DayNumber;
    /** Days from the last spring frost; less than 0 before it. */
    readonly afterFrost: Sourced<number>;
  } | null;
  /** Counted back from the day it is set out: by the middle of the weeks. */
  readonly underGlass: { readonly day: DayNumber; readonly weeks: Sourced<Range> } | null;
}

/**
 * Setting out is offered where a last spring frost is given; sowing under glass where the weeks of
 * the kind are known, before the day the planting is set out, else before the one offered.
 */
export function raisingOffer(
  { start }: Pick<Planting, "start">,
  kind: Kind,
  lastSpringFrost: DayNumber | undefined,
): RaisingOffer {
  const afterFrost = setOutAfterFrost(kind);
  const setOut =
    lastSpringFrost === undefined ? null : { day: lastSpringFrost + afterFrost.value, afterFrost };
  const given = start?.method === "transplanted" ? start.date : undefined;
  const weeks = weeksUnderGlass(kind);
  const out = given ?? setOut?.day;
  return {
    setOut,
    underGlass:
      weeks === undefined || out === undefined
        ? null
        : { day: out - middleDays(weeks.value), weeks },
  };
}

function middleDays([least, most]: Range): number {
  return Math.round(((least + most) / 2) * WEEK_DAYS);
}
