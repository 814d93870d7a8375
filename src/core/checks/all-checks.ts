import type { Check } from "./check.ts";
import { coverCareCheck, sharedCageCheck } from "./cover-care.ts";
import { crowdedCheck } from "./crowded.ts";
import { annualFirstYearCheck, biennialCheck } from "./first-year.ts";
import {
  clearedEarlyCheck,
  dateOrderCheck,
  groundMarkCheck,
  rotationCheck,
  volunteersCheck,
} from "./ground-checks.ts";
import { isolationCheck, missingBloomCheck, missingFigureCheck } from "./isolation-findings.ts";
import { lateSeedCheck } from "./late-seed.ts";
import { mixingCheck } from "./mixing.ts";
import { otherSeasonCheck } from "./other-season.ts";
import { outsideCheck } from "./outside.ts";
import { overlapCheck } from "./overlap.ts";
import { populationCheck } from "./population.ts";
import {
  crossedLotCheck,
  lotOfOtherVarietyCheck,
  motherLotCheck,
  oldSeedCheck,
  ownDistanceCheck,
  shortOfSeedCheck,
} from "./seed-lots.ts";
import { safetyCheck } from "./safety.ts";
import { unsureTimeCheck } from "./unsure-time.ts";
import {
  cutSeedCheck,
  hybridSeedCheck,
  twoFormsCheck,
  unknownChoiceCheck,
} from "./variety-entry.ts";
import { type Brief, type Description, type Wording, measuredBrief } from "./wording.ts";

/** Every check, in the order findings of one severity are listed. */
const checks = [
  isolationCheck,
  unsureTimeCheck,
  missingBloomCheck,
  missingFigureCheck,
  ownDistanceCheck,
  mixingCheck,
  sharedCageCheck,
  otherSeasonCheck,
  outsideCheck,
  overlapCheck,
  crowdedCheck,
  populationCheck,
  lateSeedCheck,
  clearedEarlyCheck,
  dateOrderCheck,
  biennialCheck,
  annualFirstYearCheck,
  volunteersCheck,
  rotationCheck,
  groundMarkCheck,
  cutSeedCheck,
  hybridSeedCheck,
  twoFormsCheck,
  unknownChoiceCheck,
  coverCareCheck,
  shortOfSeedCheck,
  oldSeedCheck,
  lotOfOtherVarietyCheck,
  crossedLotCheck,
  motherLotCheck,
  safetyCheck,
] as const;

type FindingOf<C> = C extends Check<infer F> ? F : never;

/** What any of the checks has to say. */
export type Finding = FindingOf<(typeof checks)[number]>;

/** Seen as checks of any finding: each is only ever handed findings of its own. */
export const allChecks = checks as readonly unknown[] as readonly Check<Finding>[];

const byName: ReadonlyMap<string, Check<Finding>> = new Map(
  allChecks.map((check) => [check.name, check]),
);

/** The check that made a finding. */
export function checkOf(finding: Pick<Finding, "check">): Check<Finding> {
  return byName.get(finding.check) as Check<Finding>;
}

/** Findings to words: the one way to them, for screen, paper and command line alike. */
export function describeFinding(finding: Finding, wording: Wording): Description {
  return checkOf(finding).describe(finding, wording);
}

/** A finding in the fewest words, for a list. */
export function briefFinding(finding: Finding, wording: Wording): Brief {
  const { brief, describe } = checkOf(finding);
  return brief
    ? brief(finding, wording)
    : {
        title: describe(finding, wording).title,
        figures: measuredBrief(finding, wording.unit),
      };
}
