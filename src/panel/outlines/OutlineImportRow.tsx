import {
  type PlacedTrace,
  type TraceChoice,
  needsWidth,
  rolesFor,
} from "../../core/outlines/place-trace.ts";
import type { Trace } from "../../core/outlines/trace.ts";
import { LengthField } from "../form/LengthField.tsx";
import { roleWords, traceWords } from "./outline-words.ts";
import * as texts from "./words.ts";

interface OutlineImportRowProps {
  readonly trace: Trace;
  readonly choice: TraceChoice;
  /** Null while it is skipped. */
  readonly placed: PlacedTrace | null;
  readonly onChoose: (choice: TraceChoice) => void;
}

/** One thing of the file, and what becomes of it. */
export function OutlineImportRow({ trace, choice, placed, onChoose }: OutlineImportRowProps) {
  const pick = (value: string) => {
    const role = rolesFor(trace.sort).find((each) => each === value);
    if (role) onChoose({ ...choice, role });
  };
  return (
    <tr>
      <td>{trace.number}</td>
      <td>{trace.name}</td>
      <td>{traceWords(trace, placed)}</td>
      <td>
        <select
          aria-label={texts.whatNumberBecomes(trace.number)}
          value={choice.role}
          onChange={(event) => pick(event.target.value)}
        >
          {rolesFor(trace.sort).map((role) => (
            <option key={role} value={role}>
              {roleWords[role]}
            </option>
          ))}
        </select>
        {needsWidth(trace.sort, choice.role) && (
          <LengthField
            label={texts.widthOfNumber(trace.number)}
            value={choice.widthM}
            isSize
            onApply={(widthM) => {
              onChoose({ ...choice, widthM });
              return null;
            }}
          />
        )}
        {placed?.ok === false && <p className="field-reason">{texts.it(placed.problem)}</p>}
      </td>
    </tr>
  );
}
