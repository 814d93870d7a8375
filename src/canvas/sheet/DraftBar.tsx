import { type DraftBar as Draft, useSketch } from "../tools/sketch-store.ts";
import { focusSheet } from "../scene/focus-sheet.ts";
import { NARROW_PX, useView } from "../scene/view-store.ts";

const BAR = {
  position: "absolute",
  left: "50%",
  bottom: 70,
  transform: "translateX(-50%)",
  width: "max-content",
  maxWidth: "calc(100% - 16px)",
  display: "flex",
  flexWrap: "wrap",
  alignItems: "center",
  gap: "4px 8px",
  padding: "4px 8px",
  background: "var(--sheet)",
  border: "1px solid var(--ink)",
  borderRadius: 3,
} as const;
const FAULT = { flexBasis: "100%", color: "var(--conflict)", fontWeight: "bold" } as const;

/** What is being drawn or measured, and what can be done with it without a key. */
export function DraftBar() {
  const bar = useSketch((state) => state.bar);
  const isNarrow = useView((state) => state.widthPx < NARROW_PX);
  return (
    bar && (
      <div role="group" aria-label="What is being drawn" style={BAR}>
        {bar.fault !== null && <span style={FAULT}>✗ {bar.fault}</span>}
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
