/**
 * Ways out with fewer plants: a smaller block where it stands, or one that fits elsewhere; never
 * fewer than the figure that keeps a variety.
 */
import { type CheckedLayout, recheckLayout } from "../checks/checked-layout.ts";
import type { Finding } from "../checks/all-checks.ts";
import { type Stand, isSameLot } from "../checks/stand.ts";
import type { Edit } from "../edits/edit.ts";
import { setPlantsAndOutline } from "../edits/planting-size.ts";
import { turnPoint } from "../geometry/point.ts";
import type { Planting, RectangleShape } from "../model/plan.ts";
import { keepsDistance, isOtherBed, nearestSpot } from "./move-proposals.ts";
import { NO_COST, type Proposal } from "./remedy.ts";
import { wayWords as words } from "./way-words.ts";

/** Fewer plants are no work; the seed they would have given counts with the plants left out. */
const WORK = 8;

interface Block {
  readonly planting: Planting;
  readonly shape: RectangleShape;
  readonly plants: number;
  readonly rows: number;
  readonly floor: number;
  readonly source: string;
  /** Fewest plants here that leave the variety its floor. */
  readonly least: number;
}

export function fewerProposals(
  context: CheckedLayout,
  stand: Stand,
  finding: Finding,
): readonly Proposal[] {
  const block = blockOf(context, stand);
  if (!block) return [];
  const otherId = finding.subjects.find((id) => id !== stand.id);
  const other = otherId === undefined ? undefined : context.result.standById.get(otherId);
  return [
    ...(other ? ENDS.flatMap((end) => inPlace(context, block, other, end) ?? []) : []),
    ...elsewhere(context, block),
  ];
}

function blockOf({ result }: CheckedLayout, stand: Stand): Block | null {
  const { planting, kind } = stand;
  const maintenance = kind.population?.maintenance;
  if (!planting || !stand.isSeedParent || !maintenance || planting.locked === true) return null;
  const { plants, rows = 1, outline: shape } = planting;
  if (plants === undefined || shape.shape !== "rectangle") return null;
  const alike = result.stands.filter((each) => each !== stand && isSameLot(stand, each));
  // Plots that are not counted say nothing: the floor must then stand here alone.
  const elsewherePlants = alike.reduce(
    (sum, each) => sum + (each.isSeedParent ? (each.planting?.plants ?? 0) : 0),
    0,
  );
  const least = Math.max(1, maintenance.value - elsewherePlants);
  if (least >= plants) return null;
  return {
    planting,
    shape,
    plants,
    rows,
    floor: maintenance.value,
    source: maintenance.source,
    least,
  };
}

/** Which end of the block stays. */
const ENDS = [-1, 1] as const;

/** The most plants that keep their distance when the block gives way at one end. */
function inPlace(context: CheckedLayout, block: Block, other: Stand, end: -1 | 1): Proposal | null {
  const lines = Math.ceil(block.plants / block.rows);
  const leastLines = Math.ceil(block.least / block.rows);
  for (let kept = lines - 1; kept >= leastLines; kept -= 1) {
    const shape = shortened(block.shape, kept / lines, end);
    if (keepsDistance(context, block.planting, shape, other))
      return proposal(context, block, shape, kept * block.rows);
  }
  return null;
}

/** A block of so much of its length, held at one end. */
function shortened(shape: RectangleShape, share: number, end: -1 | 1): RectangleShape {
  const lengthM = shape.lengthM * share;
  const along = (end * (shape.lengthM - lengthM)) / 2;
  const { x, y } = turnPoint({ x: shape.x, y: shape.y + along }, shape, shape.turnDeg);
  return { ...shape, x, y, lengthM };
}

function proposal(
  { layout }: CheckedLayout,
  block: Block,
  outline: RectangleShape,
  plants: number,
): Proposal {
  const { planting, floor, source } = block;
  const title = words.fewer(planting.code, plants, block.plants);
  return {
    id: `fewer:${planting.id}:${plants}:${outline.x}:${outline.y}`,
    way: "fewer plants",
    title,
    notes: [words.fewerNote(floor, source)],
    edit: setPlantsAndOutline(layout.id, planting.id, { outline, plants, rows: block.rows }, title),
    cost: { ...NO_COST, work: WORK, plantsLess: block.plants - plants },
    touches: [planting.id],
  };
}

/** The least block, at the nearest clear spot it fits in. */
function elsewhere(context: CheckedLayout, block: Block): readonly Proposal[] {
  const lines = Math.ceil(block.plants / block.rows);
  const kept = Math.ceil(block.least / block.rows);
  if (kept >= lines) return [];
  const smaller = proposal(
    context,
    block,
    shortened(block.shape, kept / lines, 1),
    kept * block.rows,
  );
  const tried = recheckLayout(context, smaller.edit.apply(context.plan));
  const planting = tried?.layout.plantings.find(({ id }) => id === block.planting.id);
  if (!tried || !planting) return [];
  const spot = nearestSpot(tried, planting);
  if (!spot) return [];
  const { bed, edit, movedM, towards } = spot;
  const counts = { plants: kept * block.rows, of: block.plants };
  return [
    {
      ...smaller,
      id: `${smaller.id}:moved`,
      ...(bed ? { into: `fewer:${planting.id}:${bed.id}` } : {}),
      title: isOtherBed(spot, planting)
        ? words.fewerMovedInto(planting.code, counts, towards, spot.bed?.code ?? "")
        : words.fewerMoved(planting.code, counts, towards),
      edit: inTurn([smaller.edit, edit], smaller.title),
      cost: { ...smaller.cost, groundM: movedM },
    },
  ];
}

function inTurn(edits: readonly Edit[], title: string): Edit {
  return { title, apply: (plan) => edits.reduce((next, edit) => edit.apply(next), plan) };
}
