/**
 * What share of a planting's seed the pollen around it may have made. For maize by two curves of
 * where pollen lands, for rape and turnip by published shares at distances, for every other kind
 * only what trials found. It explains the rule and never overrules it: a pair the rule clears is
 * not called clean here.
 */
import { isCovered } from "../practice/pollen-cover.ts";
import { type Stand, isSameLot } from "../checks/stand.ts";
import { boundsGap } from "../geometry/bounds.ts";
import { gapBetween } from "../geometry/gap.ts";
import { outlineOf } from "../geometry/outline.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import { groupStands } from "../nearness/near-stands.ts";
import { daysTogether, maizeTogether } from "./bloom-together.ts";
import {
  ADJOINING_M,
  type Shares,
  TURNIP_RAPE_M,
  adjoiningShares,
  separateShares,
  turnipRapeShare,
} from "./distance-bins.ts";
import { maizeShares } from "./maize-share.ts";
import { samplePlaces } from "./sample-places.ts";
import { type Trial, isBeyondTrials, nearestTrials } from "./trials.ts";

/** What one source adds, and why it may add nothing. */
export interface SourceShare {
  readonly source: string;
  readonly distanceM: number;
  /** Share of all seed, lower and upper end, by this source alone. */
  readonly shares: Shares;
}

/** Sources an estimate passes over: `cover` and `time` as long as they hold, `kind` as not measured. */
export interface LeftOut {
  readonly source: string;
  readonly why: "cover" | "time" | "kind";
}

interface EstimateBase {
  readonly seedParent: string;
  readonly leftOut: readonly LeftOut[];
}

export interface ShareEstimate extends EstimateBase {
  readonly way: "estimate";
  /** By what: `maize` two curves, `rape` published shares, `turnip` these and the trial above them. */
  readonly by: "maize" | "rape" | "turnip";
  /** Lower and upper share of the seed that foreign pollen made, 0 to 1. */
  readonly shares: Shares;
  /** Every source lies farther off than trials of the kind measured. */
  readonly isBeyondTrials: boolean;
  /** Nearer than the trial that gives the upper end: it may be more. */
  readonly isOpenAbove: boolean;
  readonly bySource: readonly SourceShare[];
}

/** No number of ours: trials nearest to the nearest source; none where the kind was not measured. */
export interface TrialsFound extends EstimateBase {
  readonly way: "trials";
  readonly nearest: { readonly source: string; readonly distanceM: number } | null;
  readonly trials: readonly Trial[];
}

export type CrossingEstimate = ShareEstimate | TrialsFound;

/** Estimates of every seed parent that shares its crossing group with a pollen source, in order. */
export function crossingEstimates(
  stands: readonly Stand[],
  book: CropBook,
): readonly CrossingEstimate[] {
  // What crosses with it, and what is of its lot, is of its group.
  const groups = groupStands(stands);
  return stands.flatMap(
    (parent) => crossingEstimate(parent, groups.get(parent.kind.group) ?? [], book) ?? [],
  );
}

/** Null for what keeps no seed, and where nothing around could cross with it. */
export function crossingEstimate(
  parent: Stand,
  stands: readonly Stand[],
  book: CropBook,
): CrossingEstimate | null {
  const { by, crossing, sources, leftOut } = crossingSources(parent, stands, book);
  if (crossing.length === 0) return null;
  if (by === null || sources.length === 0) return trialsFound(parent, crossing, leftOut);
  return by === "maize"
    ? maizeEstimate(parent, sources, stands, leftOut)
    : rapeEstimate(parent, sources, by, leftOut);
}

export interface CrossingSources {
  /** By what the kind is estimated; null where it is not. */
  readonly by: ShareEstimate["by"] | null;
  /** Whatever sheds pollen it could cross with. */
  readonly crossing: readonly Stand[];
  /** Those of them that count, and those that do not. */
  readonly sources: readonly Stand[];
  readonly leftOut: readonly LeftOut[];
}

/** What around a stand could cross with it, and what of that an estimate counts. */
export function crossingSources(
  parent: Stand,
  stands: readonly Stand[],
  book: CropBook,
): CrossingSources {
  const by = wayOf(parent);
  const crossing = parent.isSeedParent
    ? stands.filter(
        (source) =>
          source.kind.group === parent.kind.group &&
          source.shedsPollen &&
          !isSameLot(parent, source) &&
          book.relation(parent.kind, source.kind).relation !== "no",
      )
    : [];
  const leftOut = crossing.flatMap((source): LeftOut[] => {
    const why = whyLeftOut(parent, source, by);
    return why === null ? [] : [{ source: source.id, why }];
  });
  const passedOver = new Set(leftOut.map(({ source }) => source));
  return { by, crossing, leftOut, sources: crossing.filter(({ id }) => !passedOver.has(id)) };
}

function wayOf({ kind }: Stand): ShareEstimate["by"] | null {
  switch (kind.species) {
    case "Zea mays":
      return "maize";
    case "Brassica napus":
      return "rape";
    case "Brassica rapa":
      return "turnip";
    default:
      return null;
  }
}

function whyLeftOut(parent: Stand, source: Stand, by: ShareEstimate["by"] | null) {
  const isUnderCover = parent.cover !== "none" || source.cover !== "none";
  if (isUnderCover && isCovered(parent, source, distanceBetween(parent, source))) return "cover";
  if (by !== null && source.kind.species !== parent.kind.species) return "kind";
  // Maize weighs the days apart as far as that was measured; for the others nothing was.
  const together = by === "maize" ? maizeTogether : daysTogether;
  return together(parent.receives, source.sheds) === null ? "time" : null;
}

function trialsFound(
  parent: Stand,
  sources: readonly Stand[],
  leftOut: readonly LeftOut[],
): TrialsFound {
  let nearest = { source: "", distanceM: Infinity };
  for (const { id, outline } of sources) {
    // What lies farther by its bounds is not nearer, whatever rounding makes of it.
    const atLeastM = boundsGap(parent.outline.bounds, outline.bounds);
    if (atLeastM > nearest.distanceM * (1 + 1e-9)) continue;
    const { distanceM } = gapBetween(parent.outline, outline);
    if (distanceM < nearest.distanceM) nearest = { source: id, distanceM };
  }
  return {
    way: "trials",
    seedParent: parent.id,
    leftOut,
    nearest,
    trials: nearestTrials(parent.kind.species, nearest.distanceM),
  };
}

function maizeEstimate(
  parent: Stand,
  sources: readonly Stand[],
  stands: readonly Stand[],
  leftOut: readonly LeftOut[],
): ShareEstimate {
  const kin = stands.filter(
    (stand) => stand !== parent && stand.shedsPollen && isSameLot(parent, stand),
  );
  const found = maizeShares(parent, sources, kin);
  const bySource = sources.map((source, index) => ({
    source: source.id,
    distanceM: distanceBetween(parent, source),
    shares: found.bySource[index] ?? found.shares,
  }));
  return {
    way: "estimate",
    by: "maize",
    seedParent: parent.id,
    leftOut,
    shares: found.shares,
    isBeyondTrials: bySource.every(({ distanceM }) => isBeyondTrials("Zea mays", distanceM)),
    isOpenAbove: false,
    bySource,
  };
}

function rapeEstimate(
  parent: Stand,
  sources: readonly Stand[],
  by: "rape" | "turnip",
  leftOut: readonly LeftOut[],
): ShareEstimate {
  const bySource = sources.map((source): SourceShare => {
    const distanceM = distanceBetween(parent, source);
    const [low, high] = plotShares(parent, source, distanceM);
    const [least] = daysTogether(parent.receives, source.sheds) ?? [0];
    const upper = by === "turnip" ? Math.max(high, turnipRapeShare(distanceM)) : high;
    return { source: source.id, distanceM, shares: [low * least, upper] };
  });
  // Each trial had one source: of several the shares are added, which errs high.
  const sum = (end: 0 | 1) =>
    Math.min(
      1,
      bySource.reduce((total, { shares }) => total + shares[end], 0),
    );
  return {
    way: "estimate",
    by,
    seedParent: parent.id,
    leftOut,
    shares: [sum(0), sum(1)],
    isBeyondTrials: bySource.every(({ distanceM }) => distanceM > TURNIP_RAPE_M[1]),
    isOpenAbove: by === "turnip" && bySource.some(({ distanceM }) => distanceM < TURNIP_RAPE_M[0]),
    bySource,
  };
}

/** Published shares of separate plots, or of one field where the two adjoin. */
function plotShares(parent: Stand, source: Stand, distanceM: number): Shares {
  if (distanceM >= ADJOINING_M) return separateShares(distanceM);
  const places = samplePlaces(parent.outline);
  const mean = (end: 0 | 1) =>
    places.reduce((sum, { x, y }) => {
      const plant = outlineOf({ shape: "point", x, y });
      return sum + adjoiningShares(gapBetween(plant, source.outline).distanceM)[end];
    }, 0) / places.length;
  const separate = separateShares(distanceM);
  return [Math.min(mean(0), separate[0]), Math.max(mean(1), separate[1])];
}

function distanceBetween(a: Stand, b: Stand): number {
  return gapBetween(a.outline, b.outline).distanceM;
}
