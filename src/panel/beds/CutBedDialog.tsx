import { type BedCut, type CutBed, cutBed, cutParts } from "../../core/edits/split-bed.ts";
import { formatLength } from "../../core/model/length.ts";
import type { Layout } from "../../core/model/plan.ts";
import { Dialog } from "../form/Dialog.tsx";
import { LengthField } from "../form/LengthField.tsx";
import { useForm } from "../form/use-form.ts";
import { commit, windowNow } from "../state/plan-actions.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./words.ts";

/** A bed cut across into two, with a path between them if wanted. */
export function CutBedDialog({
  id,
  onClose,
}: {
  readonly id: string;
  readonly onClose: () => void;
}) {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const bed = layout.beds.find((entry) => entry.id === id);
  const shape = bed?.outline;
  const lengthM = shape?.shape === "rectangle" ? shape.lengthM : 0;
  const form = useForm<BedCut>({
    start: { bed: id, atM: lengthM / 2, pathM: 0 },
    send: (typed) => {
      const made = cutParts(plan, layout, typed);
      if (!bed || !made.ok) return;
      onClose();
      commit(cutBed(layout.id, typed, texts.cutBedInTwo(bed.code)));
      windowNow().select([made.near.id, made.far.id]);
    },
  });
  if (!bed) return null;
  const { draft: cut, set } = form;
  const parts = cutParts(plan, layout, cut);
  return (
    <Dialog title={texts.cutBedInTwo(bed.code)} onClose={onClose}>
      <form className="fields" noValidate onSubmit={form.onSubmit}>
        <LengthField
          label={texts.nearPart}
          value={cut.atM}
          isSize
          onApply={(atM) => set({ atM })}
          hint={texts.bedIsLong(formatLength(lengthM, plan.units))}
        />
        <LengthField
          label={texts.pathBetween}
          value={cut.pathM}
          onApply={(pathM) => set({ pathM })}
          hint={texts.pathTaken}
        />
        <p role="status">{wordsOf(parts, layout, (metres) => formatLength(metres, plan.units))}</p>
        <p className="dialog-actions">
          <button type="submit" className="primary" disabled={!parts.ok}>
            {texts.cutTheBed}
          </button>
        </p>
      </form>
    </Dialog>
  );
}

function wordsOf(parts: CutBed, layout: Layout, inWords: (metres: number) => string): string {
  if (!parts.ok) {
    return parts.reason === "across"
      ? texts.liesAcrossCut(parts.codes)
      : texts.partsNeedLength(inWords(parts.lengthM));
  }
  const { near, far, moved } = parts;
  const length = (shape: typeof near.outline) =>
    shape.shape === "rectangle" ? inWords(shape.lengthM) : "";
  const old = new Map(layout.plantings.map(({ id, code }) => [id, code]));
  const codes = moved.flatMap(({ id, code }) => {
    const was = old.get(id);
    return was === undefined || was === code ? [] : [texts.codeBecomes(was, code)];
  });
  const parted = texts.partsAre({
    near: near.code,
    nearLength: length(near.outline),
    far: far.code,
    farLength: length(far.outline),
  });
  return codes.length === 0 ? parted : `${parted} ${texts.stakesFollow(codes)}`;
}
