import { memo, useId, useState } from "react";
import type { Severity } from "../core/checks/finding.ts";
import { acceptFinding } from "../core/edits/accept-finding.ts";
import { viewNow } from "./view-state.ts";
import { commit, planNow } from "./plan-actions.ts";

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
  readonly isOpen: boolean;
  /** Opens the ways out of the finding; null where there are none to look for. */
  readonly onWaysOut: ((id: string) => void) | null;
}

/** One finding. Only texts and numbers come in, so that a drag redraws the cards that change. */
export const FindingCard = memo(function FindingCard(props: FindingCardProps) {
  const { id, severity, sign, word, title, text, isOpen } = props;
  const [isAccepting, setAccepting] = useState(false);
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
      {isAccepting && (
        <AcceptForm id={id} requiredM={props.requiredM} onDone={() => setAccepting(false)} />
      )}
    </li>
  );
});

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
