import type { CropBook } from "../../core/kinds/crop-book.ts";
import type { Kind, Relation } from "../../core/kinds/crop.ts";
import { FigureSource } from "./FigureSource.tsx";
import { crossings, groupName } from "./figures-crossing.ts";

const relationWords: Readonly<Record<Relation, string>> = {
  freely: "freely",
  sometimes: "sometimes",
  rarely: "rarely",
  no: "does not cross",
};

/** What a kind crosses with and how readily, with who says so and who says otherwise. */
export function FigureCrossings({ kind, book }: { readonly kind: Kind; readonly book: CropBook }) {
  const found = crossings(kind, book);
  return (
    <section>
      <h4>What crosses with it</h4>
      <p>
        Crossing group: <b>{groupName(kind.group)}</b>. Varieties of {kind.name} cross freely with
        each other. <i>Freely</i> and <i>sometimes</i> ask the full distance, <i>rarely</i> gives a
        caution.
      </p>
      {found.length === 0 && <p>No other kind of the group is known here.</p>}
      <dl className="figure-facts">
        {found.map(({ species, kinds, relation, note, source, otherwise }) => (
          <div key={species}>
            <dt>
              {kinds.length > 0 && `${kinds.join(", ")} `}
              <i lang="la">{species}</i>
            </dt>
            <dd>
              <strong>{relationWords[relation]}</strong>
              {note !== null && <> ({note})</>}{" "}
              {source !== null && <FigureSource id={source} otherwise={otherwise} />}
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
