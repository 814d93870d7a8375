import type { Kind } from "../../core/kinds/crop.ts";
import type { Variety } from "../../core/model/plan.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { figureLabel } from "../figures/figures-rows.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./dialog-words.ts";

interface FigureChoiceProps {
  readonly kind: Kind;
  readonly variety: Variety;
  readonly onPick: (figure: string | undefined) => void;
  /** Opens all figures of the kind with their sources. */
  readonly onRead: () => void;
}

const BY_RULE = "";

/** Which published figure a variety is held to. */
export function FigureChoice({ kind, variety, onPick, onRead }: FigureChoiceProps) {
  const { units } = useShownPlan();
  const choices = kind.isolation.map((figure) => ({
    value: figure.id,
    label: figureLabel(figure, kind, units),
  }));
  return (
    <ChoiceField
      label={texts.publishedFigure}
      value={kind.isolation.find(({ id }) => id === variety.figure)?.id ?? BY_RULE}
      choices={[{ value: BY_RULE, label: texts.byTheRule }, ...choices]}
      onPick={(figure) => onPick(figure === BY_RULE ? undefined : figure)}
      hint={
        <button type="button" className="link" onClick={onRead}>
          {texts.allFiguresSources(kind.name)}
        </button>
      }
    />
  );
}
