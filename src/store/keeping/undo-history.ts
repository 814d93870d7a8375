/**
 * The steps of undo, kept with the stored plan so that a reload does not end them. They are written
 * with the copy they lead up to and are used with that copy only. Bounded: the newest steps that
 * fit; steps that carry a picture may be long, and older ones are let go first.
 */
import { type Patch, applyPatch, difference } from "../../core/edits/patch.ts";
import type { Plan } from "../../core/model/plan.ts";
import type { HistoryStep, PlanState } from "../plan/plan-store.ts";
import * as words from "./words.ts";

/** Most characters of steps that are kept, undone ones included. */
export const KEPT_CHARACTERS = 1_000_000;
/** Most steps that are kept in either direction. */
export const KEPT_STEPS = 200;

export type UndoHistory = Pick<PlanState, "past" | "future">;

export const NO_HISTORY: UndoHistory = { past: [], future: [] };

/** Text of each step; steps never change. */
const texts = new WeakMap<HistoryStep, string>();

/** The history as text, with the sum of the copy it belongs to. */
export function historyText({ past, future }: UndoHistory, checksum: string): string {
  let left = KEPT_CHARACTERS;
  const newest = (steps: readonly HistoryStep[]) => {
    const kept: string[] = [];
    // What comes next when undoing, or doing again, is last in its list.
    for (const step of steps.slice(-KEPT_STEPS).reverse()) {
      const text = stepText(step);
      left -= text.length;
      if (left < 0) break;
      kept.push(text);
    }
    return kept.reverse().join(",");
  };
  const pastText = newest(past);
  return `{"checksum":${JSON.stringify(checksum)},"past":[${pastText}],"future":[${newest(future)}]}`;
}

function stepText(step: HistoryStep): string {
  const known = texts.get(step);
  if (known !== undefined) return known;
  const text = JSON.stringify(step);
  texts.set(step, text);
  return text;
}

/** The steps kept with a copy; none when the text is another copy's, damaged, or leads astray. */
export function readHistory(text: string | undefined, checksum: string, plan: Plan): UndoHistory {
  if (text === undefined) return NO_HISTORY;
  try {
    const value: unknown = JSON.parse(text);
    if (!isObject(value) || value["checksum"] !== checksum) return NO_HISTORY;
    const { past, future } = value;
    if (!isSteps(past) || !isSteps(future)) return NO_HISTORY;
    return leadsBack(plan, past, "back") && leadsBack(plan, future, "forward")
      ? { past, future }
      : NO_HISTORY;
  } catch {
    return NO_HISTORY;
  }
}

/** The history with one more step: from the stored copy to what was noted as the page went. */
export function withLastMoment(history: UndoHistory, stored: Plan, moment: Plan): UndoHistory {
  const patch = difference(stored, moment);
  const layoutId = moment.layouts[0]?.id ?? "";
  const title = words.lastChanges;
  return patch ? { past: [...history.past, { title, patch, layoutId }], future: [] } : history;
}

/** Whether every step can be gone, and gone back, and the plan is the same again. */
function leadsBack(
  plan: Plan,
  steps: readonly HistoryStep[],
  direction: "back" | "forward",
): boolean {
  const returning = direction === "back" ? "forward" : "back";
  let at = plan;
  for (const { patch } of [...steps].reverse()) at = applyPatch(at, patch, direction);
  for (const { patch } of steps) at = applyPatch(at, patch, returning);
  return difference(plan, at) === null;
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function isSteps(value: unknown): value is readonly HistoryStep[] {
  return (
    Array.isArray(value) &&
    value.length <= KEPT_STEPS &&
    value.every(
      (step) =>
        isObject(step) &&
        typeof step["title"] === "string" &&
        typeof step["layoutId"] === "string" &&
        isPatch(step["patch"]),
    )
  );
}

function isPatch(value: unknown): value is Patch {
  if (!isObject(value)) return false;
  const isPart = (part: unknown, isKey: (key: unknown) => boolean) =>
    Array.isArray(part) && part.length === 2 && isKey(part[0]) && isPatch(part[1]);
  const isPlace = (at: unknown) => Number.isInteger(at) && Number(at) >= 0;
  const { fields, items } = value;
  switch (value["op"]) {
    case "set":
      return true;
    case "fields":
      return (
        Array.isArray(fields) &&
        fields.every((part) =>
          isPart(part, (key) => typeof key === "string" && key !== "__proto__"),
        )
      );
    case "items":
      return Array.isArray(items) && items.every((part) => isPart(part, isPlace));
    case "splice":
      return (
        isPlace(value["at"]) && Array.isArray(value["removed"]) && Array.isArray(value["added"])
      );
    default:
      return false;
  }
}
