import { useState } from "react";
import { ARRAY_MOST, type ArrayShape, arrayCount, arrayObjects } from "../../core/edits/array.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { CheckField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { LengthField } from "../form/LengthField.tsx";
import { CountField } from "../form/NumberField.tsx";
import { useForm } from "../form/use-form.ts";
import { commitNew } from "../commands/object-actions.ts";
import { commandNow } from "../state/plan-actions.ts";
import { objectNames } from "../../core/model/object-names.ts";
import * as texts from "./words.ts";

const AT_FIRST: Required<ArrayShape> = {
  columns: 2,
  rows: 1,
  gapAcrossM: 0.5,
  gapAlongM: 0.5,
  isLeftward: false,
  isNearward: false,
};

/** Copies of what is selected in rows and columns, with typed gaps from edge to edge. */
export function ArrayDialog({ onClose }: { readonly onClose: () => void }) {
  const [{ plan, layoutId, selection }] = useState(commandNow);
  const layout = layoutOf(plan, layoutId);
  const names = objectNames(plan, layout, selection);
  const { draft, set, onSubmit } = useForm({
    start: AT_FIRST,
    send: (shape) => {
      if (arrayProblem(arrayCount(plan, layout, selection, shape)) !== null) return;
      onClose();
      const title = texts.copyTitle(names, shape.rows, shape.columns);
      commitNew(arrayObjects(layoutId, selection, shape, title));
    },
  });
  const added = arrayCount(plan, layout, selection, draft);
  const problem = arrayProblem(added);
  return (
    <Dialog title={texts.copyInRows} onClose={onClose}>
      <form className="fields" noValidate onSubmit={onSubmit}>
        <p>{texts.copyDirections(names)}</p>
        <ArrayFields shape={draft} onSet={set} />
        <p role="status" className={problem === null ? "soft" : "field-reason"}>
          {problem ?? texts.addsObjects(added)}
        </p>
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {texts.addTheCopies}
          </button>
        </p>
      </form>
    </Dialog>
  );
}

/** Why so many copies are not made, or null. */
function arrayProblem(added: number): string | null {
  if (added === 0) return texts.copiesNothing;
  return added > ARRAY_MOST ? texts.copiesTooMany(added, ARRAY_MOST) : null;
}

interface ArrayFieldsProps {
  readonly shape: Required<ArrayShape>;
  readonly onSet: (change: Partial<ArrayShape>) => null;
}

function ArrayFields({ shape, onSet }: ArrayFieldsProps) {
  return (
    <>
      <div className="field-pair">
        <CountField
          label={texts.across}
          value={shape.columns}
          onApply={(columns) => onSet({ columns: Math.max(1, columns ?? 1) })}
        />
        <CountField
          label={texts.along}
          value={shape.rows}
          onApply={(rows) => onSet({ rows: Math.max(1, rows ?? 1) })}
        />
      </div>
      <div className="field-pair">
        <LengthField
          label={texts.gapAcross}
          value={shape.gapAcrossM}
          onApply={(gapAcrossM) => onSet({ gapAcrossM })}
        />
        <LengthField
          label={texts.gapAlong}
          value={shape.gapAlongM}
          onApply={(gapAlongM) => onSet({ gapAlongM })}
        />
      </div>
      <CheckField
        label={texts.toTheLeft}
        isOn={shape.isLeftward}
        onSet={(isLeftward) => onSet({ isLeftward })}
      />
      <CheckField
        label={texts.towardsNearEnd}
        isOn={shape.isNearward}
        onSet={(isNearward) => onSet({ isNearward })}
      />
    </>
  );
}
