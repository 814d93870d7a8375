/**
 * From the seed list to the ground: every variety with the plants it wants, in rows at its spacing,
 * on the beds there are, started at a sensible date; three layouts that differ on purpose. What
 * stands stays. Each is judged by the same checks as the screen.
 */
import { FALLBACK_SPACING_M } from "../beds/stretch.ts";
import { type CheckedLayout, recheckLayout } from "../checks/checked-layout.ts";
import type { Stand } from "../checks/stand.ts";
import { standOf } from "../clearing/choice.ts";
import { newPlanting } from "../edits/new-planting.ts";
import { addPlantings } from "../edits/object-edits.ts";
import type { Bed, Layout, Planting } from "../model/plan.ts";
import { type BedOrder, type BedPacker, bedPacker } from "./bed-packing.ts";
import { type LayOutCost, layOutCost } from "./lay-out-cost.ts";
import { type LayGoal, goalRules, layGoals } from "./lay-out-goals.ts";
import { searchBeds } from "./lay-out-search.ts";
import { layOutTrouble, roomAlone } from "./lay-out-trouble.ts";
import { type Plot, plotsOf } from "./plots.ts";
import { type LeftVariety, type SeedPart, type SeedParts, seedParts } from "./seed-parts.ts";
import { type Settled, settle } from "./settle-varieties.ts";

export interface LaidOut {
  readonly goal: LayGoal;
  /** To be added to what stands. */
  readonly plantings: readonly Planting[];
  readonly left: readonly LeftVariety[];
  readonly cost: LayOutCost;
}

/** Steps of a search; more find little more. */
const STEPS = 6000;
const STEPS_AGAIN = 2500;
const STEPS_ROOM = 1500;

export interface LaidOutList {
  readonly seeds: SeedParts;
  /** In the order of `layGoals`. */
  readonly laid: readonly LaidOut[];
}

/** Three layouts of the seed list; yields the share that is done. There is at least one part to lay. */
export function* layOut(checked: CheckedLayout): Generator<number, LaidOutList> {
  const seeds = seedParts(checked);
  const { parts } = seeds;
  const pack = bedPacker(checked.layout, parts);
  const beds = checked.layout.beds.length;
  const room = { beds, pack, trouble: roomAlone(parts), parts: largestFirst(parts) };
  const { orders } = yield* scaled(searchBeds({ ...room, steps: STEPS_ROOM }), 0, 0.1);
  const stands = parts.map((part) => partStand(checked, part));
  const laid: LaidOut[] = [];
  for (const [index, goal] of layGoals.entries()) {
    const run = layOutFor({ checked, seeds, stands, pack, orders }, goal);
    const share = 0.9 / layGoals.length;
    laid.push(yield* scaled(run, 0.1 + index * share, share));
  }
  return { seeds, laid };
}

/** By the ground they take at their spacing. */
function largestFirst(parts: readonly SeedPart[]): readonly number[] {
  const ground = ({ kind, plants }: SeedPart) =>
    plants *
    (kind.spacing?.inRowM.value ?? FALLBACK_SPACING_M.inRow) *
    (kind.spacing?.betweenRowsM.value ?? FALLBACK_SPACING_M.betweenRows);
  const sizes = parts.map(ground);
  return [...parts.keys()].sort((a, b) => (sizes[b] ?? 0) - (sizes[a] ?? 0));
}

interface LayOutInput {
  readonly checked: CheckedLayout;
  readonly seeds: SeedParts;
  readonly stands: readonly Stand[];
  readonly pack: BedPacker;
  /** Beds to begin with, in which they have room as far as was found. */
  readonly orders: readonly BedOrder[];
}

function* layOutFor(input: LayOutInput, goal: LayGoal): Generator<number, LaidOut> {
  const { checked, seeds, stands, pack, orders } = input;
  const rule = goalRules[goal];
  const trouble = layOutTrouble(checked, seeds.parts, stands, rule.isByDistance);
  const base = { beds: checked.layout.beds.length, pack, trouble };
  const all = [...seeds.parts.keys()];
  const begun = { ...base, parts: all, from: orders, steps: STEPS };
  const first = yield* scaled(searchBeds(begun), 0, 0.7);
  const plots = plotsOf(checked, seeds.parts, first, trouble, new Set());
  const settled = settle(checked, seeds, plots, rule);
  if (settled.waits.size === 0) return laidOut(input, goal, plots, settled);
  // Those that wait leave their ground to the others.
  const parts = all.filter((part) => !settled.waits.has(part));
  const resumed = { ...base, parts, from: first.orders, steps: STEPS_AGAIN };
  const again = yield* scaled(searchBeds(resumed), 0.7, 0.3);
  const replotted = plotsOf(checked, seeds.parts, again, trouble, settled.waits);
  const resettled = settle(checked, seeds, replotted, rule, settled);
  const before = laidOut(input, goal, plots, settled);
  const after = laidOut(input, goal, replotted, resettled);
  return isMore(before, after) ? before : after;
}

/** Whether more varieties are grown in one, or as many with more plants. */
function isMore({ cost: a }: LaidOut, { cost: b }: LaidOut): boolean {
  return a.varieties === b.varieties ? a.plants > b.plants : a.varieties > b.varieties;
}

function* scaled<T>(run: Generator<number, T>, from: number, share: number): Generator<number, T> {
  let next = run.next();
  while (next.done !== true) {
    yield from + next.value * share;
    next = run.next();
  }
  return next.value;
}

function laidOut(
  { checked, seeds }: LayOutInput,
  goal: LayGoal,
  plots: readonly Plot[],
  { changes, waits, against }: Settled,
): LaidOut {
  const { plan, layout } = checked;
  let filled: Layout = layout;
  const plantings: Planting[] = [];
  for (const { part, bed, planting } of plots) {
    if (waits.has(part)) continue;
    const { variety } = seeds.parts[part] as SeedPart;
    // The code, and the lots of what waits in store, as for any new planting.
    const made = {
      ...newPlanting(plan, filled, layout.beds[bed] as Bed, variety, {
        outline: planting.outline,
        plants: planting.plants ?? 1,
        rows: planting.rows ?? 1,
      }),
      id: planting.id,
      purpose: planting.purpose,
      ...(planting.start ? { start: planting.start } : {}),
      ...changes.get(variety.id),
    };
    plantings.push(made);
    filled = { ...filled, plantings: [...filled.plantings, made] };
  }
  const after = recheckLayout(checked, addPlantings(layout.id, plantings, "").apply(plan));
  return {
    goal,
    plantings,
    left: leftOver(seeds, plantings, waits, against),
    cost: layOutCost(after ?? checked, plantings, seeds),
  };
}

function leftOver(
  seeds: SeedParts,
  plantings: readonly Planting[],
  waits: ReadonlySet<number>,
  against: Settled["against"],
): readonly LeftVariety[] {
  const left = seeds.wanted.flatMap(({ variety, parts }): readonly LeftVariety[] => {
    const never = seeds.left.find((each) => each.variety === variety)?.plants ?? 0;
    const wanted = parts.reduce((sum, part) => sum + (seeds.parts[part]?.plants ?? 0), never);
    if (parts.some((part) => waits.has(part))) {
      const way = against.get(variety.id) ?? { against: [], isAround: false };
      const reason = { why: "waits", ...way } as const;
      return [{ variety, plants: wanted, reason }];
    }
    const laid = plantings
      .filter((planting) => planting.variety === variety.id)
      .reduce((sum, { plants = 0 }) => sum + plants, 0);
    if (laid >= wanted) return [];
    return [{ variety, plants: wanted - laid, reason: { why: "no-room" } }];
  });
  const isTold = new Set(seeds.wanted.map(({ variety }) => variety));
  return [...left, ...seeds.left.filter(({ variety }) => !isTold.has(variety))];
}

/** A part as a stand somewhere: what its pairs need does not ask where it lies. */
function partStand(checked: CheckedLayout, { id, variety, kind, start }: SeedPart): Stand {
  const stand = standOf(checked, {
    id,
    code: "",
    variety: variety.id,
    outline: { shape: "rectangle", x: 0, y: 0, widthM: 1, lengthM: 1, turnDeg: 0 },
    purpose: variety.hybrid === true ? "food" : "seed",
    flowering: "yes",
    cover: "none",
    ...(start ? { start } : {}),
  });
  if (!stand) throw new Error(`${kind.id} is of no kind.`);
  return stand;
}
