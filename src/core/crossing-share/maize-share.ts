/** The shares of a planting of maize by the two curves of where pollen lands. */
import type { Stand } from "../checks/stand.ts";
import { type Outline, outlineArea, outlineOf } from "../geometry/outline.ts";
import { maizeTogether } from "./bloom-together.ts";
import type { Shares } from "./distance-bins.ts";
import { type WeighedField, addedFields, meanShare } from "./foreign-share.ts";
import { type PollenFields, pollenFields } from "./pollen-fields.ts";

/** Metres around a single plant where the kind's spacing is not known. No source; our choice. */
const PLANT_SIDE_M = 0.5;
/** Where the published maize curve in still air dies off ours stands alone, to a quarter of it. */
const FAR_FIELD_SHARE = 0.25;

export interface MaizeShares {
  /** Of all sources together, added before dividing. */
  readonly shares: Shares;
  /** Of each source by itself, in their order. */
  readonly bySource: readonly Shares[];
}

/** A curve's field at one end of what blooms leave open. */
type FieldOf = (stand: Stand, end: 0 | 1) => WeighedField;

/**
 * @param sources what may cross with it and is not left out
 * @param kin other stands of its variety, which dilute
 */
export function maizeShares(
  parent: Stand,
  sources: readonly Stand[],
  kin: readonly Stand[],
): MaizeShares {
  const taker = sheddingGround(parent);
  const fit = curveShares(parent, sources, kin, fieldReader(parent, taker, "fit"));
  const published = curveShares(parent, sources, kin, fieldReader(parent, taker, "published"));
  return {
    shares: rangeOf(fit.shares, published.shares),
    bySource: fit.bySource.map((shares, index) =>
      rangeOf(shares, published.bySource[index] ?? shares),
    ),
  };
}

/** Of the two curves, the lower and upper end; far off ours alone, as the other dies off. */
export function rangeOf(fit: Shares, published: Shares): Shares {
  return [
    Math.min(fit[0], Math.max(published[0], fit[0] * FAR_FIELD_SHARE)),
    Math.max(fit[1], published[1]),
  ];
}

function fieldReader(parent: Stand, taker: Outline, curve: keyof PollenFields): FieldOf {
  return (stand, end) => ({
    field: pollenFields(taker, sheddingGround(stand))[curve],
    strength: maizeTogether(parent.receives, stand.sheds)?.[end] ?? 0,
  });
}

function curveShares(
  parent: Stand,
  sources: readonly Stand[],
  kin: readonly Stand[],
  fieldOf: FieldOf,
): MaizeShares {
  const itself: WeighedField = { field: fieldOf(parent, 1).field, strength: 1 };
  const places = itself.field.length;
  // The lower end takes little of theirs against much of its own, the upper end the reverse.
  const own = (end: 0 | 1) =>
    addedFields(places, [itself, ...kin.map((stand) => fieldOf(stand, end))]);
  const [muchOwn, littleOwn] = [own(1), own(0)];
  const theirs = (end: 0 | 1) =>
    addedFields(
      places,
      sources.map((stand) => fieldOf(stand, end)),
    );
  const bySource = sources.map((stand): Shares => {
    const [least, most] = [fieldOf(stand, 0), fieldOf(stand, 1)];
    return [
      meanShare(muchOwn, least.field, least.strength),
      meanShare(littleOwn, most.field, most.strength),
    ];
  });
  const [only] = bySource;
  return {
    shares:
      only && bySource.length === 1
        ? only
        : [meanShare(muchOwn, theirs(0)), meanShare(littleOwn, theirs(1))],
    bySource,
  };
}

const grounds = new WeakMap<Stand, Outline>();

/** The ground a stand takes; for a single plant or a line the square it stands in. */
export function sheddingGround(stand: Stand): Outline {
  const { outline, kind } = stand;
  if (outline.hasInside && outlineArea(outline) > 0) return outline;
  const known = grounds.get(stand);
  if (known) return known;
  const [x = 0, y = 0] = outline.rings[0] ?? [];
  const { spacing } = kind;
  const sideM = spacing
    ? Math.sqrt(spacing.inRowM.value * spacing.betweenRowsM.value)
    : PLANT_SIDE_M;
  const square = outlineOf({ shape: "rectangle", x, y, widthM: sideM, lengthM: sideM, turnDeg: 0 });
  grounds.set(stand, square);
  return square;
}
