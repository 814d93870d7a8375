/** How long seed would keep its standard in other places. */
import type { Kind } from "../kinds/crop.ts";
import type { Lot, Plan, StoragePlace } from "../model/plan.ts";
import { type LifeNote, standardOf } from "./ageing.ts";
import { estimateOf } from "./estimate.ts";
import { probit } from "./normal.ts";
import { hundredRule } from "./seed-moisture.ts";
import { storageClock } from "./storage-clock.ts";
import { testConditions } from "./test-conditions.ts";

export interface PlaceLife {
  readonly place: StoragePlace;
  /** Whether it is of the plan, or a suggestion. */
  readonly isOwn: boolean;
  /** Years from now until the lot may be, and surely is, under the standard; null: over a century. */
  readonly years: readonly [number | null, number | null];
  readonly notes: readonly LifeNote[];
}

const DAYS_A_YEAR = 365.25;
const CENTURY_DAYS = 36_525;
/** Moisture of a sealed pack where the regulation has no row: its figure for all other kinds. */
const OTHER_KINDS_PCT = 6;

/** Greatest moisture of a hermetically sealed pack of a kind, percent (7 CFR 201.36c). */
export function sealedLimit(kindId: string): number {
  return testConditions(kindId)?.sealedMoisturePct ?? OTHER_KINDS_PCT;
}

/** Places that every grower can make: a tin in a refrigerator, a sealed box in a freezer. */
export function suggestedPlaces(kindId: string): readonly StoragePlace[] {
  const moisturePct = Math.min(sealedLimit(kindId), OTHER_KINDS_PCT);
  const box = (id: string, name: string, temperatureC: number): StoragePlace => ({
    id,
    name: `${name}, sealed at ${moisturePct} %`,
    conditions: [{ fromMonth: 1, temperatureC, moisturePct }],
  });
  return [
    box("suggested-fridge", "Refrigerator, 5 C", 5),
    box("suggested-freezer", "Freezer, -18 C", -18),
  ];
}

/** What each place of the plan, and the suggested ones, would do for a lot moved there on a day. */
export function livesElsewhere(
  lot: Lot,
  kind: Kind,
  plan: Pick<Plan, "storagePlaces">,
  day: number,
): readonly PlaceLife[] {
  const estimate = estimateOf(lot, kind, plan.storagePlaces);
  if (!estimate) return [];
  const from = Math.max(day, estimate.startDay);
  const bar = probit(standardOf(kind));
  const [low, high] = estimate.at(from).map(probit) as [number, number];
  const lifeIn = (place: StoragePlace, isOwn: boolean): readonly PlaceLife[] => {
    const clock = place.conditions ? storageClock(kind, place) : null;
    if (!clock) return [];
    const years = (loss: number, edge: "slow" | "fast") => {
      const days = clock.dayWhenLost(from, loss, edge) - from;
      return days > CENTURY_DAYS ? null : days / DAYS_A_YEAR;
    };
    return [
      {
        place,
        isOwn,
        years: [years(low - bar, "fast"), years(high - bar, "slow")],
        notes: clock.notes,
      },
    ];
  };
  return [
    ...plan.storagePlaces.flatMap((place) => lifeIn(place, true)),
    ...suggestedPlaces(kind.id).flatMap((place) => lifeIn(place, false)),
  ];
}

/** What a year in a place is like for seed. */
export interface PlaceRules {
  /** Worst sum of Fahrenheit and humidity of the year; null: sealed in all year. */
  readonly hundred: { readonly sum: number; readonly keeps: boolean } | null;
}

export function placeRules({ conditions = [] }: StoragePlace): PlaceRules {
  const sums = conditions.flatMap(({ temperatureC, humidityPct }) =>
    humidityPct === undefined ? [] : [hundredRule(temperatureC, humidityPct)],
  );
  const [worst] = [...sums].sort((a, b) => b.sum - a.sum);
  return { hundred: worst ?? null };
}
