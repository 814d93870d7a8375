/**
 * Ground that keeps plants and harvest apart where no distance is asked for pollen. A published 0
 * is no licence to touch, and stock seed keeps off other lots of its own name.
 */
import { isTyped } from "../distances/level-figure.ts";
import { MIXING_STRIP, stripWordsOf } from "../distances/mixing-strip.ts";
import { smallDistanceOf } from "../distances/same-name.ts";
import { boundsGap, growBounds } from "../geometry/bounds.ts";
import { overlapDepth } from "../geometry/containment.ts";
import { gapBetween } from "../geometry/gap.ts";
import { citedAs } from "../kinds/sources.ts";
import { formatMeasured } from "../model/length.ts";
import { nearIndex, placesNear } from "../nearness/near-index.ts";
import type { Check } from "./check.ts";
import { type FindingBase, findingId } from "./finding.ts";
import { type Description, type Wording } from "./wording.ts";
import { OVERLAP_TOLERANCE_M, standTogether } from "./overlap.ts";
import { DISTANCE_TOLERANCE_M, type Requirement } from "./isolation-pair.ts";
import { type Stand, requirementFrom, isSameLot } from "./stand.ts";
import type { IsolationFigure, Kind } from "../kinds/crop.ts";
import * as said from "../words/finding-words.ts";

/** Two plantings lie nearer than a strip that keeps plants and harvest apart. */
export interface MixingFinding extends FindingBase {
  readonly check: "mixing";
  /** The seed parent the strip is for, and what lies too near it. */
  readonly subject: string;
  readonly other: string;
  /** `published zero`: pollen asks for no distance; `same name`: another lot beside stock seed. */
  readonly cause: "published zero" | "same name";
  /** Whether the outlines lie in each other. */
  readonly isOverlap: boolean;
  /** Id of the source of the words, and the words. */
  readonly source: string;
  readonly words: string;
}

export const mixingCheck: Check<MixingFinding> = {
  name: "mixing",
  title: said.mixingCheck,
  run: ({ stands, changedStands, isUnchanged, previous }) => {
    const found = new Map<string, MixingFinding>();
    const changed = new Set(changedStands);
    const nearOf = candidates(stands);
    for (const stand of changedStands) {
      for (const other of nearOf(stand)) {
        if (other === stand || (changed.has(other) && other.id < stand.id)) continue;
        const finding = worse(mixingOf(stand, other), mixingOf(other, stand));
        if (finding) found.set(finding.id, finding);
      }
    }
    return [
      ...previous.filter((finding) => finding.subjects.every(isUnchanged)),
      ...found.values(),
    ];
  },
  patch: ({ changes, holdsStock, groupNear, groupNearBefore }) => {
    const gone: string[] = [];
    const found = new Map<string, MixingFinding>();
    for (const { before, after } of changes) {
      const metres = reachOf(after, holdsStock);
      for (const other of groupNearBefore(before, metres)) {
        gone.push(findingId("mixing", [before.id, other.id]));
      }
      for (const other of groupNear(after, metres)) {
        if (other === after) continue;
        const finding = worse(mixingOf(after, other), mixingOf(other, after));
        if (finding) found.set(finding.id, finding);
      }
    }
    return { gone, found: [...found.values()] };
  },
  describe: describeMixing,
  figuresOf: ({ subject }) => subject,
};

/** How far from a stand anything can mix with it, metres. */
function reachOf({ kind }: Stand, holdsStock: boolean): number {
  const strip = MIXING_STRIP.metres;
  // Only stock seed keeps off its own name, and few plans hold any.
  return holdsStock ? Math.max(strip, smallDistanceOf(kind).metres) : strip;
}

function describeMixing(finding: MixingFinding, { nameOf, unit }: Wording): Description {
  const [subject, other] = [nameOf(finding.subject), nameOf(finding.other)];
  const shown = formatMeasured(finding.measuredM ?? 0, finding.requiredM ?? 0, true, unit);
  const sentences = [
    finding.isOverlap
      ? said.inEachOther
      : said.apart(`${shown.measured}${shown.after}`, `${shown.required}${shown.after}`),
    said.cited(citedAs(finding.source), finding.words),
  ];
  return finding.cause === "same name"
    ? {
        title: said.sameName(other, subject),
        sentences: [...sentences, said.sameNameAdvice],
      }
    : {
        title: said.near(subject, other),
        sentences: [...sentences, said.nearAdvice],
      };
}

/**
 * What a stand may mix with: of a group in which a published 0 is in force, whatever lies near;
 * and where stock seed stands, whatever bears its name.
 */
function candidates(stands: readonly Stand[]): (stand: Stand) => Iterable<Stand> {
  const zeroGroups = new Map<string, (stand: Stand) => readonly Stand[]>();
  const namesakes = new Map<string, Stand[]>();
  const groups = new Set(stands.filter(rests).map(({ kind }) => kind.group));
  for (const group of groups) {
    zeroGroups.set(group, nearby(stands.filter(({ kind }) => kind.group === group)));
  }
  const stock = new Set(
    stands.filter((stand) => stand.level === "stock").map(({ varietyKey }) => varietyKey),
  );
  for (const stand of stands) {
    if (stand.varietyKey === null || !stock.has(stand.varietyKey)) continue;
    const same = namesakes.get(stand.varietyKey);
    if (same) same.push(stand);
    else namesakes.set(stand.varietyKey, [stand]);
  }
  if (zeroGroups.size + namesakes.size === 0) return () => [];
  return (stand) =>
    new Set([
      ...(zeroGroups.get(stand.kind.group)?.(stand) ?? []),
      ...(namesakes.get(stand.varietyKey ?? "") ?? []),
    ]);
}

function nearby(group: readonly Stand[]): (stand: Stand) => readonly Stand[] {
  const index = nearIndex(group);
  return ({ outline: { bounds } }) =>
    placesNear(index, group, growBounds(bounds, MIXING_STRIP.metres)).map(
      (place) => group[place] as Stand,
    );
}

/** Whether a stand's distance is a published 0. */
function rests({ isSeedParent, requirement, kind }: Stand): boolean {
  return isSeedParent && zeroFigure(requirement, kind) !== null;
}

/** The published figure of 0 a requirement rests on; null where it was typed or changed. */
function zeroFigure(requirement: Requirement | null, kind: Kind): IsolationFigure | null {
  if (requirement?.from !== "figure" || requirement.metres > 0) return null;
  const figure = kind.isolation.find(({ id }) => id === requirement.figure);
  return figure?.metres === 0 && !isTyped(figure) ? figure : null;
}

const RANK = { conflict: 0, caution: 1, unknown: 2 } as const;

/** The graver of the two ways; on a tie the larger distance, then the order of the ids. */
function worse(one: MixingFinding | null, other: MixingFinding | null): MixingFinding | null {
  if (!one || !other) return one ?? other;
  const by =
    RANK[one.severity] - RANK[other.severity] ||
    (other.requiredM ?? 0) - (one.requiredM ?? 0) ||
    (one.subject < other.subject ? -1 : 1);
  return by <= 0 ? one : other;
}

/** What two must keep between them for another reason than pollen in the air. */
export interface MixingNeed {
  readonly cause: MixingFinding["cause"];
  readonly metres: number;
  readonly source: string;
  readonly words: string;
  /** Nearer than that is a conflict, not a caution: the law says so. */
  readonly isLaw: boolean;
}

function mixingOf(parent: Stand, other: Stand): MixingFinding | null {
  const need = mixingNeed(parent, other);
  if (!need || boundsGap(parent.outline.bounds, other.outline.bounds) >= need.metres) return null;
  const { distanceM, from, to } = gapBetween(parent.outline, other.outline);
  if (distanceM >= need.metres - DISTANCE_TOLERANCE_M) return null;
  const isInside =
    distanceM === 0 && overlapDepth(parent.outline, other.outline).distanceM > OVERLAP_TOLERANCE_M;
  const subjects = [parent.id, other.id].sort();
  return {
    id: findingId("mixing", subjects),
    check: "mixing",
    severity: isInside || need.isLaw ? "conflict" : "caution",
    subjects,
    measuredM: distanceM,
    requiredM: need.metres,
    where: [from, to],
    subject: parent.id,
    other: other.id,
    cause: need.cause,
    isOverlap: isInside,
    source: need.source,
    words: need.words,
  };
}

/** What a seed parent must keep off another stand, against mixing; null: nothing. */
export function mixingNeed(parent: Stand, other: Stand): MixingNeed | null {
  if (!parent.isSeedParent || !standTogether(parent, other)) return null;
  if (isSameLot(parent, other)) return sameNameNeed(parent, other);
  if (!other.shedsPollen) return null;
  const figure = zeroFigure(requirementFrom(parent, other.kind), parent.kind);
  if (!figure || parent.book.relation(parent.kind, other.kind).relation === "no") return null;
  return {
    cause: "published zero",
    metres: MIXING_STRIP.metres,
    source: figure.source,
    words: stripWordsOf(figure),
    isLaw: false,
  };
}

/** A neighbour's stand of the name, or another entry of it, beside stock seed. */
function sameNameNeed(parent: Stand, other: Stand): MixingNeed | null {
  if (parent.level !== "stock" || !other.shedsPollen || parent === other) return null;
  const isOther = other.surrounding !== null || other.variety !== parent.variety;
  if (!isOther) return null;
  const { metres, source, words, isLaw } = smallDistanceOf(parent.kind);
  return { cause: "same name", metres, source, words, isLaw };
}
