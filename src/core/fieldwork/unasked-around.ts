/**
 * What a plan says nothing of: pollen from beyond the beds, for groups of which nothing around is
 * entered. Clear means clear of what is entered; a neighbour's chard that nobody wrote down and the
 * wild carrot by the road cross all the same.
 */
import type { CheckResult } from "../checks/run-checks.ts";
import { type Stand, requirementFrom } from "../checks/stand.ts";
import { type Bounds, joinBounds } from "../geometry/bounds.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import type { Kind } from "../kinds/crop.ts";
import { cutEarly } from "../practice/cut-early.ts";
import { keepsPollenOut } from "../practice/pollen-cover.ts";

/** Seed parents of one crossing group whose distance reaches beyond the beds. */
export interface UnaskedAround {
  /** Kinds kept for seed, in plan order. */
  readonly kinds: readonly Kind[];
  /** Wild and weedy kinds that cross with them. */
  readonly wild: readonly Kind[];
  /** The farthest any of them must be from a pollen source, metres; null: not known. */
  readonly metres: number | null;
}

/**
 * Next door begins so far beyond the beds: whoever needs less reaches no neighbour. No source; our
 * choice.
 */
const NEXT_DOOR_M = 10;

/** Those that reach farthest first. What is covered is asked nothing. */
export function unaskedAround({
  stands,
  bedOutlines,
}: Pick<CheckResult, "stands" | "bedOutlines">): readonly UnaskedAround[] {
  const known = joinBounds([
    ...[...bedOutlines.values()].map(({ outline }) => outline.bounds),
    ...stands.flatMap(({ planting, outline }) => (planting ? outline.bounds : [])),
  ]);
  const entered = new Set(
    stands.flatMap(({ surrounding, kind }) => (surrounding ? kind.group : [])),
  );
  const groups = new Map<string, Stand[]>();
  for (const stand of stands) {
    const { kind, cover, carrier, isSeedParent } = stand;
    if (!isSeedParent || entered.has(kind.group) || keepsPollenOut(cover, carrier)) continue;
    const group = groups.get(kind.group);
    if (group) group.push(stand);
    else groups.set(kind.group, [stand]);
  }
  return [...groups.values()]
    .flatMap((parents) => (known && unaskedOf(parents, known)) ?? [])
    .sort((a, b) => (b.metres ?? Infinity) - (a.metres ?? Infinity));
}

/**
 * Pollen sources of crops that are entered as a single point, where something crosses with them: a
 * field is measured to its middle then. A wild plant is a point in truth. Names, in plan order.
 */
export function measuredToPoint({ stands }: Pick<CheckResult, "stands">): readonly string[] {
  const groups = new Set(stands.flatMap((stand) => (stand.isSeedParent ? stand.kind.group : [])));
  return stands.flatMap(({ surrounding, shedsPollen, kind, outline: { bounds } }) => {
    if (!surrounding || !shedsPollen || !groups.has(kind.group)) return [];
    const isPoint = bounds.minX === bounds.maxX && bounds.minY === bounds.maxY;
    if (!isPoint || cutEarly(kind).value === "weed") return [];
    return surrounding.label || kind.name;
  });
}

function unaskedOf(parents: readonly Stand[], ground: Bounds): UnaskedAround | null {
  const own = [...new Set(parents.map(({ kind }) => kind))];
  const book = parents[0]?.book;
  const others = (book?.kinds ?? []).filter(
    (kind) => !own.includes(kind) && own.some((kept) => isCrossing(book, kept, kind)),
  );
  const reach = (stand: Stand) =>
    Math.max(...[stand.kind, ...others].map((kind) => metresFrom(stand, kind)));
  const reaching = parents.filter(
    (stand) => reach(stand) > withinGround(stand, ground) + NEXT_DOOR_M,
  );
  if (reaching.length === 0) return null;
  const metres = Math.max(...reaching.map(reach));
  return {
    kinds: own.filter((kind) => reaching.some((stand) => stand.kind === kind)),
    wild: others.filter((kind) => cutEarly(kind).value === "weed"),
    metres: metres === Infinity ? null : metres,
  };
}

function isCrossing(book: CropBook | undefined, parent: Kind, source: Kind): boolean {
  if (parent.group !== source.group) return false;
  const relation = book?.relation(parent, source).relation;
  return relation === "freely" || relation === "sometimes";
}

/** Metres a seed parent needs from a kind; infinite where no figure says what is enough. */
function metresFrom(stand: Stand, source: Kind): number {
  const requirement = requirementFrom(stand, source);
  return requirement === null || requirement.isFloor === true ? Infinity : requirement.metres;
}

/** Metres from a stand to the edge of the ground that is planned, going the shortest way. */
function withinGround({ outline: { bounds } }: Stand, ground: Bounds): number {
  return Math.min(
    bounds.minX - ground.minX,
    ground.maxX - bounds.maxX,
    bounds.minY - ground.minY,
    ground.maxY - bounds.maxY,
  );
}
