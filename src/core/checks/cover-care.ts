/**
 * What a cover costs: no pollinators inside, a cage that wind pollen passes, one cage over two; and
 * what rests on cutting.
 */
import type { Check } from "./check.ts";
import type { Description, Wording } from "./wording.ts";
import { type FindingBase, compareText, findingId } from "./finding.ts";
import { boundsGap } from "../geometry/bounds.ts";
import { formatMeasured } from "../model/length.ts";
import { type IsolationPair, unorderedPairs } from "./isolation-pair.ts";
import { standTogether } from "./overlap.ts";
import type { Stand } from "./stand.ts";
import { whyNotByHand } from "../practice/by-hand.ts";
import * as words from "../words/finding-words.ts";
import { CAGE_ROOM_M, keepsPollenOut } from "../practice/pollen-cover.ts";

/** A covered stand of an insect-pollinated outcrosser sets no seed by itself. */
export interface CoverFinding extends FindingBase {
  readonly check: "cover-care";
  readonly subject: string;
  /**
   * `no-pollinators`: insects are kept out; `wind-passes`: a cage does not stop wind pollen;
   * `not-by-hand`: hundreds of florets or wind pollen, which nobody pollinates flower by flower;
   * `cut-in-time`: a source around is harmless only as long as somebody cuts it before it flowers.
   */
  readonly trouble: "no-pollinators" | "wind-passes" | "not-by-hand" | "cut-in-time";
}

export const coverCareCheck: Check<CoverFinding> = {
  name: "cover-care",
  title: words.cover,
  run: ({ stands }) => stands.flatMap((stand) => coverFinding(stand, stands) ?? []),
  patch: ({ plan, changes, standById, isMove }) => {
    // What is cut around rests on where seed plantings of its group lie.
    const groups = new Set(
      changes.flatMap(({ before, after }) => [groupOf(before), groupOf(after)]),
    );
    const cut = plan.surroundings.flatMap(({ id, flowering }) => {
      const stand = flowering === "cut" ? standById.get(id) : undefined;
      return stand && groups.has(groupOf(stand)) ? stand : [];
    });
    const stands = cut.length > 0 ? [...standById.values()] : [];
    const changed = isMove ? [] : changes.map(({ after }) => after);
    const asked = [...new Set([...changed, ...cut])];
    return {
      gone: asked.flatMap(({ id }) => [coverId(id), coverId(id, "not-by-hand")]),
      found: asked.flatMap((stand) => coverFinding(stand, stands) ?? []),
    };
  },
  describe: describeCover,
};

const groupOf = ({ kind }: Stand) => kind.group;

/** Who accepted a cage has not accepted another cover that does not help. */
function coverId(subject: string, trouble?: CoverFinding["trouble"]): string {
  return findingId("cover-care", [subject], trouble === "not-by-hand" ? trouble : undefined);
}

function coverFinding(stand: Stand, stands: readonly Stand[]): CoverFinding | null {
  const trouble = troubleOf(stand) ?? restsOnCutting(stand, stands);
  return (
    trouble && {
      id: coverId(stand.id, trouble),
      check: "cover-care",
      severity: "caution",
      subjects: [stand.id],
      subject: stand.id,
      trouble,
    }
  );
}

function troubleOf(stand: Stand): CoverFinding["trouble"] | null {
  if (stand.cover === "none" || stand.planting === null) return null;
  if (!keepsPollenOut(stand.cover, stand.carrier)) return "wind-passes";
  if (stand.isSeedParent && stand.cover === "hand" && isTooFine(stand)) return "not-by-hand";
  const needsVisitors = stand.kind.breeding === "outcrossing" && stand.carrier === "insects";
  return stand.isSeedParent && needsVisitors && stand.cover !== "hand" ? "no-pollinators" : null;
}

/** A kind whose rules say that its flowers are not pollinated one by one; of others nobody knows. */
function isTooFine({ kind }: Stand): boolean {
  const why = whyNotByHand(kind)?.value;
  return why === "florets" || why === "wind";
}

/** What is cut around the beds is somebody's promise, or a walk every week. */
function restsOnCutting(stand: Stand, stands: readonly Stand[]): CoverFinding["trouble"] | null {
  if (stand.surrounding?.flowering !== "cut") return null;
  const isNear = stands.some(
    (parent) =>
      parent.isSeedParent &&
      parent.kind.group === stand.kind.group &&
      boundsGap(parent.outline.bounds, stand.outline.bounds) < parent.reachM,
  );
  return isNear ? "cut-in-time" : null;
}

function describeCover(
  { trouble, subject }: CoverFinding,
  { nameOf, standOf }: Wording,
): Description {
  const name = nameOf(subject);
  const kind = standOf(subject)?.kind.name ?? words.thisKind;
  if (trouble === "cut-in-time") {
    return {
      title: words.mustBeCut(name),
      sentences: [words.cutAdvice(kind)],
    };
  }
  if (trouble === "not-by-hand") {
    return { title: words.notByHand(name), sentences: [words.notByHandAdvice(kind)] };
  }
  return trouble === "wind-passes"
    ? {
        title: words.windPasses(name),
        sentences: [words.windAdvice(kind)],
      }
    : {
        title: words.noPollinators(name),
        sentences: [words.pollinatorsAdvice(kind)],
      };
}

/** Two that cages are to keep apart lie so near that one cage may stand over both. */
export interface SharedCageFinding extends FindingBase {
  readonly check: "shared-cage";
  /** Ids of those whose seed rests on a cage, one or both. */
  readonly parents: readonly string[];
  /** Ids of those in a cage, one or both. */
  readonly inCages: readonly string[];
}

export const sharedCageCheck: Check<SharedCageFinding> = {
  name: "shared-cage",
  title: words.sharedCage,
  run: ({ judged, isUnchanged, previous, standById }) => [
    ...previous.filter((finding) => finding.subjects.every(isUnchanged)),
    ...judged
      .freshWays("cover")
      .flatMap((ways) => sharedCage(ways.filter(isByCover), standById) ?? []),
  ],
  patch: ({ gonePairs, freshPairs, standById }) => ({
    gone: gonePairs.filter(isByCover).map(sharedCageId),
    found: [...unorderedPairs(freshPairs.filter(isByCover)).values()].flatMap(
      (ways) => sharedCage(ways, standById) ?? [],
    ),
  }),
  describe: (finding, { nameOf, unit }) => {
    const [one = "", other = ""] = finding.subjects.map(nameOf);
    const shown = formatMeasured(finding.measuredM ?? 0, finding.requiredM ?? 0, true, unit);
    const measured = `${shown.measured}${shown.after}`;
    const [caged = "", more] = finding.inCages.map(nameOf);
    if (more === undefined) {
      return {
        title: words.besideCage(caged, caged === one ? other : one),
        sentences: [words.besideCageAdvice(measured), words.meshBetween],
      };
    }
    return {
      title: words.oneCageOrTwo(one, other),
      sentences: [words.oneCageAdvice(measured), words.ownCages],
    };
  },
};

const isByCover = ({ standing }: IsolationPair) => standing === "cover";

function sharedCageId({ seedParent, pollenSource }: IsolationPair): string {
  return findingId("shared-cage", [seedParent, pollenSource]);
}

/** @param ways one or both ways of two stands, cleared by cover alone */
function sharedCage(
  ways: readonly IsolationPair[],
  standById: ReadonlyMap<string, Stand>,
): SharedCageFinding | null {
  // Bags and tape are on the flowers themselves, however near the other lies.
  const caged = ways
    .filter(({ seedParent }) => isCagedOrOpen(standById.get(seedParent)))
    // Ways come in one order from a fresh run and in another from a carried one.
    .toSorted((a, b) => compareText(a.seedParent, b.seedParent));
  const [way] = caged;
  if (!way || way.distanceM >= CAGE_ROOM_M) return null;
  const [parent, source] = [standById.get(way.seedParent), standById.get(way.pollenSource)];
  if (!parent || !source || !standTogether(parent, source)) return null;
  return {
    id: sharedCageId(way),
    check: "shared-cage",
    severity: "caution",
    subjects: [parent.id, source.id].sort(),
    measuredM: way.distanceM,
    requiredM: CAGE_ROOM_M,
    where: way.where,
    parents: caged.map(({ seedParent }) => seedParent).sort(),
    inCages: [parent, source].flatMap(({ id, cover }) => (cover === "cage" ? id : [])).sort(),
  };
}

function isCagedOrOpen(parent: Stand | undefined): boolean {
  return parent?.cover === "cage" || parent?.cover === "none";
}
