/** Three ways to lay out a seed list that differ on purpose, and what each would rather not do. */
import { type Choice, standOf } from "../clearing/choice.ts";
import { coversFor } from "../clearing/cover-choices.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { Stand } from "../checks/stand.ts";
import type { Planting } from "../model/plan.ts";
import type { WantedVariety } from "./seed-parts.ts";

export const layGoals = ["all-grown", "fewest-covers", "roomiest"] as const;
export type LayGoal = (typeof layGoals)[number];

export interface GoalRule {
  /** Whether a later start may part two. */
  readonly doesShift: boolean;
  readonly doesCover: boolean;
  /** Whether only distance counts, and is made large. */
  readonly isByDistance: boolean;
  /** What it counts that a variety waits a year. */
  readonly wait: number;
}

export const goalRules: Readonly<Record<LayGoal, GoalRule>> = {
  "all-grown": { doesShift: true, doesCover: true, isByDistance: false, wait: 1000 },
  "fewest-covers": { doesShift: true, doesCover: false, isByDistance: false, wait: 20 },
  roomiest: { doesShift: false, doesCover: false, isByDistance: true, wait: 20 },
};

/** What a change counts. No source; our choice: a later sowing before a cover, a cover before none. */
const COST = {
  shift: 2,
  shiftWeek: 0.5,
  cover: 10,
  /** Every other cover than the usual one. */
  otherCover: 3,
  coverPlant: 0.02,
  /** Of two alike the one further down the seed list waits. */
  order: 1e-4,
} as const;

/** A choice with what is changed in the plantings. */
export interface LayChoice extends Choice {
  readonly change: Partial<Planting> | "none" | "waits";
}

/** What can be done with a variety that is laid. */
export function layChoices(
  checked: CheckedLayout,
  { kind, starts }: WantedVariety,
  laid: readonly Planting[],
  rule: GoalRule,
  place: number,
): readonly LayChoice[] {
  const standsOf = (change: Partial<Planting>): readonly Stand[] =>
    laid.flatMap((planting) => standOf(checked, { ...planting, ...change }) ?? []);
  const plants = laid.reduce((sum, planting) => sum + (planting.plants ?? 0), 0);
  const dates = rule.doesShift ? starts.later : [];
  const covers = rule.doesCover ? coversFor(kind) : [];
  return [
    { stands: standsOf({}), cost: 0, cages: 0, change: "none" },
    ...dates.map((start, week): LayChoice => ({
      stands: standsOf({ start }),
      cost: COST.shift + COST.shiftWeek * (week + 1),
      cages: 0,
      change: { start },
    })),
    ...covers.map((cover, index): LayChoice => ({
      stands: standsOf({ cover }),
      cost: COST.cover + index * COST.otherCover + plants * COST.coverPlant,
      cages: cover === "cage" ? 1 : 0,
      change: { cover },
    })),
    { stands: [], cost: rule.wait - place * COST.order, cages: 0, change: "waits" },
  ];
}
