/** What the estimate says where trials measured, and by what factor it misses them. */
import { adjoiningShares } from "../../../src/core/crossing-share/distance-bins.ts";
import { foreignShare } from "../../support/foreign-share.ts";
import {
  type Kernel,
  MAIZE_FIT,
  MAIZE_PUBLISHED,
} from "../../../src/core/crossing-share/kernels.ts";
import { type Trial, allTrials } from "../../../src/core/crossing-share/trials.ts";
import { type Outline, outlineOf } from "../../../src/core/geometry/outline.ts";

export interface Held {
  readonly trial: Trial;
  /** What the estimate gives at that distance, percent. */
  readonly estimate: readonly [number, number];
  /** How many times too high (above 1) or too low (below 1) the nearer end is; 1 inside the range. */
  readonly factor: number;
  /** Whether the trial was used to make the estimate. */
  readonly isFitted: boolean;
}

/** Trials whose geometry the abstract tells, against the estimate for that geometry. */
export function heldAgainstTrials(): readonly Held[] {
  return allTrials.flatMap((trial): Held[] => {
    const estimate = estimateFor(trial);
    if (estimate === null) return [];
    return [
      {
        trial,
        estimate,
        factor: missedBy(estimate, trial),
        isFitted: trial.study.startsWith("Goggi"),
      },
    ];
  });
}

/** Percent, or null where the size or place of the source is not told. */
function estimateFor(trial: Trial): readonly [number, number] | null {
  const metres = (trial.metres[0] + trial.metres[1]) / 2;
  if (trial.as === "found" || trial.isBait === true) return null;
  if (trial.study.startsWith("Goggi")) return inField(100, 600, metres);
  // 3.3 ha taken as a square, the rest as far as pollen counts.
  if (trial.study.startsWith("Philippine")) return inField(181.7, 700, metres);
  if (trial.species === "Brassica napus") {
    const [low, high] = adjoiningShares(metres);
    return [100 * low, 100 * high];
  }
  return null;
}

/** A square source in the middle of a square field, at a plant so many metres from its edge. */
function inField(sourceM: number, fieldM: number, metres: number): readonly [number, number] {
  const square = (side: number): [number, number][] => [
    [-side / 2, -side / 2],
    [side / 2, -side / 2],
    [side / 2, side / 2],
    [-side / 2, side / 2],
  ];
  const field: Outline = outlineOf({
    shape: "polygon",
    corners: square(fieldM),
    holes: [square(sourceM)],
  });
  const source = outlineOf({ shape: "polygon", corners: square(sourceM) });
  const share = (kernel: Kernel) =>
    100 *
    foreignShare(
      [{ x: sourceM / 2 + metres, y: 0 }],
      [{ ground: field, strength: 1 }],
      [{ ground: source, strength: 1 }],
      kernel,
    );
  const ends = [share(MAIZE_FIT), share(MAIZE_PUBLISHED)];
  return [Math.min(...ends), Math.max(...ends)];
}

function missedBy([low, high]: readonly [number, number], { percent, as }: Trial): number {
  const [least, most] = as === "below" ? [0, percent[1]] : percent;
  if (low > most) return low / most;
  return high < least ? high / least : 1;
}

/** The table as it stands in the docs. */
export function trialTable(): string {
  const rows = heldAgainstTrials().map(({ trial, estimate, factor, isFitted }) => {
    const [near, far] = trial.metres;
    const cells = [
      trial.species,
      near === far ? `${near} m` : `${near} to ${far} m`,
      `${trial.as === "below" ? "under " : ""}${range(trial.percent)} %`,
      `${range([rounded(estimate[0]), rounded(estimate[1])])} %`,
      factorWords(factor),
      `${trial.study}${isFitted ? " (one end was fitted to it)" : ""}`,
    ];
    return `| ${cells.join(" | ")} |`;
  });
  return [
    "| seed parent | distance | found | estimate | missed by | trial |",
    "| --- | --- | --- | --- | --- | --- |",
    ...rows,
  ].join("\n");
}

const range = ([low, high]: readonly [number, number]) =>
  low === high ? `${low}` : `${low} to ${high}`;

const rounded = (percent: number) => Number(percent.toPrecision(2));

function factorWords(factor: number): string {
  if (factor === 1) return "inside the range";
  if (!Number.isFinite(factor)) return "nothing was found there";
  return factor > 1 ? `${rounded(factor)} times too high` : `${rounded(1 / factor)} times too low`;
}
