import { describeFinding } from "../../core/checks/describe-finding.ts";
import { type Wording, severityWord } from "../../core/checks/wording.ts";
import type { Finding } from "../../core/checks/all-checks.ts";
import { withdrawAcceptance } from "../../core/edits/accept-finding.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { commit } from "../state/plan-actions.ts";

interface AcceptedFindingsProps {
  readonly accepted: readonly Finding[];
  readonly wording: Wording;
}

/** Findings the grower lives with; each can be taken back. */
export function AcceptedFindings({ accepted, wording }: AcceptedFindingsProps) {
  const plan = useShownPlan();
  return (
    <details className="accepted">
      <summary>{accepted.length} accepted</summary>
      <ul className="plain-list">
        {accepted.map((finding) => {
          const { title } = describeFinding(finding, wording);
          const reason = plan.accepted.find((entry) => entry.finding === finding.id)?.reason;
          return (
            <li key={finding.id} className="accepted-row">
              <h3>
                {title} <span className="soft">({severityWord[finding.severity]})</span>
              </h3>
              <p>Accepted because: {reason}</p>
              <button
                type="button"
                className="link"
                aria-label={`Take back: ${title}`}
                onClick={() => commit(withdrawAcceptance(finding.id))}
              >
                Take back
              </button>
            </li>
          );
        })}
      </ul>
    </details>
  );
}
