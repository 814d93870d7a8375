/** Random numbers that come out the same for the same seed, so that a failing case can be met again. */
export interface SeededRandom {
  /** From 0 to below 1. */
  next(): number;
  /** From `least` to below `most`. */
  between(least: number, most: number): number;
  /** A whole number from `least` to `most`, both included. */
  whole(least: number, most: number): number;
  chance(share: number): boolean;
  pick<T>(items: readonly T[]): T;
}

/** The mulberry32 generator. */
export function seededRandom(seed: number): SeededRandom {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  const between = (least: number, most: number) => least + next() * (most - least);
  const whole = (least: number, most: number) => least + Math.floor(next() * (most - least + 1));
  return {
    next,
    between,
    whole,
    chance: (share) => next() < share,
    pick: <T>(items: readonly T[]) => items[whole(0, items.length - 1)] as T,
  };
}
