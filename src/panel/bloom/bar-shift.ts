/**
 * Moving the start of a planting from its bar: dragged to another first flower, or by arrow keys
 * in days of sowing. Previewed as it goes; presses without a pause between are one undo step.
 */
import type { DayWindow } from "../../core/calendar/bloom-window.ts";
import { firstFlower } from "../../core/calendar/first-flower.ts";
import { bloomSetting } from "../../core/calendar/growing.ts";
import { startForFlower } from "../../core/calendar/start-for-flower.ts";
import { moveStart } from "../../core/edits/object-edits.ts";
import type { DayNumber } from "../../core/model/day.ts";
import type { Planting } from "../../core/model/plan.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { previewHere } from "../state/followed-plan.ts";
import { onAnotherPlan } from "../../store/plan/plan-store.ts";
import { planNow } from "../state/plan-actions.ts";

const PAUSE_MS = 700;

interface Shift {
  readonly layoutId: string;
  readonly planting: Planting;
  readonly start: DayNumber;
  readonly timer: ReturnType<typeof setTimeout> | null;
}

let shift: Shift | null = null;

/** The committed planting of an id, if a start can move its bloom. */
function movable(id: string): Planting | null {
  const { plan, layoutId } = planNow();
  const planting = layoutOf(plan, layoutId).plantings.find((entry) => entry.id === id);
  return planting?.start && !planting.bloom ? planting : null;
}

/** Days a start may move to: the season's, and its own if it lies outside. */
export function startLimits(season: DayWindow, start: DayNumber): DayWindow {
  return { first: Math.min(season.first, start), last: Math.max(season.last, start) };
}

function previewStart(planting: Planting, start: DayNumber, pauses: boolean): void {
  const { layoutId } = planNow();
  if (shift?.timer) clearTimeout(shift.timer);
  const timer = pauses ? setTimeout(endShift, PAUSE_MS) : null;
  shift = { layoutId, planting, start, timer };
  previewHere(moveStart(layoutId, planting, start));
}

/** Shows the start whose likely first flower lies nearest to a day. */
export function dragFlowerTo(id: string, wanted: DayNumber): void {
  const planting = movable(id);
  const { plan, book } = planNow();
  const variety = plan.varieties.find((entry) => entry.id === planting?.variety);
  const kind = variety && book.kind(variety.kind);
  if (!planting?.start || !variety || !kind) return;
  const { method, date } = planting.start;
  const setting = bloomSetting(plan);
  const flowerOf = (start: DayNumber) => {
    const moved = { ...planting, start: { method, date: start } };
    return firstFlower(moved, variety, kind, setting).flower?.likely ?? null;
  };
  const start = startForFlower(wanted, startLimits(plan.season, date), flowerOf);
  if (start !== shift?.start) previewStart(planting, start, false);
}

/** One press of an arrow, or one repeat while it is held: days of sowing, negative earlier. */
export function nudgeStart(id: string, days: number): void {
  const planting = movable(id);
  if (!planting?.start) return;
  if (shift && shift.planting.id !== id) endShift();
  const { first, last } = startLimits(planNow().plan.season, planting.start.date);
  const from = shift?.start ?? planting.start.date;
  previewStart(planting, Math.min(last, Math.max(first, from + days)), true);
}

/** Keeps the start shown as one undo step. */
export function endShift(): void {
  if (!shift) return;
  if (shift.timer) clearTimeout(shift.timer);
  const { layoutId, planting, start } = shift;
  shift = null;
  if (start === planting.start?.date) planNow().cancelPreview();
  else planNow().commit(moveStart(layoutId, planting, start));
}

/** Puts the start back; false when none was moved. */
export function cancelShift(): boolean {
  if (!shift) return false;
  if (shift.timer) clearTimeout(shift.timer);
  shift = null;
  planNow().cancelPreview();
  return true;
}

onAnotherPlan(cancelShift);
