/**
 * Every way that could be part of clearing a whole layout, as edits with costs: of each planting and
 * pollen source that a conflict ties up. Not verified one by one, since a way that clears nothing
 * alone may do so together with another; whoever puts several together runs the checks on all of it.
 */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { Stand } from "../checks/stand.ts";
import { aroundProposals } from "./around-proposals.ts";
import { bothCoveredProposals, coverProposals } from "./cover-proposals.ts";
import { cutProposals } from "./cut-proposals.ts";
import { startProposals } from "./date-proposals.ts";
import { nearestSpotProposals, otherBedProposals, swapProposals } from "./move-proposals.ts";
import type { Proposal } from "./remedy.ts";
import { yearProposals } from "./year-proposals.ts";

export interface CandidateLimits {
  /** Furthest a start may move, days. */
  readonly mostDays: number;
  /** Places kept in each other bed, spread along it from one end to the other. */
  readonly placesPerBed: number;
  /** Ids of plantings and surroundings that stay as they are. */
  readonly staying: ReadonlySet<string>;
}

export const USUAL_LIMITS: CandidateLimits = {
  mostDays: 42,
  placesPerBed: 4,
  staying: new Set(),
};

/** The stands a conflict ties up, in the order of the layout. */
export function tiedStands({ result }: CheckedLayout): readonly Stand[] {
  const tied = new Set(
    result.findings.flatMap(({ check, severity, subjects }) =>
      check === "isolation" && severity === "conflict" ? subjects : [],
    ),
  );
  return result.stands.filter(({ id }) => tied.has(id));
}

/** Ways of all tied stands that stay within the limits. What would move what is to stay is left out. */
export function candidateWays(
  context: CheckedLayout,
  limits: CandidateLimits = USUAL_LIMITS,
): readonly Proposal[] {
  const ways = tiedStands(context)
    .filter(({ id }) => !limits.staying.has(id))
    .flatMap((stand) => waysOfStand(context, stand, limits));
  return [...ways, ...waysOfTwo(context)].filter(
    ({ touches }) => !touches.some((id) => limits.staying.has(id)),
  );
}

/** Covers that help only over both of two in conflict: whoever looks for them one by one seldom finds both. */
function waysOfTwo(context: CheckedLayout): readonly Proposal[] {
  const { findings, standById } = context.result;
  return findings.flatMap(({ check, severity, subjects }) => {
    const [a, b] = subjects.map((id) => standById.get(id));
    if (check !== "isolation" || severity !== "conflict" || !a || !b) return [];
    return bothCoveredProposals(context, [a, b]);
  });
}

function waysOfStand(
  context: CheckedLayout,
  stand: Stand,
  limits: CandidateLimits,
): readonly Proposal[] {
  return [
    ...places(context, stand, limits),
    ...startProposals(context, stand, limits.mostDays),
    ...coverProposals(context, stand),
    ...cutProposals(context, stand),
    ...around(context, stand),
    ...yearProposals(context, stand),
  ];
}

function places(
  context: CheckedLayout,
  { planting }: Stand,
  { placesPerBed }: CandidateLimits,
): readonly Proposal[] {
  if (!planting || planting.locked === true) return [];
  return [
    ...nearestSpotProposals(context, planting),
    ...otherBedProposals(context, planting).flatMap((bed) => spread(bed, placesPerBed)),
    ...swapProposals(context, planting),
  ];
}

/** So many of a list, evenly from its first to its last. */
function spread<T>(items: readonly T[], most: number): readonly T[] {
  if (items.length <= most) return items;
  const last = items.length - 1;
  return Array.from(
    { length: most },
    (_, index) => items[Math.round((index * last) / (most - 1))],
  ).filter((item) => item !== undefined);
}

/** Each once: to cut it is the same whichever seed parent it is done for. */
function around(context: CheckedLayout, stand: Stand): readonly Proposal[] {
  const ways = parentsBy(context, stand).flatMap((parent) =>
    aroundProposals(context, stand, parent),
  );
  return [...new Map(ways.map((way) => [way.id, way])).values()];
}

/** The seed parents that a pollen source is in conflict with. */
function parentsBy({ result }: CheckedLayout, { id, surrounding }: Stand): readonly Stand[] {
  if (!surrounding) return [];
  const parents = new Set(
    result.findings.flatMap((finding) =>
      finding.check === "isolation" && finding.severity === "conflict"
        ? finding.atRisk.filter((pair) => pair.pollenSource === id).map((pair) => pair.seedParent)
        : [],
    ),
  );
  return [...parents].flatMap((parent) => result.standById.get(parent) ?? []);
}
