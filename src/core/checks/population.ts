/** Varieties with fewer seed plants than their kind needs. Plantings of one variety add up. */
import type { Kind } from "../kinds/crop.ts";
import type { Check } from "./check.ts";
import { type PopulationFinding, compareText, findingId } from "./finding.ts";
import type { Stand } from "./stand.ts";

export const populationCheck: Check = {
  name: "population",
  title: "Too few plants to keep a variety healthy",
  run: ({ stands }) => {
    const byVariety = new Map<string, Stand[]>();
    for (const stand of stands) {
      if (!stand.isSeedParent || stand.variety === null) continue;
      const list = byVariety.get(stand.variety.id);
      if (list) list.push(stand);
      else byVariety.set(stand.variety.id, [stand]);
    }
    return [...byVariety].flatMap(([variety, parents]) => {
      const finding = shortfall(variety, parents);
      return finding ? [finding] : [];
    });
  },
};

function shortfall(variety: string, parents: readonly Stand[]): PopulationFinding | null {
  const kind = (parents[0] as Stand).kind;
  // A planting without a count says nothing about numbers: no finding rather than a false one.
  if (parents.some((stand) => stand.planting?.plants === undefined)) return null;
  const plants = parents.reduce((sum, stand) => sum + (stand.planting?.plants ?? 0), 0);
  const floor = floorMissed(kind, plants);
  if (floor === null) return null;
  const subjects = parents.map((stand) => stand.id).sort(compareText);
  return {
    // By variety and floor, not by plantings: accepted, it stays so until more plants are needed.
    id: findingId("population", [variety], String(floor.needed)),
    check: "population",
    severity: "caution",
    subjects,
    measuredM: null,
    requiredM: null,
    where: null,
    variety,
    plants,
    ...floor,
  };
}

function floorMissed(kind: Kind, plants: number) {
  const { viable, maintenance } = kind.population ?? {};
  if (viable && plants < viable.value) {
    return { floor: "viable" as const, needed: viable.value, source: viable.source };
  }
  if (maintenance && plants < maintenance.value) {
    return { floor: "maintenance" as const, needed: maintenance.value, source: maintenance.source };
  }
  return null;
}
