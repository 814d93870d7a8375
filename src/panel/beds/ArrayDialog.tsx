import { useState } from "react";
import { ARRAY_MOST, type ArrayShape, arrayCount, arrayObjects } from "../../core/edits/array.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { CheckField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { LengthField } from "../form/LengthField.tsx";
import { CountField } from "../form/NumberField.tsx";
import { onFormSubmit } from "../form/form-submit.ts";
import { commitNew } from "../commands/object-actions.ts";
import { commandNow } from "../state/plan-actions.ts";
import { objectNames } from "../../core/model/object-names.ts";

/** Copies of what is selected in rows and columns, with typed gaps from edge to edge. */
export function ArrayDialog({ onClose }: { readonly onClose: () => void }) {
  const [{ plan, layoutId, selection }] = useState(commandNow);
  const layout = layoutOf(plan, layoutId);
  const names = objectNames(plan, layout, selection);
  const [shape, setShape] = useState<Required<ArrayShape>>({
    columns: 2,
    rows: 1,
    gapAcrossM: 0.5,
    gapAlongM: 0.5,
    isLeftward: false,
    isNearward: false,
  });
  const set = (change: Partial<ArrayShape>) => {
    setShape((before) => ({ ...before, ...change }));
    return null;
  };
  const added = arrayCount(plan, layout, selection, shape);
  const problem =
    added === 0
      ? "One row of one is what there is already"
      : added > ARRAY_MOST
        ? `That would add ${added} objects; at most ${ARRAY_MOST} are added at once`
        : null;
  const draw = () => {
    if (problem !== null) return;
    onClose();
    const title = `Copy ${names} in ${shape.rows} x ${shape.columns}`;
    commitNew(arrayObjects(layoutId, selection, shape, title));
  };
  return (
    <Dialog title="Copy in rows and columns" onClose={onClose}>
      <form className="fields" noValidate onSubmit={onFormSubmit(draw)}>
        <p>{names}: directions are those of the first of them, across and along its length.</p>
        <div className="field-pair">
          <CountField
            label="Across"
            value={shape.columns}
            onApply={(columns) => set({ columns: Math.max(1, columns ?? 1) })}
          />
          <CountField
            label="Along"
            value={shape.rows}
            onApply={(rows) => set({ rows: Math.max(1, rows ?? 1) })}
          />
        </div>
        <div className="field-pair">
          <LengthField
            label="Gap across"
            value={shape.gapAcrossM}
            onApply={(gapAcrossM) => set({ gapAcrossM })}
          />
          <LengthField
            label="Gap along"
            value={shape.gapAlongM}
            onApply={(gapAlongM) => set({ gapAlongM })}
          />
        </div>
        <CheckField
          label="To the left instead of the right"
          isOn={shape.isLeftward}
          onSet={(isLeftward) => set({ isLeftward })}
        />
        <CheckField
          label="Towards the near end instead of away"
          isOn={shape.isNearward}
          onSet={(isNearward) => set({ isNearward })}
        />
        <p role="status" className={problem === null ? "soft" : "field-reason"}>
          {problem ?? (added === 1 ? "Adds 1 object." : `Adds ${added} objects.`)}
        </p>
        <p className="dialog-actions">
          <button type="submit" className="primary">
            Make the copies
          </button>
        </p>
      </form>
    </Dialog>
  );
}
