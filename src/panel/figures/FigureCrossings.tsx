import type { CropBook } from "../../core/kinds/crop-book.ts";
import type { Kind, Relation } from "../../core/kinds/crop.ts";
import { FigureSource } from "./FigureSource.tsx";
import { crossings, groupName } from "./figures-crossing.ts";
import * as texts from "./words.ts";

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
        {texts.crossingGroup}
        <b>{groupName(kind.group)}</b>
        {texts.varietiesCrossFreelyEach(kind.name)}
        <i>{texts.freely}</i>
        {texts.and}
        <i>{texts.sometimes}</i>
        {texts.askTheFullDistance}
        <i>{texts.rarely}</i>
        {texts.givesACaution}
      </p>
      {found.length === 0 && <p>{texts.noOtherKindGroup}</p>}
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
