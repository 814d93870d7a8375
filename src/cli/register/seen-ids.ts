/**
 * Which ids a register has had already, in eight to sixteen bytes a feature: a table of places, each
 * found by a number made of the id. The ids themselves are looked up only where two numbers agree.
 */

/** A number of 32 bits made of an id (hash FNV-1a of Fowler, Noll and Vo, over UTF-16 units). */
export function idNumber(id: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < id.length; at += 1) {
    hash = Math.imul(hash ^ id.charCodeAt(at), 0x01000193);
  }
  return hash >>> 0;
}

export interface SeenIds {
  /**
   * Notes the id of the next feature.
   * @returns place of the first feature that has the same; null for none
   */
  readonly note: (number: number) => number | null;
}

/** @param isSame whether the features at two places have one id */
export function seenIds(isSame: (place: number, other: number) => boolean): SeenIds {
  let numbers = new Uint32Array(1024);
  /** Place of a feature and 1, or 0 for none; twice as many as there are numbers. */
  let slots = new Uint32Array(2048);
  let count = 0;

  /** The slot of a feature alike, else the free one. */
  const slotOf = (number: number, place: number | null): number => {
    let slot = number & (slots.length - 1);
    for (;;) {
      const there = (slots[slot] as number) - 1;
      if (there < 0) return slot;
      if (place !== null && numbers[there] === number && isSame(there, place)) return slot;
      slot = (slot + 1) & (slots.length - 1);
    }
  };
  const grow = () => {
    const more = new Uint32Array(numbers.length * 2);
    more.set(numbers);
    numbers = more;
    slots = new Uint32Array(more.length * 2);
    for (let place = 0; place < count; place += 1) {
      slots[slotOf(numbers[place] as number, null)] = place + 1;
    }
  };
  return {
    note: (number) => {
      if (count === numbers.length) grow();
      const place = count;
      numbers[place] = number;
      count += 1;
      const slot = slotOf(number, place);
      const earlier = slots[slot] as number;
      if (earlier > 0) return earlier - 1;
      slots[slot] = place + 1;
      return null;
    },
  };
}
