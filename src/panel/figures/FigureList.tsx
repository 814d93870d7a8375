import type { Kind } from "../../core/kinds/crop.ts";
import type { LengthUnit } from "../../core/model/length.ts";
import type { Variety } from "../../core/model/plan.ts";
import { FigureSource } from "./FigureSource.tsx";
import { type FigureRow, figureRows } from "./figures-rows.ts";
import * as texts from "./words.ts";
import { Sentence } from "../state/Sentence.tsx";
import { levelNames } from "../../core/words/level-words.ts";

interface FigureListProps {
  readonly kind: Kind;
  readonly unit: LengthUnit;
  /** The variety a figure can be picked for; null: only to read. */
  readonly variety: Variety | null;
  readonly onPick: (figure: string | undefined) => void;
}

/** Every figure published for a kind. */
export function FigureList({ kind, unit, variety, onPick }: FigureListProps) {
  const rows = figureRows(kind, unit);
  if (rows.length === 0) {
    return <p>{texts.noFigureFound}</p>;
  }
  return (
    <ul className="plain-list figure-list">
      {rows.map((row) => (
        <li key={row.id}>
          <FigureItem row={row} />
          {variety && (
            <PickButton
              row={row}
              name={variety.name}
              isPicked={variety.figure === row.id}
              onPick={onPick}
            />
          )}
        </li>
      ))}
    </ul>
  );
}

interface PickButtonProps {
  readonly row: FigureRow;
  /** Of the variety. */
  readonly name: string;
  readonly isPicked: boolean;
  readonly onPick: (figure: string | undefined) => void;
}

/** Picks a figure for a variety; pressed again, the rule decides once more. */
function PickButton({ row, name, isPicked, onPick }: PickButtonProps) {
  const what = `${row.className}, ${row.distance}`;
  return (
    <button
      type="button"
      className={isPicked ? "figure-pick picked" : "figure-pick"}
      aria-label={isPicked ? texts.pickedTakeBack(name, what) : texts.pickFor(name, what)}
      onClick={() => onPick(isPicked ? undefined : row.id)}
    >
      {isPicked && <span aria-hidden="true">✓ </span>}
      <Sentence
        words={isPicked ? texts.pickedFor : texts.figureFor}
        parts={{ variety: <bdi>{name}</bdi> }}
      />
    </button>
  );
}

function FigureItem({ row }: { readonly row: FigureRow }) {
  return (
    <div className="figure-item">
      <p>
        <strong>{row.distance}</strong> <span className="figure-class">{row.className}</span>{" "}
        <span className="soft">
          <Sentence
            words={texts.printedAs}
            parts={{
              published: row.published,
              level: (
                <span className="figure-level" title={row.levelWhy}>
                  {levelNames[row.level]}
                </span>
              ),
            }}
          />
        </span>
      </p>
      {row.defaultOf.length > 0 && (
        <p className="figure-default">
          <span aria-hidden="true">✓</span> {texts.defaultFor(row.defaultOf.join("; "))}
        </p>
      )}
      {row.neverDefault !== null && (
        <p className="soft">{texts.neverByDefault(row.neverDefault)}</p>
      )}
      {row.remarks !== "" && <p>{row.remarks}</p>}
      <p>
        <FigureSource id={row.source} />
      </p>
    </div>
  );
}
