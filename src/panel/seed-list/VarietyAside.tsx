import { Suspense, lazy } from "react";
import type { Variety } from "../../core/model/plan.ts";
import { blankOwnKind } from "../kinds/own-kind-edit.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./dialog-words.ts";

const FigureDialog = lazy(async () => {
  const { FigureDialog: Loaded } = await import("../figures/FigureDialog.tsx");
  return { default: Loaded };
});
const OwnKindDialog = lazy(async () => {
  const { OwnKindDialog: Loaded } = await import("../kinds/OwnKindDialog.tsx");
  return { default: Loaded };
});

/** What is looked up or added while a variety is being typed. */
export type Aside =
  | { readonly kind: "figures" }
  | { readonly kind: "own-kind"; readonly name: string };

interface VarietyAsideProps {
  readonly aside: Aside | null;
  readonly variety: Variety;
  readonly onFigure: (figure: string | undefined) => void;
  readonly onKind: (kindId: string) => void;
  readonly onClose: () => void;
}

/** The window over that of the variety, if one is open; what is typed in the variety's stays. */
export function VarietyAside({ aside, variety, onFigure, onKind, onClose }: VarietyAsideProps) {
  const plan = useShownPlan();
  if (aside === null) return null;
  return (
    <Suspense fallback={null}>
      {aside.kind === "figures" ? (
        <FigureDialog
          kindId={variety.kind}
          varieties={[variety.name === "" ? { ...variety, name: texts.thisVariety } : variety]}
          varietyId={variety.id}
          onPick={(_, figure) => onFigure(figure)}
          onClose={onClose}
        />
      ) : (
        <OwnKindDialog start={blankOwnKind(plan, aside.name)} onKept={onKind} onClose={onClose} />
      )}
    </Suspense>
  );
}
