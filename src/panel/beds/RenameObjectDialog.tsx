import { useState } from "react";
import { changeBed, changePlantings, changeSurrounding } from "../../core/edits/object-edits.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { Dialog } from "../form/Dialog.tsx";
import { TextField } from "../form/TextField.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { onFormSubmit } from "../form/use-form.ts";
import { codeProblem } from "./new-bed.ts";
import { commit, planNow } from "../state/plan-actions.ts";
import { selectedObjects } from "../state/selected-objects.ts";
import * as texts from "./words.ts";

interface RenameObjectDialogProps {
  readonly id: string;
  readonly onClose: () => void;
}

/** Another code for a bed or planting, another name for surroundings. */
export function RenameObjectDialog({ id, onClose }: RenameObjectDialogProps) {
  const [{ plan, layoutId }] = useState(planNow);
  const layout = layoutOf(plan, layoutId);
  const {
    beds: [bed],
    plantings: [planting],
    surroundings: [surrounding],
  } = selectedObjects(plan, layout, [id]);
  const old = bed?.code ?? planting?.code ?? surrounding?.label ?? "";
  const [name, setName] = useState(old);
  const apply = (text: string) => {
    const problem = surrounding
      ? nameProblem(text, { isNeeded: texts.nameNeeded })
      : codeProblem(layout, text, id);
    if (problem !== null) return problem;
    setName(text.trim());
    return null;
  };
  const rename = () => {
    onClose();
    if (name === old) return;
    if (bed) commit(changeBed(layoutId, id, { code: name }, texts.renameBedTo(old, name)));
    else if (planting) {
      commit(changePlantings(layoutId, [id], { code: name }, texts.renameTo(old, name)));
    } else commit(changeSurrounding(id, { label: name }, texts.renameTo(old, name)));
  };
  return (
    <Dialog title={texts.rename(old)} onClose={onClose}>
      <form className="fields" noValidate onSubmit={onFormSubmit(rename)}>
        <TextField
          label={surrounding ? texts.name : texts.code}
          value={name}
          isWide={surrounding !== undefined}
          hint={surrounding ? undefined : texts.codeHint}
          onApply={apply}
        />
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {texts.apply}
          </button>
        </p>
      </form>
    </Dialog>
  );
}
