/** A small valid plan file, and copies of it with one thing changed. */
import { readFileSync } from "node:fs";
import { readPlan, readPlanValue } from "../../src/core/model/read-plan.ts";
import { problemText } from "../../src/core/model/problem.ts";

export const smallGardenText = readFileSync(
  new URL("../fixtures/plans/small-garden.json", import.meta.url),
  "utf8",
);

export const isKnownKind = (kind: string) => kind === "tomato" || kind === "beet";

/** The small garden with the value at a path replaced; `undefined` takes the field away. */
export function changedGarden(path: readonly (string | number)[], value: unknown): unknown {
  const plan: unknown = JSON.parse(smallGardenText);
  let holder = plan as Record<string | number, unknown>;
  for (const key of path.slice(0, -1)) holder = holder[key] as Record<string | number, unknown>;
  const last = path.at(-1) as string | number;
  if (value === undefined) Reflect.deleteProperty(holder, last);
  else holder[last] = value;
  return plan;
}

/** What reading says against a plan value, one line for each problem; "accepted" for none. */
export function refusalOf(value: unknown): string {
  const read = readPlanValue(value, "plan.json", isKnownKind);
  return read.ok ? "accepted" : read.problems.map(problemText).join("\n");
}

export function refusalOfText(text: string): string {
  const read = readPlan(text, "plan.json", isKnownKind);
  return read.ok ? "accepted" : read.problems.map(problemText).join("\n");
}
