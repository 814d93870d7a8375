/**
 * Plots side by side in a bed as a grower sets them out: rows along the bed, each plot across its
 * whole width and as long as its plants need, from the near end on, and some from the far end back.
 */
import { placeInOutline } from "../beds/place-in-outline.ts";
import {
  freeStretches,
  lengthFor,
  outlineOnBed,
  plantsThatFit,
  type Placed,
} from "../beds/place-planting.ts";
import { layoutDuring } from "../calendar/ground-time.ts";
import type { Bed, Layout, Planting, RectangleShape } from "../model/plan.ts";
import type { SeedPart } from "./seed-parts.ts";
import type { Stretch } from "../beds/stretch.ts";

/** What lies in a bed, in the order along it. */
export interface BedOrder {
  /** Parts from the near end on, then those that end at its far end, in the order along the bed. */
  readonly parts: readonly number[];
  /** How many of them lie at the near end. */
  readonly near: number;
}

/** Rounding of lengths must not cost a plot. */
const EPSILON = 1e-6;

/** Lays parts in a bed as they are ordered; a part that does not fit in whole is null. */
export type BedPacker = (bed: number, order: BedOrder) => readonly (Placed | null)[];

export function bedPacker(layout: Layout, parts: readonly SeedPart[]): BedPacker {
  const earliest = parts.reduce<Planting["start"]>(
    (first, { start }) => (start && (!first || start.date < first.date) ? start : first),
    undefined,
  );
  const standing = layoutDuring(layout, earliest ? { start: earliest } : {});
  const free = layout.beds.map((bed) => freeStretches(standing, bed));
  const kept: OutlinePlaces = new Map();
  return (index, order) => {
    const bed = layout.beds[index] as Bed;
    return bed.outline.shape === "rectangle"
      ? inRectangle(bed.outline, free[index] ?? [], order, parts)
      : inOutline(standing, bed, order, parts, kept);
  };
}

/** Where a part lies in a bed after those before it, by their ids and its own. */
type OutlinePlaces = Map<string, Placed | null>;

function inRectangle(
  bed: RectangleShape,
  free: readonly Stretch[],
  { parts: order, near }: BedOrder,
  parts: readonly SeedPart[],
): readonly (Placed | null)[] {
  const left = free.map((stretch) => ({ ...stretch }));
  const placed = order.map((): Placed | null => null);
  const lay = (at: number, isFar: boolean) => {
    const { kind, plants } = parts[order[at] as number] as SeedPart;
    const lengthM = lengthFor(kind, bed.widthM, plants);
    const fits = ({ fromM, toM }: Stretch) => toM - fromM >= lengthM - EPSILON;
    const stretch = isFar ? left.findLast(fits) : left.find(fits);
    if (!stretch) return;
    const fromM = isFar ? stretch.toM - lengthM : stretch.fromM;
    if (isFar) stretch.toM = fromM;
    else stretch.fromM = fromM + lengthM;
    const { rows } = plantsThatFit(kind, bed.widthM, lengthM);
    placed[at] = { outline: outlineOnBed(bed, { fromM, toM: fromM + lengthM }), plants, rows };
  };
  for (let at = 0; at < near; at += 1) lay(at, false);
  for (let at = order.length - 1; at >= near; at -= 1) lay(at, true);
  return placed;
}

/** In a bed of another outline they follow each other along it. */
function inOutline(
  standing: Layout,
  bed: Bed,
  { parts: order }: BedOrder,
  parts: readonly SeedPart[],
  kept: OutlinePlaces,
): readonly (Placed | null)[] {
  const others = standing.plantings.filter((planting) => planting.bed === bed.id);
  const filled = [...others];
  let key = bed.id;
  return order.map((part) => {
    const seed = parts[part] as SeedPart;
    key = `${key} ${part}`;
    let placed = kept.get(key);
    if (placed === undefined) {
      placed = placeInOutline({ ...standing, plantings: filled }, bed, seed.kind, seed.plants);
      if (placed && placed.plants < seed.plants) placed = null;
      kept.set(key, placed);
    }
    if (placed) filled.push(lying(seed, bed, placed));
    return placed;
  });
}

function lying({ id, variety }: SeedPart, bed: Bed, { outline }: Placed): Planting {
  return {
    id,
    code: "",
    variety: variety.id,
    bed: bed.id,
    outline,
    purpose: "seed",
    flowering: "yes",
    cover: "none",
  };
}
