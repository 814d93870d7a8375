/**
 * Pollen of one ground at all the places of another, by both curves. Exact edge by edge near by;
 * farther off by a few places that stand for the ground. Kept for every two outlines, so that only
 * what moved is summed again.
 */
import type { Outline } from "../geometry/outline.ts";
import { type Kernel, MAIZE_FIT, MAIZE_PUBLISHED } from "./kernels.ts";
import { type PollenGround, FAR_SPANS, isFar, pollenGround } from "./pollen-ground.ts";
import { pollenShare } from "./pollen-share.ts";
import { type PlaceGrid, placeGrid } from "./sample-places.ts";

/** Pollen at each place of the ground that takes it, for one plant to the square metre. */
export interface PollenFields {
  readonly fit: Float64Array;
  readonly published: Float64Array;
}

const kept = new WeakMap<Outline, WeakMap<Outline, PollenFields>>();

/**
 * What a ground sends to the places of a planting (`samplePlaces`), within a per cent of the exact
 * sum: a few parts in a thousand from afar, exact nearer.
 */
export function pollenFields(taker: Outline, ground: Outline): PollenFields {
  const known = kept.get(taker) ?? new WeakMap<Outline, PollenFields>();
  kept.set(taker, known);
  const before = known.get(ground);
  if (before) return before;
  const shape = taker === ground ? rectangleKey(ground) : null;
  const fields =
    (shape === null ? undefined : ofRectangles.get(shape)) ??
    fieldsFrom(placeGrid(taker), pollenGround(taker), pollenGround(ground));
  known.set(ground, fields);
  if (shape !== null) keepOfRectangle(shape, fields);
  return fields;
}

/**
 * What rectangles keep of their own pollen, by their sides. Beds of a garden are much alike, and
 * turning or shifting one changes nothing: its places go with it, and the field is the same from
 * either end.
 */
const ofRectangles = new Map<string, PollenFields>();
const MOST_RECTANGLES = 500;

function keepOfRectangle(shape: string, fields: PollenFields): void {
  if (ofRectangles.size >= MOST_RECTANGLES) ofRectangles.clear();
  ofRectangles.set(shape, fields);
}

/** Both sides to a hundredth of a millimetre; null for whatever is no rectangle. */
function rectangleKey({ rings }: Outline): string | null {
  const [ring, hole] = rings;
  if (!ring || ring.length !== 8 || hole) return null;
  const side = (from: number, to: number) =>
    Math.hypot(
      (ring[2 * to] as number) - (ring[2 * from] as number),
      (ring[2 * to + 1] as number) - (ring[2 * from + 1] as number),
    );
  const [a, b, c, d] = [side(0, 1), side(1, 2), side(2, 3), side(3, 0)];
  const isRectangle =
    Math.abs(a - c) + Math.abs(b - d) + Math.abs(side(0, 2) - side(1, 3)) < SAME_M;
  return isRectangle ? `${Math.max(a, b).toFixed(5)} ${Math.min(a, b).toFixed(5)}` : null;
}

const SAME_M = 1e-6;

function fieldsFrom(grid: PlaceGrid, taker: PollenGround, ground: PollenGround): PollenFields {
  const { nodes, shares, places } = grid;
  const span = Math.max(taker.spanM, ground.spanM);
  const apart = Math.hypot(taker.x - ground.x, taker.y - ground.y);
  const isSmooth = nodes !== null && ground.places.length > 0 && apart > FAR_SPANS * span;
  const fieldOf = (kernel: Kernel) => {
    if (!isSmooth) return Float64Array.from(places, (at) => pollenAt(at.x, at.y, ground, kernel));
    const atNodes = nodes.map((at) => pollenAt(at.x, at.y, ground, kernel));
    return Float64Array.from(places, (_, place) => {
      let sum = 0;
      for (let node = 0; node < atNodes.length; node++) {
        sum += (shares[place * atNodes.length + node] as number) * (atNodes[node] as number);
      }
      return Math.max(0, sum);
    });
  };
  return { fit: fieldOf(MAIZE_FIT), published: fieldOf(MAIZE_PUBLISHED) };
}

/** Pollen that reaches one place from a ground, for one plant to the square metre. */
export function pollenAt(x: number, y: number, ground: PollenGround, kernel: Kernel): number {
  if (!isFar(ground, x, y)) return pollenShare({ x, y }, ground.outline, kernel);
  const { places, placeM2 } = ground;
  let sum = 0;
  for (let index = 0; index < places.length; index += 2) {
    const dx = x - (places[index] as number);
    const dy = y - (places[index + 1] as number);
    // Not Math.hypot, which takes many times as long and guards against what no garden holds.
    sum += kernel.density(Math.sqrt(dx * dx + dy * dy));
  }
  return sum * placeM2;
}
