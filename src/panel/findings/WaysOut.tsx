import { useEffect, useId, useMemo, useRef, useState } from "react";
import type { Edit } from "../../core/edits/edit.ts";
import { type PlanState, usePlanStore } from "../../store/plan/plan-store.ts";
import type { Remedy } from "../../core/remedies/remedy.ts";
import { previewHere } from "../state/followed-plan.ts";
import { commit, planNow, useKept, windowNow } from "../state/plan-actions.ts";
import { type ShownRemedy, effectOf, remediesNow } from "./remedies-now.ts";
import { CROSSING_CAUTION } from "../../core/crossing-share/share-words.ts";
import { wayWords } from "../../core/remedies/way-words.ts";
import { AcceptForm } from "./AcceptForm.tsx";
import { EstimateLines } from "./EstimateLines.tsx";
import { useFindingsState } from "./findings-state.ts";
import { waysOutWords as words } from "./ways-out-words.ts";

/** Of one sort of way the first few are listed at once; the others are counted and unfolded. */
const FIRST_OF_A_WAY = 3;
/** Other conflicts cleared are named at once up to so many; more are counted and unfolded. */
const NAMED_MOST = 2;

/**
 * Verified ways out of one conflict, below its line. Each can be tried on the sheet before it is
 * kept; the list loses the finding while a way out is tried.
 */
export function WaysOut({ findingId }: { readonly findingId: string }) {
  const kept = useKept();
  const headingId = useId();
  const heading = useRef<HTMLHeadingElement>(null);
  const tried = usePlanStore(triedEdit);
  const { title, remedies, tangle, crossing } = useMemo(
    () => remediesNow(kept, findingId),
    [kept, findingId],
  );
  const hasShares = remedies.some(({ shareWords }) => shareWords !== null);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    // The finding above comes to the top of its list: else only the heading would be in sight.
    const own = heading.current?.closest("li");
    (own?.previousElementSibling ?? own)?.scrollIntoView({ block: "start" });
    return putBack;
  }, []);
  useEscape(tried !== null, putBack);
  return (
    <section className="ways-out" aria-labelledby={headingId}>
      <header className="region-head">
        <h3 id={headingId} ref={heading} tabIndex={-1}>
          {words.heading}
        </h3>
        <button type="button" className="quiet" onClick={close}>
          {words.close}
        </button>
      </header>
      {title === null && <p>{words.gone}</p>}
      <OnTrial remedy={remedies.find(({ edit }) => edit === tried)} />
      {title !== null && remedies.length === 0 && <p>{wayWords.noneAlone}</p>}
      <TangleLine sentences={tangle} />
      {crossing && (
        <details className="way-out">
          <summary>{words.crossingAt(crossing.name)}</summary>
          <EstimateLines words={crossing.words} hasCaution={!hasShares} />
        </details>
      )}
      <WayOutList remedies={remedies} tried={tried} />
      {title !== null && (
        <AcceptForm
          findingId={findingId}
          className="way-out"
          label={words.accept}
          submitLabel={words.acceptWithReason}
          onAccepted={close}
        />
      )}
    </section>
  );
}

interface WayOutListProps {
  readonly remedies: readonly ShownRemedy[];
  /** What is on trial on the sheet, if anything. */
  readonly tried: Edit | null;
}

function WayOutList({ remedies, tried }: WayOutListProps) {
  const [isAllShown, setAllShown] = useState(false);
  const shown = isAllShown ? remedies : firstOfEach(remedies);
  const tryOut = (remedy: Remedy) => {
    if (tried === remedy.edit) putBack();
    else tryOnSheet(remedy);
  };
  return (
    <>
      {remedies.some(({ shareWords }) => shareWords !== null) && (
        <p className="way-out-notes">{CROSSING_CAUTION}</p>
      )}
      {remedies.length > 1 && <p className="way-out-notes">{words.ranked}</p>}
      <ul className="plain-list">
        {shown.map((remedy) => (
          <WayOut
            key={remedy.id}
            remedy={remedy}
            isTried={tried === remedy.edit}
            onTry={() => tryOut(remedy)}
            onKeep={() => apply(remedy)}
          />
        ))}
      </ul>
      {shown.length < remedies.length && (
        <button type="button" className="quiet" onClick={() => setAllShown(true)}>
          {words.more(remedies.length - shown.length)}
        </button>
      )}
    </>
  );
}

/** The best of each sort of way, in the order of all. */
function firstOfEach(remedies: readonly ShownRemedy[]): readonly ShownRemedy[] {
  const counts = new Map<string, number>();
  return remedies.filter(({ way }) => {
    const count = (counts.get(way) ?? 0) + 1;
    counts.set(way, count);
    return count <= FIRST_OF_A_WAY;
  });
}

/** On trial: the sheet marks where things lay and where they go, and brings them into view. */
function tryOnSheet({ edit, touches }: Remedy): void {
  previewHere(edit, "trial");
  windowNow().keepInView(touches);
}

/** What lies on the sheet without being kept, and both ways from there. */
function OnTrial({ remedy }: { readonly remedy: ShownRemedy | undefined }) {
  if (!remedy) return null;
  return (
    <div className="trial" role="status">
      <p>{words.onTrial(remedy.title)}</p>
      <p className="finding-actions">
        <button type="button" onClick={() => apply(remedy)}>
          {words.apply}
        </button>
        <button type="button" className="quiet" onClick={putBack}>
          {words.cancel}
        </button>
      </p>
    </div>
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

/** Keeps a way out; the list takes the focus on to the finding that then stands there. */
function apply(remedy: Remedy): void {
  commit({ ...remedy.edit, title: remedy.title });
  useFindingsState.getState().leaveSolved();
}

function close(): void {
  useFindingsState.getState().askWaysOut(null);
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
  const tryWords = isTried ? words.cancel : words.try;
  const isAsked = remedy.cost.askedOf !== null;
  return (
    <li className="way-out">
      <p className="way-out-title">
        {remedy.title}{" "}
        <span className="way-out-effect">
          {words.effect(effectOf(remedy))}
          {isAsked && `, ${words.notSure}`}
        </span>
      </p>
      {remedy.notes.length > 0 && <p className="way-out-notes">{remedy.notes.join(" ")}</p>}
      {remedy.shareWords !== null && <p className="way-out-notes">{remedy.shareWords}</p>}
      <AlsoChanges remedy={remedy} />
      <p className="finding-actions">
        <button
          type="button"
          className="act"
          aria-label={words.of(tryWords, remedy.title)}
          onClick={onTry}
        >
          {tryWords}
        </button>
        <button
          type="button"
          className="act"
          aria-label={words.of(words.apply, remedy.title)}
          onClick={onKeep}
        >
          {words.apply}
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
      {alsoClears.length > NAMED_MOST && (
        <li>
          <details>
            <summary>{words.alsoClearsMany(alsoClears.length)}</summary>
            <ul>
              {alsoClears.map((title) => (
                <li key={title}>{title}</li>
              ))}
            </ul>
          </details>
        </li>
      )}
      {alsoClears.length <= NAMED_MOST &&
        alsoClears.map((title) => <li key={title}>{wayWords.alsoClears(title)}</li>)}
      {bringsWords.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  );
}
