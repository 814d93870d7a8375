/**
 * Sowing dates that clear a pair by time. Every date offered has been verified by running the
 * checks on the edited plan; two sowings two weeks apart do not bloom two weeks apart, so each
 * offer also says how the shift in sowing shrinks (or grows) in bloom.
 */
import { autumnFrostOf } from "../calendar/season-reach.ts";
import type { Counted } from "../calendar/bloom-window.ts";
import { type CheckedLayout, recheckLayout } from "../checks/checked-layout.ts";
import { isolationPair } from "../checks/isolation.ts";
import type { IsolationPair } from "../checks/isolation-pair.ts";
import { type Stand, resolveStands } from "../checks/stand.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import type { Edit } from "../edits/edit.ts";
import { moveStart } from "../edits/object-edits.ts";
import type { DayNumber } from "../model/day.ts";
import type { Layout, Plan, Planting } from "../model/plan.ts";
import { startDays } from "../practice/start-days.ts";
import { broughtFindings } from "./remedy.ts";

/** Furthest a start is shifted where frosts or ripening bound it, days. */
const MAX_SHIFT_DAYS = 150;
/** Furthest where what would bound it is not known. No source; our choice. */
const UNBOUNDED_SHIFT_DAYS = 21;
/**
 * What starts so long before the last spring frost grows over winter: cold and day length decide
 * when it flowers, and another day of sowing does not move that. No source; our choice.
 */
const OVERWINTERED_DAYS = 90;

export interface StaggerOffer {
  readonly planting: string;
  /** New start date. */
  readonly start: DayNumber;
  /** Days the start moves; negative: earlier. */
  readonly startShift: number;
  /** Days the likely first flower moves; negative: earlier. */
  readonly bloomShift: number;
  /** How the bloom was told: counted in days it moves as far as the start, which is optimistic. */
  readonly counted: Counted;
  /** Days between the two blooms after the shift, and the days that are wanted. */
  readonly gapDays: number;
  readonly guardDays: number;
  /**
   * Start before the last spring frost given, of a kind that stands it; or the latest seed ripe
   * after the first autumn frost, the likely one before it.
   */
  readonly frost: "before last frost" | "seed after first frost" | null;
  /** Whether the frosts that bound it are known; where not, it is moved by three weeks at most. */
  readonly isBounded: boolean;
  /** Conflicts of the whole layout after the edit. */
  readonly conflictsAfter: number;
  readonly edit: Edit;
}

/**
 * For two stands in conflict: the nearest earlier and later start of either planting that puts
 * their blooms far enough apart both ways, within the days its kind can start in
 * (core/practice/start-days.ts) and still ripen seed, and brings no new conflict. Empty when there
 * is none, when both bloom by own dates, or when nothing is known of their bloom.
 */
export function staggerOffers(
  checked: CheckedLayout,
  pair: readonly [string, string],
): readonly StaggerOffer[] {
  const { result } = checked;
  return pair.flatMap((id, index) => {
    const other = result.standById.get(pair[1 - index] ?? "");
    const stand = result.standById.get(id);
    if (!stand || !other) return [];
    return ([-1, 1] as const).flatMap((direction) => {
      const offer = nearestStart(checked, stand, other, direction);
      return offer ? [offer] : [];
    });
  });
}

function nearestStart(
  checked: CheckedLayout,
  stand: Stand,
  other: Stand,
  direction: -1 | 1,
): StaggerOffer | null {
  const { plan, book } = checked;
  const { planting, bloom } = stand;
  if (!planting?.start || planting.bloom || !bloom || planting.locked === true) return null;
  const within = startsWithin(plan, stand, direction);
  if (!within) return null;
  for (let shift = 1; shift <= within.most; shift += 1) {
    const start = planting.start.date + direction * shift;
    // Before the days it could start in it may come into them; behind them it only goes further.
    if (direction > 0 ? start > within.last : start < within.first) return null;
    if (start < within.first || start > within.last) continue;
    const moved = standStarting(checked, planting, start);
    const pairs = moved ? bothWays(moved, other, book) : [];
    if (!moved?.bloom || pairs.length === 0 || !pairs.every(isClear)) continue;
    if (!isRipeInTime(plan, moved)) continue;
    const tried = tryStart(checked, planting, start);
    if (!tried) continue;
    return {
      ...tried,
      planting: planting.id,
      start,
      startShift: direction * shift,
      bloomShift: moved.bloom.likely.first - bloom.likely.first,
      counted: moved.bloom.counted,
      gapDays: Math.min(...pairs.map((found) => found.gapDays ?? 0)),
      guardDays: Math.max(...pairs.map((found) => found.guardDays)),
      frost: frostTrouble(plan, start, moved),
      isBounded: within.isBounded,
    };
  }
  return null;
}

/**
 * The days its start may be moved to; null where it is not moved at all: what stands over winter,
 * and what came from the season before.
 */
export function startsWithin(
  plan: Plan,
  { planting, kind, isSeedParent, ripe }: Stand,
  direction: -1 | 1,
): {
  readonly first: DayNumber;
  readonly last: DayNumber;
  readonly most: number;
  readonly isBounded: boolean;
} | null {
  if (!planting?.start || planting.stoodInto !== undefined) return null;
  const { date, method } = planting.start;
  const { lastSpringFrost, firstAutumnFrost } = plan.site;
  if (date < plan.season.first) return null;
  if (lastSpringFrost !== undefined && date < lastSpringFrost - OVERWINTERED_DAYS) return null;
  const days = startDays(plan, kind, method);
  const isRipeKnown = firstAutumnFrost !== undefined && (!isSeedParent || ripe !== null);
  const isBounded = days !== null && (direction < 0 || isRipeKnown);
  return {
    first: days?.first ?? plan.season.first,
    last: Math.min(days?.last ?? Infinity, plan.season.last),
    most: isBounded ? MAX_SHIFT_DAYS : UNBOUNDED_SHIFT_DAYS,
    isBounded,
  };
}

/** Whether seed is likely ripe before the first autumn frost; so is what frosts are not given for. */
export function isRipeInTime(plan: Plan, { ripe, isSeedParent }: Stand): boolean {
  const { firstAutumnFrost } = plan.site;
  if (!isSeedParent || ripe === null || firstAutumnFrost === undefined) return true;
  return ripe.likely <= autumnFrostOf(plan.season, firstAutumnFrost);
}

/** The edit with what the checks say after it; null when it brings a conflict or makes one worse. */
function tryStart(
  checked: CheckedLayout,
  planting: Planting,
  start: DayNumber,
): Pick<StaggerOffer, "edit" | "conflictsAfter"> | null {
  const edit = moveStart(checked.layout.id, planting, start);
  const tried = recheckLayout(checked, edit.apply(checked.plan));
  if (!tried) return null;
  const brought = broughtFindings(checked.result, tried.result);
  if (brought.some(({ severity }) => severity === "conflict")) return null;
  const after = tried.result.findings.filter(({ severity }) => severity === "conflict");
  return { edit, conflictsAfter: after.length };
}

/** The stand a planting would be if it started on another day. */
export function standStarting(
  { plan, layout, book }: CheckedLayout,
  planting: Planting,
  start: DayNumber,
): Stand | undefined {
  const method = planting.start?.method ?? "sown";
  const only: Layout = { ...layout, plantings: [{ ...planting, start: { method, date: start } }] };
  return resolveStands({ ...plan, surroundings: [] }, only, book)[0];
}

function bothWays(a: Stand, b: Stand, book: CropBook): readonly IsolationPair[] {
  return [isolationPair(a, b, book), isolationPair(b, a, book)].filter((pair) => pair !== null);
}

function isClear(pair: IsolationPair): boolean {
  return pair.standing !== "conflict" && pair.standing !== "unknown";
}

function frostTrouble(plan: Plan, start: DayNumber, stand: Stand): StaggerOffer["frost"] {
  const { lastSpringFrost, firstAutumnFrost } = plan.site;
  const autumn =
    firstAutumnFrost === undefined ? Infinity : autumnFrostOf(plan.season, firstAutumnFrost);
  if (stand.isSeedParent && stand.ripe && stand.ripe.latest > autumn) {
    return "seed after first frost";
  }
  return lastSpringFrost !== undefined && start < lastSpringFrost ? "before last frost" : null;
}
