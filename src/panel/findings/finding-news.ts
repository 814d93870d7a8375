/** What the last kept change made new among the findings, and what it cleared. */
import { create } from "zustand";
import { describeFinding } from "../../core/checks/all-checks.ts";
import { type CheckedLayout, wordingOf } from "../../core/checks/checked-layout.ts";
import { type PlanState, usePlanStore } from "../../store/plan/plan-store.ts";

interface FindingNews {
  /** Ids of findings that were not there before. */
  readonly fresh: ReadonlySet<string>;
  /** How many are gone. */
  readonly cleared: number;
  /** Titles of the first of them. */
  readonly clearedTitles: readonly string[];
}

const NO_NEWS: FindingNews = { fresh: new Set(), cleared: 0, clearedTitles: [] };

/** Titles told; the count tells the rest. */
const MOST_TITLES = 12;

export const useFindingNews = create<FindingNews>()(() => NO_NEWS);

usePlanStore.subscribe((state, before) => {
  const [kept, keptBefore] = [readOf(state), readOf(before)];
  if (kept === keptBefore) return;
  // Another reading is no change: what differs between the two is told apart from this.
  const isElsewhere =
    state.openings !== before.openings ||
    state.reading !== before.reading ||
    kept.layout.id !== keptBefore.layout.id;
  if (isElsewhere) {
    useFindingNews.setState(NO_NEWS);
    return;
  }
  // Checks that were fetched a moment later say nothing about a change of the plan.
  if (state.plan === before.plan) return;
  const [now, then] = [kept.result, keptBefore.result];
  if (now.findings === then.findings) return;
  const known = new Set([...then.findings, ...then.accepted].map(({ id }) => id));
  const left = new Set([...now.findings, ...now.accepted].map(({ id }) => id));
  const gone = then.findings.filter(({ id }) => !left.has(id));
  const wording = wordingOf(keptBefore);
  useFindingNews.setState({
    fresh: new Set(now.findings.flatMap(({ id }) => (known.has(id) ? [] : [id]))),
    cleared: gone.length,
    clearedTitles: gone
      .slice(0, MOST_TITLES)
      .map((finding) => describeFinding(finding, wording).title),
  });
});

function readOf({ kept, grown }: PlanState): CheckedLayout {
  return grown ?? kept;
}
