import { useId, useState } from "react";
import { acceptFinding } from "../../core/edits/accept-finding.ts";
import { onFormSubmit } from "../form/form-submit.ts";
import { commit } from "../state/plan-actions.ts";

interface AcceptFormProps {
  readonly findingId: string;
  readonly requiredM: number | null;
  readonly className: string;
  readonly label: string;
  readonly submitLabel: string;
  /** Called once the finding is accepted. */
  readonly onAccepted?: () => void;
  /** Left out where there is nothing to cancel. */
  readonly onCancel?: () => void;
}

/** Living with a finding takes a reason, kept in the plan. */
export function AcceptForm(props: AcceptFormProps) {
  const fieldId = useId();
  const [reason, setReason] = useState("");
  const [isMissing, setMissing] = useState(false);
  const accept = () => {
    if (reason.trim() === "") {
      setMissing(true);
      return;
    }
    commit(acceptFinding(props.findingId, props.requiredM, reason.trim()));
    props.onAccepted?.();
    document.getElementById("findings-heading")?.focus();
  };
  return (
    <form className={props.className} noValidate onSubmit={onFormSubmit(accept)}>
      <label htmlFor={fieldId}>{props.label}</label>
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
        <button type="submit">{props.submitLabel}</button>
        {props.onCancel && (
          <button type="button" className="quiet" onClick={props.onCancel}>
            Cancel
          </button>
        )}
      </p>
    </form>
  );
}
