/**
 * Cliques: sets of slots of which any two of different pieces clash. So many pieces of one group
 * in so few cliques must meet, which is what a proof mostly rests on.
 */
import type { SlotClashes } from "./slot-clashes.ts";
import type { Slot } from "./slots.ts";

export interface CliqueSlot {
  readonly piece: number;
  readonly slot: number;
}

export interface CliqueGroup {
  /** Pieces that all must keep away from each other. */
  readonly pieces: readonly number[];
  /** All their slots, each in one clique. */
  readonly cliques: readonly (readonly CliqueSlot[])[];
}

/** Every group of three or more, its slots gathered into cliques once from the left and once from below. */
export function cliqueGroups(
  slots: readonly (readonly Slot[])[],
  clashes: SlotClashes,
): readonly CliqueGroup[] {
  return groupsOf(slots.length, clashes).flatMap((pieces): readonly CliqueGroup[] => {
    const all = pieces.flatMap((piece) =>
      (slots[piece] ?? []).map(({ outline }, slot) => ({ piece, slot, bounds: outline.bounds })),
    );
    const fromLeft = all.toSorted(
      ({ bounds: a }, { bounds: b }) => a.minX - b.minX || a.minY - b.minY,
    );
    const fromBelow = all.toSorted(
      ({ bounds: a }, { bounds: b }) => a.minY - b.minY || a.minX - b.minX,
    );
    return [fromLeft, fromBelow].map((order) => ({
      pieces,
      cliques: cliquesOf(order, clashes, "near"),
    }));
  });
}

/** All slots of all pieces in sets of which no two of different pieces have room together. */
export function sharedGrounds(
  slots: readonly (readonly Slot[])[],
  clashes: SlotClashes,
): readonly (readonly CliqueSlot[])[] {
  const all = slots.flatMap((list, piece) =>
    list.map(({ outline }, slot) => ({ piece, slot, bounds: outline.bounds })),
  );
  const order = all.toSorted(({ bounds: a }, { bounds: b }) => a.minX - b.minX || a.minY - b.minY);
  return cliquesOf(order, clashes, "over");
}

function groupsOf(count: number, { doKeep }: SlotClashes): readonly (readonly number[])[] {
  const groups: number[][] = [];
  for (let piece = 0; piece < count; piece += 1) {
    const group = groups.find((members) => members.every((other) => doKeep(piece, other)));
    if (group) group.push(piece);
    else groups.push([piece]);
  }
  return groups.filter(({ length }) => length > 2);
}

function cliquesOf(
  order: readonly CliqueSlot[],
  { between }: SlotClashes,
  sort: "near" | "over",
): readonly (readonly CliqueSlot[])[] {
  const cliques: CliqueSlot[][] = [];
  let left = order;
  while (left.length > 0) {
    const clique: CliqueSlot[] = [];
    const rest: CliqueSlot[] = [];
    for (const one of left) {
      const fits = clique.every((other) => {
        if (other.piece === one.piece) return true;
        const clash = between(one.piece, one.slot, other.piece, other.slot);
        return sort === "near" ? clash !== "none" : clash === "over";
      });
      (fits ? clique : rest).push(one);
    }
    cliques.push(clique);
    left = rest;
  }
  return cliques;
}
