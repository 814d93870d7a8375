import { plantsWanted } from "../../core/edits/new-planting.ts";
import { findPlace } from "../../core/beds/find-place.ts";
import { type Placed, freeStretches } from "../../core/beds/place-planting.ts";
import { shortDate } from "../../core/model/day.ts";
import { outlineArea, outlineOf } from "../../core/geometry/outline.ts";
import { type LengthUnit, formatArea, formatLength } from "../../core/model/length.ts";
import type { Bed, Layout } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { plantVariety } from "../../store/plan/plant-variety.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { CountField } from "../form/NumberField.tsx";
import { useForm } from "../form/use-form.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { newBed } from "../beds/commands.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { newVariety } from "./commands.ts";

interface PlaceDialogProps {
  readonly varietyId: string | null;
  readonly bedId: string | null;
  readonly onClose: () => void;
}

/** Placing a variety without dragging: which variety, which bed. */
export function PlaceDialog({ varietyId, bedId, onClose }: PlaceDialogProps) {
  const { beds } = useShownLayout();
  const { varieties } = useShownPlan();
  return (
    <Dialog title="Place a variety" onClose={onClose}>
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
      <p>{isBedMissing ? "There is no bed in this layout yet." : "The seed list is empty."}</p>
      <p className="dialog-actions">
        <CommandButton of={isBedMissing ? newBed : newVariety} className="primary">
          {isBedMissing ? "New bed by its size" : "Add a variety"}
        </CommandButton>
      </p>
    </>
  );
}

function PlaceForm({ varietyId, bedId, onClose }: PlaceDialogProps) {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const book = usePlanStore((state) => state.book);
  const { draft, set, onSubmit } = useForm<PlaceDraft>({
    start: () => ({
      variety: varietyId ?? plan.varieties[0]?.id ?? "",
      bed: bedId ?? firstWithRoom(layout)?.id ?? "",
      plants: null,
    }),
    send: () => {
      onClose();
      plantVariety(draft.variety, draft.bed, undefined, count);
    },
  });
  const chosen = plan.varieties.find(({ id }) => id === draft.variety);
  const count = draft.plants ?? (chosen ? plantsWanted(layout, chosen) : 1);
  const kind = chosen && book.kind(chosen.kind);
  const target = layout.beds.find(({ id }) => id === draft.bed);
  const found = kind && target ? findPlace(plan, layout, target, { kind, plants: count }) : null;
  const inBeds = layout.beds.map((bed) => ({
    value: bed.id,
    label: bedLabel(layout, bed, plan.units),
  }));
  return (
    <form className="fields" noValidate onSubmit={onSubmit}>
      <ChoiceField
        label="Variety"
        value={draft.variety}
        choices={plan.varieties.map(({ id, name }) => ({ value: id, label: name }))}
        onPick={(variety) => set({ variety, plants: null })}
      />
      <ChoiceField
        label="In bed"
        value={draft.bed}
        choices={inBeds}
        onPick={(bed) => set({ bed })}
      />
      <CountField
        label="Plants"
        value={count}
        onApply={(next) => {
          set({ plants: next ?? null });
        }}
        hint={placeWords(found?.placed ?? null, count, plan.units)}
      />
      {found?.after && found.start && (
        <p className="field-hint">
          After {found.after.code}: it starts on {shortDate(found.start.date)}, when that is
          cleared.
        </p>
      )}
      <p className="dialog-actions">
        <button type="submit" className="primary">
          Place
        </button>
      </p>
    </form>
  );
}

interface PlaceDraft {
  readonly variety: string;
  readonly bed: string;
  /** Null: as many as are wanted. */
  readonly plants: number | null;
}

/** Free length of a rectangular bed, metres. */
function freeM(layout: Layout, bed: Bed): number {
  return freeStretches(layout, bed).reduce((sum, { fromM, toM }) => sum + toM - fromM, 0);
}

function firstWithRoom(layout: Layout): Bed | undefined {
  const isEmpty = (bed: Bed) => !layout.plantings.some((planting) => planting.bed === bed.id);
  return (
    layout.beds.find((bed) =>
      bed.outline.shape === "rectangle" ? freeM(layout, bed) > 0 : isEmpty(bed),
    ) ?? layout.beds[0]
  );
}

function bedLabel(layout: Layout, bed: Bed, unit: LengthUnit): string {
  if (bed.outline.shape !== "rectangle") return bed.code;
  const free = freeM(layout, bed);
  return free === 0 ? `${bed.code}, full` : `${bed.code}, ${formatLength(free, unit)} free`;
}

/** What the plants will take, and how many do not fit. */
function placeWords(placed: Placed | null, count: number, unit: LengthUnit): string {
  if (!placed) return "This bed has no free ground.";
  const { plants, rows, outline } = placed;
  const inRows = `in ${rows} ${rows === 1 ? "row" : "rows"}`;
  if (outline.shape !== "rectangle") {
    const takes = `${formatArea(outlineArea(outlineOf(outline)), unit)} of the bed's ground ${inRows}`;
    return plants < count
      ? `Only ${plants} of ${count} fit in one piece: they take ${takes}.`
      : `They take ${takes}, across the bed.`;
  }
  const takes = `${formatLength(outline.lengthM, unit)} of the bed ${inRows}`;
  return plants < count
    ? `Only ${plants} of ${count} fit: they take ${takes}, the longest free stretch.`
    : `They take ${takes}, on the first free stretch that holds them.`;
}
