import { useMemo, useState } from "react";
import { patched } from "../../core/edits/edit.ts";
import { lotBook } from "../../core/lots/lot-book.ts";
import { lotInPlanFaults } from "../../core/lots/lot-in-plan.ts";
import { lotsFromPlot } from "../../core/lots/harvested-lots.ts";
import type { Layout, Lot, Plan, Planting } from "../../core/model/plan.ts";
import { gramsToTake, harvestLot, keepHarvest, takeGrams } from "../../core/record/harvest-lot.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { FormProblem } from "../form/Field.tsx";
import { CountField, ValueField } from "../form/NumberField.tsx";
import { TextField } from "../form/TextField.tsx";
import { onFormSubmit } from "../form/use-form.ts";
import { commit, useKept, windowNow } from "../state/plan-actions.ts";
import { today } from "../state/today.ts";
import { harvestWords as words } from "./harvest-words.ts";
import { IsolationRecordView } from "./IsolationRecordView.tsx";
import { usualDay } from "./read-plan-as.ts";

interface HarvestDialogProps {
  /** Null: it is asked for. */
  readonly plantingId: string | null;
  readonly onClose: () => void;
}

/** The harvest of a planting put on the shelf: seen before it is kept, one step. */
export function HarvestDialog({ plantingId, onClose }: HarvestDialogProps) {
  const { plan, layout } = useKept();
  const choices = useMemo(() => harvestChoices(plan, layout), [plan, layout]);
  const [picked, setPicked] = useState(plantingId ?? choices[0]?.value ?? "");
  const code = layout.plantings.find(({ id }) => id === picked)?.code ?? "";
  return (
    <Dialog title={words.title(code)} onClose={onClose} isWide>
      {plantingId === null && (
        <ChoiceField label={words.plot} value={picked} choices={choices} onPick={setPicked} />
      )}
      <HarvestOf key={picked} plantingId={picked} onClose={onClose} />
    </Dialog>
  );
}

/** What was written down as harvested first, then what is kept for seed, then the rest. */
function harvestChoices({ entries, varieties }: Plan, { plantings }: Layout) {
  const harvested = new Set(entries.filter(({ what }) => what === "harvested").map(({ of }) => of));
  const rank = ({ id, purpose }: Planting) => {
    if (harvested.has(id)) return 0;
    return purpose === "seed" ? 1 : 2;
  };
  return [...plantings]
    .sort((a, b) => rank(a) - rank(b))
    .map(({ id, code, variety }) => {
      const name = varieties.find((each) => each.id === variety)?.name ?? "";
      return { value: id, label: `${code} ${name}` };
    });
}

interface HarvestOfProps {
  readonly plantingId: string;
  readonly onClose: () => void;
}

function HarvestOf({ plantingId, onClose }: HarvestOfProps) {
  const { plan, layout } = useKept();
  const on = usualDay(plan, today());
  const layoutId = layout.id;
  const made = useMemo(
    () => harvestLot(plan, { layoutId, plantingId, on }),
    [plan, layoutId, plantingId, on],
  );
  const planting = layout.plantings.find(({ id }) => id === plantingId);
  if (!made || !planting) return <p>{words.gone}</p>;
  const grams = gramsToTake(plan, plantingId, layoutId, on);
  return (
    <>
      <Earlier
        lots={lotsFromPlot(plan, planting)}
        grams={grams}
        onTake={(lot) => {
          commit(takeGrams(lot, grams));
          onClose();
        }}
      />
      <HarvestForm made={made} plan={plan} onClose={onClose} />
    </>
  );
}

interface EarlierProps {
  readonly lots: readonly Lot[];
  readonly grams: number;
  readonly onTake: (lot: Lot) => void;
}

/** Lots of the same plot: what was cleaned since can go to the last of them. */
function Earlier({ lots, grams, onTake }: EarlierProps) {
  const last = lots.findLast(({ state }) => state === "in stock");
  if (lots.length === 0) return null;
  return (
    <div className="notice">
      <p>{words.earlier(lots.map(({ code }) => code).join(", "))}</p>
      {last && grams > 0 && (
        <p>
          <button type="button" onClick={() => onTake(last)}>
            {words.take(grams, last.code)}
          </button>
        </p>
      )}
    </div>
  );
}

interface HarvestFormProps {
  readonly made: Lot;
  readonly plan: Plan;
  readonly onClose: () => void;
}

function HarvestForm({ made, plan, onClose }: HarvestFormProps) {
  const [lot, setLot] = useState(made);
  const [problem, setProblem] = useState<string | null>(null);
  const change = (changes: Partial<Lot>) => {
    setProblem(null);
    setLot((before) => patched<Lot>(before, changes));
    return null;
  };
  const from = lot.from ?? { what: "own" as const };
  const keep = () => {
    const [fault] = lotInPlanFaults(plan, lot);
    if (fault) {
      setProblem(words.fieldFault(fault.field, fault.got, fault.expected));
      return;
    }
    commit(keepHarvest(lot));
    windowNow().announce(words.shelf(lot.code));
    onClose();
  };
  return (
    <form className="fields" noValidate onSubmit={onFormSubmit(keep)}>
      <TextField
        label={words.code}
        value={lot.code}
        hint={lot.code === made.code ? words.codeHint : undefined}
        onApply={(text) => change({ code: text.trim() === "" ? made.code : text.trim() })}
      />
      <CountField
        label={words.plants}
        value={from.plants}
        onApply={(plants) => void change({ from: patched(from, { plants }) })}
      />
      <ValueField
        label={words.grams}
        value={from.cleanedGrams}
        hint={words.gramsHint}
        onApply={(grams) => change(withGrams(from, grams))}
      />
      <p>{parentWords(lot, plan)}</p>
      <h3>{words.isolation}</h3>
      {lot.isolation ? (
        <IsolationRecordView record={lot.isolation} unit={plan.units} />
      ) : (
        <p>{words.hybrid}</p>
      )}
      <p className="field-hint">{words.frozen}</p>
      <FormProblem problem={problem} />
      <p className="dialog-actions">
        <button type="submit" className="primary">
          {words.keep}
        </button>
      </p>
    </form>
  );
}

function withGrams(from: NonNullable<Lot["from"]>, grams: number | undefined): Partial<Lot> {
  return {
    from: patched(from, { cleanedGrams: grams }),
    ...(grams === undefined
      ? { amount: undefined }
      : { amount: { unit: "g" as const, value: grams } }),
  };
}

function parentWords({ grownFrom = [] }: Lot, plan: Plan): string {
  const codes = grownFrom.flatMap((id) => lotBook(plan.lots).lot(id)?.code ?? []);
  return codes.length === 0 ? words.noParents : words.parents(codes.join(", "));
}
