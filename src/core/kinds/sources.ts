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

/** How a figure's source is named in a sentence: title and publisher, or why it has neither. */
export function citedAs(sourceId: string): string {
  const source = findSource(sourceId);
  if (!source) return sourceId;
  if (source.trust !== "seen") return source.trust;
  const isNamed =
    source.authority === "regulator" ||
    source.authority === "teaching" ||
    source.title.includes(source.publisher);
  return isNamed ? source.title : `${source.title}, ${source.publisher}`;
}
