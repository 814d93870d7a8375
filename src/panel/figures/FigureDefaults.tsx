import type { Kind } from "../../core/kinds/crop.ts";
import type { LengthUnit } from "../../core/model/length.ts";
import { defaultRows } from "./figures-rows.ts";

/** What the rule takes at each level, and why. */
export function FigureDefaults({ kind, unit }: { readonly kind: Kind; readonly unit: LengthUnit }) {
  return (
    <dl className="figure-facts">
      {defaultRows(kind, unit).map(({ level, form, distance, why, range }) => (
        <div key={`${level} ${form ?? ""}`}>
          <dt>{form === null ? level : `${level}, ${form}`}</dt>
          <dd>
            <strong>{distance ?? "unknown"}</strong>: {why}.
            {range !== null && <span className="soft"> Figures of this level: {range}.</span>}
          </dd>
        </div>
      ))}
    </dl>
  );
}
