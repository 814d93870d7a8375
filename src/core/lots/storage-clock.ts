/** Probits lost in one place between two days, with the seasons of its air. */
import type { Kind } from "../kinds/crop.ts";
import { civilFromDay, dayFromCivil } from "../model/day.ts";
import type { StoragePlace } from "../model/plan.ts";
import { type Ageing, type Condition, type LifeNote, ORDINARY_ROOM, ageingIn } from "./ageing.ts";

/** Edges of the band, and what is likely between them. */
export type Edge = "slow" | "likely" | "fast";

export interface StorageClock {
  lost(from: number, to: number, edge: Edge): number;
  /** The day by which so much is lost, counted from a day; Infinity for never. */
  dayWhenLost(from: number, loss: number, edge: Edge): number;
  readonly notes: readonly LifeNote[];
}

const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

const clocks = new WeakMap<object, WeakMap<Kind, Map<number, StorageClock | null>>>();
/** Stands for a place that is not known. */
const NOWHERE = {};

/**
 * @param place null: not known; an ordinary room is assumed and the notes say so
 * @param moisturePct the lot's own moisture there, sealed in; goes before the place's
 */
export function storageClock(
  kind: Kind,
  place: StoragePlace | null,
  moisturePct?: number,
): StorageClock | null {
  const key = place ?? NOWHERE;
  let ofPlace = clocks.get(key);
  if (!ofPlace) clocks.set(key, (ofPlace = new WeakMap()));
  let ofKind = ofPlace.get(kind);
  if (!ofKind) ofPlace.set(kind, (ofKind = new Map()));
  const found = ofKind.get(moisturePct ?? -1);
  if (found !== undefined) return found;
  const made = madeClock(kind, place?.conditions ?? null, moisturePct);
  ofKind.set(moisturePct ?? -1, made);
  return made;
}

function madeClock(
  kind: Kind,
  conditions: readonly Condition[] | null,
  moisturePct: number | undefined,
): StorageClock | null {
  const months = (conditions ? monthly(conditions) : [ORDINARY_ROOM]).map((condition) =>
    ageingIn(
      kind,
      moisturePct === undefined
        ? condition
        : { fromMonth: 1, temperatureC: condition.temperatureC, moisturePct },
    ),
  );
  const known = months.filter((ageing) => ageing !== null);
  if (known.length < months.length) return null;
  const notes = new Set(known.flatMap((ageing) => ageing.notes));
  if (!conditions) notes.add("room assumed");
  const [first] = known;
  const isSteady = known.every(
    ({ slow, likely, fast }) =>
      slow === first?.slow && likely === first.likely && fast === first.fast,
  );
  return { ...(isSteady && first ? steady(first) : seasonal(known)), notes: [...notes] };
}

/** The condition of each month, January first. */
export function monthly(conditions: readonly Condition[]): readonly Condition[] {
  const sorted = [...conditions].sort((a, b) => a.fromMonth - b.fromMonth);
  // Before the first of the year the last of the year before still holds.
  const last = sorted.at(-1) ?? ORDINARY_ROOM;
  return MONTH_DAYS.map(
    (_, index) => sorted.filter(({ fromMonth }) => fromMonth <= index + 1).at(-1) ?? last,
  );
}

function steady(rates: Ageing): Omit<StorageClock, "notes"> {
  return {
    lost: (from, to, edge) => Math.max(0, to - from) * rates[edge],
    dayWhenLost: (from, loss, edge) => (loss <= 0 ? from : from + loss / rates[edge]),
  };
}

/** Losses of whole months and years are summed once, so that a century costs no more than a day. */
function seasonal(rates: readonly Ageing[]): Omit<StorageClock, "notes"> {
  const sums = (edge: Edge) => {
    const starts = [0];
    rates.forEach((each, index) => {
      starts.push((starts[index] ?? 0) + each[edge] * (MONTH_DAYS[index] ?? 0));
    });
    return starts;
  };
  const startsOf = { slow: sums("slow"), likely: sums("likely"), fast: sums("fast") };
  const total = (day: number, edge: Edge) => {
    const { year, month, day: dayOfMonth } = civilFromDay(Math.floor(day));
    const starts = startsOf[edge];
    const rate = rates[month - 1]?.[edge] ?? 0;
    return year * (starts[12] ?? 0) + (starts[month - 1] ?? 0) + (dayOfMonth - 1) * rate;
  };
  return {
    lost: (from, to, edge) => (to <= from ? 0 : total(to, edge) - total(from, edge)),
    dayWhenLost: (from, loss, edge) => {
      if (loss <= 0) return from;
      const starts = startsOf[edge];
      const aYear = starts[12] ?? 0;
      if (!(aYear > 0)) return Infinity;
      const target = total(from, edge) + loss;
      const year = Math.floor(target / aYear);
      if (year > 9000) return Infinity;
      const left = target - year * aYear;
      const month = Math.max(0, starts.findIndex((start, index) => index > 0 && left < start) - 1);
      const days = (left - (starts[month] ?? 0)) / (rates[month]?.[edge] ?? 1);
      return dayFromCivil({ year, month: month + 1, day: 1 }) + days;
    },
  };
}
