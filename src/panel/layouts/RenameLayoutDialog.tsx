import { useState } from "react";
import { renameLayout } from "../../core/edits/layout-edits.ts";
import { Dialog } from "../form/Dialog.tsx";
import { TextField } from "../form/TextField.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { onFormSubmit } from "../form/use-form.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { commit } from "../state/plan-actions.ts";
import * as texts from "./dialog-words.ts";

interface RenameLayoutDialogProps {
  readonly id: string;
  readonly onClose: () => void;
}

export function RenameLayoutDialog({ id, onClose }: RenameLayoutDialogProps) {
  const layouts = useShownPlan().layouts;
  const old = layouts.find((layout) => layout.id === id)?.name ?? "";
  const [name, setName] = useState(old);
  const apply = (text: string) => {
    const next = text.trim();
    const problem = nameProblem(next, { isNeeded: texts.layoutNeedsName });
    if (problem !== null) return problem;
    if (layouts.some((layout) => layout.id !== id && layout.name === next)) {
      return texts.nameTaken(next);
    }
    setName(next);
    return null;
  };
  const rename = () => {
    if (name !== old) commit(renameLayout(id, name));
    onClose();
  };
  return (
    <Dialog title={texts.renameLayout} onClose={onClose}>
      <form className="fields" noValidate onSubmit={onFormSubmit(rename)}>
        <TextField label={texts.name} value={name} isWide onApply={apply} />
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {texts.apply}
          </button>
        </p>
      </form>
    </Dialog>
  );
}
