/**
 * When what stood over winter flowered in the seasons before, as their records have it: no figure
 * of spring tells that, but on one ground it comes about the same date each year. Offered as a rule
 * of thumb, wide on purpose, so that time clears nothing by it in silence.
 */
import type { DayWindow } from "../calendar/bloom-window.ts";
import { yearsLater } from "../calendar/yearly.ts";
import type { Range } from "../kinds/crop.ts";
import { planBook } from "../kinds/own-kinds.ts";
import { type DayNumber, civilFromDay } from "../model/day.ts";
import { isStanding, openingLayoutId } from "../model/layouts.ts";
import type { Plan, Planting } from "../model/plan.ts";
import { varietyKey } from "../model/variety-key.ts";
import { type SeenBeside, seenBeside } from "./learning.ts";

/**
 * Days put to either side of what was seen: one season is one weather, and varieties of a kind
 * differ. Ours.
 */
export const STANDING_MARGIN_DAYS = { variety: 21, kind: 35 } as const;

export interface StandingBloom {
  /** Of the very variety, or of others of its kind that stood here. */
  readonly of: keyof typeof STANDING_MARGIN_DAYS;
  readonly seen: readonly {
    readonly season: string;
    readonly variety: string;
    readonly first: DayNumber;
    /** Null: nobody wrote down when it ended. */
    readonly last: DayNumber | null;
  }[];
  /** In this season, margins included. */
  readonly offered: DayWindow;
}

/**
 * What is offered for a planting without bloom dates; null where no season before tells.
 * @param before the plans of the seasons before, on this ground
 */
export function standingBloom(
  plan: Plan,
  planting: Planting,
  before: readonly Plan[],
): StandingBloom | null {
  if (!isStanding(planting) || planting.bloom || planting.flowering !== "yes") return null;
  const variety = plan.varieties.find(({ id }) => id === planting.variety);
  const kind = variety && planBook(plan).kind(variety.kind);
  if (!variety || !kind) return null;
  const lasts = variety.bloomDays ?? kind.timing.bloomDays?.value ?? null;
  const found = before.flatMap((each) => seenStanding(each, variety.kind));
  const key = varietyKey(variety);
  const own = found.filter((each) => key !== null && each.key === key);
  const of = own.length > 0 ? "variety" : "kind";
  const seen = own.length > 0 ? own : found;
  const windows = seen.flatMap((each) => windowIn(plan, each, lasts) ?? []);
  if (windows.length === 0) return null;
  const margin = STANDING_MARGIN_DAYS[of];
  return {
    of,
    seen: seen.map(({ season, name, row }) => ({
      season,
      variety: name,
      first: row.firstFlower,
      last: row.lastFlower,
    })),
    offered: {
      first: Math.max(plan.season.first, Math.min(...windows.map(({ first }) => first)) - margin),
      last: Math.max(...windows.map(({ last }) => last)) + margin,
    },
  };
}

interface SeenStanding {
  readonly season: string;
  readonly seasonFirst: DayNumber;
  readonly name: string;
  readonly key: string | null;
  readonly row: SeenBeside & { readonly firstFlower: DayNumber };
}

/** What stood into a season of a kind, and was seen to open in it. */
function seenStanding(plan: Plan, kind: string): readonly SeenStanding[] {
  return seenBeside(plan, openingLayoutId(plan)).flatMap((row) => {
    const variety = plan.varieties.find(({ id }) => id === row.planting.variety);
    const { firstFlower } = row;
    if (variety?.kind !== kind || !isStanding(row.planting) || firstFlower === null) return [];
    return [
      {
        season: plan.season.name,
        seasonFirst: plan.season.first,
        name: variety.name,
        key: varietyKey(variety),
        row: { ...row, firstFlower },
      },
    ];
  });
}

/**
 * The dates seen, as of this season's year. It may have opened since it was last seen shut; where
 * nobody saw it end, it lasts as long as such a bloom can. Null: how long is not known either.
 */
function windowIn({ season }: Plan, each: SeenStanding, lasts: Range | null): DayWindow | null {
  const { firstFlower, lastFlower, shutOn } = each.row;
  const last = lastFlower ?? (lasts ? firstFlower + lasts[1] - 1 : null);
  if (last === null) return null;
  const years = civilFromDay(season.first).year - civilFromDay(each.seasonFirst).year;
  return {
    first: yearsLater(shutOn === null ? firstFlower : Math.min(firstFlower, shutOn + 1), years),
    last: yearsLater(Math.max(last, firstFlower), years),
  };
}
