/** A line looked back over: every lot before one, and what of its past cannot be told. */
import { isSameVariety } from "../lots/variety-index.ts";
import { hasOwnRecord } from "./growing.ts";
import type { LineLot } from "./line-lot.ts";

/** The lot itself and all it comes from, nearest first, each once. */
export function withForebears(line: LineLot): readonly LineLot[] {
  const all = new Set([line]);
  for (const each of all) each.parents.forEach((parent) => all.add(parent));
  return [...all];
}

/** The growings-out that count for what a line has lost, the first first. */
export function countedGrowings(line: LineLot): readonly LineLot[] {
  const way: LineLot[] = [];
  for (let at: LineLot | null = line; at; at = at.past.through) {
    if (at.growing) way.push(at);
  }
  return way.reverse();
}

/** Effective populations of the growings-out that count and are known, the first first. */
export function knownSizes(line: LineLot): readonly number[] {
  return countedGrowings(line).flatMap(({ growing }) => growing?.size.effective ?? []);
}

/** Whether the plants that gave pollen were not counted, and those that gave seed stand for them. */
export function isAtLeast({ growing }: LineLot): boolean {
  const size = growing?.size;
  return size !== undefined && size.effective !== null && size.isAtLeast;
}

export interface LookBack {
  /** Of the lot itself and all before it: isolation not met, not told, not on record. */
  readonly notMet: readonly LineLot[];
  readonly notTold: readonly LineLot[];
  readonly notRecorded: readonly LineLot[];
  /** Growings-out without an effective population. */
  readonly unknown: readonly LineLot[];
  /** First lots known: nothing is before them. */
  readonly starts: readonly LineLot[];
  /** Lots of a hybrid or of another variety, with the lots grown from them. */
  readonly strangers: readonly LineLot[];
  readonly mixed: readonly LineLot[];
  /** Codes of lots that were not kept apart and are no longer on the shelf. */
  readonly crossedBefore: readonly string[];
}

export function lookBack(line: LineLot): LookBack {
  const all = withForebears(line);
  const recorded = all.filter(hasOwnRecord);
  return {
    notMet: recorded.filter(({ isolation }) => isolation === "not met"),
    notTold: recorded.filter(({ isolation }) => isolation === "not told"),
    notRecorded: all.filter(
      ({ how, isolation }) => how === "grown" && isolation === "not recorded",
    ),
    unknown: all.filter(({ growing }) => growing !== null && growing.size.effective === null),
    starts: all.filter(({ parents }) => parents.length === 0),
    strangers: all.filter(isStranger),
    mixed: all.filter(({ how, parents }) => how === "mixed" || parents.length > 1),
    crossedBefore: [...new Set(all.flatMap(({ lot }) => lot.crossedBefore ?? []))],
  };
}

/** Seed of a hybrid, or of another variety than what was grown from it, carries no variety on. */
function isStranger({ variety, parents }: LineLot): boolean {
  if (variety?.hybrid === true) return true;
  return parents.some(
    (parent) => parent.variety && variety && !isSameVariety(parent.variety, variety),
  );
}

/** How often gene banks grow from seed of seed before they go back to the first (Rao 2006). */
export const MOST_CYCLES = 3;

/** The first lot of a line that still has seed, if it lies before the lot itself. */
export function motherLot(line: LineLot): LineLot | null {
  const [first] = withForebears(line)
    .filter((each) => each !== line && hasSeed(each))
    .sort((a, b) => a.past.generations - b.past.generations);
  return first && first.past.generations < line.past.generations ? first : null;
}

function hasSeed({ lot: { state, amount } }: LineLot): boolean {
  return state === "in stock" && amount?.value !== 0;
}
