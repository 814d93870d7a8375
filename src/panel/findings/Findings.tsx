import { Suspense, lazy, memo, useCallback, useDeferredValue, useMemo, useState } from "react";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import type { Wording } from "../../core/checks/wording.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useFirstPicture } from "../../store/window/first-picture.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { ClearingHead } from "../clearing/ClearingHead.tsx";
import { FindingCounts, FindingFilters } from "./FindingFilters.tsx";
import { FindingLines } from "./FindingLines.tsx";
import { useFindingNews } from "./finding-news.ts";
import {
  type FindingFilter,
  type FindingRow,
  countOf,
  filtered,
  findingRowSteps,
  findingSteps,
  isFiltering,
} from "./finding-rows.ts";
import { useFindingsState } from "./findings-state.ts";
import { newsWords } from "./findings-words.ts";
import { useShownResult, useWording } from "../state/use-shown-plan.ts";
import type { Steps } from "../state/slices.ts";
import { useSliced } from "../state/use-sliced.ts";
import * as texts from "./words.ts";
import "./findings.css";

/** In the place of a part that cannot be fetched: the findings themselves stay in sight. */
function NotLoaded() {
  return <p className="soft">{texts.partFindingsCouldNot}</p>;
}
const notLoaded = { default: NotLoaded };

/** How the plan is read and what the field changed: only for plans with a record. */
const GrownHead = lazy(() =>
  import("../grown/GrownHead.tsx").then(
    ({ GrownHead: Loaded }) => ({ default: Loaded }),
    () => notLoaded,
  ),
);

const AcceptedFindings = lazy(() =>
  import("./AcceptedFindings.tsx").then(
    ({ AcceptedFindings: Loaded }) => ({ default: Loaded }),
    () => notLoaded,
  ),
);

/** On what the clear pairs rest, and on what not: only where there is no conflict. */
const Resting = lazy(() =>
  import("../clearing/Resting.tsx").then(
    ({ Resting: Loaded }) => ({ default: Loaded }),
    () => notLoaded,
  ),
);

/** Lines listed before "show more": a field full of conflicts must not slow the drag. */
const FIRST_LINES = 60;

/** The counts follow every frame of a gesture that moves few things; the lines as often as there is time for them. */
export function Findings() {
  const openings = usePlanStore((state) => state.openings);
  return (
    <section className="region findings" aria-labelledby="findings-heading">
      <header className="region-head">
        <h2 id="findings-heading" tabIndex={-1}>
          {texts.findings}
        </h2>
        <FindingCounts />
      </header>
      <Reading />
      <ClearingHead />
      <FindingFilters />
      <LastChange />
      <FindingList key={openings} />
    </section>
  );
}

function Reading() {
  const hasRecord = usePlanStore(
    ({ plan, reading }) => plan.entries.length > 0 || reading !== null,
  );
  const isPainted = useFirstPicture((state) => state.isPainted);
  if (!hasRecord) return null;
  // Its room is kept, so that the findings stay where they are when it comes.
  const room = <div className="reading-room" />;
  return (
    <Suspense fallback={room}>{isPainted ? <GrownHead onWaysOut={askWaysOut} /> : room}</Suspense>
  );
}

function askWaysOut(findingId: string): void {
  useWindowStore.getState().showFinding(findingId);
  useFindingsState.getState().askWaysOut(findingId);
}

/** What the last kept change cleared and brought. */
function LastChange() {
  const { fresh, cleared, clearedTitles } = useFindingNews();
  const words = newsWords(cleared, fresh.size);
  if (words === "") return null;
  if (cleared === 0) return <p className="finding-news">{words}</p>;
  return (
    <details className="finding-news">
      <summary>{words}</summary>
      <ul className="plain-list">
        {clearedTitles.map((title) => (
          <li key={title}>{texts.cleared(title)}</li>
        ))}
        {cleared > clearedTitles.length && <li>{texts.andMore(cleared - clearedTitles.length)}</li>}
      </ul>
    </details>
  );
}

const FindingList = memo(function FindingList() {
  const result = useDeferredValue(useShownResult());
  const wording = useDeferredValue(useWording());
  const [isAllShown, setAllShown] = useState(false);
  const filter = useFindingFilter();
  const { accepted, counts } = result;
  const { rows, hidden, named } = useRows(result, filter, wording);
  const isPainted = useFirstPicture((state) => state.isPainted);
  const shown = isAllShown ? rows : rows.slice(0, FIRST_LINES);
  return (
    <>
      {counts.conflict === 0 && <Resting result={result} />}
      <FindingLines rows={shown} wording={named} />
      {shown.length < rows.length && (
        <button type="button" className="quiet" onClick={() => setAllShown(true)}>
          {texts.showMore(rows.length - shown.length)}
        </button>
      )}
      {hidden > 0 && isFiltering(filter) && (
        <p className="soft">
          {texts.leftOut(hidden)}
          <button
            type="button"
            className="act"
            onClick={() => useFindingsState.getState().showAll()}
          >
            {texts.showAll}
          </button>
        </p>
      )}
      {accepted.length > 0 && isPainted && (
        <Suspense fallback={null}>
          <AcceptedFindings accepted={accepted} wording={wording} />
        </Suspense>
      )}
    </>
  );
});

/** From so many on the lines are worked out between frames. */
const MANY_FINDINGS = 2000;

interface Rows {
  readonly rows: readonly FindingRow[];
  /** How many findings the filter leaves out. */
  readonly hidden: number;
  /** Names of what the rows are about: of the same checks as they. */
  readonly named: Wording;
}

function* rowSteps(result: CheckResult, filter: FindingFilter, named: Wording): Steps<Rows> {
  yield* findingSteps(result);
  const { findings } = result;
  yield;
  const left = filtered(findings, filter);
  yield;
  const rows = yield* findingRowSteps(left);
  return { rows, hidden: findings.length - left.length, named };
}

function useRows(result: CheckResult, filter: FindingFilter, wording: Wording): Rows {
  const make = useCallback(() => rowSteps(result, filter, wording), [result, filter, wording]);
  const isLong = countOf(result) >= MANY_FINDINGS;
  return useSliced(make, isLong, { rows: [], hidden: 0, named: wording });
}

function useFindingFilter() {
  const without = useFindingsState((state) => state.without);
  const check = useFindingsState((state) => state.check);
  const isSelectionOnly = useFindingsState((state) => state.isSelectionOnly);
  const selection = useWindowStore((state) => (isSelectionOnly ? state.selection : null));
  return useMemo(
    () => ({ without, check, about: selection && new Set(selection) }),
    [without, check, selection],
  );
}
