/** Length of the line around an outline. */
import type { Outline } from "./outline.ts";

/** Length of all edges, holes included, metres; 0 for a point. */
export function outlinePerimeter(outline: Outline): number {
  let total = 0;
  for (const ring of outline.rings) {
    const last = ring.length - 2;
    for (let index = 0; index < ring.length; index += 2) {
      const next = index === last ? 0 : index + 2;
      total += Math.hypot(
        (ring[next] as number) - (ring[index] as number),
        (ring[next + 1] as number) - (ring[index + 1] as number),
      );
    }
  }
  return total;
}
