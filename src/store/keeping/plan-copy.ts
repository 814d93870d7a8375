/** Plans made from nothing and from other plans. */
import { emptyPlan } from "../../core/model/empty-plan.ts";
import type { Plan } from "../../core/model/plan.ts";
import { LIMITS } from "../../core/model/limits.ts";
import * as words from "./words.ts";

/** Plans are made in winter: from this month (July) on, for the season of the next year. */
const NEXT_SEASON_FROM_MONTH = 6;

/** An id no other plan has, made in whatever tab at whatever moment. */
export function newPlanId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return `plan-${[...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("")}`;
}

/** The same plan as one of its own, told apart by its title. */
export function copyOf(plan: Plan, id: string, remark = words.copy): Plan {
  const ending = ` (${remark})`;
  return { ...plan, id, title: `${plan.title.slice(0, LIMITS.name - ending.length)}${ending}` };
}

/** An empty plan for the season that is planned now. */
export function freshPlan(): Plan {
  const now = new Date();
  const isForNext = now.getMonth() >= NEXT_SEASON_FROM_MONTH;
  return emptyPlan(newPlanId(), now.getFullYear() + (isForNext ? 1 : 0));
}
