/** Where a variety lands in a bed that is no rectangle: on its ground, never on what grows there. */
import { overlapDepth } from "../geometry/containment.ts";
import { outlineOf } from "../geometry/outline.ts";
import { type Point, turnPoint } from "../geometry/point.ts";
import { type Ring, stripParts } from "../geometry/strip.ts";
import { turnedBounds } from "../geometry/turned-bounds.ts";
import type { Kind } from "../kinds/crop.ts";
import { LIMITS } from "../model/limits.ts";
import type { Bed, Layout, PolygonShape } from "../model/plan.ts";
import { plantsInRows, rowsDirection, turnedRings } from "./rows-on-ground.ts";
import { type Stretch, FALLBACK_SPACING_M, LEAST_STRETCH_M } from "./stretch.ts";

export interface PlacedOnGround {
  readonly outline: PolygonShape;
  readonly plants: number;
  readonly rows: number;
}

const ORIGIN: Point = { x: 0, y: 0 };
/** Pieces that touch along an edge do not overlap, metres. */
const TOUCHING_M = 1e-6;

/** The bed in the frame in which its rows run along y. */
interface Lengthwise {
  readonly turnDeg: number;
  readonly rings: readonly Ring[];
  readonly inRowM: number;
  readonly betweenRowsM: number;
}

/**
 * A place for some plants of a kind in a bed of any outline, or null when no ground is left for
 * one: a piece of the bed across its whole width, as long as its plants need. Stretches free from
 * side to side come first; then what is left beside other plantings, as in the arms of a horseshoe.
 * @param at where it is wished, sheet metres
 */
export function placeInOutline(
  layout: Layout,
  bed: Bed,
  kind: Kind,
  wantedPlants: number,
  at?: Point,
): PlacedOnGround | null {
  const turnDeg = rowsDirection(bed.outline);
  const rings = turnedRings(bed.outline, turnDeg);
  const lengthwise: Lengthwise = {
    turnDeg,
    rings,
    inRowM: kind.spacing?.inRowM.value ?? FALLBACK_SPACING_M.inRow,
    betweenRowsM: kind.spacing?.betweenRowsM.value ?? FALLBACK_SPACING_M.betweenRows,
  };
  const others = layout.plantings.filter((planting) => planting.bed === bed.id);
  const taken = others
    .map(({ outline }) => turnedBounds(outline, turnDeg))
    .map(({ minY, maxY }): Stretch => ({ fromM: minY, toM: maxY }))
    .sort((a, b) => a.fromM - b.fromM);
  const along = at ? turnPoint(at, ORIGIN, -turnDeg).y : null;
  const whole = bestOf(
    freeBetween(rings, taken).flatMap(
      (stretch) => placedOn(lengthwise, stretch, wantedPlants, along) ?? [],
    ),
    wantedPlants,
    at,
  );
  if (whole && (whole.plants === wantedPlants || others.length === 0)) return whole;
  const beside = atMiddles(rings, taken)
    .flatMap(({ fromM, toM }) => stripParts(rings, fromM, toM))
    .flatMap((part) => placedFrom(lengthwise, part, wantedPlants) ?? [])
    .filter(({ outline }) => {
      const ground = outlineOf(outline);
      return others.every(
        (other) => overlapDepth(ground, outlineOf(other.outline)).distanceM <= TOUCHING_M,
      );
    });
  return bestOf([...(whole ? [whole] : []), ...beside], wantedPlants, at);
}

/** Stretches from side to side that nothing covers; none goes past the middle of a hole. */
function freeBetween(rings: readonly Ring[], taken: readonly Stretch[]): readonly Stretch[] {
  return atMiddles(rings, uncovered(rings[0] ?? [], taken));
}

/** Stretches cut at the middle of each hole. */
function atMiddles(rings: readonly Ring[], stretches: readonly Stretch[]): readonly Stretch[] {
  const middles = rings.slice(1).map(middleOf);
  return stretches.flatMap(({ fromM, toM }) => {
    const cuts = [fromM, ...middles.filter((cut) => cut > fromM && cut < toM), toM];
    cuts.sort((a, b) => a - b);
    return cuts.slice(1).map((cut, index) => ({ fromM: cuts[index] as number, toM: cut }));
  });
}

function middleOf(ring: Ring): number {
  const ys = ring.map(({ y }) => y);
  return (Math.min(...ys) + Math.max(...ys)) / 2;
}

function uncovered(outer: Ring, taken: readonly Stretch[]): readonly Stretch[] {
  const ys = outer.map(({ y }) => y);
  const end = Math.max(...ys);
  const free: Stretch[] = [];
  let from = Math.min(...ys);
  for (const stretch of taken) {
    if (stretch.fromM - from >= LEAST_STRETCH_M) free.push({ fromM: from, toM: stretch.fromM });
    from = Math.max(from, stretch.toM);
  }
  if (end - from >= LEAST_STRETCH_M) free.push({ fromM: from, toM: end });
  return free;
}

/** The shortest piece of a stretch that holds the plants; all of it where none does. */
function placedOn(
  lengthwise: Lengthwise,
  stretch: Stretch,
  wanted: number,
  along: number | null,
): PlacedOnGround | null {
  const { rings, inRowM } = lengthwise;
  const { fromM, toM } = stretch;
  const steps = Math.ceil((toM - fromM) / inRowM);
  for (let step = 1; step < steps; step += 1) {
    const lengthM = step * inRowM;
    const start = Math.min(Math.max((along ?? fromM) - lengthM / 2, fromM), toM - lengthM);
    const placed = bestOf(
      stripParts(rings, start, start + lengthM).flatMap(
        (part) => placedFrom(lengthwise, part, wanted) ?? [],
      ),
      wanted,
    );
    if (placed?.plants === wanted) return placed;
  }
  const all = stripParts(rings, fromM, toM).flatMap(
    (part) => placedFrom(lengthwise, part, wanted) ?? [],
  );
  return bestOf(all, wanted);
}

/** A part of the bed as a planting's ground; null where not one plant stands on it. */
function placedFrom(
  { turnDeg, inRowM, betweenRowsM }: Lengthwise,
  part: Ring,
  wanted: number,
): PlacedOnGround | null {
  const fit = plantsInRows([part], inRowM, betweenRowsM);
  if (fit.plants === 0 || part.length > LIMITS.corners) return null;
  const corners = part
    .map((corner) => turnPoint(corner, ORIGIN, turnDeg))
    .map(({ x, y }): [number, number] => [x, y]);
  return {
    outline: { shape: "polygon", corners },
    rows: fit.rows,
    plants: Math.min(wanted, fit.plants),
  };
}

/** Of those that hold all plants the one nearest to the place, else the first; else the fullest. */
function bestOf(
  placed: readonly PlacedOnGround[],
  wanted: number,
  at?: Point,
): PlacedOnGround | null {
  const full = placed.filter(({ plants }) => plants === wanted);
  if (full.length === 0) {
    return [...placed].sort((a, b) => b.plants - a.plants)[0] ?? null;
  }
  if (!at) return full[0] ?? null;
  return [...full].sort((a, b) => awayFrom(a, at) - awayFrom(b, at))[0] ?? null;
}

function awayFrom({ outline }: PlacedOnGround, { x, y }: Point): number {
  const { minX, minY, maxX, maxY } = turnedBounds(outline, 0);
  return Math.hypot(Math.max(minX - x, 0, x - maxX), Math.max(minY - y, 0, y - maxY));
}
