import { useState } from "react";
import type { NextSeasonFault } from "../../core/seasons/next-season-faults.ts";
import { faultWords } from "../../core/seasons/season-words.ts";
import { planBook } from "../../core/kinds/own-kinds.ts";
import type { Plan } from "../../core/model/plan.ts";
import { openStored } from "../../store/keeping/switch-plan.ts";
import * as texts from "./words.ts";

interface NextSeasonFaultsProps {
  readonly plan: Plan;
  readonly faults: readonly NextSeasonFault[];
  /** Why the plan made could not be opened, or null. */
  readonly fault: string | null;
  readonly onOpened: () => void;
}

/** Why nothing can be made as chosen, and the plan that is there already to be opened. */
export function NextSeasonFaults({ plan, faults, fault, onOpened }: NextSeasonFaultsProps) {
  const [refusal, setRefusal] = useState<string | null>(null);
  if (faults.length === 0 && fault === null) return null;
  const open = async (planId: string) => {
    const found = await openStored(planId).catch(() => "damaged" as const);
    if (found === "found") onOpened();
    else if (found !== "kept-open") setRefusal(texts.planUnreadable);
  };
  return (
    <div role="alert">
      {faults.map((each) => {
        const words = faultWords(each, plan, planBook(plan));
        return (
          <div key={words}>
            <p className="field-reason">{words}</p>
            {each.what === "is there already" && (
              <p>
                <button type="button" onClick={() => void open(each.plan.planId)}>
                  {texts.open(each.plan.title)}
                </button>
              </p>
            )}
          </div>
        );
      })}
      {fault !== null && <p className="field-reason">{texts.planCouldNotMade(fault)}</p>}
      {refusal !== null && <p className="field-reason">{refusal}</p>}
    </div>
  );
}
