import type { Kind } from "../../core/kinds/crop.ts";
import type { LengthUnit } from "../../core/model/length.ts";
import { FigureSource } from "./FigureSource.tsx";
import { kindFacts } from "./fact-words.ts";

/** All a kind carries beside its distances. */
export function FigureFacts({ kind, unit }: { readonly kind: Kind; readonly unit: LengthUnit }) {
  return kindFacts(kind, unit).map(({ title, facts }) => (
    <section key={title}>
      <h4>{title}</h4>
      <dl className="figure-facts">
        {facts.map(({ name, text, note, source }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>
              <strong>{text}</strong>
              {note !== null && <> ({note})</>} <FigureSource id={source} />
            </dd>
          </div>
        ))}
      </dl>
    </section>
  ));
}
