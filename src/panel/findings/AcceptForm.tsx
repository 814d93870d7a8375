import { useEffect, useId, useRef, useState } from "react";
import { acceptanceOf, earlierReason } from "../../core/checks/acceptance.ts";
import { acceptFinding } from "../../core/edits/accept-finding.ts";
import { onFormSubmit } from "../form/use-form.ts";
import { commit, planNow } from "../state/plan-actions.ts";
import * as texts from "./dialog-words.ts";

interface AcceptFormProps {
  readonly findingId: string;
  readonly className: string;
  readonly label: string;
  readonly submitLabel: string;
  /** Called once the finding is accepted. */
  readonly onAccepted?: () => void;
  /** Left out where there is nothing to cancel. */
  readonly onCancel?: () => void;
  /** Whether it opens to be typed in at once. */
  readonly isFocused?: boolean;
}

/** Living with a finding takes a reason, kept in the plan. */
export function AcceptForm(props: AcceptFormProps) {
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
      {earlier !== null && <p className="field-hint">{texts.acceptedBeforeBecomeWorse}</p>}
      <ReasonField
        label={props.label}
        reason={reason}
        isMissing={isMissing}
        isFocused={props.isFocused === true}
        onType={(typed) => {
          setReason(typed);
          setMissing(false);
        }}
      />
      <p className="finding-actions">
        <button type="submit">{props.submitLabel}</button>
        {props.onCancel && (
          <button type="button" className="quiet" onClick={props.onCancel}>
            {texts.cancel}
          </button>
        )}
      </p>
    </form>
  );
}

interface ReasonFieldProps {
  readonly label: string;
  readonly reason: string;
  readonly isMissing: boolean;
  readonly isFocused: boolean;
  readonly onType: (reason: string) => void;
}

function ReasonField({ label, reason, isMissing, isFocused, onType }: ReasonFieldProps) {
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (!isFocused) return;
    field.current?.focus();
    // Its buttons as well, not the field alone.
    field.current?.form?.scrollIntoView({ block: "nearest" });
  }, [isFocused]);
  return (
    <>
      <label htmlFor={id}>{label}</label>
      <input
        ref={field}
        id={id}
        type="text"
        maxLength={400}
        value={reason}
        aria-invalid={isMissing || undefined}
        aria-describedby={isMissing ? `${id}-reason` : undefined}
        onChange={(event) => onType(event.target.value)}
      />
      {isMissing && (
        <p className="field-reason" id={`${id}-reason`} role="alert">
          {texts.typeReasonNextYear}
        </p>
      )}
    </>
  );
}
