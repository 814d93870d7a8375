import type { Check } from "./check.ts";
import { biennialCheck } from "./biennial.ts";
import { coverCareCheck } from "./cover-care.ts";
import { crowdedCheck } from "./crowded.ts";
import { hybridSeedCheck } from "./hybrid-seed.ts";
import { isolationCheck, missingBloomCheck, missingFigureCheck } from "./isolation-findings.ts";
import { lateSeedCheck } from "./late-seed.ts";
import { outsideCheck } from "./outside.ts";
import { overlapCheck } from "./overlap.ts";
import { populationCheck } from "./population.ts";
import { safetyCheck } from "./safety.ts";
import { volunteersCheck } from "./volunteers.ts";

/** Every check, in the order findings of one severity are listed. */
export const allChecks: readonly Check[] = [
  isolationCheck,
  missingBloomCheck,
  missingFigureCheck,
  outsideCheck,
  overlapCheck,
  crowdedCheck,
  populationCheck,
  lateSeedCheck,
  biennialCheck,
  volunteersCheck,
  hybridSeedCheck,
  coverCareCheck,
  safetyCheck,
];
