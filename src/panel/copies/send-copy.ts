/** The plan as a file for another device: handed to the phone's own sharing, or downloaded. */
import type { Layout, Plan } from "../../core/model/plan.ts";
import { writePlan } from "../../core/model/read-plan.ts";
import { planFileName } from "../../store/files/file-name.ts";
import { isCancelled } from "../../store/keeping/storage-fault.ts";
import { downloadBytes } from "../form/download.ts";
import { copiesWords } from "./copies-words.ts";

const JSON_TYPE = "application/json";

/**
 * The plan as a file this browser will hand over; null where it hands over none. Some browsers
 * share no JSON: the same text goes as plain text then, and is read back just the same.
 */
export function shareableCopy(plan: Plan, layout: Layout): File | null {
  if (typeof navigator.canShare !== "function") return null;
  const name = planFileName(plan, layout, new Date());
  const text = writePlan(plan);
  const files = [
    new File([text], name, { type: JSON_TYPE }),
    new File([text], name.replace(/\.json$/, ".txt"), { type: "text/plain" }),
  ];
  return files.find((file) => navigator.canShare({ files: [file] })) ?? null;
}

/** Why it was not handed over, or null; putting the choice away is no fault. */
export async function handOver(copy: File): Promise<string | null> {
  try {
    await navigator.share({ files: [copy], title: copy.name });
    return null;
  } catch (error) {
    if (isCancelled(error)) return null;
    return copiesWords.notTaken;
  }
}

export function saveCopy(plan: Plan, layout: Layout): void {
  const bytes = new Uint8Array(new TextEncoder().encode(writePlan(plan)));
  downloadBytes(bytes, planFileName(plan, layout, new Date()), JSON_TYPE);
}
