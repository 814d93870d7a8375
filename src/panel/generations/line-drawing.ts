/**
 * A line drawn as years from left to right: a column for each year, lots as boxes in it, and what
 * was sown for what as strokes between them. What this season would add stands last.
 */
import type { LineLot } from "../../core/generations/line-lot.ts";
import { withForebears } from "../../core/generations/line-past.ts";
import type { PlannedGrowing } from "../../core/generations/planned-growing.ts";
import * as words from "./words.ts";

export const BOX = { width: 150, height: 86 } as const;
const GAP = { x: 48, y: 22 } as const;
const HEAD = 26;
const EDGE = 4;

export interface DrawnBox {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  /** Null: what this season would add. */
  readonly line: LineLot | null;
  readonly planned: PlannedGrowing | null;
}

export interface DrawnStroke {
  readonly from: string;
  readonly to: string;
  /** An SVG path. */
  readonly path: string;
  readonly isPlanned: boolean;
  /** Seed that comes after a growing whose isolation was not met. */
  readonly isAfterCrossing: boolean;
}

export interface LineDrawing {
  readonly width: number;
  readonly height: number;
  readonly columns: readonly { readonly label: string; readonly x: number }[];
  readonly boxes: readonly DrawnBox[];
  readonly strokes: readonly DrawnStroke[];
}

interface Placed {
  readonly id: string;
  readonly key: number;
  readonly label: string;
  readonly parents: readonly string[];
  readonly line: LineLot | null;
  readonly planned: PlannedGrowing | null;
}

/** All lots of a line, its forebears of other varieties with it, each after those it comes from. */
export function lotsOfLine(lots: readonly LineLot[]): readonly LineLot[] {
  const all = new Set(lots.flatMap((line) => withForebears(line)));
  const ordered: LineLot[] = [];
  const done = new Set<LineLot>();
  const add = (start: LineLot) => {
    const waiting = [start];
    for (let at = waiting.at(-1); at; at = waiting.at(-1)) {
      const before = at.parents.find((parent) => !done.has(parent));
      if (before) {
        waiting.push(before);
        continue;
      }
      waiting.pop();
      if (!done.has(at)) ordered.push(at);
      done.add(at);
    }
  };
  for (const line of all) add(line);
  return ordered;
}

export function drawLine(
  lots: readonly LineLot[],
  planned: readonly PlannedGrowing[],
  seasonYear: number,
): LineDrawing {
  const placed = [...placedLots(lots), ...placedPlans(planned, lots, seasonYear)];
  const keys = [...new Set(placed.map(({ key }) => key))].sort((a, b) => a - b);
  const lanes = lanesOf(placed, keys);
  const boxes = placed.map(({ id, key, line, planned: plan }): DrawnBox => ({
    id,
    x: EDGE + keys.indexOf(key) * (BOX.width + GAP.x),
    y: HEAD + (lanes.get(id) ?? 0) * (BOX.height + GAP.y),
    line,
    planned: plan,
  }));
  const byId = new Map(boxes.map((box) => [box.id, box]));
  const lowest = Math.max(0, ...lanes.values());
  return {
    width: 2 * EDGE + keys.length * (BOX.width + GAP.x) - GAP.x,
    height: HEAD + (lowest + 1) * (BOX.height + GAP.y) - GAP.y + EDGE,
    columns: keys.map((key, at) => ({
      label: placed.find((each) => each.key === key)?.label ?? "",
      x: EDGE + at * (BOX.width + GAP.x) + BOX.width / 2,
    })),
    boxes,
    strokes: placed.flatMap(({ id, parents, planned: plan }) =>
      parents.flatMap((parent): readonly DrawnStroke[] => {
        const [from, to] = [byId.get(parent), byId.get(id)];
        if (!from || !to) return [];
        const isAfterCrossing = from.line?.past.hasCrossing === true;
        const path = strokePath(from, to);
        return [{ from: parent, to: id, path, isPlanned: plan !== null, isAfterCrossing }];
      }),
    ),
  };
}

/** Steps of one year that follow each other stand in columns of their own. */
const SAME_YEAR = 0.001;

function placedLots(lots: readonly LineLot[]): readonly Placed[] {
  const keys = new Map<LineLot, number>();
  return lots.map((line) => {
    const before = Math.max(...line.parents.map((parent) => keys.get(parent) ?? -Infinity));
    const own = line.year ?? (Number.isFinite(before) ? before + SAME_YEAR : firstKey(line, lots));
    const key = own > before ? own : before + SAME_YEAR;
    keys.set(line, key);
    const label = line.year === null ? words.yearNotKnown : String(line.year);
    const parents = line.parents.map(({ lot }) => lot.id);
    return { id: line.lot.id, key, label, parents, line, planned: null };
  });
}

/** A first lot without a year stands before the first year of what is grown from it. */
function firstKey(line: LineLot, lots: readonly LineLot[]): number {
  const after = lots.filter(({ parents }) => parents.includes(line)).map(({ year }) => year ?? 0);
  const years = after.filter((year) => year > 0);
  return years.length === 0 ? 0 : Math.min(...years) - 0.5;
}

function placedPlans(
  planned: readonly PlannedGrowing[],
  lots: readonly LineLot[],
  seasonYear: number,
): readonly Placed[] {
  const last = Math.max(seasonYear, ...placedLots(lots).map(({ key }) => key + SAME_YEAR));
  return planned.map((growing, at) => ({
    id: `planned-${at}`,
    key: last,
    label: words.plannedFor(seasonYear),
    parents: growing.parents.map(({ lot }) => lot.id),
    line: null,
    planned: growing,
  }));
}

/** Each takes the lane of its first parent, or the next that is free in its column. */
function lanesOf(placed: readonly Placed[], keys: readonly number[]): ReadonlyMap<string, number> {
  const lanes = new Map<string, number>();
  for (const key of keys) {
    const taken = new Set<number>();
    for (const { id, parents } of placed.filter((each) => each.key === key)) {
      const wanted = parents.map((parent) => lanes.get(parent) ?? 0).sort((a, b) => a - b)[0] ?? 0;
      let lane = wanted;
      while (taken.has(lane)) lane += 1;
      taken.add(lane);
      lanes.set(id, lane);
    }
  }
  return lanes;
}

function strokePath(from: DrawnBox, to: DrawnBox): string {
  const [x1, y1] = [from.x + BOX.width, from.y + BOX.height / 2];
  const [x2, y2] = [to.x, to.y + BOX.height / 2];
  const bend = Math.min(GAP.x, x2 - x1) * 0.6;
  // A long stroke leaves along its own lane and turns just before the lot it leads to.
  return y1 === y2
    ? `M${x1},${y1}H${x2}`
    : `M${x1},${y1}H${x2 - GAP.x}C${x2 - GAP.x + bend},${y1} ${x2 - bend},${y2} ${x2},${y2}`;
}
