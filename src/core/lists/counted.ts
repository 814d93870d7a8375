/** Sorting by counting: of whole numbers by small keys, in the time it takes to look at them. */

/** Numbers in the order of their keys, those of one key as they were. @param length keys are less */
export function counted(numbers: Uint32Array, keyOf: (number: number) => number, length: number) {
  const starts = new Uint32Array(length + 1);
  for (const number of numbers) {
    const after = keyOf(number) + 1;
    starts[after] = (starts[after] as number) + 1;
  }
  for (let key = 0; key < length; key += 1) {
    starts[key + 1] = (starts[key + 1] as number) + (starts[key] as number);
  }
  const next = starts.slice();
  const order = new Uint32Array(numbers.length);
  for (const number of numbers) {
    const key = keyOf(number);
    order[next[key] as number] = number;
    next[key] = (next[key] as number) + 1;
  }
  return { order, starts };
}
