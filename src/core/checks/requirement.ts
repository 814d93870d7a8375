/** The distance a planting needs, from what was typed, picked, published and stated. */
import { requiredDistance } from "../distances/required-distance.ts";
import { statedDistance } from "../distances/stated-adjustments.ts";
import { wildIncreasesOf } from "../distances/wild-increase.ts";
import type { Kind } from "../kinds/crop.ts";
import type { Planting, PurityLevel, Variety } from "../model/plan.ts";
import type { Requirement } from "./isolation-pair.ts";

/**
 * The planting's own distance, else its variety's, else the published figure at the level after
 * the adjustments stated for the planting. A distance typed by hand stands as it is.
 */
export function requirementOf(
  planting: Pick<Planting, "isolationM" | "adjustments">,
  variety: Pick<Variety, "isolationM" | "figure" | "form">,
  kind: Kind,
  level: PurityLevel,
): Requirement | null {
  const typed = planting.isolationM ?? variety.isolationM;
  if (typed !== undefined) {
    const from = planting.isolationM !== undefined ? "planting" : "variety";
    return { metres: typed, from, figure: null, source: null, reason: null };
  }
  const published = publishedRequirement(variety, kind, level);
  if (published === null || !planting.adjustments?.length) return published;
  const { metres, steps } = statedDistance(
    kind.id,
    published.metres,
    planting.adjustments,
    published.source,
  );
  if (steps.length === 0) return published;
  return { ...published, metres, adjustments: steps };
}

/** The figure picked for the variety, else the one the default rule takes. */
function publishedRequirement(
  variety: Pick<Variety, "figure" | "form">,
  kind: Kind,
  level: PurityLevel,
): Requirement | null {
  const picked = kind.isolation.find((figure) => figure.id === variety.figure);
  if (picked) {
    return {
      metres: picked.metres,
      from: "figure",
      figure: picked.id,
      source: picked.source,
      reason: null,
      picked,
    };
  }
  const found = requiredDistance(kind, variety.form, level);
  if (!found) return null;
  return {
    metres: found.figure.metres,
    from: "figure",
    figure: found.figure.id,
    source: found.figure.source,
    reason: found.reason,
    ...(found.isFloor ? { isFloor: true } : {}),
    ...(found.isFormUnsaid ? { isFormUnsaid: true } : {}),
  };
}

/**
 * What a planting needs from the wild kinds its sources ask more of, by id of the wild kind; null
 * where none does. A typed distance is left alone, whoever it is kept from.
 */
export function wildRequirements(
  kind: Kind,
  requirement: Requirement | null,
): ReadonlyMap<string, Requirement> | null {
  if (requirement === null || requirement.from !== "figure") return null;
  if (requirement.source === "own") return null;
  const more = wildIncreasesOf(kind.id).filter(({ atLeastM }) => atLeastM > requirement.metres);
  if (more.length === 0) return null;
  return new Map(
    more.map(({ wild, atLeastM, why, source }) => [
      wild,
      {
        ...requirement,
        metres: atLeastM,
        source,
        increase: why,
      },
    ]),
  );
}

/** Metres beyond which no source matters; infinite where it is not known what is enough. */
export function distanceReach(
  requirement: Requirement | null,
  wild: ReadonlyMap<string, Requirement> | null,
): number {
  if (requirement === null || requirement.isFloor === true) return Infinity;
  let reach = requirement.metres;
  for (const { metres } of wild?.values() ?? []) reach = Math.max(reach, metres);
  return reach;
}
