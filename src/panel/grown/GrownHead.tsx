import { usePlanStore } from "../../store/plan/plan-store.ts";
import { FieldChanges } from "./FieldChanges.tsx";
import { ReadingSwitch } from "./ReadingSwitch.tsx";
import "./grown.css";

interface GrownHeadProps {
  readonly onWaysOut: (findingId: string) => void;
}

/** At the head of the findings: how the plan is read and, as grown, what the field changed. */
export function GrownHead({ onWaysOut }: GrownHeadProps) {
  const isGrown = usePlanStore(({ reading }) => reading !== null);
  return (
    <div className="grown-head">
      <ReadingSwitch />
      {isGrown && <FieldChanges onWaysOut={onWaysOut} />}
    </div>
  );
}
