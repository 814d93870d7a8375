/**
 * The sample that opens on a first visit, read and looked over. The built site holds the plan
 * itself in place of all this (.config/plans-read.ts), so that no reader is waited for.
 */
import type { Plan } from "../core/model/plan.ts";
import type { Read } from "../core/model/problem.ts";
import { samples } from "../panel/window/samples.ts";
import { planFromText } from "../store/keeping/plan-text.ts";
import * as words from "./words.ts";

export const firstSample: Read<Plan> = planFromText(
  (await samples[0]?.load()) ?? "",
  words.samplePlan,
);
