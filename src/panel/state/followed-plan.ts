/**
 * What the panels show. They follow a committed change at once, a gesture on the sheet some times
 * a second: the sheet and the counts of findings follow each frame, and have the frame for it.
 */
import { create } from "zustand";
import { type CheckResult, changesUnread } from "../../core/checks/run-checks.ts";
import type { Edit } from "../../core/edits/edit.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { type PlanState, type PreviewOwner, usePlanStore } from "../../store/plan/plan-store.ts";

/** Milliseconds between two looks at a running gesture. */
const FOLLOW_MS = 120;
/** Lists of thousands take a good part of that to bring up to date: the hand comes before them. */
const FOLLOW_LARGE_MS = 400;
/** A layout of more plantings than these has such lists. */
const LARGE = 1000;
/** Where hundreds move, counting findings anew takes some frames: it waits until the hand rests so long. */
const RESTED_MS = 160;

export type FollowedPlan = Pick<PlanState, "shown" | "layoutId" | "book" | "result" | "previewing">;

function followed({ shown, layoutId, book, result, previewing }: PlanState): FollowedPlan {
  return { shown, layoutId, book, result, previewing };
}

export const useFollowed = create<FollowedPlan>()(() => followed(usePlanStore.getState()));

let timer: ReturnType<typeof setTimeout> | null = null;

/**
 * Counts of findings, on every frame of a gesture as long as few plantings moved; where hundreds
 * did, they come with the panels, once the hand rests.
 */
export const useCounted = create<Pick<CheckResult, "counts">>()(() => countsNow());

/** With more stands than this to look at for it, counts do not follow each frame. */
const COUNTED_MOST = 100;

function countsNow(): Pick<CheckResult, "counts"> {
  return { counts: usePlanStore.getState().result.counts };
}

function catchUp(): void {
  if (timer !== null) clearTimeout(timer);
  timer = null;
  useCounted.setState(countsNow());
  useFollowed.setState(followed(usePlanStore.getState()));
}

usePlanStore.subscribe((state, before) => {
  const isSame =
    state.shown === before.shown &&
    state.result === before.result &&
    state.layoutId === before.layoutId &&
    state.previewing === before.previewing;
  if (isSame) return;
  if (!state.previewing) {
    catchUp();
    return;
  }
  if (changesUnread(state.result) <= COUNTED_MOST) {
    timer ??= setTimeout(catchUp, followMs(state));
    useCounted.setState(countsNow());
    return;
  }
  if (timer !== null) clearTimeout(timer);
  timer = setTimeout(catchUp, RESTED_MS);
});

function followMs({ shown, layoutId }: PlanState): number {
  return layoutOf(shown, layoutId).plantings.length > LARGE ? FOLLOW_LARGE_MS : FOLLOW_MS;
}

/** A preview made in a panel: it is seen there in the same frame. */
export function previewHere(edit: Edit, by?: PreviewOwner): void {
  usePlanStore.getState().preview(edit, by);
  catchUp();
}
