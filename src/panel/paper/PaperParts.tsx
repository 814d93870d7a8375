import {
  type PrintId,
  type PrintPart,
  printHindrance,
  printParts,
} from "../../core/files/print-list.ts";
import type { Layout, Plan } from "../../core/model/plan.ts";
import type { PaperMade } from "../../store/threads/paper-job.ts";
import { CheckField } from "../form/ChoiceField.tsx";
import type { Making } from "../form/use-making.ts";
import { pagesText, paperWords } from "./paper-words.ts";

interface PaperPartsProps {
  readonly plan: Plan;
  readonly layout: Layout;
  readonly ticked: readonly PrintId[];
  readonly pages: Making<PaperMade>;
  readonly onSet: (ticked: readonly PrintId[]) => void;
}

/** Each thing that can be printed, with how many pages it takes; what cannot be says why. */
export function PaperParts({ plan, layout, ticked, pages, onSet }: PaperPartsProps) {
  const labelOf = ({ id, title }: PrintPart) => {
    const made = pages.kind === "made" ? pages.made.parts.find((part) => part.id === id) : null;
    return made ? `${title}: ${pagesText(made.pages.length)}` : title;
  };
  return (
    <fieldset className="fields">
      <legend>{paperWords.parts}</legend>
      {printParts.map((part) => {
        const hindrance = printHindrance(part.id, plan, layout);
        if (hindrance !== null) {
          return (
            <p key={part.id} className="field-hint">
              {part.title}: {hindrance}.
            </p>
          );
        }
        const others = ticked.filter((id) => id !== part.id);
        return (
          <CheckField
            key={part.id}
            label={labelOf(part)}
            isOn={ticked.includes(part.id)}
            onSet={(isOn) => onSet(isOn ? [...others, part.id] : others)}
          />
        );
      })}
      <p className="field-hint">{paperWords.labelsApart}</p>
    </fieldset>
  );
}
