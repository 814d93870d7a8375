/** Where every figure of the crop base was published. */
import type { Source } from "./crop.ts";
import { practiceSources } from "./practice-sources.ts";
import { regulationSources } from "./regulation-sources.ts";
import { scienceSources } from "./science-sources.ts";

export const sources: readonly Source[] = [
  ...regulationSources,
  ...practiceSources,
  ...scienceSources,
];

const byId = new Map(sources.map((source) => [source.id, source]));

export function findSource(id: string): Source | undefined {
  return byId.get(id);
}

/**
 * Who published it, as a reader would name it; null where that is not known. That the copy we read
 * does not show it stays in the data.
 */
export function publisherOf({ publisher }: Source): string | null {
  return publisher === "none" || publisher.includes("not shown") ? null : publisher;
}

/** Year or edition; null where none is known. */
export function editionOf({ edition }: Source): string | null {
  return edition === "n.d." || edition.includes("not shown") ? null : edition;
}

/** What a figure that only somebody's memory vouches for is called in a sentence. */
const UNCHECKED = "rule of thumb without a published source";

/** How a figure's source is named in a sentence: title and publisher, or why it has neither. */
export function citedAs(sourceId: string): string {
  const source = findSource(sourceId);
  if (!source) return sourceId;
  if (source.trust === "from memory") return UNCHECKED;
  if (source.trust !== "seen") return source.trust;
  const publisher = publisherOf(source);
  const isNamed =
    publisher === null ||
    source.authority === "regulator" ||
    source.authority === "teaching" ||
    source.title.includes(publisher);
  return isNamed ? source.title : `${source.title}, ${publisher}`;
}
