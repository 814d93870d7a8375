/**
 * Plots as they lie once the beds are settled: one for each part that has room, and for a part that
 * has none in one piece what the ground left takes of it.
 */
import { type Placed, lengthFor, placeInBed } from "../beds/place-planting.ts";
import { layoutDuring } from "../calendar/ground-time.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { drawnIds, idAfter } from "../edits/edit.ts";
import { outlineOf, shapeCorners } from "../geometry/outline.ts";
import type { Kind } from "../kinds/crop.ts";
import type { Bed, Layout, Planting } from "../model/plan.ts";
import type { LayOutTrouble } from "./lay-out-trouble.ts";
import type { SearchedBeds } from "./lay-out-search.ts";
import type { SeedPart } from "./seed-parts.ts";

export interface Plot {
  readonly part: number;
  /** Place of its bed in the layout. */
  readonly bed: number;
  readonly planting: Planting;
}

/** A part goes in so many pieces at most. */
const MOST_PIECES = 3;
/** A piece holds at least this share of its part, or is left out. No source; our choice. */
const LEAST_SHARE = 0.2;
/** What a plant more is worth against trouble with others. */
const PLANT_WORTH = 0.5;

/** @param leftOut parts that are not to be laid */
export function plotsOf(
  { plan, layout }: CheckedLayout,
  parts: readonly SeedPart[],
  { orders, placed }: SearchedBeds,
  trouble: LayOutTrouble,
  leftOut: ReadonlySet<number>,
): readonly Plot[] {
  const plots = orders.flatMap((order, bed) =>
    order.parts.flatMap((part): readonly Plot[] => {
      const at = placed[part];
      const seed = parts[part] as SeedPart;
      return at && !leftOut.has(part)
        ? [{ part, bed, planting: plotPlanting(seed, layout.beds[bed] as Bed, at, seed.id) }]
        : [];
    }),
  );
  const taken = new Set([
    ...[...plan.layouts, layout].flatMap((one) => drawnIds(plan, one)),
    ...parts.map(({ id }) => id),
  ]);
  let lastId = parts.at(-1)?.id ?? "p0";
  const nextFree = () => {
    lastId = idAfter("p", lastId, taken);
    taken.add(lastId);
    return lastId;
  };
  for (const [part, seed] of parts.entries()) {
    if (placed[part] || leftOut.has(part)) continue;
    const pieces = piecesOf(layout, plots, { part, seed }, trouble);
    for (const [index, { bed, placed: at }] of pieces.entries()) {
      const id = index === 0 ? seed.id : nextFree();
      plots.push({ part, bed, planting: plotPlanting(seed, layout.beds[bed] as Bed, at, id) });
    }
  }
  return alongBeds(layout, plots);
}

interface Homeless {
  readonly part: number;
  readonly seed: SeedPart;
}

interface Piece {
  readonly bed: number;
  readonly placed: Placed;
}

/** As few even pieces as hold all its plants; where none do, those that hold most. */
function piecesOf(
  layout: Layout,
  plots: readonly Plot[],
  homeless: Homeless,
  trouble: LayOutTrouble,
): readonly Piece[] {
  let fullest: { pieces: readonly Piece[]; plants: number } = { pieces: [], plants: 0 };
  for (let count = 1; count <= MOST_PIECES; count += 1) {
    const pieces = evenPieces(layout, plots, homeless, count, trouble);
    const plants = pieces.reduce((sum, { placed }) => sum + placed.plants, 0);
    if (plants > fullest.plants) fullest = { pieces, plants };
    if (plants === homeless.seed.plants) break;
  }
  return fullest.pieces;
}

function evenPieces(
  layout: Layout,
  plots: readonly Plot[],
  { part, seed }: Homeless,
  count: number,
  trouble: LayOutTrouble,
): readonly Piece[] {
  const pieces: Piece[] = [];
  const lying = [...plots];
  let rest = seed.plants;
  for (let index = 0; index < count && rest > 0; index += 1) {
    const wanted = Math.ceil(rest / (count - index));
    const piece = bestPiece(layout, lying, { part, seed }, wanted, trouble);
    if (!piece) break;
    pieces.push(piece);
    const bed = layout.beds[piece.bed] as Bed;
    const planting = plotPlanting(seed, bed, piece.placed, `${seed.id} ${index}`);
    lying.push({ part, bed: piece.bed, planting });
    rest -= piece.placed.plants;
  }
  return pieces;
}

function bestPiece(
  layout: Layout,
  plots: readonly Plot[],
  { part, seed }: Homeless,
  wanted: number,
  trouble: LayOutTrouble,
): Piece | null {
  const filled = layoutDuring(
    { ...layout, plantings: [...layout.plantings, ...plots.map(({ planting }) => planting)] },
    { start: seed.start },
  );
  let best: (Piece & { readonly worth: number }) | null = null;
  for (const [bed, each] of layout.beds.entries()) {
    const placed = placeInBed(filled, each, seed.kind, wanted);
    if (!placed || !isWhole(seed.kind, placed)) continue;
    if (placed.plants < Math.min(wanted, Math.max(2, seed.plants * LEAST_SHARE))) {
      continue;
    }
    const outline = outlineOf(placed.outline);
    const others = plots.filter((plot) => trouble.others[part]?.includes(plot.part));
    const harm = others.reduce(
      (sum, plot) =>
        sum + trouble.ofTwo(part, outline, plot.part, outlineOf(plot.planting.outline)),
      trouble.ofOne(part, outline),
    );
    const worth = PLANT_WORTH * placed.plants - harm;
    if (!best || worth > best.worth) best = { bed, placed, worth };
  }
  return best;
}

/** Whether a piece is at least as long as one plant's place. */
function isWhole(kind: Kind, { outline }: Placed): boolean {
  return (
    outline.shape !== "rectangle" || outline.lengthM >= lengthFor(kind, outline.widthM, 1) - 1e-6
  );
}

/** A plot as the least planting that can be judged. */
function plotPlanting(
  { variety, start }: SeedPart,
  bed: Bed,
  { outline, plants, rows }: Placed,
  id: string,
): Planting {
  return {
    id,
    code: "",
    variety: variety.id,
    bed: bed.id,
    outline,
    plants,
    rows,
    // Seed of a hybrid is not kept: it is grown to eat.
    purpose: variety.hybrid === true ? "food" : "seed",
    flowering: "yes",
    cover: "none",
    ...(start ? { start } : {}),
  };
}

/** Bed by bed, and in each from its first corner on, so that codes count along it. */
function alongBeds(layout: Layout, plots: readonly Plot[]): readonly Plot[] {
  const along = ({ bed, planting }: Plot) => {
    const [start] = shapeCorners((layout.beds[bed] as Bed).outline);
    const corners = shapeCorners(planting.outline);
    const middle = {
      x: corners.reduce((sum, { x }) => sum + x, 0) / corners.length,
      y: corners.reduce((sum, { y }) => sum + y, 0) / corners.length,
    };
    return start ? Math.hypot(middle.x - start.x, middle.y - start.y) : 0;
  };
  return plots.toSorted((a, b) => a.bed - b.bed || along(a) - along(b));
}
