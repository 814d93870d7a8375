/**
 * Predicted against seen, by variety, and what is taken from it. The days a season showed are kept
 * with the variety, and from then on widen its forecast. Only several seasons together may narrow
 * it: then the days seen, with a margin either way, become the variety's own range.
 */
import { plantingBloom } from "../calendar/planting-bloom.ts";
import type { DayWindow } from "../calendar/bloom-window.ts";
import { growthOf } from "../kinds/growth.ts";
import {
  type StartMethod,
  seenBloomDays,
  seenToFlower,
  unionOf,
} from "../calendar/seen-seasons.ts";
import { bloomSetting } from "../calendar/growing.ts";
import type { Edit } from "../edits/edit.ts";
import { mapItem, patched } from "../edits/edit.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import type { Range } from "../kinds/crop.ts";
import { planBook } from "../kinds/own-kinds.ts";
import { varietyKey } from "../model/variety-key.ts";
import type { DayNumber } from "../model/day.ts";
import type { Plan, Planting, Variety } from "../model/plan.ts";
import { currentEntries, entriesUntil } from "./current-entries.ts";
import { type PlotRecord, plotRecord } from "./plot-record.ts";
import * as steps from "../words/shelf-step-words.ts";

type SeenSeason = NonNullable<Variety["seen"]>[number];

/**
 * Seasons that must be held before the days seen may narrow a range. Of n seasons the next falls
 * outside what they showed with odds of 2 in n + 1 even if all weather is alike, hence the margin.
 * Both are ours.
 */
export const SEASONS_TO_NARROW = 3;
export const MARGIN_DAYS = 7;

/** One planting: what was forecast as planned, and what was seen. */
export interface SeenBeside {
  readonly planting: Planting;
  readonly start: { readonly method: StartMethod; readonly date: DayNumber } | null;
  /** The outer window forecast as planned; null where none was. */
  readonly forecast: DayWindow | null;
  readonly firstFlower: DayNumber | null;
  /** The last day before it on which somebody saw no flower; null: nobody looked. */
  readonly shutOn: DayNumber | null;
  readonly lastFlower: DayNumber | null;
}

/** Plantings of one layout with a first or last flower written down. */
export function seenBeside(plan: Plan, layoutId: string): readonly SeenBeside[] {
  const book = planBook(plan);
  const setting = bloomSetting(plan);
  const current = currentEntries(plan.entries);
  const plantings = plan.layouts.find(({ id }) => id === layoutId)?.plantings ?? [];
  return plantings.flatMap((planting) => {
    const record = plotRecord(entriesUntil(current, planting.id, Infinity));
    const variety = plan.varieties.find(({ id }) => id === planting.variety);
    const kind = variety && book.kind(variety.kind);
    if (!variety || !kind || (record.firstFlower ?? record.lastFlower) === null) return [];
    return [
      {
        planting,
        start: startOf(planting, record),
        forecast: plantingBloom(planting, variety, kind, setting)?.whole.outer ?? null,
        firstFlower: record.firstFlower,
        shutOn: lastLookBefore(record),
        lastFlower: record.lastFlower,
      },
    ];
  });
}

/** What was sown or set out as written, else as planned. */
function startOf(planting: Planting, { sownOn, setOutOn }: PlotRecord): SeenBeside["start"] {
  if (setOutOn !== null) return { method: "transplanted", date: setOutOn };
  if (sownOn !== null && planting.start?.method !== "transplanted") {
    return { method: "sown", date: sownOn };
  }
  return planting.start ?? null;
}

function lastLookBefore({ entries, firstFlower }: PlotRecord): DayNumber | null {
  if (firstFlower === null) return null;
  const looks = entries.filter(({ what, on }) => what === "looked at" && on < firstFlower);
  return looks.at(-1)?.on ?? null;
}

/**
 * What this season showed of a variety in one layout: null where no flower was seen, or no start
 * is known. Nobody looks every day: the first flower may have opened on any day since the plot was
 * last seen shut, or, where nobody wrote that, as early as its forecast said.
 */
export function seenThisSeason(plan: Plan, layoutId: string, varietyId: string): SeenSeason | null {
  const rows = seenBeside(plan, layoutId).filter(({ planting }) => planting.variety === varietyId);
  const toFlower = (method: StartMethod) =>
    unionOf(rows.flatMap((row) => (row.start?.method === method ? daysToFlower(row) : [])));
  const bloomDays = unionOf(
    rows.flatMap(({ firstFlower, lastFlower }): Range[] => {
      if (firstFlower === null || lastFlower === null || lastFlower < firstFlower) return [];
      const days = lastFlower - firstFlower + 1;
      return [[days, days]];
    }),
  );
  const [sownToFlower, transplantedToFlower] = [toFlower("sown"), toFlower("transplanted")];
  if (!sownToFlower && !transplantedToFlower && !bloomDays) return null;
  return {
    season: plan.season.name,
    ...(sownToFlower ? { sownToFlower: [...sownToFlower] } : {}),
    ...(transplantedToFlower ? { transplantedToFlower: [...transplantedToFlower] } : {}),
    ...(bloomDays ? { bloomDays: [...bloomDays] } : {}),
  };
}

function daysToFlower({ start, firstFlower, shutOn, forecast }: SeenBeside): readonly Range[] {
  if (!start || firstFlower === null || firstFlower < start.date) return [];
  const seen = firstFlower - start.date;
  const earliest = shutOn === null ? (forecast?.first ?? firstFlower) : shutOn + 1;
  return [[Math.max(0, Math.min(seen, earliest - start.date)), seen]];
}

/** Seasons of one variety together: of each name the one with the later place in the list. */
export function seasonsTogether(...lists: readonly (readonly SeenSeason[])[]): SeenSeason[] {
  return [...new Map(lists.flat().map((each) => [each.season, each])).values()].sort((a, b) =>
    a.season < b.season ? -1 : Number(a.season > b.season),
  );
}

/** Seen days of one variety in another plan, by what it holds and what its own record shows. */
export function seenInPlan(plan: Plan, variety: Pick<Variety, "kind" | "name">): SeenSeason[] {
  const key = varietyKey(variety);
  return plan.varieties
    .filter((each) => key !== null && varietyKey(each) === key)
    .flatMap((each) => {
      const chosen = plan.chosenLayout ?? plan.layouts[0]?.id ?? "";
      const now = seenThisSeason(plan, chosen, each.id);
      return seasonsTogether(each.seen ?? [], now ? [now] : []);
    });
}

/** What taking the seasons does to a variety. */
export interface Learned {
  readonly seasons: readonly SeenSeason[];
  /** Whether they are enough to narrow its range. */
  readonly isOwnRange: boolean;
  /** The variety as it would be. */
  readonly variety: Variety;
}

/**
 * Fewer than SEASONS_TO_NARROW seasons are only kept, and widen. From then on the days seen with
 * MARGIN_DAYS either way become its own range. How long an open-ended kind flowers is never taken:
 * its end is where somebody stopped looking.
 */
export function learned(variety: Variety, seasons: readonly SeenSeason[], book: CropBook): Learned {
  const kept = { ...variety, seen: [...seasons] };
  const kind = book.kind(variety.kind);
  const isOpenEnded = kind !== undefined && growthOf(kind).isOpenEnded;
  const enough = (of: (season: SeenSeason) => unknown) =>
    seasons.filter((season) => of(season) !== undefined).length >= SEASONS_TO_NARROW;
  const ranges = {
    ...(enough((each) => each.sownToFlower)
      ? { sownToFlower: withMargin(seenToFlower(kept, "sown")) }
      : {}),
    ...(enough((each) => each.transplantedToFlower)
      ? { transplantedToFlower: withMargin(seenToFlower(kept, "transplanted")) }
      : {}),
    ...(!isOpenEnded && enough((each) => each.bloomDays)
      ? { bloomDays: withMargin(seenBloomDays(kept), 1) }
      : {}),
  };
  return {
    seasons,
    isOwnRange: Object.keys(ranges).length > 0,
    variety: patched<Variety>(kept, ranges),
  };
}

function withMargin(range: Range | null, least = 0): [number, number] | undefined {
  return range ? [Math.max(least, range[0] - MARGIN_DAYS), range[1] + MARGIN_DAYS] : undefined;
}

/** Takes the seen days into the plan's variety, in one step. */
export function takeSeenDays({ variety, isOwnRange }: Learned): Edit {
  const { seen, sownToFlower, transplantedToFlower, bloomDays } = variety;
  return {
    title: isOwnRange ? steps.takeOwnRange(variety.name) : steps.keepSeenDays(variety.name),
    apply: (plan) => ({
      ...plan,
      varieties: mapItem(plan.varieties, variety.id, (before) =>
        patched(before, { seen, sownToFlower, transplantedToFlower, bloomDays }),
      ),
    }),
  };
}
