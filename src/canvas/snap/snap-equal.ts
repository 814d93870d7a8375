/** Lines on which what moves stands in a row with two others, all gaps alike. */
import type { Bounds } from "../../core/geometry/bounds.ts";
import type { SnapLine } from "./snap.ts";
import * as words from "./snap-words.ts";

/** Narrower gaps are joints, not paths, metres. */
const LEAST_GAP_M = 0.02;

interface Run {
  readonly first: number;
  readonly last: number;
}

/**
 * @param boxes neighbours in the frame
 * @param own what moves, in the frame
 */
export function equalGapLines(
  boxes: readonly Bounds[],
  own: Bounds,
): { readonly x: readonly SnapLine[]; readonly y: readonly SnapLine[] } {
  const inRowX = boxes.filter((box) => box.minY < own.maxY && own.minY < box.maxY);
  const inRowY = boxes.filter((box) => box.minX < own.maxX && own.minX < box.maxX);
  return {
    x: linesAlong(
      inRowX.map(({ minX, maxX }) => ({ first: minX, last: maxX })),
      own.maxX - own.minX,
      [own.minY, own.maxY],
    ),
    y: linesAlong(
      inRowY.map(({ minY, maxY }) => ({ first: minY, last: maxY })),
      own.maxY - own.minY,
      [own.minX, own.maxX],
    ),
  };
}

function linesAlong(
  runs: readonly Run[],
  sizeM: number,
  reach: readonly [number, number],
): readonly SnapLine[] {
  const sorted = [...runs].sort((a, b) => a.first - b.first);
  return sorted.flatMap((a, index): readonly SnapLine[] => {
    const b = sorted[index + 1];
    if (!b || b.first - a.last < LEAST_GAP_M) return [];
    const gap = b.first - a.last;
    const between = [a.last, b.first] as const;
    const after = b.last + gap;
    const before = a.first - gap;
    const found: SnapLine[] = [
      {
        at: after,
        takes: "first",
        reach,
        label: words.equalGaps,
        gaps: [between, [b.last, after]],
      },
      {
        at: before,
        takes: "last",
        reach,
        label: words.equalGaps,
        gaps: [[before, a.first], between],
      },
    ];
    const rest = (gap - sizeM) / 2;
    if (rest >= LEAST_GAP_M) {
      const halves = [
        [a.last, a.last + rest],
        [b.first - rest, b.first],
      ] as const;
      const at = (a.last + b.first) / 2;
      found.push({ at, takes: "middle", reach, label: words.equalGaps, gaps: halves });
    }
    return found;
  });
}
