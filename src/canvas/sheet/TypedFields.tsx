import { type KeyboardEvent, useEffect, useId, useRef } from "react";
import { focusSheet } from "../scene/focus-sheet.ts";
import { isCoarsePointer } from "../scene/handles.ts";
import {
  type TwoTexts,
  applyTyped,
  dismissTyped,
  typeText,
  useTypedValues,
} from "../tools/typed-values.ts";
import { NARROW_PX, useView } from "../scene/view-store.ts";
import { held } from "../scene/viewport.ts";
import * as said from "./words.ts";

/** Room the fields take, pixels; the width is the one of `.typed-fields`. */
const SIZE = { width: 236, height: 84 } as const;
const BESIDE_PX = 18;

/** Between two sizes people write a cross or the letter for it. */
const CROSS = /^[x×*]$/i;

/** The fields of what is typed while drawing; nothing while nothing is. */
export function TypedFields() {
  const owner = useTypedValues((state) => state.owner);
  return owner && <Fields key={owner.labels[0]} labels={owner.labels} note={owner.note} />;
}

interface FieldsProps {
  readonly labels: TwoTexts;
  readonly note: string | undefined;
}

function Fields({ labels, note = said.enterApplies }: FieldsProps) {
  const texts = useTypedValues((state) => state.texts);
  const problem = useTypedValues((state) => state.problem);
  const at = useTypedValues((state) => state.at);
  const widthPx = useView((state) => state.widthPx);
  const heightPx = useView((state) => state.heightPx);
  const noteId = useId();
  const first = useRef<HTMLInputElement>(null);
  useEffect(() => {
    // The first key was pressed on the sheet: typing goes on here, behind it.
    first.current?.focus();
    first.current?.setSelectionRange(1, 1);
  }, []);
  const isNarrow = widthPx < NARROW_PX;
  const beside = held(at.x + BESIDE_PX, 4, Math.max(4, widthPx - SIZE.width - 4));
  const left = isNarrow ? (widthPx - SIZE.width) / 2 : beside;
  // On a phone they stand over the drawing: below are its bar and the keyboard.
  const below = held(at.y + BESIDE_PX, 4, Math.max(4, heightPx - SIZE.height - 4));
  const top = isNarrow ? 30 : below;
  return (
    <div className="typed-fields" role="group" aria-label={said.exactSize} style={{ left, top }}>
      <div className="typed-pair">
        {(labels[1] === "" ? ([0] as const) : ([0, 1] as const)).map((index) => (
          <label key={index}>
            {labels[index]}
            <input
              type="text"
              inputMode="text"
              autoComplete="off"
              ref={index === 0 ? first : null}
              onKeyDown={pressKey}
              value={texts[index]}
              aria-invalid={problem !== null}
              aria-describedby={noteId}
              onChange={(event) => typeText(index, event.target.value)}
            />
          </label>
        ))}
      </div>
      {isCoarsePointer() && (
        <button type="button" onClick={applyTyped}>
          {said.apply}
        </button>
      )}
      <div id={noteId} className={problem === null ? "typed-note" : "typed-note wrong"}>
        {problem ?? note}
      </div>
    </div>
  );
}

function pressKey(event: KeyboardEvent<HTMLInputElement>): void {
  const group = event.currentTarget.closest("div[role=group]");
  const inputs = [...(group?.querySelectorAll("input") ?? [])];
  const isFirst = event.currentTarget === inputs[0];
  event.stopPropagation();
  if (event.key === "Enter" || event.key === "Escape") {
    event.preventDefault();
    if (event.key === "Enter") applyTyped();
    else dismissTyped();
    if (group && !useTypedValues.getState().owner) focusSheet(group);
  } else if (CROSS.test(event.key) && isFirst) {
    event.preventDefault();
    inputs[1]?.focus();
  } else if (event.key === "Tab") {
    // Between the two and nowhere else: the drawing is not done yet.
    event.preventDefault();
    inputs[isFirst ? 1 : 0]?.focus();
  }
}
