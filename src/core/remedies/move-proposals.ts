/** Ways out of a conflict that move a planting: nearest clear spot, another bed, a swap. */
import { isolationPair } from "../checks/isolation.ts";
import { type Stand, resolveStands } from "../checks/stand.ts";
import type { Edit } from "../edits/edit.ts";
import { moveObjects, setOutline, turnObjects } from "../edits/move-objects.ts";
import { layoutDuring } from "../calendar/ground-time.ts";
import { outlineOnBed, freeStretches } from "../beds/place-planting.ts";
import { shapeCentre } from "../geometry/outline.ts";
import { type Point, directionDeg, pointDistance } from "../geometry/point.ts";
import { formatDistance } from "../model/length.ts";
import type { Bed, Layout, Planting, RectangleShape } from "../model/plan.ts";
import { clearGround, nearestPlace } from "./clear-ground.ts";
import { NO_COST, type Proposal } from "./remedy.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { compassWord } from "../words/compass-words.ts";
import { wayWords } from "./way-words.ts";
import * as steps from "../words/step-words.ts";

/** Steps tried along another bed, metres. */
const BED_STEP_M = 0.25;

interface NearestSpot {
  readonly edit: Edit;
  readonly movedM: number;
  /** `8.9 m south-west`. */
  readonly towards: string;
  /** The bed it lies in there. */
  readonly bed: Bed | undefined;
}

/** The nearest clear spot at the present angle, in whichever bed it lies; null: there is none. */
export function nearestSpot(context: CheckedLayout, planting: Planting): NearestSpot | null {
  const ground = clearGround(context.result, planting.id);
  const from = shapeCentre(planting.outline);
  const to = ground && nearestPlace(ground.centres, from);
  if (!to) return null;
  const edit = moveObjects(
    context.layout.id,
    [planting.id],
    to.x - from.x,
    to.y - from.y,
    steps.moveObject(planting.code),
  );
  return {
    edit,
    movedM: pointDistance(from, to),
    towards: moveWords(context, from, to),
    bed: bedAfter(context, edit, planting.id),
  };
}

/** Whether a spot lies in a bed other than the one the planting is in. */
export function isOtherBed({ bed }: NearestSpot, planting: Planting): boolean {
  return bed !== undefined && bed.id !== planting.bed;
}

/** The same as a way to try. */
export function nearestSpotProposals(
  context: CheckedLayout,
  planting: Planting,
): readonly Proposal[] {
  const spot = nearestSpot(context, planting);
  if (!spot) return [];
  const { bed, edit, movedM, towards } = spot;
  return [
    {
      id: `move:${planting.id}`,
      way: "move",
      ...(bed ? { into: `${planting.id} ${bed.id}` } : {}),
      title: isOtherBed(spot, planting)
        ? wayWords.moveInto(planting.code, towards, bed?.code ?? "")
        : wayWords.move(planting.code, towards),
      notes: [],
      edit,
      cost: { ...NO_COST, groundM: movedM },
      touches: [planting.id],
    },
  ];
}

/** The bed a planting stands in once it is moved, as the plan itself will say. */
function bedAfter({ plan, layout }: CheckedLayout, edit: Edit, id: string): Bed | undefined {
  const after = edit.apply(plan).layouts.find((entry) => entry.id === layout.id);
  const bedId = after?.plantings.find((entry) => entry.id === id)?.bed;
  return layout.beds.find((bed) => bed.id === bedId);
}

/** "8.9 m south-west": straight-line distance and true compass direction. */
export function moveWords({ plan }: CheckedLayout, from: Point, to: Point): string {
  const bearing = directionDeg(from, to) + plan.site.upBearingDeg;
  return `${formatDistance(pointDistance(from, to), plan.units)} ${compassWord(bearing)}`;
}

/**
 * Whether a planting laid elsewhere keeps its distance from another stand, both ways. What time or
 * cover did not clear before, another place clears by distance alone.
 */
export function keepsDistance(
  { plan, layout, book }: CheckedLayout,
  planting: Planting,
  outline: RectangleShape,
  other: Stand,
): boolean {
  const only = { ...layout, plantings: [{ ...planting, outline }] };
  const [moved] = resolveStands({ ...plan, surroundings: [] }, only, book);
  if (!moved) return false;
  const pairs = [isolationPair(moved, other, book), isolationPair(other, moved, book)];
  return pairs.every((pair) => pair === null || pair.standing === "distance");
}

/**
 * The fitting stretches of every other rectangular bed, turned to lie across it, the nearest first.
 * @param isWorth leaves out places that would not help
 */
export function otherBedProposals(
  context: CheckedLayout,
  planting: Planting,
  isWorth: (outline: RectangleShape) => boolean = () => true,
): readonly (readonly Proposal[])[] {
  const shape = planting.outline;
  if (shape.shape !== "rectangle") return [];
  const from = shapeCentre(shape);
  return context.layout.beds
    .filter((bed) => bed.id !== planting.bed && bed.outline.shape === "rectangle")
    .map((bed) =>
      placesOn(layoutDuring(context.layout, planting), bed, shape)
        .filter(isWorth)
        .map((outline) => bedProposal(context, planting, bed, from, outline))
        .sort((a, b) => a.cost.groundM - b.cost.groundM),
    );
}

function bedProposal(
  context: CheckedLayout,
  planting: Planting,
  bed: Bed,
  from: Point,
  outline: RectangleShape,
): Proposal {
  return {
    id: `move:${planting.id}:${bed.id}:${outline.x}:${outline.y}`,
    way: "other bed",
    into: `${planting.id} ${bed.id}`,
    title: wayWords.moveInto(planting.code, moveWords(context, from, outline), bed.code),
    notes: [],
    edit: setOutline(
      context.layout.id,
      planting.id,
      outline,
      steps.moveInto(planting.code, bed.code),
    ),
    cost: { ...NO_COST, groundM: pointDistance(from, outline) },
    touches: [planting.id],
  };
}

/** Outlines of the planting's own size along the free stretches of a bed. */
function placesOn(layout: Layout, bed: Bed, shape: RectangleShape): readonly RectangleShape[] {
  const ground = bed.outline;
  if (ground.shape !== "rectangle" || ground.widthM < shape.widthM - 1e-6) return [];
  return freeStretches(layout, bed).flatMap(({ fromM, toM }) => {
    const places: RectangleShape[] = [];
    for (let at = fromM; at + shape.lengthM <= toM + 1e-9; at += BED_STEP_M) {
      const across = outlineOnBed(ground, { fromM: at, toM: at + shape.lengthM });
      places.push({ ...across, widthM: shape.widthM });
    }
    return places;
  });
}

/** Swapping places with another planting of much the same size. */
export function swapProposals(context: CheckedLayout, planting: Planting): readonly Proposal[] {
  const stand = context.result.standById.get(planting.id) as Stand;
  return context.result.stands
    .filter((other) => canSwap(stand, other))
    .map((other) => swapProposal(context, planting, other.planting as Planting));
}

/** Same size within a hand's breadth, and no use in swapping with what it crosses with. */
function canSwap(stand: Stand, other: Stand): boolean {
  const [a, b] = [stand.planting?.outline, other.planting?.outline];
  if (other === stand || a?.shape !== "rectangle" || b?.shape !== "rectangle") return false;
  return (
    other.kind.group !== stand.kind.group &&
    Math.abs(a.widthM - b.widthM) < 0.1 &&
    Math.abs(a.lengthM - b.lengthM) < 0.1
  );
}

function swapProposal(context: CheckedLayout, planting: Planting, other: Planting): Proposal {
  const { id } = context.layout;
  const from = shapeCentre(planting.outline);
  const to = shapeCentre(other.outline);
  const turn =
    (other.outline as RectangleShape).turnDeg - (planting.outline as RectangleShape).turnDeg;
  const title = steps.swap(planting.code, other.code);
  const edit: Edit = {
    title,
    apply: (plan) =>
      [
        moveObjects(id, [planting.id], to.x - from.x, to.y - from.y),
        turnObjects(id, [planting.id], to, turn),
        moveObjects(id, [other.id], from.x - to.x, from.y - to.y),
        turnObjects(id, [other.id], from, -turn),
      ].reduce((next, step) => step.apply(next), plan),
  };
  return {
    id: `swap:${planting.id}:${other.id}`,
    way: "swap",
    title,
    notes: [],
    edit,
    cost: { ...NO_COST, groundM: 2 * pointDistance(from, to) },
    touches: [planting.id, other.id],
  };
}
