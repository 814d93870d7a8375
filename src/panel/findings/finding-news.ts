/** What the last kept change made new among the findings, and what it cleared. */
import { create } from "zustand";
import { describeFinding } from "../../core/checks/all-checks.ts";
import { wordingOf } from "../../core/checks/checked-layout.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";

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

usePlanStore.subscribe(({ kept, openings }, before) => {
  if (kept === before.kept) return;
  if (openings !== before.openings || kept.layout.id !== before.kept.layout.id) {
    useFindingNews.setState(NO_NEWS);
    return;
  }
  // Checks that were fetched a moment later say nothing about a change of the plan.
  if (kept.plan === before.kept.plan) return;
  const [now, then] = [kept.result, before.kept.result];
  if (now.findings === then.findings) return;
  const known = new Set([...then.findings, ...then.accepted].map(({ id }) => id));
  const left = new Set([...now.findings, ...now.accepted].map(({ id }) => id));
  const gone = then.findings.filter(({ id }) => !left.has(id));
  const wording = wordingOf(before.kept);
  useFindingNews.setState({
    fresh: new Set(now.findings.flatMap(({ id }) => (known.has(id) ? [] : [id]))),
    cleared: gone.length,
    clearedTitles: gone
      .slice(0, MOST_TITLES)
      .map((finding) => describeFinding(finding, wording).title),
  });
});
