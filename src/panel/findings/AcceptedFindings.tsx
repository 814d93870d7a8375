import { describeFinding, type Finding } from "../../core/checks/all-checks.ts";
import { type Wording, severityWord } from "../../core/checks/wording.ts";
import { acceptanceFor } from "../../core/checks/acceptance.ts";
import { withdrawAcceptance } from "../../core/edits/accept-finding.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { commit } from "../state/plan-actions.ts";
import * as texts from "./dialog-words.ts";

interface AcceptedFindingsProps {
  readonly accepted: readonly Finding[];
  readonly wording: Wording;
}

/** Findings the grower lives with; each can be taken back. */
export function AcceptedFindings({ accepted, wording }: AcceptedFindingsProps) {
  const plan = useShownPlan();
  const layoutId = usePlanStore((state) => state.layoutId);
  return (
    <details className="accepted">
      <summary>{texts.accepted(accepted.length)}</summary>
      <ul className="plain-list">
        {accepted.map((finding) => {
          const { title } = describeFinding(finding, wording);
          const reason = acceptanceFor(plan, layoutId, finding)?.reason;
          return (
            <li key={finding.id} className="accepted-row">
              <h3>
                {title} <span className="soft">({severityWord[finding.severity]})</span>
              </h3>
              <p>{texts.acceptedBecause(reason ?? "")}</p>
              <button
                type="button"
                className="act"
                aria-label={texts.reset(title)}
                onClick={() => commit(withdrawAcceptance(finding.id, layoutId))}
              >
                {texts.reset2}
              </button>
            </li>
          );
        })}
      </ul>
    </details>
  );
}
