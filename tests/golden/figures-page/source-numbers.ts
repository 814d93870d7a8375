/** Numbers under which the figures page cites its sources. */
import { sources } from "../../../src/core/kinds/sources.ts";

const numbers = new Map(
  sources
    .filter((source) => source.trust !== "own figure")
    .map((source, index) => [source.id, index + 1]),
);

/** A source as cited on the figures page, e.g. "[3]". */
export function cite(id: string): string {
  const number = numbers.get(id);
  if (number === undefined) throw new Error(`The figures page cites the unknown source "${id}".`);
  return `[${number}]`;
}
