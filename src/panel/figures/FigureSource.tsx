import { sourceTitle, sourceWords } from "./figures-sources.ts";
import * as texts from "./words.ts";

interface FigureSourceProps {
  readonly id: string;
  /** Sources that say otherwise. */
  readonly otherwise?: readonly string[];
}

/** Where a number stands, and how far it is trusted. */
export function FigureSource({ id, otherwise = [] }: FigureSourceProps) {
  const { text, trust } = sourceWords(id);
  return (
    <span className="figure-source">
      {text} <span className="figure-trust">({trust})</span>
      {otherwise.length > 0 && (
        <>{texts.otherwise(otherwise.map((other) => sourceTitle(other)).join("; "))}</>
      )}
    </span>
  );
}
