import { lazy, memo, Suspense, useDeferredValue, useMemo, useState } from "react";
import { checkOf, describeFinding } from "../../core/checks/all-checks.ts";
import { severitySign, severityWord } from "../../core/checks/wording.ts";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { AcceptedFindings } from "./AcceptedFindings.tsx";
import { mayTryYears } from "./YearsButton.tsx";
import { FindingCard } from "./FindingCard.tsx";
import { countWords, countsOf, restingWords } from "./findings-words.ts";
import { useShownResult, useWording } from "../state/use-shown-plan.ts";
import "./findings.css";

/** Looked for only when asked: the arranger is not part of the first load. */
const WaysOut = lazy(async () => ({ default: (await import("./WaysOut.tsx")).WaysOut }));

/** Findings listed before "show more": a field full of conflicts must not slow the drag. */
const FIRST_FINDINGS = 40;

/** The counts follow every frame of a gesture; the cards as often as there is time for them. */
export function Findings() {
  const [waysOutFor, setWaysOutFor] = useState<string | null>(null);
  return (
    <section className="region findings" aria-labelledby="findings-heading">
      <header className="region-head">
        <h2 id="findings-heading" tabIndex={-1}>
          Findings
        </h2>
        <FindingCounts />
      </header>
      {waysOutFor !== null && (
        <Suspense fallback={<p role="status">Looking for ways out ...</p>}>
          <WaysOut key={waysOutFor} findingId={waysOutFor} onClose={() => setWaysOutFor(null)} />
        </Suspense>
      )}
      <FindingList onWaysOut={setWaysOutFor} />
    </section>
  );
}

function FindingCounts() {
  const words = usePlanStore((state) => countWords(countsOf(state.result.findings)));
  return <p className="region-note">{words}</p>;
}

interface FindingListProps {
  readonly onWaysOut: (id: string) => void;
}

const FindingList = memo(function FindingList({ onWaysOut }: FindingListProps) {
  const result = useDeferredValue(useShownResult());
  const wording = useDeferredValue(useWording());
  const openFinding = useWindowStore((state) => state.openFinding);
  const [isAllShown, setAllShown] = useState(false);
  const { findings, accepted } = result;
  const described = useMemo(
    () =>
      (isAllShown ? findings : findings.slice(0, FIRST_FINDINGS)).map((finding) => ({
        finding,
        check: checkOf(finding),
        words: describeFinding(finding, wording),
      })),
    [findings, wording, isAllShown],
  );
  return (
    <>
      {!findings.some((finding) => finding.severity === "conflict") && <Resting result={result} />}
      <ul className="plain-list finding-list">
        {described.map(({ finding, check, words: { title, sentences } }) => (
          <FindingCard
            key={finding.id}
            id={finding.id}
            severity={finding.severity}
            sign={severitySign[finding.severity]}
            word={severityWord[finding.severity]}
            title={title}
            text={sentences.join(" ")}
            subjects={finding.subjects.join(" ")}
            hasDates={check.hasWaysOut === true}
            hasYears={
              (finding.check === "isolation" || finding.check === "unsure-time") &&
              mayTryYears(finding.subjects.map(wording.standOf))
            }
            isOpen={finding.id === openFinding}
            figuresOf={check.figuresOf?.(finding) ?? null}
            onWaysOut={check.hasWaysOut === true ? onWaysOut : null}
          />
        ))}
      </ul>
      {described.length < findings.length && (
        <button type="button" className="quiet" onClick={() => setAllShown(true)}>
          Show {findings.length - described.length} more
        </button>
      )}
      {accepted.length > 0 && <AcceptedFindings accepted={accepted} wording={wording} />}
    </>
  );
});

/** No conflict is not "all fine": on what the clear pairs rest. */
function Resting({ result: { pairs, stands } }: { readonly result: CheckResult }) {
  const sentences = useMemo(
    () => restingWords(pairs, stands.filter((stand) => stand.shedsPollen).length),
    [pairs, stands],
  );
  const isClear = stands.length > 0 && !pairs.some((pair) => pair.standing === "unknown");
  return (
    <div className={isClear ? "resting" : "resting undecided"}>
      {stands.length > 0 && (
        <p>{isClear ? "No conflict." : "No conflict found, but not all is known."}</p>
      )}
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </div>
  );
}
