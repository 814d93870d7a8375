/** One layout of a plan with its crop base and its checks, all of one moment. */
import type { CropBook } from "../kinds/crop-book.ts";
import { planBook } from "../kinds/own-kinds.ts";
import { layoutOf } from "../model/layouts.ts";
import type { DayNumber } from "../model/day.ts";
import type { Layout, Plan } from "../model/plan.ts";
import { type Wording, wordingFor } from "./wording.ts";
import { type CheckResult, runChecks } from "./run-checks.ts";

/** What every reader of a checked plan takes: paper, files, remedies, comparisons, the window. */
export interface CheckedLayout {
  readonly plan: Plan;
  readonly layout: Layout;
  /** Crop base of the plan: the built-in kinds with its own. */
  readonly book: CropBook;
  readonly result: CheckResult;
  /** The day it is read as grown on, with the plan's field record; left out: as planned. */
  readonly grownOn?: DayNumber;
}

/**
 * Checks one layout of a plan; the first one if the id is of none.
 *
 * @param previous result of another state of this plan, of which all that is untouched is carried
 *   forward; what comes out is the same as without
 */
export function checkLayout(
  plan: Plan,
  layoutId: string,
  previous?: CheckResult,
  book: CropBook = planBook(plan),
): CheckedLayout {
  const layout = layoutOf(plan, layoutId);
  return { plan, layout, book, result: runChecks(plan, layout, book, previous) };
}

/** Checks several layouts of a plan, in the order given. */
export function checkLayouts(plan: Plan, layouts: readonly Layout[]): readonly CheckedLayout[] {
  const book = planBook(plan);
  return layouts.map((layout) => ({ plan, layout, book, result: runChecks(plan, layout, book) }));
}

/**
 * The same layout of an edited plan, checked with what the edit left alone carried forward; null
 * when the edit took the layout away.
 */
export function recheckLayout(before: CheckedLayout, plan: Plan): CheckedLayout | null {
  const layout = plan.layouts.find(({ id }) => id === before.layout.id);
  if (!layout) return null;
  const book = plan.ownKinds === before.plan.ownKinds ? before.book : planBook(plan);
  return { plan, layout, book, result: runChecks(plan, layout, book, before.result) };
}

/** Made once for every result: names and stands for words are asked for in many places. */
const wordings = new WeakMap<CheckResult, Wording>();

/** Names and stands for words about a checked layout. */
export function wordingOf({ plan, layout, result }: CheckedLayout): Wording {
  const made = wordings.get(result);
  if (made) return made;
  const wording = wordingFor(plan, layout, (id) => result.standById.get(id));
  wordings.set(result, wording);
  return wording;
}
