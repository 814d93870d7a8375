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
      <StepButton of={undo} step={back} />
      <StepButton of={redo} step={forward} />
    </div>
  );
}

interface StepButtonProps {
  readonly of: Command;
  /** Title of the step it goes to. */
  readonly step: string | undefined;
}

function StepButton({ of, step }: StepButtonProps) {
  const { name } = of;
  return (
    <CommandButton
      of={of}
      className="quiet"
      title={step === undefined ? texts.nothingTo(name.toLowerCase()) : `${name}: ${step}`}
      aria-label={step === undefined ? name : `${name}: ${step}`}
    >
      {name}
    </CommandButton>
  );
}
