import type { Kind } from "../core/crops/crop.ts";
import type { LengthUnit } from "../core/model/length.ts";
import type { Variety } from "../core/model/plan.ts";
import { FigureSource } from "./FigureSource.tsx";
import { type FigureRow, figureRows } from "./figures-rows.ts";

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
    return <p>No isolation figure was found for it. Type your own, and the checks will use it.</p>;
  }
  return (
    <ul className="plain-list figure-list">
      {rows.map((row) => (
        <li key={row.id}>
          <FigureItem row={row} />
          {variety && (
            <button
              type="button"
              className="figure-pick"
              aria-pressed={variety.figure === row.id}
              aria-label={`Use for ${variety.name}: ${row.className}, ${row.distance}`}
              onClick={() => onPick(variety.figure === row.id ? undefined : row.id)}
            >
              {variety.figure === row.id ? "✓ Picked for " : "Use for "}
              <bdi>{variety.name}</bdi>
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}

function FigureItem({ row }: { readonly row: FigureRow }) {
  return (
    <div className="figure-item">
      <p>
        <strong>{row.distance}</strong> <span className="figure-class">{row.className}</span>{" "}
        <span className="soft">
          printed as {row.published}; read as{" "}
          <span className="figure-level" title={row.levelWhy}>
            {row.level}
          </span>{" "}
          level
        </span>
      </p>
      {row.defaultOf.length > 0 && (
        <p className="figure-default">
          <span aria-hidden="true">✓</span> default for {row.defaultOf.join("; ")}
        </p>
      )}
      {row.neverDefault !== null && (
        <p className="soft">Never by default: {row.neverDefault}. It can still be picked.</p>
      )}
      {row.remarks.length > 0 && <p>{row.remarks.join("; ")}.</p>}
      <p>
        <FigureSource id={row.source} />
      </p>
    </div>
  );
}
