import { useId, useState } from "react";
import { acceptFinding } from "../core/edits/accept-finding.ts";
import { onFormSubmit } from "./form-submit.ts";
import { commit } from "./plan-actions.ts";

interface WaysOutAcceptProps {
  readonly findingId: string;
  readonly requiredM: number | null;
  readonly onDone: () => void;
}

/** The last way out: living with it, for a reason that is kept in the plan. */
export function WaysOutAccept({ findingId, requiredM, onDone }: WaysOutAcceptProps) {
  const fieldId = useId();
  const [reason, setReason] = useState("");
  const [isMissing, setMissing] = useState(false);
  const accept = () => {
    if (reason.trim() === "") {
      setMissing(true);
      return;
    }
    commit(acceptFinding(findingId, requiredM, reason.trim()));
    onDone();
    document.getElementById("findings-heading")?.focus();
  };
  return (
    <form className="way-out" noValidate onSubmit={onFormSubmit(accept)}>
      <label htmlFor={fieldId}>Or accept it, because</label>
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
        <button type="submit">Accept with this reason</button>
      </p>
    </form>
  );
}
