/**
 * A plan read as grown on a day: the same plan with what the record says in the place of what was
 * planned, so that the same checks judge it. Nothing of it is ever saved.
 */
import type { Bloom, DayWindow } from "../calendar/bloom-window.ts";
import type { AsGrown, SeenBloom } from "../calendar/seen-bloom.ts";
import { type CheckedLayout, checkLayout, recheckLayout } from "../checks/checked-layout.ts";
import type { CheckResult } from "../checks/run-checks.ts";
import { mapItems } from "../edits/edit.ts";
import type { DayNumber } from "../model/day.ts";
import { layoutOf } from "../model/layouts.ts";
import type { Cover, Flowering, Plan, Planting, Surrounding } from "../model/plan.ts";
import { currentEntries, entriesUntil } from "./current-entries.ts";
import { type PlotRecord, coverThrough, plantsStanding, plotRecord } from "./plot-record.ts";

/** Records of everything that has entries on or before a day, by id. */
export function plotRecords(plan: Plan, on: DayNumber): ReadonlyMap<string, PlotRecord> {
  const current = currentEntries(plan.entries);
  const subjects = new Set(current.map(({ of }) => of));
  return new Map(
    [...subjects].map((id) => [id, plotRecord(entriesUntil(current, id, on))] as const),
  );
}

/**
 * One layout judged as grown on a day by the rule that judges plans. Covers come last: whether one
 * stood through a bloom can be told only once the bloom is known.
 *
 * @param previous another reading of this plan, of which all that is untouched is carried forward;
 *   what comes out is the same as without
 */
export function checkAsGrown(
  plan: Plan,
  layoutId: string,
  on: DayNumber,
  previous?: CheckResult,
): CheckedLayout {
  const bare = checkLayout(asGrown(plan, on), layoutId, previous);
  const grown = recheckLayout(bare, withCoversStood(bare, plan, on)) ?? bare;
  return { ...grown, grownOn: on };
}

/**
 * The plan with starts, ends, plants, flowering and bloom as the record has them on a day, and
 * without covers. Things without entries, ends or covers stay the same objects.
 */
export function asGrown(plan: Plan, on: DayNumber): Plan {
  const records = plotRecords(plan, on);
  return {
    ...plan,
    layouts: mapItems(plan.layouts, (layout) => {
      const plantings = mapItems(layout.plantings, (planting) =>
        grownPlanting(planting, records.get(planting.id) ?? null, on),
      );
      return plantings === layout.plantings ? layout : { ...layout, plantings };
    }),
    surroundings: mapItems(plan.surroundings, (surrounding) =>
      grownSurrounding(surrounding, records.get(surrounding.id) ?? null, on),
    ),
  };
}

/**
 * The plan as grown with the covers that stand through the whole bloom of what they cover: as
 * recorded, or as planned where it cannot have begun to flower. A planned cover of what may be in
 * flower counts for nothing until somebody writes that it stands.
 */
function withCoversStood({ plan, layout, result }: CheckedLayout, planned: Plan, on: DayNumber) {
  const records = plotRecords(plan, on);
  const plannedCovers = new Map<string, Cover>(
    [...layoutOf(planned, layout.id).plantings, ...planned.surroundings].map(({ id, cover }) => [
      id,
      cover,
    ]),
  );
  const coverOf = (id: string): Cover => {
    const bloom = wholeOf(result.standById.get(id)?.bloom ?? null);
    const stays = records.get(id)?.covers ?? [];
    const stood = coverThrough(stays, bloom);
    if (stood !== "none") return stood;
    const isToCome = bloom !== null && bloom.first > on && stays.length === 0;
    return isToCome ? (plannedCovers.get(id) ?? "none") : "none";
  };
  const covered = <T extends Planting | Surrounding>(thing: T): T => {
    const cover = coverOf(thing.id);
    return cover === thing.cover ? thing : { ...thing, cover };
  };
  return {
    ...plan,
    layouts: mapItems(plan.layouts, (each) =>
      each.id === layout.id ? { ...each, plantings: mapItems(each.plantings, covered) } : each,
    ),
    surroundings: mapItems(plan.surroundings, covered),
  };
}

/** Every day it may flower. */
export function wholeOf(bloom: Bloom | null): DayWindow | null {
  if (!bloom) return null;
  const windows = [bloom.outer, ...(bloom.widest ? [bloom.widest] : []), ...(bloom.also ?? [])];
  return {
    first: Math.min(...windows.map(({ first }) => first)),
    last: Math.max(...windows.map(({ last }) => last)),
  };
}

function grownPlanting(
  planting: Planting,
  record: PlotRecord | null,
  on: DayNumber,
): AsGrown<Planting> {
  const uncovered = planting.cover === "none" ? planting : { ...planting, cover: "none" as const };
  const bare = withEnd(uncovered, endOf(planting, record, on));
  if (!record || record.entries.length === 0) return bare;
  const plants = plantsStanding(record, planting.plants);
  const start = startOf(planting, record);
  return {
    ...bare,
    ...(plants === null ? {} : { plants }),
    ...(start ? { start } : {}),
    flowering: floweringOf(planting.flowering, record),
    seen: seenBloom(record, on),
  };
}

function grownSurrounding(
  surrounding: Surrounding,
  record: PlotRecord | null,
  on: DayNumber,
): AsGrown<Surrounding> {
  const bare =
    surrounding.cover === "none" ? surrounding : { ...surrounding, cover: "none" as const };
  if (!record || record.entries.length === 0) return bare;
  return {
    ...bare,
    flowering: floweringOf(surrounding.flowering, record),
    seen: seenBloom(record, on),
  };
}

/**
 * The day its ground was cleared; else as planned, while that is to come. What was to be cleared
 * by now and is not written down stands still.
 */
function endOf(planting: Planting, record: PlotRecord | null, on: DayNumber): Planting["end"] {
  if (record !== null && record.clearedOn !== null) return record.clearedOn;
  return planting.end !== undefined && planting.end > on ? planting.end : undefined;
}

function withEnd(planting: Planting, end: Planting["end"]): Planting {
  if (end === planting.end) return planting;
  const { end: _, ...rest } = planting;
  return end === undefined ? rest : { ...rest, end };
}

/** Set out goes before sown: days to flower are counted from where the plan counts them. */
function startOf(planting: Planting, { sownOn, setOutOn }: PlotRecord): Planting["start"] {
  if (setOutOn !== null) return { ...planting.start, method: "transplanted", date: setOutOn };
  const isRaised = planting.start?.method === "transplanted";
  return sownOn !== null && !isRaised ? { method: "sown", date: sownOn } : planting.start;
}

/** What was seen in flower flowers, whatever was planned; what was cut sheds nothing until seen again. */
function floweringOf(planned: Flowering, { cutOn, firstFlower }: PlotRecord): Flowering {
  if (firstFlower !== null) return "yes";
  return cutOn === null ? planned : "cut";
}

function seenBloom(
  { firstFlower, lastFlower, lookedAt, clearedOn }: PlotRecord,
  on: DayNumber,
): SeenBloom {
  return {
    on,
    ...(firstFlower === null ? {} : { first: firstFlower }),
    ...(lastFlower === null ? {} : { last: lastFlower }),
    ...(lookedAt === null ? {} : { lookedAt }),
    ...(clearedOn === null ? {} : { cleared: clearedOn }),
  };
}
