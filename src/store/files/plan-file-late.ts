/**
 * Plan files, by a part of the program that is fetched once the sheet stands. Where it cannot be
 * fetched, what is in memory is still handed out.
 */
import { tell } from "../keeping/save-state.ts";
import { downloadPlan } from "./download-plan.ts";
import type * as PlanFiles from "./plan-file.ts";
import * as words from "./words.ts";

type Files = typeof PlanFiles;

/** Fetches what the functions here need, so that it is there when it is asked for. */
export function fetchPlanFiles(): Promise<Files> {
  return import("./plan-file.ts");
}

/** What comes of it; null where the part cannot be fetched, which is said. */
async function withPlanFiles<T>(act: (files: Files) => T | Promise<T>): Promise<T | null> {
  const files = await fetchPlanFiles().catch(() => null);
  if (files) return act(files);
  tell(words.openerMissing);
  return null;
}

/** `savePlanFile` of plan-file.ts; a plain download where that does not come. */
export async function savePlanFile(place: "own file" | "new file" = "own file"): Promise<void> {
  const files = await fetchPlanFiles().catch(() => null);
  if (files) await files.savePlanFile(place);
  else await downloadPlan();
}

export async function openPlanFile(): Promise<void> {
  await withPlanFiles((files) => files.openPlanFile());
}

export async function openPlanFromFile(file: File): Promise<void> {
  await withPlanFiles((files) => files.openPlanFromFile(file));
}

export async function openSample(text: string, name: string): Promise<void> {
  await withPlanFiles((files) => files.openSample(text, name));
}

export async function newPlan(): Promise<void> {
  await withPlanFiles((files) => files.newPlan());
}
