import type { CropBook } from "../../core/kinds/crop-book.ts";
import type { Kind, Relation } from "../../core/kinds/crop.ts";
import { FigureSource } from "./FigureSource.tsx";
import { crossings, groupName } from "./figures-crossing.ts";
import * as texts from "./words.ts";
import { Sentence } from "../state/Sentence.tsx";

const relationWords: Readonly<Record<Relation, string>> = {
  freely: texts.relationFreely,
  sometimes: texts.relationSometimes,
  rarely: texts.relationRarely,
  no: texts.relationNo,
};

/** What a kind crosses with and how readily, with who says so and who says otherwise. */
export function FigureCrossings({ kind, book }: { readonly kind: Kind; readonly book: CropBook }) {
  const found = crossings(kind, book);
  return (
    <section>
      <h4>{texts.whatCrossesWithIt}</h4>
      <p>
        <Sentence
          words={texts.crossingGroupIs}
          parts={{
            group: <b>{groupName(kind.group)}</b>,
            kind: kind.name,
            freely: <i>{texts.freely}</i>,
            sometimes: <i>{texts.relationSometimes}</i>,
            rarely: <i>{texts.relationRarely}</i>,
          }}
        />
      </p>
      {found.length === 0 && <p>{texts.noOtherKind}</p>}
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
