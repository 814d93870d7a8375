/**
 * How a harvest was isolated while it grew, worked out by the same checks as everything else and
 * frozen into its lot: later plans, other seasons and other people read it as it was.
 */
import { type DayWindow, overlapDays } from "../calendar/bloom-window.ts";
import type { Bloom } from "../calendar/bloom-window.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { wordingOf } from "../checks/checked-layout.ts";
import { isolationPair } from "../checks/isolation.ts";
import type { IsolationPair, Standing } from "../checks/isolation-pair.ts";
import { describeStanding, requirementText, whyWords } from "../checks/pair-words.ts";
import type { Stand } from "../checks/stand.ts";
import { levelOrder } from "../kinds/levels.ts";
import { inLayout, mapItem, mapItems } from "../edits/edit.ts";
import type { DayNumber } from "../model/day.ts";
import { LIMITS } from "../model/limits.ts";
import type { IsolationRecord, Plan, PurityLevel } from "../model/plan.ts";
import { checkAsGrown, plotRecords, wholeOf } from "./as-grown.ts";
import { notObserved } from "./not-observed-words.ts";
import type { CoverStay, PlotRecord } from "./plot-record.ts";

type Source = IsolationRecord["sources"][number];

/** The least secure first. */
const WEAKEST_FIRST: readonly Standing[] = ["conflict", "unknown", "cover", "time", "distance"];
/** Sources are listed up to so many times the required distance. */
const REACH = 2;

export const rankOf = (standing: Standing): number => WEAKEST_FIRST.indexOf(standing);

/**
 * The record of one planting on a day; null when it is none of the layout, does not flower or is a
 * hybrid, whose seed comes true to nothing. A planting that was not meant for seed is judged as
 * seed: what is harvested is.
 */
export function frozenIsolation(
  plan: Plan,
  layoutId: string,
  plantingId: string,
  on: DayNumber,
): IsolationRecord | null {
  const kept = asSeed(plan, layoutId, plantingId);
  const grown = checkAsGrown(kept, layoutId, on);
  const stand = grown.result.standById.get(plantingId);
  if (!stand?.isSeedParent) return null;
  const records = plotRecords(kept, on);
  const met = strictestLevelMet(kept, layoutId, plantingId, on);
  const near = sourcesNear(stand, grown, met?.metres ?? 0);
  const listed = near.slice(0, LIMITS.isolationSources);
  const level = stand.level ?? plan.level;
  const { requirement } = stand;
  const [anyPair] = near;
  return {
    judgedOn: on,
    level,
    ...(requirement === null ? {} : { requiredM: requirement.metres }),
    ...(requirement && anyPair
      ? { figure: requirementText({ ...anyPair, requirement }, wordingOf(grown)) }
      : requirement && { figure: whyWords(requirement) }),
    ...(met === null ? {} : { levelMet: met.level, levelMetM: met.metres }),
    standing: anyPair?.standing ?? "distance",
    ...bloomField(stand.receives),
    ...coversField(records.get(plantingId)),
    ...(stand.planting?.plants === undefined ? {} : { plants: stand.planting.plants }),
    sources: listed.map((pair) => frozenSource(pair, grown, records)),
    ...(near.length > listed.length ? { moreSources: near.length - listed.length } : {}),
    notObserved: notObserved(grown, stand, listed, records).slice(0, LIMITS.isolationSources),
  };
}

/** The plan with that planting kept for seed. */
function asSeed(plan: Plan, layoutId: string, plantingId: string): Plan {
  return inLayout(plan, layoutId, (layout) => {
    const plantings = mapItem(layout.plantings, plantingId, (planting) =>
      planting.purpose === "seed" ? planting : { ...planting, purpose: "seed" as const },
    );
    return plantings === layout.plantings ? layout : { ...layout, plantings };
  });
}

/**
 * Pairs with every source of its group within reach, the least secure first, then the nearest.
 *
 * @param metM what the level met asked: what speaks for that level is in the list
 */
function sourcesNear(
  stand: Stand,
  { result, book }: CheckedLayout,
  metM: number,
): readonly IsolationPair[] {
  return result.stands
    .filter((other) => other.kind.group === stand.kind.group)
    .flatMap((other) => isolationPair(stand, other, book) ?? [])
    .filter(
      ({ distanceM, requiredM, standing }) =>
        standing !== "distance" ||
        requiredM === null ||
        distanceM <= REACH * Math.max(requiredM, metM),
    )
    .sort((a, b) => rankOf(a.standing) - rankOf(b.standing) || a.distanceM - b.distanceM);
}

function frozenSource(
  pair: IsolationPair,
  grown: CheckedLayout,
  records: ReadonlyMap<string, PlotRecord>,
): Source {
  const wording = wordingOf(grown);
  const source = grown.result.standById.get(pair.pollenSource);
  const record = records.get(pair.pollenSource);
  return {
    id: pair.pollenSource,
    name: wording.nameOf(pair.pollenSource).slice(0, LIMITS.name),
    ...(source ? { kind: source.kind.id } : {}),
    metres: pair.distanceM,
    ...(pair.requiredM === null ? {} : { requiredM: pair.requiredM }),
    ...(pair.relation === "no" ? {} : { relation: pair.relation }),
    ...bloomField(source?.sheds ?? null),
    ...(pair.overlapDays === null ? {} : { togetherDays: pair.overlapDays }),
    seenTogetherDays: seenTogether(records.get(pair.seedParent), record),
    ...coversField(record),
    standing: pair.standing,
    because: describeStanding(pair, wording).slice(0, LIMITS.note),
  };
}

/** Days on which both were seen in flower: between the first and last flowers that were written. */
function seenTogether(a: PlotRecord | undefined, b: PlotRecord | undefined): number {
  const [ours, theirs] = [seenWindow(a), seenWindow(b)];
  return ours && theirs ? overlapDays(ours, theirs) : 0;
}

/** Without a last flower only the day of the first is seen; without a first none is. */
function seenWindow(record: PlotRecord | undefined): DayWindow | null {
  if (!record || record.firstFlower === null) return null;
  const first = record.firstFlower;
  return { first, last: Math.max(first, record.lastFlower ?? first) };
}

function bloomField(bloom: Bloom | null): Pick<Source, "bloom"> {
  const whole = wholeOf(bloom);
  return bloom && whole
    ? { bloom: { first: whole.first, last: whole.last, opens: bloom.opens, closes: bloom.closes } }
    : {};
}

function coversField(record: PlotRecord | undefined): Pick<Source, "covers"> {
  const covers = record?.covers ?? [];
  return covers.length === 0 ? {} : { covers: covers.slice(-LIMITS.stays).map(frozenStay) };
}

function frozenStay({ cover, first, last }: CoverStay) {
  return last === null ? { cover, first } : { cover, first, last };
}

/**
 * The strictest level at which nothing stands against it. Distances typed by the grower say
 * nothing of a level: the published ones are asked. Species that rarely cross do not decide it.
 */
function strictestLevelMet(
  plan: Plan,
  layoutId: string,
  plantingId: string,
  on: DayNumber,
): { readonly level: PurityLevel; readonly metres: number } | null {
  for (const level of [...levelOrder].reverse()) {
    const held = heldTo(plan, layoutId, plantingId, level);
    const { result, book } = checkAsGrown(held, layoutId, on);
    const stand = result.standById.get(plantingId);
    if (!stand?.requirement) continue;
    const isMet = result.stands.every((other) => {
      if (other.kind.group !== stand.kind.group) return true;
      const pair = isolationPair(stand, other, book);
      return !pair || pair.relation === "rarely" || rankOf(pair.standing) > rankOf("unknown");
    });
    if (isMet) return { level, metres: stand.requirement.metres };
  }
  return null;
}

/** The plan with that planting held to a level, by the figures as published. */
function heldTo(plan: Plan, layoutId: string, plantingId: string, level: PurityLevel): Plan {
  const variety = plan.layouts
    .find(({ id }) => id === layoutId)
    ?.plantings.find(({ id }) => id === plantingId)?.variety;
  const held = inLayout(plan, layoutId, (layout) => ({
    ...layout,
    plantings: mapItem(layout.plantings, plantingId, ({ isolationM: _own, ...planting }) => ({
      ...planting,
      level,
    })),
  }));
  const varieties = mapItems(held.varieties, (each) => {
    if (each.id !== variety || (each.isolationM ?? each.figure) === undefined) return each;
    const { isolationM: _own, figure: _picked, ...rest } = each;
    return rest;
  });
  return { ...held, varieties };
}
