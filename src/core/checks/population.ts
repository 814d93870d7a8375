/** Varieties with fewer seed plants than their kind needs. Plantings of one variety add up. */
import type { Kind } from "../kinds/crop.ts";
import { citedAs } from "../kinds/sources.ts";
import type { Check } from "./check.ts";
import type { Description, Wording } from "./wording.ts";
import { type FindingBase, compareText, findingId } from "./finding.ts";
import { type FewPlants, effectOf, moreOnPopulation } from "./seed-lots.ts";
import type { Stand } from "./stand.ts";
import * as words from "../words/finding-words.ts";

/** Fewer seed plants of a variety than its kind needs. */
export interface PopulationFinding extends FindingBase, FewPlants {
  readonly check: "population";
  readonly variety: string;
}

export const populationCheck: Check<PopulationFinding> = {
  name: "population",
  ignoresPlace: true,
  title: words.population,
  run: (input) => {
    const byLot = new Map<string, Stand[]>();
    for (const stand of input.stands) {
      if (!stand.isSeedParent || stand.variety === null) continue;
      // A lot kept apart does not mate with the rest of its variety: it stands by itself.
      const lot = stand.keepApart ? `#${stand.id}` : (stand.varietyKey ?? `#${stand.id}`);
      const list = byLot.get(lot);
      if (list) list.push(stand);
      else byLot.set(lot, [stand]);
    }
    return [...byLot.values()].flatMap((parents) => {
      const finding = shortfall(parents);
      if (!finding) return [];
      const effect = effectOf(input, parents);
      return [effect ? { ...finding, effect } : finding];
    });
  },
  describe: describePopulation,
  figuresOf: ({ subjects }) => subjects[0] ?? null,
  about: "variety",
};

/** @param parents the seed parents of one population, one or more */
function shortfall(parents: readonly Stand[]): PopulationFinding | null {
  const [{ kind, keepApart, id }] = parents as [Stand];
  // Of a variety entered twice the first id in order, whichever is planted first.
  const [variety = ""] = parents.map((stand) => stand.variety?.id ?? "").sort(compareText);
  // A planting without a count says nothing about numbers: no finding rather than a false one.
  if (parents.some((stand) => stand.planting?.plants === undefined)) return null;
  const plants = parents.reduce((sum, stand) => sum + (stand.planting?.plants ?? 0), 0);
  const floor = floorMissed(kind, plants);
  if (floor === null) return null;
  const subjects = parents.map((stand) => stand.id).sort(compareText);
  return {
    // By variety and floor, not by plantings: accepted, it stays so until more plants are needed.
    id: findingId("population", keepApart ? [variety, id] : [variety], String(floor.needed)),
    check: "population",
    severity: "caution",
    subjects,
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

function describePopulation(finding: PopulationFinding, wording: Wording): Description {
  const { plants, needed, source } = finding;
  const stand = wording.standOf(finding.subjects[0] ?? "");
  const name = stand?.variety?.name ?? wording.nameOf(finding.variety);
  const kind = stand?.kind;
  return {
    title: words.seedPlants(name, plants, needed),
    sentences: (kind && moreOnPopulation(finding, kind)) ?? [
      words.advised(needed, kind?.name ?? words.thisKind, citedAs(source)),
    ],
  };
}
