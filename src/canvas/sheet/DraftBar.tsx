import { type DraftBar as Draft, useSketch } from "../tools/sketch-store.ts";
import { focusSheet } from "../scene/focus-sheet.ts";
import { NARROW_PX, useView } from "../scene/view-store.ts";
import * as texts from "./words.ts";

/** From this width on the bar has room for whole labels beside the drawing, pixels. */
const ROOMY_PX = 1100;

/** What is being drawn or measured, and what can be done with it without a key. */
export function DraftBar() {
  const bar = useSketch((state) => state.bar);
  const widthPx = useView((state) => state.widthPx);
  const isNarrow = widthPx < NARROW_PX;
  return (
    bar && (
      <div className="draft-bar" role="group" aria-label={texts.whatIsBeingDrawn}>
        {bar.fault !== null && <span className="draft-fault">✗ {bar.fault}</span>}
        {bar.choice && <Choice {...bar.choice} />}
        <span>{bar.text}</span>
        {bar.actions.map(({ label, short = label, act }) => (
          <button
            key={label}
            type="button"
            // In between there is room for few letters on screen, and the whole is read out.
            {...(!isNarrow && widthPx < ROOMY_PX && { "aria-label": label, title: label })}
            onClick={({ currentTarget }) => {
              act();
              // Keys go on belonging to what is drawn; fields that open take the focus from there.
              focusSheet(currentTarget);
            }}
          >
            {widthPx < ROOMY_PX ? short : label}
          </button>
        ))}
      </div>
    )
  );
}

function Choice({ label, value, options, pick }: NonNullable<Draft["choice"]>) {
  return (
    <label>
      {label}{" "}
      <select value={value} onChange={(event) => pick(event.target.value)}>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </label>
  );
}
