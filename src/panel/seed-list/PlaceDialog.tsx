import { useMemo } from "react";
import { firstStart, plantsWanted } from "../../core/edits/new-planting.ts";
import type { CheckedLayout } from "../../core/checks/checked-layout.ts";
import type { DayNumber } from "../../core/model/day.ts";
import type { Variety } from "../../core/model/plan.ts";
import { type PlantWish, plantVariety } from "../../store/plan/plant-variety.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { DayField } from "../form/DayField.tsx";
import { CountField } from "../form/NumberField.tsx";
import { useForm } from "../form/use-form.ts";
import { useKept } from "../state/plan-actions.ts";
import { useSheetPreview } from "../state/use-sheet-preview.ts";
import { newBed } from "../beds/commands.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { newVariety } from "./commands.ts";
import { seedListRows } from "./seed-list-rows.ts";
import { type PlaceTrial, likelyBed, tryPlace } from "./place-trial.ts";
import { bedLabel, conflictWords, followsWords, placeWords } from "./place-words.ts";
import * as texts from "./dialog-words.ts";

interface PlaceDialogProps {
  readonly varietyId: string | null;
  readonly bedId: string | null;
  readonly onClose: () => void;
}

/** Placing a variety without dragging: which variety, which bed. */
export function PlaceDialog({ varietyId, bedId, onClose }: PlaceDialogProps) {
  const { plan, layout } = useKept();
  const { beds } = layout;
  const { varieties } = plan;
  return (
    <Dialog title={texts.placeAVariety} onClose={onClose} isAside>
      {beds.length > 0 && varieties.length > 0 ? (
        <PlaceForm varietyId={varietyId} bedId={bedId} onClose={onClose} />
      ) : (
        <NothingToPlace isBedMissing={beds.length === 0} />
      )}
    </Dialog>
  );
}

function NothingToPlace({ isBedMissing }: { readonly isBedMissing: boolean }) {
  return (
    <>
      <p>{isBedMissing ? texts.thereNoBedLayout : texts.seedListEmpty}</p>
      <p className="dialog-actions">
        <CommandButton of={isBedMissing ? newBed : newVariety} className="primary">
          {isBedMissing ? texts.newBedSize : texts.addAVariety}
        </CommandButton>
      </p>
    </>
  );
}

interface PlaceDraft {
  readonly variety: string;
  readonly bed: string;
  /** Null: as many as are wanted. */
  readonly plants: number | null;
  readonly method: "transplanted" | "sown" | "unsaid";
  readonly date: DayNumber | undefined;
}

const methods = [
  { value: "transplanted", label: texts.setOut },
  { value: "sown", label: texts.sownInPlace },
  { value: "unsaid", label: texts.notSaidYet },
] as const;

function PlaceForm({ varietyId, bedId, onClose }: PlaceDialogProps) {
  const kept = useKept();
  const { plan, layout } = kept;
  const { draft, set, onSubmit } = useForm<PlaceDraft>({
    start: () => beginning(kept, varietyId ?? firstToPlace(kept), bedId),
    send: () => {
      onClose();
      plantVariety(draft.variety, draft.bed, wishOf(draft, count));
    },
  });
  const chosen = plan.varieties.find(({ id }) => id === draft.variety);
  const count =
    draft.plants ?? (chosen ? plantsWanted(layout, chosen, kept.book.kind(chosen.kind)) : 1);
  const trial = useTrial(kept, draft, count);
  useSheetPreview(trial?.edit ?? null, trial?.ids ?? NOTHING);
  const inBeds = layout.beds.map((bed) => ({
    value: bed.id,
    label: bedLabel(layout, bed, plan.units),
  }));
  return (
    <form className="fields" noValidate onSubmit={onSubmit}>
      <ChoiceField
        label={texts.varietyField}
        value={draft.variety}
        choices={plan.varieties.map(({ id, name }) => ({ value: id, label: name }))}
        onPick={(variety) => set(beginning(kept, variety, bedId))}
      />
      <ChoiceField
        label={texts.inBed}
        value={draft.bed}
        choices={inBeds}
        onPick={(bed) => set({ bed })}
      />
      <CountField
        label={texts.plants}
        value={count}
        onApply={(next) => {
          set({ plants: next ?? null });
        }}
      />
      <ChoiceField
        label={texts.start}
        value={draft.method}
        choices={methods}
        onPick={(method) => set({ method })}
      />
      {draft.method !== "unsaid" && (
        <DayField label={texts.on} value={draft.date} onApply={(date) => set({ date })} />
      )}
      {chosen && <Outcome kept={kept} trial={trial} variety={chosen} count={count} />}
      <p className="dialog-actions">
        <button type="submit" className="primary">
          {texts.place}
        </button>
      </p>
    </form>
  );
}

const NOTHING: readonly string[] = [];

type Tried = PlaceTrial & { readonly ids: readonly string[] };

/** As chosen, on the kept plan: on the sheet before it is placed. Null where the bed has no room. */
function useTrial(kept: CheckedLayout, draft: PlaceDraft, count: number): Tried | null {
  return useMemo(() => {
    const variety = kept.plan.varieties.find(({ id }) => id === draft.variety);
    const kind = variety && kept.book.kind(variety.kind);
    const bed = kept.layout.beds.find(({ id }) => id === draft.bed);
    if (!variety || !kind || !bed) return null;
    const trial = tryPlace(kept, bed, variety, {
      kind,
      plants: count,
      start: wishOf(draft, count).start ?? undefined,
    });
    return trial && { ...trial, ids: [trial.planting.id] };
  }, [kept, draft, count]);
}

interface OutcomeProps {
  readonly kept: CheckedLayout;
  readonly trial: PlaceTrial | null;
  readonly variety: Variety;
  readonly count: number;
}

/** What they take there, and whether that would bring a conflict. */
function Outcome({ kept, trial, variety, count }: OutcomeProps) {
  const kind = kept.book.kind(variety.kind);
  const follows = followsWords(trial?.found ?? null);
  return (
    <div className="field-hint" role="status">
      <p>{placeWords(trial?.found ?? null, count, kind, kept.plan.units)}</p>
      {follows !== "" && <p>{follows}</p>}
      {trial && (
        <p className={outcomeClass(trial)}>{conflictWords(trial.conflicts, trial.unknowns > 0)}</p>
      )}
    </div>
  );
}

/** Green only where nothing is left open. */
function outcomeClass({ conflicts, unknowns }: PlaceTrial): string {
  if (conflicts.length > 0) return "conflict-text";
  return unknowns > 0 ? "caution-text" : "clear-text";
}

function wishOf({ method, date }: PlaceDraft, plants: number): PlantWish {
  const isSaid = method !== "unsaid" && date !== undefined;
  return { plants, start: isSaid ? { method, date } : null };
}

/** The first of the seed list that is still to place; else the first. */
function firstToPlace({ plan, layout, book }: CheckedLayout): string {
  const rows = seedListRows(plan, layout, book);
  return (rows.find(({ isShort }) => isShort) ?? rows[0])?.variety.id ?? "";
}

/** First answers for a variety: how it usually starts, and a bed where it brings no conflict. */
function beginning(kept: CheckedLayout, varietyId: string, bedId: string | null): PlaceDraft {
  const { plan, layout, book } = kept;
  const variety = plan.varieties.find(({ id }) => id === varietyId);
  const kind = variety && book.kind(variety.kind);
  const start = variety && kind && firstStart(plan, layout, variety, kind);
  const begun = {
    variety: varietyId,
    plants: null,
    method: start?.method ?? ("unsaid" as const),
    date: start?.date,
  };
  if (bedId !== null || !variety || !kind) {
    return { ...begun, bed: bedId ?? layout.beds[0]?.id ?? "" };
  }
  const wanted = { kind, plants: plantsWanted(layout, variety, kind), start };
  return { ...begun, bed: (likelyBed(kept, variety, wanted) ?? layout.beds[0])?.id ?? "" };
}
