/** Which varieties of a collection cross with each other, and how many of them a garden keeps apart. */
import type { Requirement } from "../checks/isolation-pair.ts";
import { requirementOf, wildRequirements } from "../checks/requirement.ts";
import { outlineOf } from "../geometry/outline.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import type { Kind } from "../kinds/crop.ts";
import type { Bed, Plan, Surrounding, Variety } from "../model/plan.ts";
import { isSameVariety } from "../model/variety-key.ts";
import { type PollenAround, countApart, plotsClearOf, plotsOn } from "./places-apart.ts";
import type { CrossingSet } from "./years-problem.ts";
import { keepsPollenIn } from "../practice/pollen-cover.ts";

/** A variety with what keeps it apart. */
export interface Apart {
  readonly variety: Variety;
  readonly kind: Kind;
  readonly groundM2: number;
  readonly requirement: Requirement | null;
  /** Metres it needs; infinite where no figure says what is enough. */
  readonly needM: number;
  /** Pollen sources around the garden that it crosses with, and how far it must be from each. */
  readonly around: readonly (PollenAround & { readonly surrounding: Surrounding })[];
}

export function apartOf(
  plan: Plan,
  book: CropBook,
  variety: Variety,
  kind: Kind,
  groundM2: number,
): Apart {
  const requirement = requirementOf({}, variety, kind, plan.level);
  const isKnown = requirement !== null && requirement.isFloor !== true;
  const needM = isKnown ? requirement.metres : Infinity;
  const wild = wildRequirements(kind, requirement);
  const around = plan.surroundings.flatMap((surrounding) => {
    const source = pollenOf(surrounding, book);
    if (!source || !isCrossing(book, kind, source)) return [];
    const name = surrounding.varietyName;
    const isSame = name !== undefined && isSameVariety(variety, { kind: source.id, name });
    if (isSame) return [];
    const metres = Math.max(needM, wild?.get(source.id)?.metres ?? 0);
    return [{ surrounding, outline: outlineOf(surrounding.outline), metres }];
  });
  return { variety, kind, groundM2, requirement, needM, around };
}

function pollenOf(surrounding: Surrounding, book: CropBook): Kind | null {
  const kind = surrounding.what === "pollen" ? book.kind(surrounding.kind ?? "") : undefined;
  if (!kind || surrounding.flowering !== "yes") return null;
  return keepsPollenIn(surrounding.cover, kind.carrier) ? null : kind;
}

/** Whether the first takes pollen of the second so readily that it counts as crossing. */
function isCrossing(book: CropBook, parent: Kind, source: Kind): boolean {
  const { relation } = book.relation(parent, source);
  return relation === "freely" || relation === "sometimes";
}

/** Pairs of kinds that cross only rarely, which may stand in one season: said, never kept back. */
export function rareCrossings(
  book: CropBook,
  kinds: readonly Kind[],
): readonly (readonly [Kind, Kind])[] {
  const all = [...new Set(kinds)];
  return all.flatMap((one, at) =>
    all
      .slice(at + 1)
      .filter(
        (other) =>
          !isCrossing(book, one, other) &&
          !isCrossing(book, other, one) &&
          [book.relation(one, other), book.relation(other, one)].some(
            ({ relation }) => relation === "rarely",
          ),
      )
      .map((other) => [one, other] as const),
  );
}

/** Items in sets such that only those of one set cross; each item is in one set. */
export function crossingParts(
  book: CropBook,
  items: readonly Pick<Apart, "kind" | "variety">[],
): readonly (readonly number[])[] {
  const partOf = new Map<Kind, number>();
  const parts: number[][] = [];
  const kinds = [...new Set(items.map(({ kind }) => kind))];
  for (const start of kinds) {
    if (partOf.has(start)) continue;
    const reached = new Set([start]);
    for (const kind of reached) {
      for (const other of kinds) {
        if (isCrossing(book, kind, other) || isCrossing(book, other, kind)) reached.add(other);
      }
    }
    for (const kind of reached) partOf.set(kind, parts.length);
    parts.push([]);
  }
  for (const [index, { kind }] of items.entries()) parts[partOf.get(kind) ?? 0]?.push(index);
  return parts;
}

/** Whether pollen from around reaches it on every plot it could have. */
export function isExposed(beds: readonly Bed[], { around, groundM2 }: Apart): boolean {
  if (around.length === 0) return false;
  if (around.some(({ metres }) => metres === Infinity)) return true;
  const plots = plotsOn(beds, groundM2);
  // Where it takes more than one bed every bed counts: all of them must be clear.
  const looked = plots.length > 0 ? plots : beds.map((bed) => outlineOf(bed.outline));
  const clear = plotsClearOf(looked, around).length;
  return plots.length > 0 ? clear === 0 : clear < looked.length;
}

/**
 * Places of a set: for each distance its members need, plots of the largest size that lie so far
 * apart and as far from the pollen around. A set whose largest takes more than one bed has one place.
 */
export function setOf(
  beds: readonly Bed[],
  members: readonly number[],
  items: readonly Apart[],
  exposed: ReadonlySet<number>,
): CrossingSet {
  const own = members.map((index) => items[index] as Apart);
  const largest = Math.max(0, ...own.map(({ groundM2 }) => groundM2));
  const open = members.filter((index) => !exposed.has(index));
  const around = open.flatMap((index) => items[index]?.around ?? []);
  const plots = plotsClearOf(plotsOn(beds, largest), around);
  const distances = [...new Set(own.map(({ needM }) => needM))].sort((a, b) => a - b);
  return {
    members,
    apart: distances.map((metres) => ({
      metres,
      places: Math.max(1, countApart(plots, metres, members.length)),
    })),
  };
}
