import { useMemo } from "react";
import { BED_ROWS_MOST, type BedDirection, codesInWords } from "../../core/edits/bed-rows.ts";
import { addBeds } from "../../core/edits/object-edits.ts";
import { CheckField, ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { LengthField } from "../form/LengthField.tsx";
import { CountField, TurnField } from "../form/NumberField.tsx";
import { TextField } from "../form/TextField.tsx";
import { PlaceFields, SizeFields } from "../form/RectangleFields.tsx";
import { useForm } from "../form/use-form.ts";
import { AnchorField } from "./AnchorField.tsx";
import { bedPlaceWords as words } from "./bed-place-words.ts";
import {
  type TypedRows,
  anchoredBy,
  isOverMost,
  rememberRows,
  rowsDrawn,
  suggestedRows,
} from "./bed-rows-form.ts";
import { OffPlot } from "./OffPlot.tsx";
import { useBedPreview } from "./use-bed-preview.ts";
import { commit, planNow, useKept, windowNow } from "../state/plan-actions.ts";
import { choicesOf } from "../state/plan-words.ts";
import * as texts from "./words.ts";

const directionWords: Readonly<Record<BedDirection, string>> = {
  right: texts.bedsToTheRight,
  left: texts.bedsToTheLeft,
  far: texts.bedsAway,
  near: texts.bedsTowardsYou,
};

const schemeWords = {
  series: texts.oneSeries,
  rows: texts.letterForRow,
} as const;

interface RowFieldsProps {
  readonly rows: TypedRows;
  readonly onSet: (change: Partial<TypedRows>) => null;
}

/** Many equal beds from one set of numbers, as one step. */
export function BedRowsDialog({ onClose }: { readonly onClose: () => void }) {
  const { plan, layout } = useKept();
  const form = useForm({
    start: () => suggestedRows(plan, layout),
    send: (typed) => {
      const made = rowsDrawn(plan, layout, typed);
      if (made.length === 0) return;
      onClose();
      commit(addBeds(planNow().layoutId, made, texts.drawBeds(made.length)));
      const ids = made.map(({ id }) => id);
      rememberRows(typed, plan.id, ids.at(-1) ?? "");
      windowNow().select(ids);
      windowNow().keepInView(ids);
    },
  });
  const { draft: rows, set } = form;
  const isTooMany = isOverMost(rows);
  const beds = useMemo(() => rowsDrawn(plan, layout, rows), [plan, layout, rows]);
  useBedPreview(beds);
  return (
    <Dialog title={texts.rowsOfBeds} onClose={onClose} isAside>
      <form className="fields" noValidate onSubmit={form.onSubmit}>
        <RowSizeFields rows={rows} onSet={set} />
        <RowPlaceFields rows={rows} onSet={set} />
        <RowCodeFields rows={rows} onSet={set} />
        <p role="status" className={isTooMany ? "field-reason" : "soft"}>
          {isTooMany
            ? texts.bedsTooMany(BED_ROWS_MOST)
            : texts.bedsShown(beds.length, codesInWords(beds.map(({ code }) => code)))}
        </p>
        <OffPlot beds={beds} />
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {texts.addTheBeds}
          </button>
        </p>
      </form>
    </Dialog>
  );
}

function RowSizeFields({ rows, onSet }: RowFieldsProps) {
  return (
    <>
      <div className="field-pair">
        <CountField
          label={texts.bedsInRow}
          value={rows.count}
          onApply={(count) => onSet({ count: Math.max(1, count ?? 1) })}
        />
        <CountField
          label={texts.bedRows}
          value={rows.rows}
          onApply={(count) => onSet({ rows: Math.max(1, count ?? 1) })}
        />
      </div>
      <SizeFields sizes={rows} labels={[texts.bedWidth, texts.bedLength]} onSet={onSet} />
      <div className="field-pair">
        <LengthField
          label={texts.pathBetweenBeds}
          value={rows.pathM}
          onApply={(pathM) => onSet({ pathM })}
        />
        <LengthField
          label={texts.pathBetweenRows}
          value={rows.rowPathM}
          onApply={(rowPathM) => onSet({ rowPathM })}
        />
      </div>
      <BlockFields rows={rows} onSet={onSet} />
    </>
  );
}

/** Blocks beside each other in one row, told apart by a wider path. */
function BlockFields({ rows, onSet }: RowFieldsProps) {
  const { blockOf, blockPathM, rowPathM } = rows;
  return (
    <>
      <CountField
        label={words.inBlocks}
        value={blockOf}
        hint={words.inBlocksHint}
        onApply={(count) =>
          onSet(
            count === undefined || count < 1
              ? { blockOf: undefined, blockPathM: undefined }
              : { blockOf: count, blockPathM: blockPathM ?? rowPathM },
          )
        }
      />
      {blockOf !== undefined && (
        <LengthField
          label={words.blockPath}
          value={blockPathM}
          onApply={(metres) => onSet({ blockPathM: metres })}
        />
      )}
    </>
  );
}

function RowPlaceFields({ rows, onSet }: RowFieldsProps) {
  return (
    <>
      <ChoiceField
        label={texts.bedDirection}
        value={rows.direction}
        choices={choicesOf(directionWords)}
        hint={texts.bedDirectionHint}
        onPick={(direction) => onSet({ direction })}
      />
      <TurnField
        label={texts.turnClockwise}
        value={rows.turnDeg}
        onApply={(turnDeg) => {
          onSet({ turnDeg });
        }}
      />
      <AnchorField
        label={words.anchorFirst}
        anchor={rows.anchor}
        onPick={(anchor) => onSet(anchoredBy(rows, anchor))}
      />
      <PlaceFields place={rows} labels={words.placeOf[rows.anchor]} onSet={onSet} />
    </>
  );
}

function RowCodeFields({ rows, onSet }: RowFieldsProps) {
  const setCode = (text: string) => {
    const firstCode = text.trim();
    if (firstCode === "") return texts.codeNeeded;
    if (firstCode.length > 34) return texts.firstCodeTooLong;
    return onSet({ firstCode });
  };
  return (
    <>
      <TextField
        label={texts.firstCode}
        value={rows.firstCode}
        hint={texts.firstCodeHint}
        onApply={setCode}
      />
      {rows.rows > 1 && (
        <>
          <ChoiceField
            label={texts.codes}
            value={rows.scheme}
            choices={choicesOf(schemeWords)}
            onPick={(scheme) => onSet({ scheme })}
          />
          <CheckField
            label={texts.numberedBack}
            isOn={rows.isThereAndBack}
            onSet={(isThereAndBack) => onSet({ isThereAndBack })}
          />
        </>
      )}
    </>
  );
}
