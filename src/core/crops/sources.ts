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
