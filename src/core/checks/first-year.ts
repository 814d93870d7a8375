/**
 * First years: biennials sown in place this season and expected to flower in it, and annuals marked
 * as if they would wait for a second.
 */
import type { Check } from "./check.ts";
import { capital } from "./wording.ts";
import { type FindingBase, findingId } from "./finding.ts";

/** A biennial sown in place this season will not flower in it. */
export interface BiennialFinding extends FindingBase {
  readonly check: "biennial";
  readonly subject: string;
}

export const biennialCheck: Check<BiennialFinding> = {
  name: "biennial",
  ignoresPlace: true,
  title: "A biennial will not flower in its first year",
  run: ({ plan, stands }) =>
    stands
      .filter(
        ({ kind, planting }) =>
          kind.lifeCycle === "biennial" &&
          planting?.flowering === "yes" &&
          planting.bloom === undefined &&
          planting.start?.method === "sown" &&
          planting.start.date >= plan.season.first,
      )
      .map((stand): BiennialFinding => ({
        id: findingId("biennial", [stand.id]),
        check: "biennial",
        severity: "caution",
        subjects: [stand.id],
        subject: stand.id,
      })),
  describe: ({ subject }, { nameOf, standOf }) => ({
    title: `${nameOf(subject)} will not flower in its first year`,
    sentences: [
      `${capital(standOf(subject)?.kind.name ?? "This kind")} sown this season makes roots or leaves first and flowers after a winter. Set out overwintered plants for seed, or mark this planting as first-year.`,
    ],
  }),
};

/** An annual is marked as in its first year, in which it flowers. */
export interface AnnualFirstYearFinding extends FindingBase {
  readonly check: "annual-first-year";
  readonly subject: string;
}

export const annualFirstYearCheck: Check<AnnualFirstYearFinding> = {
  name: "annual-first-year",
  ignoresPlace: true,
  title: "An annual is marked as not flowering in its first year",
  run: ({ stands }) =>
    stands
      .filter(
        ({ kind, planting, surrounding }) =>
          kind.lifeCycle === "annual" && (planting ?? surrounding)?.flowering === "first-year",
      )
      .map((stand): AnnualFirstYearFinding => ({
        id: findingId("annual-first-year", [stand.id]),
        check: "annual-first-year",
        severity: "caution",
        subjects: [stand.id],
        subject: stand.id,
      })),
  describe: ({ subject }, { nameOf, standOf }) => ({
    title: `${capital(nameOf(subject))} is an annual and flowers in its first year`,
    sentences: [
      `${capital(standOf(subject)?.kind.name ?? "This kind")} does not wait for a second year, so it is checked as flowering. If it will not flower, for example because it is eaten or cut before, mark it as cut.`,
    ],
  }),
};
