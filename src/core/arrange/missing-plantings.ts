/** Plantings for what the seed list still wants, laid where beds have room, for the arranger to move on. */
import type { CropBook } from "../kinds/crop-book.ts";
import { latestStart } from "../beds/latest-start.ts";
import { layoutDuring } from "../calendar/ground-time.ts";
import { drawnIds, nextId } from "../edits/edit.ts";
import { newPlanting } from "../edits/new-planting.ts";
import { type Placed, placeInBed } from "../beds/place-planting.ts";
import type { Kind } from "../kinds/crop.ts";
import type { Bed, Layout, Plan, Planting, Variety } from "../model/plan.ts";

export interface ShortVariety {
  readonly variety: Variety;
  /** Plants of it that are wanted and not in the layout. */
  readonly missing: number;
}

export interface MissingPlantings {
  readonly added: readonly Planting[];
  /** What found no room, or is of a kind that is not known. */
  readonly left: readonly ShortVariety[];
}

/** One variety is split up into so many plantings at most. */
const MOST_PARTS = 4;

/** Varieties the layout has fewer plants of than wanted, in the order of the seed list. */
export function shortVarieties({ varieties }: Plan, layout: Layout): readonly ShortVariety[] {
  return varieties.flatMap((variety): readonly ShortVariety[] => {
    const placed = layout.plantings
      .filter((planting) => planting.variety === variety.id)
      .reduce((sum, { plants = 0 }) => sum + plants, 0);
    if (variety.waits === true && placed === 0) return [];
    const missing = (variety.wantedPlants ?? 0) - placed;
    return missing > 0 ? [{ variety, missing }] : [];
  });
}

/**
 * New plantings for all of them: each in the bed that takes most of it, the rest in the next. They
 * start as the latest of their kind does. Nothing is laid on what stands there.
 */
export function missingPlantings(plan: Plan, layout: Layout, book: CropBook): MissingPlantings {
  let filled = layout;
  const added: Planting[] = [];
  const left: ShortVariety[] = [];
  const taken = new Set([...plan.layouts, layout].flatMap((one) => drawnIds(plan, one)));
  for (const { variety, missing } of shortVarieties(plan, layout)) {
    const kind = book.kind(variety.kind);
    const start = latestStart(plan, layout, variety.kind);
    let wanted = missing;
    for (let part = 0; part < MOST_PARTS && wanted > 0; part += 1) {
      // What is cleared before it starts leaves it its ground.
      const room = kind ? roomiest(layoutDuring(filled, { start }), kind, wanted) : null;
      if (!kind || !room) break;
      const planting = {
        ...newPlanting(plan, filled, room.bed, variety, room.placed),
        id: nextId("p", taken),
      };
      taken.add(planting.id);
      added.push(planting);
      filled = { ...filled, plantings: [...filled.plantings, planting] };
      wanted -= room.placed.plants;
    }
    if (wanted > 0) left.push({ variety, missing: wanted });
  }
  return { added, left };
}

interface BedRoom {
  readonly bed: Bed;
  readonly placed: Placed;
}

/** The first bed that takes all the plants, else the one that takes most. */
function roomiest(layout: Layout, kind: Kind, wanted: number): BedRoom | null {
  let best: BedRoom | null = null;
  for (const bed of layout.beds) {
    const placed = placeInBed(layout, bed, kind, wanted);
    if (placed && placed.plants > (best?.placed.plants ?? 0)) best = { bed, placed };
  }
  return best;
}
