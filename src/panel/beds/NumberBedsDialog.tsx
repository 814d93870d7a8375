import {
  type Numbering,
  type Renaming,
  numberBeds,
  numberingCorners,
  renamingOf,
  suggestedNumbering,
} from "../../core/edits/number-beds.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { CountField } from "../form/NumberField.tsx";
import { TextField } from "../form/TextField.tsx";
import { useForm } from "../form/use-form.ts";
import { commit } from "../state/plan-actions.ts";
import { useShownLayout } from "../state/use-shown-plan.ts";
import "./beds.css";

const cornerChoices = numberingCorners.map((corner) => ({ value: corner, label: corner }));
const walkChoices = [
  { value: "back", label: "there along one row, back along the next" },
  { value: "same", label: "every row from the same side" },
] as const;
const letterChoices = [
  { value: "series", label: "one series through all rows" },
  { value: "rows", label: "a letter for each row" },
] as const;

/** New codes for beds in walking order, looked at before anything is changed. */
export function NumberBedsDialog({ onClose }: { readonly onClose: () => void }) {
  const layout = useShownLayout();
  const selection = useWindowStore((state) => state.selection);
  const chosen = layout.beds.filter(({ id }) => selection.includes(id)).map(({ id }) => id);
  const all = layout.beds.map(({ id }) => id);
  const form = useForm<Numbering>({
    start: () => suggestedNumbering(layout, chosen.length > 1 ? chosen : all),
    send: (typed) => {
      if (isRefused) return;
      onClose();
      commit(numberBeds(layout.id, typed, `Number ${changed.length} beds`));
    },
  });
  const { draft: numbering, set } = form;
  const renaming = renamingOf(layout, numbering);
  const changed = renaming.beds.filter(({ from, to }) => from !== to);
  const isRefused = renaming.taken.length > 0 || changed.length === 0;
  return (
    <Dialog title="Number the beds" onClose={onClose} isWide>
      <form className="fields" noValidate onSubmit={form.onSubmit}>
        {chosen.length > 1 && chosen.length < all.length && (
          <ChoiceField
            label="Which beds"
            value={numbering.beds === all || numbering.beds.length === all.length ? "all" : "some"}
            choices={[
              { value: "some", label: `the ${chosen.length} selected` },
              { value: "all", label: `all ${all.length}` },
            ]}
            onPick={(which) => set({ beds: which === "all" ? all : chosen })}
          />
        )}
        <NumberingFields numbering={numbering} onSet={set} />
        <RenamingPreview renaming={renaming} changedBeds={changed.length} />
        <p className="dialog-actions">
          <button type="submit" className="primary" disabled={isRefused}>
            Apply the new codes
          </button>
        </p>
      </form>
    </Dialog>
  );
}

interface NumberingFieldsProps {
  readonly numbering: Numbering;
  readonly onSet: (changes: Partial<Numbering>) => null;
}

function NumberingFields({ numbering, onSet }: NumberingFieldsProps) {
  const setPrefix = (text: string) =>
    text.trim().length > 20
      ? "At most 20 letters go before the number"
      : onSet({ prefix: text.trim() });
  return (
    <>
      <ChoiceField
        label="First bed"
        value={numbering.from}
        choices={cornerChoices}
        onPick={(from) => onSet({ from })}
        hint="As seen along the beds; near is the foot of the sheet where beds are not turned."
      />
      <ChoiceField
        label="Order"
        value={numbering.isThereAndBack ? "back" : "same"}
        choices={walkChoices}
        onPick={(walk) => onSet({ isThereAndBack: walk === "back" })}
      />
      <ChoiceField
        label="Codes"
        value={numbering.isLetterForRow ? "rows" : "series"}
        choices={letterChoices}
        onPick={(scheme) => onSet({ isLetterForRow: scheme === "rows" })}
      />
      <div className="field-pair">
        <TextField label="Letters" value={numbering.prefix} onApply={setPrefix} />
        <CountField
          label="First number"
          value={numbering.start}
          onApply={(start) => {
            if (start !== undefined) onSet({ start });
          }}
        />
      </div>
    </>
  );
}

interface RenamingPreviewProps {
  readonly renaming: Renaming;
  readonly changedBeds: number;
}

function RenamingPreview({ renaming, changedBeds }: RenamingPreviewProps) {
  const { beds, plantings, taken } = renaming;
  const followed = plantings.length === 1 ? "1 planting" : `${plantings.length} plantings`;
  return (
    <>
      <p role="status">
        {taken.length > 0
          ? `${taken.join(", ")} is taken by something that keeps its code: choose other letters or another number.`
          : changedBeds === 0
            ? "All beds have these codes already."
            : `${changedBeds} of ${beds.length} beds and ${followed} get another code.`}
      </p>
      {taken.length === 0 && changedBeds > 0 && (
        <p className="caution-text">
          ! Stakes, packets and maps already written carry the old codes. Codes of plantings written
          by hand stay.
        </p>
      )}
      <ul className="code-changes" aria-label="Old and new codes">
        {[...beds, ...plantings].map(({ id, from, to }) => (
          <li key={id} className={from === to ? "soft" : undefined}>
            <span className="code">{from}</span> → <span className="code">{to}</span>
          </li>
        ))}
      </ul>
    </>
  );
}
