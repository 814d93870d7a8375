/** What a layout of the seed list costs, as the checks judge it. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { allIsolationPairs } from "../checks/isolation.ts";
import type { IsolationPair } from "../checks/isolation-pair.ts";
import { countBySeverity } from "../checks/finding.ts";
import { outlineArea, outlineOf } from "../geometry/outline.ts";
import type { Planting } from "../model/plan.ts";
import type { SeedParts } from "./seed-parts.ts";

export interface LayOutCost {
  /** Of the whole layout, with what stood before. */
  readonly conflicts: number;
  readonly cautions: number;
  readonly unknowns: number;
  readonly covers: number;
  /** Varieties that start later than their kind usually does, to flower apart. */
  readonly later: number;
  /** Varieties and plants that are laid. */
  readonly varieties: number;
  readonly plants: number;
  /** Ground planted, and of all beds, square metres. */
  readonly groundM2: number;
  readonly bedsM2: number;
  /** Pairs that only time, or only a cover, keeps apart. */
  readonly onTime: number;
  readonly onCover: number;
  /** Of those that distance keeps apart the two nearest for what they need; null: none are. */
  readonly tightest: { readonly distanceM: number; readonly requiredM: number } | null;
}

export function layOutCost(
  { layout, book, result }: CheckedLayout,
  laid: readonly Planting[],
  { wanted }: SeedParts,
): LayOutCost {
  const { conflict, caution, unknown } = countBySeverity(result.findings);
  const usual = new Map(wanted.map(({ variety, starts }) => [variety.id, starts.usual?.date]));
  const later = laid.filter(({ variety, start }) => start && start.date !== usual.get(variety));
  const area = (items: readonly { readonly outline: Planting["outline"] }[]) =>
    items.reduce((sum, { outline }) => sum + outlineArea(outlineOf(outline)), 0);
  return {
    conflicts: conflict,
    cautions: caution,
    unknowns: unknown,
    covers: layout.plantings.filter(({ cover }) => cover !== "none").length,
    later: new Set(later.map(({ variety }) => variety)).size,
    varieties: new Set(laid.map(({ variety }) => variety)).size,
    plants: laid.reduce((sum, { plants = 0 }) => sum + plants, 0),
    groundM2: area(layout.plantings),
    bedsM2: area(layout.beds),
    onTime: countPairs(result.pairs, "time"),
    onCover: countPairs(result.pairs, "cover"),
    tightest: tightestOf(allIsolationPairs(result.stands, book)),
  };
}

/** Pairs counted once, whichever way round they are at risk. */
function countPairs(pairs: readonly IsolationPair[], standing: IsolationPair["standing"]): number {
  const keys = pairs
    .filter((pair) => pair.standing === standing && pair.relation !== "rarely")
    .map(({ seedParent, pollenSource }) => [seedParent, pollenSource].sort().join(" "));
  return new Set(keys).size;
}

function tightestOf(pairs: readonly IsolationPair[]): LayOutCost["tightest"] {
  let least: LayOutCost["tightest"] = null;
  for (const { distanceM, requiredM, standing } of pairs) {
    if (standing !== "distance" || requiredM === null || requiredM === 0) continue;
    if (least && distanceM / requiredM >= least.distanceM / least.requiredM) continue;
    least = { distanceM, requiredM };
  }
  return least;
}
