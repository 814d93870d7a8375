/**
 * What comes of each item, in the order of the items, with the work on the next few begun
 * meanwhile.
 *
 * @param ahead how many may be begun and not yet taken, at least 1
 */
export async function* inOrder<T, R>(
  items: AsyncIterable<T> | Iterable<T>,
  work: (item: T) => Promise<R>,
  ahead: number,
): AsyncGenerator<R, void, void> {
  const begun: Promise<R>[] = [];
  for await (const item of items) {
    const one = work(item);
    // A fault is told when its turn comes, not before.
    one.catch(() => {});
    begun.push(one);
    if (begun.length >= ahead) yield await (begun.shift() as Promise<R>);
  }
  while (begun.length > 0) yield await (begun.shift() as Promise<R>);
}
