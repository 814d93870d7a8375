import { usePlanStore } from "../../store/plan/plan-store.ts";
import type { Command } from "../commands/command.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { redo, undo } from "../commands/edit-commands.ts";
import * as texts from "./words.ts";

/** Undo and redo; each says which step it goes to. */
export function HistoryButtons() {
  const back = usePlanStore(({ past, previewing }) =>
    previewing?.by === "trial" ? previewing.edit.title : past.at(-1)?.title,
  );
  const forward = usePlanStore((state) => state.future.at(-1)?.title);
  return (
    <div className="history" role="group" aria-label={texts.history}>
      <StepButton of={undo} step={back} nothing={texts.nothingToUndo} />
      <StepButton of={redo} step={forward} nothing={texts.nothingToRedo} />
    </div>
  );
}

interface StepButtonProps {
  readonly of: Command;
  /** Title of the step it goes to. */
  readonly step: string | undefined;
  /** Said where there is none. */
  readonly nothing: string;
}

function StepButton({ of, step, nothing }: StepButtonProps) {
  const { name } = of;
  const named = step === undefined ? null : texts.stepNamed(name, step);
  return (
    <CommandButton of={of} className="quiet" title={named ?? nothing} aria-label={named ?? name}>
      {name}
    </CommandButton>
  );
}
