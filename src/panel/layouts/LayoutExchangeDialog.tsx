import { useState } from "react";
import { copyToLayout, moveToLayout, sameBedsInLayouts } from "../../core/edits/other-layouts.ts";
import type { Layout } from "../../core/model/plan.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { CheckField, ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { onFormSubmit } from "../form/use-form.ts";
import { commit } from "../state/plan-actions.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./dialog-words.ts";

interface LayoutExchangeDialogProps {
  readonly what: "plantings" | "beds";
  readonly onClose: () => void;
}

/** Takes the selected plantings, or the beds, of the layout on the sheet to other layouts. */
export function LayoutExchangeDialog({ what, onClose }: LayoutExchangeDialogProps) {
  const layout = useShownLayout();
  const others = useShownPlan().layouts.filter(({ id }) => id !== layout.id);
  return what === "plantings" ? (
    <PlantingsDialog layout={layout} others={others} onClose={onClose} />
  ) : (
    <BedsDialog layout={layout} others={others} onClose={onClose} />
  );
}

interface PartProps {
  readonly layout: Layout;
  readonly others: readonly Layout[];
  readonly onClose: () => void;
}

function PlantingsDialog({ layout, others, onClose }: PartProps) {
  const selection = useWindowStore((state) => state.selection);
  const [to, setTo] = useState(others[0]?.id ?? "");
  const [way, setWay] = useState<"copy" | "move">("copy");
  const chosen = layout.plantings.filter(({ id }) => selection.includes(id));
  const codes = chosen.map(({ code }) => code).join(", ");
  const take = () => {
    const name = others.find(({ id }) => id === to)?.name ?? "";
    const edit = way === "copy" ? copyToLayout : moveToLayout;
    const title = way === "copy" ? texts.copyTo : texts.moveTo;
    const ids = chosen.map(({ id }) => id);
    commit(edit(layout.id, ids, to, title(codes, name)));
    onClose();
  };
  return (
    <Dialog title={texts.takePlantings} onClose={onClose}>
      {chosen.length === 0 ? (
        <p>{texts.selectPlantings}</p>
      ) : (
        <form className="fields" noValidate onSubmit={onFormSubmit(take)}>
          <p>{texts.plantingsOf(codes, layout.name)}</p>
          <ChoiceField
            label={texts.to}
            value={to}
            choices={others.map(({ id, name }) => ({ value: id, label: name }))}
            onPick={setTo}
          />
          <ChoiceField
            label={texts.here}
            value={way}
            choices={[
              { value: "copy", label: texts.leaveThem },
              { value: "move", label: texts.takeThemOut },
            ]}
            onPick={setWay}
          />
          <p className="dialog-actions">
            <button type="submit" className="primary">
              {way === "copy" ? texts.copy : texts.move} {codes}
            </button>
          </p>
        </form>
      )}
    </Dialog>
  );
}

function BedsDialog({ layout, others, onClose }: PartProps) {
  const [leftOut, setLeftOut] = useState<ReadonlySet<string>>(new Set());
  const chosen = others.filter(({ id }) => !leftOut.has(id));
  const give = () => {
    const names = chosen.map(({ name }) => name).join(", ");
    const ids = chosen.map(({ id }) => id);
    commit(sameBedsInLayouts(layout.id, ids, texts.sameBedsIn(names)));
    onClose();
  };
  const set = (id: string, isOn: boolean) => {
    const next = new Set(leftOut);
    if (isOn) next.delete(id);
    else next.add(id);
    setLeftOut(next);
  };
  return (
    <Dialog title={texts.bedsElsewhere} onClose={onClose}>
      <form className="fields" noValidate onSubmit={onFormSubmit(give)}>
        <p>{texts.bedsElsewhereHint(layout.beds.length, layout.name)}</p>
        {others.map(({ id, name }) => (
          <CheckField
            key={id}
            label={name}
            isOn={!leftOut.has(id)}
            onSet={(isOn) => set(id, isOn)}
          />
        ))}
        <p className="dialog-actions">
          <button type="submit" className="primary" disabled={chosen.length === 0}>
            {texts.sameBeds}
          </button>
        </p>
      </form>
    </Dialog>
  );
}
