/** Median milliseconds of some runs after one to warm up. */
export function medianMs(runs: number, work: () => void): number {
  work();
  const times = Array.from({ length: runs }, () => {
    const from = performance.now();
    work();
    return performance.now() - from;
  }).sort((a, b) => a - b);
  return times[Math.floor(times.length / 2)] ?? 0;
}

/** Least milliseconds of some runs, and what the last gave: the run least disturbed by others. */
export function bestMs<T>(runs: number, work: () => T): { readonly ms: number; readonly made: T } {
  let ms = Infinity;
  for (let run = 1; ; run += 1) {
    const from = performance.now();
    const made = work();
    ms = Math.min(ms, performance.now() - from);
    if (run >= runs) return { ms, made };
  }
}

/** How time grows with size: the slope of a line through their logarithms. */
export function growthExponent(measured: readonly (readonly [number, number])[]): number {
  const logs = measured.map(([size, ms]) => [Math.log(size), Math.log(ms)] as const);
  const mean = (place: 0 | 1) => logs.reduce((sum, log) => sum + log[place], 0) / logs.length;
  const [meanSize, meanMs] = [mean(0), mean(1)];
  const above = logs.reduce((sum, [x, y]) => sum + (x - meanSize) * (y - meanMs), 0);
  return above / logs.reduce((sum, [x]) => sum + (x - meanSize) ** 2, 0);
}
