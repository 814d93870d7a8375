import type { Kind } from "../../core/kinds/crop.ts";
import type { LengthUnit } from "../../core/model/length.ts";
import { defaultRows } from "./figures-rows.ts";
import * as texts from "./words.ts";
import { levelNames } from "../../core/words/level-words.ts";

/** What the rule takes at each level, and why. */
export function FigureDefaults({ kind, unit }: { readonly kind: Kind; readonly unit: LengthUnit }) {
  return (
    <dl className="figure-facts">
      {defaultRows(kind, unit).map(({ level, form, distance, why, range }) => (
        <div key={`${level} ${form ?? ""}`}>
          <dt>{form === null ? levelNames[level] : `${levelNames[level]}, ${form}`}</dt>
          <dd>
            <strong>{distance ?? texts.unknown}</strong>: {why}.
            {range !== null && <span className="soft"> {texts.figuresOfLevel(range)}</span>}
          </dd>
        </div>
      ))}
    </dl>
  );
}
