import { type DraftBar as Draft, useSketch } from "../tools/sketch-store.ts";
import { focusSheet } from "../scene/focus-sheet.ts";
import { NARROW_PX, useView } from "../scene/view-store.ts";

/** What is being drawn or measured, and what can be done with it without a key. */
export function DraftBar() {
  const bar = useSketch((state) => state.bar);
  const isNarrow = useView((state) => state.widthPx < NARROW_PX);
  return (
    bar && (
      <div className="draft-bar" role="group" aria-label="What is being drawn">
        {bar.fault !== null && <span className="draft-fault">✗ {bar.fault}</span>}
        {bar.choice && <Choice {...bar.choice} />}
        <span>{bar.text}</span>
        {bar.actions.map(({ label, short, act }) => (
          <button
            key={label}
            type="button"
            onClick={({ currentTarget }) => {
              act();
              // Keys go on belonging to what is drawn; fields that open take the focus from there.
              focusSheet(currentTarget);
            }}
          >
            {isNarrow ? (short ?? label) : label}
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
