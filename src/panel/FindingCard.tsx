import { Suspense, lazy, memo, useId, useState } from "react";
import type { Severity } from "../core/checks/finding.ts";
import { acceptFinding } from "../core/edits/accept-finding.ts";
import { viewNow } from "./view-state.ts";
import { commit, planNow } from "./plan-actions.ts";

// Tries many dates: only when they are asked for.
const StaggerOffers = lazy(async () => {
  const { StaggerOffers: Loaded } = await import("./StaggerOffers.tsx");
  return { default: Loaded };
});

interface FindingCardProps {
  readonly id: string;
  readonly severity: Severity;
  readonly sign: string;
  readonly word: string;
  readonly title: string;
  readonly text: string;
  /** Ids with spaces between. */
  readonly subjects: string;
  readonly requiredM: number | null;
  /** Whether other sowing dates could clear it. */
  readonly hasDates: boolean;
  readonly isOpen: boolean;
  /** Id of the seed parent whose figures the finding rests on; null where it rests on none. */
  readonly figuresOf: string | null;
  /** Opens the ways out of the finding; null where there are none to look for. */
  readonly onWaysOut: ((id: string) => void) | null;
}

/** One finding. Only texts and numbers come in, so that a drag redraws the cards that change. */
export const FindingCard = memo(function FindingCard(props: FindingCardProps) {
  const { id, severity, sign, word, title, text, isOpen } = props;
  const [isAccepting, setAccepting] = useState(false);
  const [isDating, setDating] = useState(false);
  const show = () => {
    const ids = props.subjects.split(" ");
    planNow().select(ids);
    planNow().showFinding(id);
    viewNow().showSheet();
    planNow().bringIntoView(ids);
  };
  return (
    <li className={`finding ${severity}`} aria-current={isOpen ? "true" : undefined}>
      <h3>
        <span className="sign" aria-hidden="true">
          {sign}
        </span>
        <span className="visually-hidden">{word}: </span>
        {title}
      </h3>
      <p>{text}</p>
      <p className="finding-actions">
        <button type="button" className="link" aria-label={`Show: ${title}`} onClick={show}>
          Show
        </button>
        {props.onWaysOut && (
          <button
            type="button"
            className="link"
            aria-label={`Ways out: ${title}`}
            onClick={() => props.onWaysOut?.(id)}
          >
            Ways out
          </button>
        )}
        {props.figuresOf !== null && <FiguresLink standId={props.figuresOf} title={title} />}
        {props.hasDates && (
          <button
            type="button"
            className="link"
            aria-expanded={isDating}
            aria-label={`Sowing dates: ${title}`}
            onClick={() => setDating(!isDating)}
          >
            Sowing dates
          </button>
        )}
        <button
          type="button"
          className="link"
          aria-expanded={isAccepting}
          aria-label={`Accept: ${title}`}
          onClick={() => setAccepting(!isAccepting)}
        >
          Accept
        </button>
      </p>
      {isDating && (
        <Suspense fallback={<p role="status">Looking for dates ...</p>}>
          <StaggerOffers subjects={props.subjects} />
        </Suspense>
      )}
      {isAccepting && (
        <AcceptForm id={id} requiredM={props.requiredM} onDone={() => setAccepting(false)} />
      )}
    </li>
  );
});

/** To the figures behind a finding, where another one can be picked. */
function FiguresLink({ standId, title }: { readonly standId: string; readonly title: string }) {
  const open = () => {
    const stand = planNow().result.standById.get(standId);
    if (!stand) return;
    const varietyId = stand.variety?.id ?? null;
    viewNow().ask({ kind: "figures", kindId: stand.kind.id, varietyId });
  };
  return (
    <button type="button" className="link" aria-label={`Figures: ${title}`} onClick={open}>
      Figures
    </button>
  );
}

interface AcceptFormProps {
  readonly id: string;
  readonly requiredM: number | null;
  readonly onDone: () => void;
}

/** Living with a finding takes a reason, kept in the plan. */
function AcceptForm({ id, requiredM, onDone }: AcceptFormProps) {
  const fieldId = useId();
  const [reason, setReason] = useState("");
  const [isMissing, setMissing] = useState(false);
  const accept = () => {
    if (reason.trim() === "") {
      setMissing(true);
      return;
    }
    commit(acceptFinding(id, requiredM, reason.trim()));
    document.getElementById("findings-heading")?.focus();
  };
  return (
    <form
      className="accept-form"
      onSubmit={(event) => {
        event.preventDefault();
        accept();
      }}
    >
      <label htmlFor={fieldId}>Why this is acceptable</label>
      <input
        id={fieldId}
        type="text"
        maxLength={400}
        value={reason}
        aria-invalid={isMissing || undefined}
        aria-describedby={isMissing ? `${fieldId}-reason` : undefined}
        onChange={(event) => setReason(event.target.value)}
      />
      {isMissing && (
        <p className="field-reason" id={`${fieldId}-reason`} role="alert">
          Type a reason: next year nobody remembers it
        </p>
      )}
      <p className="finding-actions">
        <button type="submit">Accept</button>
        <button type="button" className="quiet" onClick={onDone}>
          Cancel
        </button>
      </p>
    </form>
  );
}
