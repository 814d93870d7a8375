import { bedNeighbours, freeStarts, isWithinBed, onStretch } from "../../core/beds/bed-stretch.ts";
import type { AlongBed } from "../../core/beds/bed-stretch.ts";
import { setOutline } from "../../core/edits/move-objects.ts";
import { freeStretches } from "../../core/beds/place-planting.ts";
import type { Stretch } from "../../core/beds/stretch.ts";
import { formatLength } from "../../core/model/length.ts";
import type { Bed, Planting } from "../../core/model/plan.ts";
import { LengthField } from "../form/LengthField.tsx";
import { lengthRefusal, startRefusal, stretchesInWords } from "./stretch-words.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { commit } from "../state/plan-actions.ts";
import * as texts from "./dialog-words.ts";
import * as steps from "./step-words.ts";

interface StretchFieldsProps {
  readonly planting: Planting;
  readonly bed: Bed;
  readonly along: AlongBed;
}

/** Shorter than this a planting is not, metres. */
const LEAST_LENGTH_M = 0.01;

/** Where along its bed a planting begins and how long it is, measured from the bed's near end. */
export function StretchFields({ planting, bed, along }: StretchFieldsProps) {
  const layout = useShownLayout();
  const { units } = useShownPlan();
  const { fromM, toM } = along.stretch;
  const lengthM = toM - fromM;
  const starts = freeStarts(layout, bed, planting, lengthM);
  const lay = (stretch: Stretch, title: string) =>
    commit(setOutline(layout.id, planting.id, onStretch(along, stretch), title));
  const slide = (start: number) =>
    lay({ fromM: start, toM: start + lengthM }, steps.slide(planting.code));
  const typeStart = (start: number) => {
    if (!isWithinBed(along, { fromM: start, toM: start + lengthM }))
      return startRefusal(along.bed.lengthM, lengthM, starts, units);
    slide(start);
    return null;
  };
  const typeLength = (metres: number) => {
    if (metres < LEAST_LENGTH_M) return texts.sizeNeeded;
    if (!isWithinBed(along, { fromM, toM: fromM + metres }))
      return lengthRefusal(along.bed.lengthM, fromM, units);
    lay({ fromM, toM: fromM + metres }, steps.resize(planting.code));
    return null;
  };
  const free = stretchesInWords(freeStretches(layout, bed, planting.id), units);
  return (
    <>
      <div className="field-pair">
        <LengthField label={texts.fromNearEnd} value={fromM} isCoordinate onApply={typeStart} />
        <LengthField
          label={texts.lengthAlongBed}
          value={lengthM}
          isCoordinate
          onApply={typeLength}
        />
      </div>
      <p className="field-hint">
        {texts.bedLengthAndFree(formatLength(along.bed.lengthM, units), free)}
      </p>
      <SlideButtons planting={planting} along={along} starts={starts} onSlide={slide} />
    </>
  );
}

interface SlideButtonsProps {
  readonly planting: Planting;
  readonly along: AlongBed;
  readonly starts: readonly Stretch[];
  readonly onSlide: (fromM: number) => void;
}

/** Sliding without typing: to either end of the free ground, and up to a neighbour. */
function SlideButtons({ planting, along, starts, onSlide }: SlideButtonsProps) {
  const layout = useShownLayout();
  const { before, after } = bedNeighbours(layout, along.bed, planting);
  const { fromM, toM } = along.stretch;
  const targets = [
    { label: texts.nearEnd, to: starts[0]?.fromM },
    { label: texts.upTo(before?.code ?? ""), to: before?.stretch.toM },
    {
      label: texts.upTo(after?.code ?? ""),
      to: after ? after.stretch.fromM - (toM - fromM) : undefined,
    },
    { label: texts.farEnd, to: starts.at(-1)?.toM },
  ];
  return (
    <div className="slide-buttons" role="group" aria-label={texts.slideAlongItsBed(planting.code)}>
      <span className="soft">{texts.slideTo}</span>
      {targets.map(({ label, to }, index) =>
        to === undefined || to < -1e-6 || to + toM - fromM > along.bed.lengthM + 1e-6 ? null : (
          <button
            key={index}
            type="button"
            disabled={Math.abs(to - fromM) < 1e-6}
            onClick={() => onSlide(to)}
          >
            {label}
          </button>
        ),
      )}
    </div>
  );
}
