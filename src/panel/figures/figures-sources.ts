/** A source as a reader would look it up, with how far it is trusted. */
import { editionOf, findSource, publisherOf } from "../../core/kinds/sources.ts";
import * as words from "./words.ts";

export interface SourceWords {
  /** `Title, publisher, edition`; parts that say nothing are left out. */
  readonly text: string;
  /** `seen`, `common practice`, `from memory` or `own figure`. */
  readonly trust: string;
}

export function sourceWords(id: string): SourceWords {
  const source = findSource(id);
  if (!source) return { text: id, trust: words.unknownSource };
  return {
    text: [source.title, publisherOf(source), editionOf(source)]
      .filter((part) => part !== null)
      .join(", "),
    trust: words.trustNames.get(source.trust) ?? source.trust,
  };
}

/** The title alone, as others are named in passing. */
export function sourceTitle(id: string): string {
  return findSource(id)?.title ?? id;
}
