import { changePicture, scalePicture } from "../../core/edits/picture-edits.ts";
import { MAX_COORDINATE_M } from "../../core/model/limits.ts";
import type { Picture } from "../../core/model/plan.ts";
import { Field, useFieldParts } from "../form/Field.tsx";
import { LengthField } from "../form/LengthField.tsx";
import { TurnField } from "../form/NumberField.tsx";
import { previewHere } from "../state/followed-plan.ts";
import { commit, planNow } from "../state/plan-actions.ts";
import * as texts from "./dialog-words.ts";

/** The field of the scale speaks of so many pixels: one alone is too little to write down. */
const PIXELS = 100;

/** Where and how the picture lies, typed. */
export function PictureFields({ picture }: { readonly picture: Picture }) {
  const { metresPerPixel: scale, widthPx } = picture;
  const rescale = (metresPerPixel: number) => {
    if (metresPerPixel * widthPx > MAX_COORDINATE_M) return texts.tooWide;
    commit(scalePicture(picture, metresPerPixel / scale, picture));
    return null;
  };
  const move = (changes: Partial<Picture>) => {
    commit(changePicture(changes, texts.movePicture));
    return null;
  };
  return (
    <>
      <LengthField
        label={texts.widthOnTheGround}
        hint={texts.leftEdgeRightHeight}
        value={widthPx * scale}
        isSize
        onApply={(metres) => rescale(metres / widthPx)}
      />
      <LengthField
        label={texts.groundInPixels(PIXELS)}
        value={scale * PIXELS}
        isSize
        onApply={(metres) => rescale(metres / PIXELS)}
      />
      <LengthField
        label={texts.middleAcross}
        value={picture.x}
        isCoordinate
        onApply={(x) => move({ x })}
      />
      <LengthField
        label={texts.middleUp}
        value={picture.y}
        isCoordinate
        onApply={(y) => move({ y })}
      />
      <TurnField
        label={texts.turn}
        hint={texts.degreesClockwiseFromUpright}
        value={picture.turnDeg}
        onApply={(turnDeg) => commit(changePicture({ turnDeg }, texts.turnPicture))}
      />
      <OpacityField opacity={picture.opacity} />
    </>
  );
}

/** The sheet follows while it slides; letting go keeps it as one step. */
function OpacityField({ opacity }: { readonly opacity: number }) {
  const parts = useFieldParts(null);
  const percent = Math.round(opacity * 100);
  const fade = (text: string) => changePicture({ opacity: Number(text) / 100 }, texts.fadePicture);
  const keep = (text: string) => {
    if (planNow().previewing) commit(fade(text));
  };
  return (
    <Field label={texts.opacity} parts={parts}>
      <input
        {...parts.control}
        type="range"
        min={10}
        max={100}
        step={5}
        value={percent}
        aria-valuetext={texts.percent(percent)}
        onChange={(event) => previewHere(fade(event.target.value))}
        onPointerUp={(event) => keep(event.currentTarget.value)}
        onKeyUp={(event) => keep(event.currentTarget.value)}
        onBlur={(event) => keep(event.currentTarget.value)}
      />
      <output>{percent} %</output>
    </Field>
  );
}
