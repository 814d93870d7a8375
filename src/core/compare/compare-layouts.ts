/**
 * Layouts measured side by side. Every row is one measure in one unit, with the better values
 * marked; how much a row weighs is the grower's to say, and no score adds them up.
 */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { countBySeverity } from "../checks/finding.ts";
import { type CheckResult, foundBy } from "../checks/run-checks.ts";
import { countPairs } from "../checks/isolation-pair.ts";
import { crossingEstimates } from "../crossing-share/estimate.ts";
import { timeSlackDays } from "../checks/day-words.ts";
import { volunteersCheck } from "../checks/ground-checks.ts";
import { outlineArea, outlineOf, shapeCentre } from "../geometry/outline.ts";
import { pointDistance } from "../geometry/point.ts";
import type { Layout, Plan } from "../model/plan.ts";
import { matchedPlantings } from "./layout-differences.ts";

export const measureNames = [
  "conflicts",
  "worst shortfall",
  "unknowns",
  "cautions",
  "accepted",
  "on time alone",
  "least slack",
  "on cover alone",
  "covers",
  "volunteers",
  "varieties missing",
  "plants missing",
  "ground planted",
  "moved",
  "most crossed, upper",
  "most crossed, lower",
  "crossed in all, upper",
  "crossed in all, lower",
] as const;
export type MeasureName = (typeof measureNames)[number];

export type MeasureUnit = "count" | "metres" | "square metres" | "days" | "per thousand";

interface MeasureKind {
  readonly unit: MeasureUnit;
  /** Which end is better; `neither`: worth knowing, but no end is better by itself. */
  readonly better: "less" | "more" | "neither";
}

export interface Measure extends MeasureKind {
  readonly name: MeasureName;
  /** One for each layout; null when there is nothing to measure, which is the best there is. */
  readonly values: readonly (number | null)[];
  /** Which of them are better than another; none when all are equal or neither end is better. */
  readonly isBest: readonly boolean[];
}

export interface Comparison {
  readonly layouts: readonly Pick<Layout, "id" | "name">[];
  /** The layout that moves are counted from: the chosen one, else the plan's first. */
  readonly base: Pick<Layout, "id" | "name">;
  /** Varieties of the seed list, and plants wanted of all of them together. */
  readonly varieties: number;
  readonly wantedPlants: number;
  readonly measures: readonly Measure[];
}

const KINDS: Readonly<Record<MeasureName, MeasureKind>> = {
  conflicts: { unit: "count", better: "less" },
  "worst shortfall": { unit: "metres", better: "less" },
  unknowns: { unit: "count", better: "less" },
  cautions: { unit: "count", better: "less" },
  accepted: { unit: "count", better: "less" },
  "on time alone": { unit: "count", better: "less" },
  "least slack": { unit: "days", better: "more" },
  "on cover alone": { unit: "count", better: "less" },
  covers: { unit: "count", better: "less" },
  volunteers: { unit: "count", better: "less" },
  "varieties missing": { unit: "count", better: "less" },
  "plants missing": { unit: "count", better: "less" },
  "ground planted": { unit: "square metres", better: "neither" },
  moved: { unit: "metres", better: "less" },
  "most crossed, upper": { unit: "per thousand", better: "less" },
  "most crossed, lower": { unit: "per thousand", better: "less" },
  "crossed in all, upper": { unit: "per thousand", better: "less" },
  "crossed in all, lower": { unit: "per thousand", better: "less" },
};

/** Lengths and areas that differ by less count as equal: a millimetre, ten square centimetres. */
const EQUAL = 0.001;

/**
 * Measures layouts of one plan, in the order given.
 *
 * @throws RangeError when none is given
 */
export function compareLayouts(compared: readonly CheckedLayout[]): Comparison {
  const plan = compared[0]?.plan;
  if (!plan) throw new RangeError("There is no layout to measure");
  const base = baseLayout(plan);
  const columns = compared.map((checked) => measured(checked, base));
  return {
    layouts: compared.map(({ layout: { id, name } }) => ({ id, name })),
    base: { id: base.id, name: base.name },
    varieties: plan.varieties.length,
    wantedPlants: plan.varieties.reduce((sum, { wantedPlants = 0 }) => sum + wantedPlants, 0),
    measures: measureNames.flatMap((name) => {
      const values = columns.map((column) => column[name]);
      const { unit, better } = KINDS[name];
      const isEstimate = unit === "per thousand";
      // Estimates are shown where there is one, and none is better than a layout without.
      if (isEstimate && values.every((value) => value === null)) return [];
      const isMarked = !isEstimate || !values.includes(null);
      return { name, unit, better, values, isBest: bestOf(values, isMarked ? better : "neither") };
    }),
  };
}

/** Crossed seeds in a thousand of the worst planting that is estimated, and of all added up. */
function crossedSeed({ result, book }: CheckedLayout) {
  const shares = crossingEstimates(result.stands, book).flatMap((estimate) =>
    estimate.way === "estimate" ? [estimate.shares] : [],
  );
  const end = (which: 0 | 1) => shares.map((each) => 1000 * each[which]);
  const most = (values: readonly number[]) => (values.length === 0 ? null : Math.max(...values));
  const all = (values: readonly number[]) =>
    values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0);
  return {
    "most crossed, upper": most(end(1)),
    "most crossed, lower": most(end(0)),
    "crossed in all, upper": all(end(1)),
    "crossed in all, lower": all(end(0)),
  };
}

/** The layout others are compared with: the chosen one, else the first with something on it. */
export function baseLayout({ layouts, chosenLayout }: Plan): Layout {
  const chosen = layouts.find(({ id }) => id === chosenLayout);
  const planted = layouts.find(({ plantings }) => plantings.length > 0);
  return chosen ?? planted ?? (layouts[0] as Layout);
}

function measured(
  checked: CheckedLayout,
  base: Layout,
): Readonly<Record<MeasureName, number | null>> {
  const { plan, layout, result } = checked;
  const counts = countBySeverity(result.findings);
  return {
    ...crossedSeed(checked),
    conflicts: counts.conflict,
    "worst shortfall": worstShortfall(result),
    unknowns: counts.unknown,
    cautions: counts.caution,
    accepted: result.accepted.length,
    "on time alone": countPairs(result.pairs, "time"),
    "least slack": leastSlack(result),
    "on cover alone": countPairs(result.pairs, "cover"),
    covers: layout.plantings.filter(({ cover }) => cover !== "none").length,
    volunteers: foundBy(result, volunteersCheck).length,
    "varieties missing": varietiesMissing(plan, layout),
    "plants missing": plantsMissing(plan, layout),
    "ground planted": layout.plantings.reduce(
      (sum, { outline }) => sum + outlineArea(outlineOf(outline)),
      0,
    ),
    moved: metresMoved(base, layout),
  };
}

/**
 * Metres by which the worst pair in conflict falls short; 0 when none does. Species that rarely
 * cross are told as a caution, and are none of the conflicts counted.
 */
function worstShortfall({ pairs }: CheckResult): number {
  return pairs.reduce(
    (worst, { standing, relation, requiredM, distanceM }) =>
      standing === "conflict" && relation !== "rarely" && requiredM !== null
        ? Math.max(worst, requiredM - distanceM)
        : worst,
    0,
  );
}

/** Days to spare of the pair that rests on time with the least; null when none rests on time. */
function leastSlack({ pairs }: CheckResult): number | null {
  const slacks = pairs.flatMap((pair) => timeSlackDays(pair) ?? []);
  return slacks.length === 0 ? null : Math.min(...slacks);
}

/**
 * Varieties of the seed list without a planting: a layout that leaves some out has fewer conflicts
 * for that alone.
 */
function varietiesMissing({ varieties }: Plan, { plantings }: Layout): number {
  const placed = new Set(plantings.map(({ variety }) => variety));
  return varieties.filter(({ id }) => !placed.has(id)).length;
}

/** Plants that varieties fall short of what is wanted of them; more of one does not make up for another. */
function plantsMissing({ varieties }: Plan, { plantings }: Layout): number {
  const placed = new Map<string, number>();
  for (const { variety, plants = 0 } of plantings) {
    placed.set(variety, (placed.get(variety) ?? 0) + plants);
  }
  return varieties.reduce(
    (sum, { id, wantedPlants = 0 }) => sum + Math.max(0, wantedPlants - (placed.get(id) ?? 0)),
    0,
  );
}

/** Metres that the middles of plantings moved, added up over plantings that stand in both. */
function metresMoved(base: Layout, layout: Layout): number {
  return matchedPlantings(base, layout).reduce(
    (sum, { before, after }) =>
      before && after && before !== after
        ? sum + pointDistance(shapeCentre(before.outline), shapeCentre(after.outline))
        : sum,
    0,
  );
}

function bestOf(
  values: readonly (number | null)[],
  better: MeasureKind["better"],
): readonly boolean[] {
  if (better === "neither") return values.map(() => false);
  // Nothing to measure counts as the best.
  const costs = values.map((value) =>
    value === null ? -Infinity : better === "less" ? value : -value,
  );
  const least = Math.min(...costs);
  const isBest = costs.map((cost) => cost === least || cost - least < EQUAL);
  return isBest.every(Boolean) ? values.map(() => false) : isBest;
}
