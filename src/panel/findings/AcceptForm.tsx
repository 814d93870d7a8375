import { useId, useState } from "react";
import { acceptanceOf, earlierReason } from "../../core/checks/acceptance.ts";
import { acceptFinding } from "../../core/edits/accept-finding.ts";
import { onFormSubmit } from "../form/use-form.ts";
import { commit, planNow } from "../state/plan-actions.ts";

interface AcceptFormProps {
  readonly findingId: string;
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
  const [earlier] = useState(() => {
    const { plan, layoutId } = planNow();
    return earlierReason(plan, layoutId, props.findingId);
  });
  const [reason, setReason] = useState(earlier ?? "");
  const [isMissing, setMissing] = useState(false);
  const accept = () => {
    if (reason.trim() === "") {
      setMissing(true);
      return;
    }
    // A way out that is only tried has taken the finding away.
    planNow().cancelPreview();
    const { result, layoutId } = planNow();
    const finding = result.findings.find(({ id }) => id === props.findingId);
    if (finding) commit(acceptFinding(acceptanceOf(finding, layoutId, reason.trim())));
    props.onAccepted?.();
    document.getElementById("findings-heading")?.focus();
  };
  return (
    <form className={props.className} noValidate onSubmit={onFormSubmit(accept)}>
      {earlier !== null && (
        <p className="field-hint">
          Accepted before. It has become worse since, or an older file did not keep how near it was.
        </p>
      )}
      <label htmlFor={fieldId}>{props.label}</label>
      <input
        id={fieldId}
        type="text"
        maxLength={400}
        value={reason}
        aria-invalid={isMissing || undefined}
        aria-describedby={isMissing ? `${fieldId}-reason` : undefined}
        onChange={(event) => {
          setReason(event.target.value);
          setMissing(false);
        }}
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
