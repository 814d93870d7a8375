import { type LengthUnit, formatDistance } from "../../core/model/length.ts";
import type { OwnKind } from "../../core/model/plan.ts";
import type { ClashAnswer, KindClash } from "../../core/edits/kinds-brought.ts";
import { Dialog } from "../form/Dialog.tsx";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { clashesOf, pasteText } from "./clipboard-actions.ts";
import * as texts from "./words.ts";
import { levelNames } from "../../core/words/level-words.ts";

interface PasteKindsDialogProps {
  readonly text: string;
  readonly onClose: () => void;
}

/** Asks which figures count, where a kind that is pasted has others in this plan. */
export function PasteKindsDialog({ text, onClose }: PasteKindsDialogProps) {
  const unit = useShownPlan().units;
  const clashes = clashesOf(text);
  const paste = (answer: ClashAnswer) => {
    onClose();
    pasteText(text, answer);
  };
  const names = clashes.map(({ copied }) => copied.name).join(", ");
  const isAllBuiltIn = clashes.every(({ isBuiltIn }) => isBuiltIn);
  return (
    <Dialog title={texts.twoKindsOneName} onClose={onClose}>
      <div className="fields">
        <p>{texts.otherFigures}</p>
        <ul>
          {clashes.map((clash) => (
            <li key={clash.copied.id}>{clashText(clash, unit)}</li>
          ))}
        </ul>
        <p className="dialog-actions">
          <button type="button" className="primary" onClick={() => paste("here")}>
            {texts.figuresOfPlan}
          </button>
          <button type="button" onClick={() => paste("copied")}>
            {isAllBuiltIn ? texts.figuresCopied(names) : texts.addCopiedKindsBeside}
          </button>
          <button type="button" onClick={onClose}>
            {texts.cancel}
          </button>
        </p>
      </div>
    </Dialog>
  );
}

function clashText({ copied, here }: KindClash, unit: LengthUnit): string {
  const there = distancesText(copied, unit);
  return here
    ? texts.clashWithPlan(copied.name, there, distancesText(here, unit))
    : texts.clashWithBase(copied.name, there);
}

function distancesText({ isolationM }: OwnKind, unit: LengthUnit): string {
  const parts = (["home", "sale", "stock"] as const).flatMap((level) => {
    const metres = isolationM[level];
    return metres === undefined
      ? []
      : [texts.distanceFor(formatDistance(metres, unit), levelNames[level])];
  });
  return parts.length === 0 ? texts.noDistance : parts.join(", ");
}
