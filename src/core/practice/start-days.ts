/**
 * Between which days a planting of a kind can be sown or set out and still give seed: from the last
 * spring frost, or as much before it as hardy kinds allow, and in warm enough ground where a
 * climate is given. When its seed must be ripe is asked of the checks, not here.
 */
import { temperatureOn } from "../calendar/climate.ts";
import { isFrostInSeason } from "../calendar/season-reach.ts";
import { type DayNumber, civilFromDay, dayFromCivil } from "../model/day.ts";
import type { Plan } from "../model/plan.ts";
import type { Kind } from "../kinds/crop.ts";
import { growthOf } from "../kinds/growth.ts";
import { kinds } from "../kinds/kinds.ts";
import { setOutAfterFrost } from "../kinds/raising.ts";

const builtIn: ReadonlySet<string> = new Set(kinds.map(({ id }) => id));

export interface StartDays {
  readonly first: DayNumber;
  /** Infinite where only ripe seed before the frost bounds it. */
  readonly last: DayNumber;
  /** Id of the source of the first day, and of the last where it is bounded. */
  readonly source: string;
}

/** Hardy kinds sown in place, days before the last frost: as soon as ground can be worked. Common practice. */
const HARDY_SOWN_BEFORE_DAYS = 42;
/** Tender plants go out so many days after the last frost. Common practice. */
const TENDER_SET_OUT_AFTER_DAYS = 7;
/** Roots and bulbs of biennials: as soon as ground can be worked, and not weeks after. Common practice. */
const ROOTS_BEFORE_DAYS = 42;
const ROOTS_AFTER_DAYS = 14;
/** Mean of the day at which tender and hardy kinds go into the ground at the earliest, C. Common practice. */
const TENDER_MEAN_C = 10;
const HARDY_MEAN_C = 4;

/** Sown later they form heads and leaves instead of flowers: in Denmark by 1 May, as their crop notes say. */
const SOWN_BY_MAY: ReadonlySet<string> = new Set(["chinese-cabbage", "mizuna"]);

/**
 * Null where the last spring frost is not given, or not of this season: then nobody can say how
 * early is too early.
 */
export function startDays(
  { site, season }: Pick<Plan, "site" | "season">,
  kind: Kind,
  method: "sown" | "transplanted",
): StartDays | null {
  const frost = site.lastSpringFrost;
  if (frost === undefined || !isFrostInSeason("spring", frost, season)) return null;
  // Nobody has said of a grower's own kind that it stands frost.
  const isTender = growthOf(kind).isTender || !builtIn.has(kind.id);
  const isRoots = kind.lifeCycle !== "annual" && method === "transplanted" && !isTender;
  const [before, source] = isRoots
    ? ([ROOTS_BEFORE_DAYS, "home-practice"] as const)
    : earliest(kind, method, isTender);
  const byFrost = Math.max(season.first, frost - before);
  return {
    first: firstWarmDay(site.climate, byFrost, isTender ? TENDER_MEAN_C : HARDY_MEAN_C),
    last: Math.min(
      season.last,
      isRoots ? frost + ROOTS_AFTER_DAYS : Infinity,
      SOWN_BY_MAY.has(kind.id) ? mayDay(frost, site) : Infinity,
    ),
    source,
  };
}

/** Days before the last frost, less than 0 after it, and who says so. */
function earliest(
  kind: Kind,
  method: "sown" | "transplanted",
  isTender: boolean,
): readonly [number, string] {
  if (method === "transplanted") {
    if (isTender) return [-TENDER_SET_OUT_AFTER_DAYS, "home-practice"];
    const { value, source } = setOutAfterFrost(kind);
    return [-value, source];
  }
  return [isTender ? 0 : HARDY_SOWN_BEFORE_DAYS, "home-practice"];
}

/** The first of so many days whose usual mean is warm enough; the day itself where no climate is given. */
function firstWarmDay(climate: Plan["site"]["climate"], from: DayNumber, meanC: number): DayNumber {
  if (!climate?.normals) return from;
  const usual = temperatureOn({ normals: climate.normals });
  for (let day = from; day < from + 120; day += 1) {
    const found = usual(day);
    if (found && (found.minC + found.maxC) / 2 >= meanC) return day;
  }
  return Infinity;
}

/** 1 May of the year of the frost, 1 November in the south. */
function mayDay(frost: DayNumber, { position }: Plan["site"]): DayNumber {
  const { year, month } = civilFromDay(frost);
  const isSouth = position ? position.latitude < 0 : month > 7;
  return dayFromCivil({ year, month: isSouth ? 11 : 5, day: 1 });
}
