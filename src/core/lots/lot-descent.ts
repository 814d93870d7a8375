/** Lots in the order of their descent, and those that would be their own forebears. */
import type { Lot } from "../model/plan.ts";

export interface Descending {
  readonly id: string;
}

export interface Descent<T> {
  /** Every lot after all it is grown or made from. */
  readonly ordered: readonly T[];
  /** Lots that come back to themselves, each circle from child to parent, its first lot not repeated. */
  readonly loops: readonly (readonly T[])[];
  /** Lots in a circle or grown from one: they stand in no order. */
  readonly unordered: readonly T[];
}

/** @param parentsOf ids; those not among the lots are passed over */
export function descentOf<T extends Descending>(
  lots: readonly T[],
  parentsOf: (lot: T) => readonly string[],
): Descent<T> {
  const byId = new Map(lots.map((lot) => [lot.id, lot]));
  const children = new Map<string, T[]>();
  const waiting = new Map<string, number>();
  for (const lot of lots) {
    const parents = new Set(parentsOf(lot).filter((id) => byId.has(id)));
    waiting.set(lot.id, parents.size);
    for (const parent of parents) {
      const list = children.get(parent);
      if (list) list.push(lot);
      else children.set(parent, [lot]);
    }
  }
  const ordered = lots.filter(({ id }) => waiting.get(id) === 0);
  for (let at = 0; at < ordered.length; at += 1) {
    for (const child of children.get(ordered[at]?.id ?? "") ?? []) {
      const left = (waiting.get(child.id) ?? 0) - 1;
      waiting.set(child.id, left);
      if (left === 0) ordered.push(child);
    }
  }
  const unordered = lots.filter(({ id }) => (waiting.get(id) ?? 0) > 0);
  return { ordered, unordered, loops: loopsAmong(unordered, parentsOf) };
}

/** One circle for each set of lots that hang together so: from any of them some parent leads on. */
function loopsAmong<T extends Descending>(
  stuck: readonly T[],
  parentsOf: (lot: T) => readonly string[],
): readonly (readonly T[])[] {
  const byId = new Map(stuck.map((lot) => [lot.id, lot]));
  const done = new Set<string>();
  const loops: T[][] = [];
  for (const start of stuck) {
    const trail: T[] = [];
    let lot: T | undefined = start;
    while (lot && !done.has(lot.id)) {
      done.add(lot.id);
      trail.push(lot);
      lot = parentsOf(lot)
        .map((id) => byId.get(id))
        .find((parent) => parent !== undefined);
    }
    const from = lot ? trail.indexOf(lot) : -1;
    if (from >= 0) loops.push(trail.slice(from));
  }
  return loops;
}

/** Lots a lot was split off from or mixed of, else those it was grown from. */
export function namedParents({ partOf, grownFrom }: Lot): readonly string[] {
  return partOf ?? grownFrom ?? [];
}

/** What cannot be in the descent of lots: a lot that is its own forebear, one grown of later seed. */
export function descentFaults(
  lots: readonly Lot[],
): readonly { readonly lot: Lot; readonly got: string; readonly expected: string }[] {
  const { loops } = descentOf(lots, (lot) => [...(lot.partOf ?? []), ...(lot.grownFrom ?? [])]);
  const byId = new Map(lots.map((lot) => [lot.id, lot]));
  return [
    ...loops.map((loop) => ({
      lot: loop[0] as Lot,
      got: [...loop, loop[0] as Lot].map(({ code }) => code).join(" from "),
      expected: "lots of which none is its own forebear",
    })),
    ...lots.flatMap((lot) =>
      (lot.grownFrom ?? []).flatMap((id) => {
        const parent = byId.get(id);
        const [own, before] = [lot.harvestYear, parent?.harvestYear];
        if (!parent || own === undefined || before === undefined || before <= own) return [];
        return [
          {
            lot,
            got: `${parent.code}, harvested in ${before}`,
            expected: `a lot of ${own} or earlier`,
          },
        ];
      }),
    ),
  ];
}
