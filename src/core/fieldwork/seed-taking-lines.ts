/** For each planting kept for seed, how its seed is to be taken: for calendar, bed card and list. */
import type { Stand } from "../checks/stand.ts";
import { seedTakingWords } from "../generations/seed-taking-words.ts";
import { jobWords } from "./job-words.ts";

const known = new WeakMap<readonly Stand[], ReadonlyMap<string, string>>();

/** By planting id. Plantings of one variety are one population, unless a lot is kept apart. */
export function seedTakingLines(stands: readonly Stand[]): ReadonlyMap<string, string> {
  const found = known.get(stands) ?? linesOf(stands);
  known.set(stands, found);
  return found;
}

function linesOf(stands: readonly Stand[]): ReadonlyMap<string, string> {
  const parents = stands.filter(({ isSeedParent }) => isSeedParent);
  const populations = new Map<string, Stand[]>();
  for (const stand of parents) {
    const key = stand.keepApart ? `#${stand.id}` : (stand.varietyKey ?? `#${stand.id}`);
    const list = populations.get(key);
    if (list) list.push(stand);
    else populations.set(key, [stand]);
  }
  return new Map(
    [...populations.values()].flatMap((together) => {
      const counts = together.map(({ planting }) => planting?.plants);
      const plants = counts.some((count) => count === undefined)
        ? undefined
        : counts.reduce<number>((sum, count) => sum + (count ?? 0), 0);
      return together.map(({ id, kind }) => {
        const words = seedTakingWords(kind, plants);
        return [id, together.length > 1 ? jobWords.allPlots(words) : words] as const;
      });
    }),
  );
}
