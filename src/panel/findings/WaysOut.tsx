import { useEffect, useId, useMemo } from "react";
import type { Edit } from "../../core/edits/edit.ts";
import { type PlanState, usePlanStore } from "../../store/plan/plan-store.ts";
import type { Remedy } from "../../core/remedies/remedy.ts";
import { previewHere } from "../state/followed-plan.ts";
import { commit, planNow, useKept } from "../state/plan-actions.ts";
import { type ShownRemedy, effectWords, remediesNow } from "./remedies-now.ts";
import { CROSSING_CAUTION } from "../../core/crossing-share/share-words.ts";
import { AcceptForm } from "./AcceptForm.tsx";
import { EstimateLines } from "./EstimateLines.tsx";

interface WaysOutProps {
  readonly findingId: string;
  readonly onClose: () => void;
}

/**
 * Verified ways out of one conflict. Each can be tried on the sheet before it is kept; it stands
 * apart from the list of findings, which loses the finding while a way out is tried.
 */
export function WaysOut({ findingId, onClose }: WaysOutProps) {
  const kept = useKept();
  const headingId = useId();
  const tried = usePlanStore(triedEdit);
  const { title, remedies, tangle, crossing } = useMemo(
    () => remediesNow(kept, findingId),
    [kept, findingId],
  );
  const hasShares = remedies.some(({ shareWords }) => shareWords !== null);
  useEffect(() => putBack, []);
  useEscape(tried !== null, putBack);
  return (
    <section className="ways-out" aria-labelledby={headingId}>
      <header className="region-head">
        <h3 id={headingId}>Ways out</h3>
        <button type="button" className="quiet" onClick={onClose}>
          Close
        </button>
      </header>
      <p>{title ?? "This conflict is no longer there."}</p>
      <OnTrial title={remedies.find(({ edit }) => edit === tried)?.title} />
      {title !== null && remedies.length === 0 && (
        <p>
          No single change clears it. Move what stands around it first, or widen the time between
          the blooms of both.
        </p>
      )}
      <TangleLine sentences={tangle} />
      {crossing && (
        <details className="way-out">
          <summary>How much would cross at {crossing.name}</summary>
          <EstimateLines words={crossing.words} hasCaution={!hasShares} />
        </details>
      )}
      <WayOutList remedies={remedies} tried={tried} onDone={onClose} />
      {title !== null && (
        <AcceptForm
          findingId={findingId}
          className="way-out"
          label="Or accept it, because"
          submitLabel="Accept with this reason"
          onAccepted={onClose}
        />
      )}
    </section>
  );
}

interface WayOutListProps {
  readonly remedies: readonly ShownRemedy[];
  /** What is on trial on the sheet, if anything. */
  readonly tried: Edit | null;
  readonly onDone: () => void;
}

function WayOutList({ remedies, tried, onDone }: WayOutListProps) {
  const tryOut = (remedy: Remedy) => {
    if (tried === remedy.edit) putBack();
    else previewHere(remedy.edit, "trial");
  };
  const keep = (remedy: Remedy) => {
    commit({ ...remedy.edit, title: remedy.title });
    onDone();
  };
  return (
    <>
      {remedies.some(({ shareWords }) => shareWords !== null) && (
        <p className="way-out-notes">{CROSSING_CAUTION}</p>
      )}
      <ul className="plain-list">
        {remedies.map((remedy) => (
          <WayOut
            key={remedy.title}
            remedy={remedy}
            isTried={tried === remedy.edit}
            onTry={() => tryOut(remedy)}
            onKeep={() => keep(remedy)}
          />
        ))}
      </ul>
    </>
  );
}

function OnTrial({ title }: { readonly title: string | undefined }) {
  if (title === undefined) return null;
  return (
    <p className="trial" role="status">
      On trial on the sheet, not kept: {title}. Do it keeps it; Escape puts it back.
    </p>
  );
}

/** How many of those tangled in conflicts can stay at most; nothing where none are. */
function TangleLine({ sentences: [first, ...more] }: { readonly sentences: readonly string[] }) {
  if (first === undefined) return null;
  return (
    <details className="way-out">
      <summary>{first}</summary>
      <p className="way-out-notes">{more.join(" ")}</p>
    </details>
  );
}

/** What stands on the sheet on trial; a drag or another change in its place is none. */
function triedEdit({ previewing }: PlanState): Edit | null {
  return previewing?.by === "trial" ? previewing.edit : null;
}

function putBack(): void {
  const { previewing, cancelPreview } = planNow();
  if (previewing?.by === "trial") cancelPreview();
}

/** Calls back on Escape while something is on trial; a dialog above keeps its own Escape. */
function useEscape(isOnTrial: boolean, onEscape: () => void): void {
  useEffect(() => {
    if (!isOnTrial) return;
    const listen = (event: KeyboardEvent) => {
      if (event.key === "Escape" && !document.querySelector("dialog[open]")) onEscape();
    };
    window.addEventListener("keydown", listen);
    return () => window.removeEventListener("keydown", listen);
  }, [isOnTrial, onEscape]);
}

interface WayOutProps {
  readonly remedy: ShownRemedy;
  readonly isTried: boolean;
  readonly onTry: () => void;
  readonly onKeep: () => void;
}

function WayOut({ remedy, isTried, onTry, onKeep }: WayOutProps) {
  const tryWords = isTried ? "Put back" : "Try on the sheet";
  return (
    <li className="way-out">
      <p className="way-out-title">
        {remedy.title} <span className="way-out-effect">{effectWords(remedy)}</span>
      </p>
      {remedy.notes.length > 0 && <p className="way-out-notes">{remedy.notes.join(" ")}</p>}
      {remedy.shareWords !== null && <p className="way-out-notes">{remedy.shareWords}</p>}
      <AlsoChanges remedy={remedy} />
      <p className="finding-actions">
        <button
          type="button"
          className="link"
          aria-label={`${tryWords}: ${remedy.title}`}
          onClick={onTry}
        >
          {tryWords}
        </button>
        <button
          type="button"
          className="link"
          aria-label={`Do it: ${remedy.title}`}
          onClick={onKeep}
        >
          Do it
        </button>
      </p>
    </li>
  );
}

/** Other conflicts it clears and findings it brings, by name. */
function AlsoChanges({ remedy }: { readonly remedy: ShownRemedy }) {
  const { alsoClears, bringsWords } = remedy;
  if (alsoClears.length + bringsWords.length === 0) return null;
  return (
    <ul className="way-out-notes plain-list">
      {alsoClears.map((words) => (
        <li key={words}>Also clears: {words}</li>
      ))}
      {bringsWords.map((words) => (
        <li key={words}>{words}</li>
      ))}
    </ul>
  );
}
