/**
 * Sowing dates that clear a pair by time. Every date offered has been verified by running the
 * checks on the edited plan; two sowings two weeks apart do not bloom two weeks apart, so each
 * offer also says how the shift in sowing shrinks (or grows) in bloom.
 */
import type { CropBook } from "../crops/crop-book.ts";
import { type CheckResult, runChecks } from "../checks/run-checks.ts";
import { isolationPair } from "../checks/isolation.ts";
import type { IsolationPair } from "../checks/isolation-pair.ts";
import { type Stand, resolveStands } from "../checks/stand.ts";
import type { Edit } from "../edits/edit.ts";
import { changePlantings } from "../edits/object-edits.ts";
import { type DayNumber, shortDate } from "../model/day.ts";
import type { Layout, Plan, Planting } from "../model/plan.ts";

/** Furthest a start is shifted, days. */
const MAX_SHIFT_DAYS = 150;

export interface StaggerOffer {
  readonly planting: string;
  /** New start date. */
  readonly start: DayNumber;
  /** Days the start moves; negative: earlier. */
  readonly startShift: number;
  /** Days the likely first flower moves; negative: earlier. */
  readonly bloomShift: number;
  /** Days between the two blooms after the shift. */
  readonly gapDays: number;
  /** Start before the last spring frost given, or seed ripe after the first autumn frost. */
  readonly frost: "before last frost" | "seed after first frost" | null;
  /** Conflicts of the whole layout after the edit. */
  readonly conflictsAfter: number;
  readonly edit: Edit;
}

/**
 * For two stands in conflict: the nearest earlier and later start of either planting that puts
 * their blooms far enough apart both ways, within the season. Empty when there is none, when both
 * bloom by own dates, or when nothing is known of their bloom.
 */
export function staggerOffers(
  plan: Plan,
  layout: Layout,
  book: CropBook,
  result: CheckResult,
  pair: readonly [string, string],
): readonly StaggerOffer[] {
  return pair.flatMap((id, index) => {
    const other = result.standById.get(pair[1 - index] ?? "");
    const stand = result.standById.get(id);
    if (!stand || !other) return [];
    return ([-1, 1] as const).flatMap((direction) => {
      const offer = nearestStart(plan, layout, book, result, stand, other, direction);
      return offer ? [offer] : [];
    });
  });
}

function nearestStart(
  plan: Plan,
  layout: Layout,
  book: CropBook,
  result: CheckResult,
  stand: Stand,
  other: Stand,
  direction: -1 | 1,
): StaggerOffer | null {
  const planting = stand.planting;
  if (!planting?.start || planting.bloom) return null;
  for (let shift = 1; shift <= MAX_SHIFT_DAYS; shift += 1) {
    const start = planting.start.date + direction * shift;
    if (start < plan.season.first || start > plan.season.last) return null;
    const moved = standStarting(plan, layout, book, planting, start);
    const pairs = moved ? bothWays(moved, other, book) : [];
    if (!moved || pairs.length === 0 || !pairs.every(isClear)) continue;
    const edit = startEdit(layout.id, planting, start);
    const edited = edit.apply(plan);
    const after = runChecks(edited, sameLayout(edited, layout.id), book, result);
    return {
      planting: planting.id,
      start,
      startShift: direction * shift,
      bloomShift: (moved.bloom?.likely.first ?? 0) - (stand.bloom?.likely.first ?? 0),
      gapDays: Math.min(...pairs.map((found) => found.gapDays ?? 0)),
      frost: frostTrouble(plan, start, moved),
      conflictsAfter: after.findings.filter((finding) => finding.severity === "conflict").length,
      edit,
    };
  }
  return null;
}

function startEdit(layoutId: string, planting: Planting, start: DayNumber): Edit {
  const method = planting.start?.method ?? "sown";
  const verb = method === "sown" ? "Sow" : "Set out";
  return changePlantings(
    layoutId,
    [planting.id],
    { start: { method, date: start } },
    `${verb} ${planting.code} on ${shortDate(start)}`,
  );
}

function sameLayout(plan: Plan, layoutId: string): Layout {
  return plan.layouts.find((layout) => layout.id === layoutId) as Layout;
}

/** The stand a planting would be if it started on another day. */
function standStarting(
  plan: Plan,
  layout: Layout,
  book: CropBook,
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
  if (firstAutumnFrost !== undefined && stand.ripe && stand.ripe.likely > firstAutumnFrost) {
    return "seed after first frost";
  }
  return lastSpringFrost !== undefined && start < lastSpringFrost ? "before last frost" : null;
}
