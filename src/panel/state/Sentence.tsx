import { Fragment, type ReactNode } from "react";

interface SentenceProps {
  /** With a gap in braces for each part: `Bed {code}`. */
  readonly words: string;
  /** What stands in the gaps, by their names. */
  readonly parts: Readonly<Record<string, ReactNode>>;
}

/** A whole sentence of a words file with something drawn in it, wherever its language wants it. */
export function Sentence({ words, parts }: SentenceProps) {
  return words
    .split(/\{(\w+)\}/)
    .map((piece, at) => <Fragment key={at}>{at % 2 === 1 ? parts[piece] : piece}</Fragment>);
}
