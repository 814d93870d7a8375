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
import * as texts from "./words.ts";
import "./beds.css";

const cornerChoices = numberingCorners.map((corner) => ({
  value: corner,
  label: texts.cornerNames[corner],
}));
const walkChoices = [
  { value: "back", label: texts.thereAndBack },
  { value: "same", label: texts.sameSide },
] as const;
const letterChoices = [
  { value: "series", label: texts.oneSeries },
  { value: "rows", label: texts.letterForRow },
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
      commit(numberBeds(layout.id, typed, texts.numberBeds(changed.length)));
    },
  });
  const { draft: numbering, set } = form;
  const renaming = renamingOf(layout, numbering);
  const changed = renaming.beds.filter(({ from, to }) => from !== to);
  const isRefused = renaming.taken.length > 0 || changed.length === 0;
  return (
    <Dialog title={texts.numberTheBeds} onClose={onClose} isWide>
      <form className="fields" noValidate onSubmit={form.onSubmit}>
        {chosen.length > 1 && chosen.length < all.length && (
          <ChoiceField
            label={texts.whichBeds}
            value={numbering.beds === all || numbering.beds.length === all.length ? "all" : "some"}
            choices={[
              { value: "some", label: texts.theSelected(chosen.length) },
              { value: "all", label: texts.allOf(all.length) },
            ]}
            onPick={(which) => set({ beds: which === "all" ? all : chosen })}
          />
        )}
        <NumberingFields numbering={numbering} onSet={set} />
        <RenamingPreview renaming={renaming} changedBeds={changed.length} />
        <p className="dialog-actions">
          <button type="submit" className="primary" disabled={isRefused}>
            {texts.applyTheNewCodes}
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
    text.trim().length > 20 ? texts.prefixTooLong : onSet({ prefix: text.trim() });
  return (
    <>
      <ChoiceField
        label={texts.firstBed}
        value={numbering.from}
        choices={cornerChoices}
        onPick={(from) => onSet({ from })}
        hint={texts.firstBedHint}
      />
      <ChoiceField
        label={texts.order}
        value={numbering.isThereAndBack ? "back" : "same"}
        choices={walkChoices}
        onPick={(walk) => onSet({ isThereAndBack: walk === "back" })}
      />
      <ChoiceField
        label={texts.codes}
        value={numbering.isLetterForRow ? "rows" : "series"}
        choices={letterChoices}
        onPick={(scheme) => onSet({ isLetterForRow: scheme === "rows" })}
      />
      <div className="field-pair">
        <TextField label={texts.letters} value={numbering.prefix} onApply={setPrefix} />
        <CountField
          label={texts.firstNumber}
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
  return (
    <>
      <p role="status">
        {taken.length > 0
          ? texts.codesTaken(taken)
          : changedBeds === 0
            ? texts.noCodeChanges
            : texts.codesChange(changedBeds, beds.length, plantings.length)}
      </p>
      {taken.length === 0 && changedBeds > 0 && (
        <p className="caution-text">{texts.oldCodesWritten}</p>
      )}
      <ul className="code-changes" aria-label={texts.oldAndNewCodes}>
        {[...beds, ...plantings].map(({ id, from, to }) => (
          <li key={id} className={from === to ? "soft" : undefined}>
            <span className="code">{from}</span> → <span className="code">{to}</span>
          </li>
        ))}
      </ul>
    </>
  );
}
