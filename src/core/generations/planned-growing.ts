/** What this season's plots for seed add to a line: the next step of it, as it is planned. */
import type { Kind } from "../kinds/crop.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import { lotsToSow } from "../lots/lot-book.ts";
import { isSameVariety, varietyIndex } from "../lots/variety-index.ts";
import type { Layout, Plan, Planting } from "../model/plan.ts";
import { inbreedingOver } from "./effective-size.ts";
import { plannedSize } from "./growing.ts";
import type { LineBook } from "./line.ts";
import type { GrowingSize, LineLot } from "./line-lot.ts";

export interface PlannedGrowing {
  readonly plantings: readonly Planting[];
  /** Lots with a line they are sown from; of a lot in a circle there is none. */
  readonly parents: readonly LineLot[];
  /** Plants of all plantings together; null where one has no number. */
  readonly plants: number | null;
  readonly size: GrowingSize;
  /** Diversity lost up to the seed sown, and with this season; null: not known. */
  readonly lostBefore: number;
  readonly lostAfter: number | null;
}

/**
 * The plantings of a variety that are kept for seed and flower, as one growing-out; null where
 * there is none. They add up; a planting kept apart stands for itself.
 */
export function plannedGrowings(
  plan: Plan,
  layout: Layout,
  varietyId: string,
  { lines, book }: { readonly lines: LineBook; readonly book: CropBook },
): readonly PlannedGrowing[] {
  const varieties = varietyIndex(plan.varieties);
  const asked = varieties.get(varietyId);
  const kind = asked && book.kind(asked.kind);
  if (!asked || !kind) return [];
  const standing = layout.plantings.filter((planting) => {
    const variety = varieties.get(planting.variety);
    const isKept = planting.purpose === "seed" && variety?.hybrid !== true;
    const flowers =
      planting.flowering === "yes" ||
      (planting.flowering === "first-year" && kind.lifeCycle === "annual");
    return isKept && flowers && variety !== undefined && isSameVariety(variety, asked);
  });
  const together = standing.filter(({ keepApart }) => keepApart !== true);
  const apart = standing.filter(({ keepApart }) => keepApart === true);
  return [together, ...apart.map((planting) => [planting])]
    .filter((plantings) => plantings.length > 0)
    .map((plantings) => growingOf(plantings, kind, plan, lines));
}

/** Plantings that stand together, as one growing-out. */
function growingOf(
  plantings: readonly Planting[],
  kind: Kind,
  plan: Plan,
  lines: LineBook,
): PlannedGrowing {
  const varieties = varietyIndex(plan.varieties);
  const sown = plantings.flatMap((planting) =>
    lotsToSow(plan, planting, varieties.get(planting.variety)),
  );
  const parents = [...new Set(sown.map(({ id }) => id))].flatMap((id) => lines.lot(id) ?? []);
  const counts = plantings.map(({ plants }) => plants);
  const plants = counts.some((count) => count === undefined)
    ? null
    : counts.reduce<number>((sum, count) => sum + (count ?? 0), 0);
  const isHandPollinated = plantings.some(({ cover }) => cover === "hand");
  const size = plannedSize(plants, isHandPollinated, kind);
  const lostBefore = Math.max(0, ...parents.map(({ past }) => past.lost));
  const lostAfter =
    size.effective === null ? null : 1 - (1 - lostBefore) * (1 - inbreedingOver([size.effective]));
  return { plantings, parents, plants, size, lostBefore, lostAfter };
}
