import { changeVariety } from "../../core/edits/object-edits.ts";
import { FigureDialog } from "./FigureDialog.tsx";
import { commit } from "../state/plan-actions.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./words.ts";

interface FigurePlanDialogProps {
  readonly kindId: string | null;
  readonly varietyId: string | null;
  readonly onClose: () => void;
}

/** The figures, with the plan's varieties to pick them for. */
export function FigurePlanDialog({ kindId, varietyId, onClose }: FigurePlanDialogProps) {
  const { varieties } = useShownPlan();
  return (
    <FigureDialog
      kindId={kindId}
      varieties={varieties}
      varietyId={varietyId}
      onPick={({ id, name }, figure) =>
        commit(changeVariety(id, { figure }, texts.pickFigureFor(name)))
      }
      onClose={onClose}
    />
  );
}
