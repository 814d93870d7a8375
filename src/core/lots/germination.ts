/** What a germination test says, and how little. */
import type { GerminationTest } from "../model/plan.ts";
import { type Rates, exactLimits, provedRate } from "./normal.ts";
import { rangeRows } from "./replicate-table.ts";

export interface TestResult {
  /** Sprouted of sown, fraction of 1, without hard seed. */
  readonly rate: number;
  /** Exact 95 % limits of the rate. */
  readonly limits: Rates;
  /** The rate with hard seed counted in, as standards ask. */
  readonly rateWithHard: number;
  readonly limitsWithHard: Rates;
}

export function testResult({ sown, sprouted, hard = 0 }: GerminationTest): TestResult {
  return {
    rate: sprouted / sown,
    limits: exactLimits(sprouted, sown),
    rateWithHard: (sprouted + hard) / sown,
    limitsWithHard: exactLimits(sprouted + hard, sown),
  };
}

/** The latest test of a lot, by its last count; null for none. */
export function latestTest(lot: { readonly tests?: readonly GerminationTest[] | undefined }) {
  return (lot.tests ?? []).reduce<GerminationTest | null>(
    (latest, test) => (latest === null || test.date >= latest.date ? test : latest),
    null,
  );
}

/** Seeds a test is never larger than here. */
const MOST_SEEDS = 5000;

/**
 * How many seeds to test so that a lot is shown to reach a rate, with 95 % sureness (one-sided,
 * exact), when it truly has the rate `expected`: the fewest whose expected count, rounded down,
 * proves it. Null when that rate could not be shown with 5,000 seeds.
 * @param wanted the rate to show, fraction of 1
 * @param expected what is thought to come up; 1: the fewest seeds that can prove it at all
 */
export function seedsToTest(wanted: number, expected: number): number | null {
  if (wanted <= 0) return 1;
  if (wanted >= 1 || expected <= wanted) return null;
  for (let sown = 1; sown <= MOST_SEEDS; sown += 1) {
    const sprouted = Math.floor(sown * expected + 1e-9);
    if (sprouted / sown > wanted && provedRate(sprouted, sown) >= wanted) return sown;
  }
  return null;
}

export interface ReplicateVerdict {
  /** Mean of the parts, percent, rounded as the table asks. */
  readonly meanPct: number;
  /** Highest less lowest part, percentage points. */
  readonly rangePct: number;
  /** The most the table allows; null: the table has no figure for this mean. */
  readonly allowedPct: number | null;
  readonly agree: boolean | null;
}

/**
 * Whether the parts of an official test agree (7 CFR 201.55). Null where the table does not speak
 * of such a test: it is for four or two parts of 100 seeds.
 */
export function replicatesAgree({
  sown,
  replicates,
}: Pick<GerminationTest, "sown" | "replicates">): ReplicateVerdict | null {
  const parts = replicates?.length ?? 0;
  if (!replicates || (parts !== 4 && parts !== 2) || sown !== parts * 100) return null;
  const meanPct = Math.round(replicates.reduce((sum, each) => sum + each, 0) / parts);
  const rangePct = Math.max(...replicates) - Math.min(...replicates);
  const row = rangeRows.find(([high, low]) => high === meanPct || low === meanPct);
  const allowedPct = (parts === 4 ? row?.[2] : row?.[3]) ?? null;
  // A mean of 0 or 100 leaves the parts no room to differ but by rounding.
  return {
    meanPct,
    rangePct,
    allowedPct,
    agree: allowedPct === null ? null : rangePct <= allowedPct,
  };
}

/** Shortfall allowed at a mean, percentage points, for 400 seeds: 7 CFR 201.63. */
const ALLOWED: readonly (readonly [number, number])[] = [
  [96, 5],
  [90, 6],
  [80, 7],
  [70, 8],
  [60, 9],
  [0, 10],
];
/** What is added for a test of only 200 seeds. */
const FEWER_SEEDS_MORE = 2;

/**
 * Whether an official test still agrees with a label or a standard (7 CFR 201.59, 201.63): the mean
 * of the two decides how far the test may fall short. Percent; null for a test under 200 seeds.
 */
export function meetsWithTolerance(testPct: number, claimPct: number, sown: number) {
  if (sown < 200) return null;
  const mean = (testPct + claimPct) / 2;
  const base = ALLOWED.find(([least]) => mean >= least)?.[1] ?? 10;
  const allowedPct = base + (sown < 400 ? FEWER_SEEDS_MORE : 0);
  return { meanPct: mean, allowedPct, meets: claimPct - testPct <= allowedPct };
}
