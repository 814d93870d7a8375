/** Little plans for trying the checks: square plantings of one metre in a row along the sheet's x. */
import { describeFinding, type Finding } from "../../src/core/checks/all-checks.ts";
import { wordingFor } from "../../src/core/checks/wording.ts";
import { allIsolationPairs } from "../../src/core/checks/isolation.ts";
import type { IsolationPair } from "../../src/core/checks/isolation-pair.ts";
import { type CheckResult, runChecks } from "../../src/core/checks/run-checks.ts";
import { joinGroundReckoning } from "../../src/core/checks/ground-checks.ts";
import { joinSeedReckoning } from "../../src/core/checks/seed-lots.ts";
import { groundReckoning } from "../../src/core/ground/ground-reckoning.ts";
import { seedReckoning } from "../../src/core/shelf/seed-reckoning.ts";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { dayFromIso } from "../../src/core/model/day.ts";
import { emptyPlan } from "../../src/core/model/empty-plan.ts";
import type { Layout, Plan, Planting, Surrounding, Variety } from "../../src/core/model/plan.ts";

joinSeedReckoning(seedReckoning);
joinGroundReckoning(groundReckoning);

export const book = cropBook();

export function day(iso: string): number {
  const found = dayFromIso(iso);
  if (found === null) throw new Error(`not a date: ${iso}`);
  return found;
}

/** Bloom from one date of 2027 to another, e.g. `bloom("06-20", "07-10")`. */
export function bloom(first: string, last: string): NonNullable<Planting["bloom"]> {
  return { first: day(`2027-${first}`), last: day(`2027-${last}`) };
}

/** All of July: whatever has this is open together. */
export const JULY = bloom("07-01", "07-31");

export type TrialPlanting = Partial<Omit<Planting, "variety" | "id" | "bloom">> & {
  /** Left edge of the square, metres; two at 0 and 6 are 5 m apart. */
  readonly at: number;
  readonly kind: string;
  readonly variety?: Partial<Variety>;
  /** Null: no dates of its own. */
  readonly bloom?: NonNullable<Planting["bloom"]> | null;
};

/** A planting but for its place and kind. */
export type TrialTraits = Omit<TrialPlanting, "at" | "kind">;

export function squareAt(x: number): Planting["outline"] {
  return { shape: "rectangle", x: x + 0.5, y: 0, widthM: 1, lengthM: 1, turnDeg: 0 };
}

/**
 * A plan of seed plantings that flower in July, each of a variety of its own unless told
 * otherwise. Keys are the ids; varieties are called after them.
 */
export function trialPlan(
  plantings: Readonly<Record<string, TrialPlanting>>,
  surroundings: readonly Surrounding[] = [],
  more: Partial<Plan> = {},
): Plan {
  const varieties: Variety[] = [];
  const list = Object.entries(plantings).map(
    ([id, { at, kind, variety, outline, bloom: dates = JULY, ...rest }]): Planting => {
      varieties.push({ id: `v-${id}`, name: `Variety ${id}`, kind, ...variety });
      return {
        id,
        code: id.toUpperCase(),
        variety: variety?.id ?? `v-${id}`,
        outline: outline ?? squareAt(at),
        purpose: "seed",
        flowering: "yes",
        cover: "none",
        ...(dates === null ? {} : { bloom: dates }),
        ...rest,
      };
    },
  );
  const layout: Layout = { id: "layout-1", name: "Layout 1", beds: [], plantings: list };
  return { ...emptyPlan("trial", 2027), varieties, surroundings, layouts: [layout], ...more };
}

export function source(
  id: string,
  kind: string,
  outline: Surrounding["outline"],
  more: Partial<Surrounding> = {},
): Surrounding {
  return {
    id,
    label: `Source ${id}`,
    what: "pollen",
    kind,
    outline,
    flowering: "yes",
    cover: "none",
    bloom: JULY,
    ...more,
  };
}

export function layoutOf(plan: Plan): Layout {
  return plan.layouts[0] as Layout;
}

export function check(plan: Plan, previous?: CheckResult): CheckResult {
  return runChecks(plan, layoutOf(plan), book, previous);
}

/** Every directed pair that can cross, as `parent<-source`. */
export function pairsOf(plan: Plan): ReadonlyMap<string, IsolationPair> {
  const pairs = allIsolationPairs(check(plan).stands, book);
  return new Map(pairs.map((pair) => [`${pair.seedParent}<-${pair.pollenSource}`, pair]));
}

/** Standing of every directed pair: `{ "p<-q": "conflict" }`. */
export function standingsOf(plan: Plan): Readonly<Record<string, string>> {
  return Object.fromEntries([...pairsOf(plan)].map(([name, pair]) => [name, pair.standing]));
}

export function findingsOf<C extends Finding["check"]>(
  plan: Plan,
  name: C,
): readonly Extract<Finding, { check: C }>[] {
  return check(plan).findings.filter(
    (finding): finding is Extract<Finding, { check: C }> => finding.check === name,
  );
}

/** Title and sentences of every finding of a check. */
export function wordsOf(plan: Plan, name: Finding["check"]): readonly string[] {
  const { standById } = check(plan);
  const wording = wordingFor(plan, layoutOf(plan), (id) => standById.get(id));
  return findingsOf(plan, name).map((finding) => {
    const { title, sentences } = describeFinding(finding, wording);
    return [title, ...sentences].join(" ");
  });
}
