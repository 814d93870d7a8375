/** Where a first bed, or a block of beds, lies on a plot of any outline. */
import { protrusion } from "../geometry/containment.ts";
import { type Outline, outlineContains, outlineOf } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import { shiftOnSheet } from "../geometry/turned-bounds.ts";

export interface GroundWanted {
  /** Across the beds, metres. */
  readonly widthM: number;
  /** At most so long, metres. */
  readonly lengthM: number;
  /** Left free along the plot's edge, metres. */
  readonly marginM: number;
}

export interface GroundOnPlot {
  /** Its middle, metres. */
  readonly x: number;
  readonly y: number;
  readonly lengthM: number;
  /** Degrees clockwise. */
  readonly turnDeg: number;
}

/** Beds are not made shorter than this to fit, metres. No source; our choice. */
const SHORTEST_M = 1;
/** Places tried along each side of the plot. */
const PLACES = 24;
/** An edge met exactly is met by less than this, metres. */
const SLACK_M = 0.001;

/**
 * A rectangle that lies wholly on the plot, the longest first, straight up the sheet or along the
 * plot's longest edge, as far left and then as low as it goes; null where not even a short one fits.
 */
export function groundOnPlot(plot: Outline, wanted: GroundWanted): GroundOnPlot | null {
  const turns = [0, longestEdgeTurn(plot)].filter(
    (turn, index, all) => all.indexOf(turn) === index,
  );
  for (const lengthM of lengths(plot, wanted)) {
    for (const turnDeg of turns) {
      const at = placeFor(plot, { ...wanted, lengthM }, turnDeg);
      if (at) return { ...at, lengthM, turnDeg };
    }
  }
  return null;
}

/** From what the plot could hold at most, down by a tenth each time. */
function* lengths({ bounds }: Outline, { lengthM, marginM }: GroundWanted): Generator<number> {
  const tenths = (metres: number) => Math.floor(metres * 10 + 1e-9) / 10;
  const across = Math.hypot(bounds.maxX - bounds.minX, bounds.maxY - bounds.minY);
  const upright = tenths(bounds.maxY - bounds.minY - 2 * marginM);
  let next = tenths(Math.min(lengthM, across));
  while (next >= SHORTEST_M) {
    yield next;
    const shorter = tenths(next * 0.9);
    // The whole height of a plot that lies straight is not missed.
    next = upright < next && upright > shorter ? upright : shorter;
  }
}

/** Turn of beds that lie along the longest edge, degrees clockwise, from -45 to 45. */
function longestEdgeTurn({ rings: [ring = new Float64Array(0)] }: Outline): number {
  let longest = 0;
  let turn = 0;
  for (let index = 0; index < ring.length; index += 2) {
    const next = (index + 2) % ring.length;
    const dx = (ring[next] as number) - (ring[index] as number);
    const dy = (ring[next + 1] as number) - (ring[index + 1] as number);
    const run = Math.hypot(dx, dy);
    if (run <= longest + SLACK_M) continue;
    longest = run;
    turn = (Math.atan2(dx, dy) * 180) / Math.PI;
  }
  const quarter = ((((turn + 45) % 90) + 90) % 90) - 45;
  return Math.round(quarter * 10) / 10 + 0;
}

function placeFor(plot: Outline, wanted: GroundWanted, turnDeg: number): Point | null {
  const { minX, minY, maxX, maxY } = plot.bounds;
  const [halfX, halfY] = halfBounds(wanted, turnDeg);
  const [fromX, toX] = [minX + halfX, maxX - halfX];
  const [fromY, toY] = [minY + halfY, maxY - halfY];
  for (const x of between(fromX, toX)) {
    for (const y of between(fromY, toY)) {
      if (doesFit(plot, wanted, turnDeg, { x, y })) {
        return { x: Math.round(x * 100) / 100, y: Math.round(y * 100) / 100 };
      }
    }
  }
  return null;
}

function* between(from: number, to: number): Generator<number> {
  if (to < from - SLACK_M) return;
  const step = Math.max((to - from) / PLACES, 0.1);
  for (let at = from; at <= to + SLACK_M; at += step) yield at;
}

/** Half of what the ground and its margin take up across and up the sheet. */
function halfBounds({ widthM, lengthM, marginM }: GroundWanted, turnDeg: number) {
  const turn = (turnDeg * Math.PI) / 180;
  const [sin, cos] = [Math.abs(Math.sin(turn)), Math.abs(Math.cos(turn))];
  const [across, along] = [widthM + 2 * marginM, lengthM + 2 * marginM];
  return [(across * cos + along * sin) / 2, (across * sin + along * cos) / 2] as const;
}

function doesFit(plot: Outline, wanted: GroundWanted, turnDeg: number, at: Point): boolean {
  const { widthM, lengthM, marginM } = wanted;
  const across = (widthM + 2 * (marginM - SLACK_M)) / 2;
  const along = (lengthM + 2 * (marginM - SLACK_M)) / 2;
  const isCornerIn = ([right, up]: readonly [number, number]) => {
    const shift = shiftOnSheet(right * across, up * along, turnDeg);
    return outlineContains(plot, at.x + shift.x, at.y + shift.y);
  };
  const corners = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ] as const;
  if (!corners.every(isCornerIn)) return false;
  const grown = outlineOf({
    shape: "rectangle",
    ...at,
    widthM: across * 2,
    lengthM: along * 2,
    turnDeg,
  });
  return protrusion(grown, plot).distanceM === 0;
}
