/**
 * First years: biennials sown this season, in place or under glass, and expected to flower in it, and annuals marked
 * as if they would wait for a second.
 */
import { isSeedlingOf } from "../calendar/growing.ts";
import type { Check } from "./check.ts";
import { capital } from "./wording.ts";
import { type FindingBase, findingId } from "./finding.ts";
import * as words from "../words/finding-words.ts";

/** A biennial sown this season, in place or under glass, will not flower in it. */
export interface BiennialFinding extends FindingBase {
  readonly check: "biennial";
  readonly subject: string;
}

export const biennialCheck: Check<BiennialFinding> = {
  name: "biennial",
  ignoresPlace: true,
  title: words.biennial,
  run: ({ plan, stands }) =>
    stands
      .filter(
        ({ kind, planting }) =>
          kind.lifeCycle === "biennial" &&
          planting?.flowering === "yes" &&
          planting.bloom === undefined &&
          planting.start !== undefined &&
          isSeedlingOf(plan.season, planting.start),
      )
      .map((stand): BiennialFinding => ({
        id: findingId("biennial", [stand.id]),
        check: "biennial",
        severity: "caution",
        subjects: [stand.id],
        subject: stand.id,
      })),
  describe: ({ subject }, { nameOf, standOf }) => ({
    title: words.biennialTitle(nameOf(subject)),
    sentences: [words.biennialAdvice(capital(standOf(subject)?.kind.name ?? words.anyKind))],
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
  title: words.annual,
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
    title: words.annualTitle(capital(nameOf(subject))),
    sentences: [words.annualAdvice(capital(standOf(subject)?.kind.name ?? words.anyKind))],
  }),
};
