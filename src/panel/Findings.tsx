import { lazy, Suspense, useMemo, useState } from "react";
import { describeFinding, severitySign, severityWord } from "../core/checks/describe-finding.ts";
import { countBySeverity } from "../core/checks/run-checks.ts";
import { usePlanStore } from "../store/plan-store.ts";
import { AcceptedFindings } from "./AcceptedFindings.tsx";
import { FindingCard } from "./FindingCard.tsx";
import { countWords, figuresOf, restingWords } from "./findings-words.ts";
import { useWording } from "./use-shown-plan.ts";

/** Looked for only when asked: the arranger is not part of the first load. */
const WaysOut = lazy(async () => ({ default: (await import("./WaysOut.tsx")).WaysOut }));

/** Findings listed before "show more": a field full of conflicts must not slow the drag. */
const FIRST_FINDINGS = 40;

export function Findings() {
  const { findings, accepted } = usePlanStore((state) => state.result);
  const openFinding = usePlanStore((state) => state.openFinding);
  const wording = useWording();
  const [isAllShown, setAllShown] = useState(false);
  const [waysOutFor, setWaysOutFor] = useState<string | null>(null);
  const counts = useMemo(() => countBySeverity(findings), [findings]);
  const listed = isAllShown ? findings : findings.slice(0, FIRST_FINDINGS);
  return (
    <section className="region findings" aria-labelledby="findings-heading">
      <header className="region-head">
        <h2 id="findings-heading" tabIndex={-1}>
          Findings
        </h2>
        <p className="region-note">{countWords(counts)}</p>
      </header>
      {waysOutFor !== null && (
        <Suspense fallback={<p role="status">Looking for ways out ...</p>}>
          <WaysOut key={waysOutFor} findingId={waysOutFor} onClose={() => setWaysOutFor(null)} />
        </Suspense>
      )}
      {counts.conflict === 0 && <Resting />}
      <ul className="plain-list finding-list">
        {listed.map((finding) => {
          const { title, sentences } = describeFinding(finding, wording);
          return (
            <FindingCard
              key={finding.id}
              id={finding.id}
              severity={finding.severity}
              sign={severitySign[finding.severity]}
              word={severityWord[finding.severity]}
              title={title}
              text={sentences.join(" ")}
              subjects={finding.subjects.join(" ")}
              requiredM={finding.requiredM}
              hasDates={finding.check === "isolation"}
              isOpen={finding.id === openFinding}
              figuresOf={figuresOf(finding)}
              onWaysOut={finding.check === "isolation" ? setWaysOutFor : null}
            />
          );
        })}
      </ul>
      {listed.length < findings.length && (
        <button type="button" className="quiet" onClick={() => setAllShown(true)}>
          Show {findings.length - listed.length} more
        </button>
      )}
      {accepted.length > 0 && <AcceptedFindings accepted={accepted} wording={wording} />}
    </section>
  );
}

/** No conflict is not "all fine": on what the clear pairs rest. */
function Resting() {
  const { pairs, stands } = usePlanStore((state) => state.result);
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
