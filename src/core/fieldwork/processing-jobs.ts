/**
 * What is due after a harvest was written down: ferment or wash or cure, clean, dry, test, store.
 * One run of jobs for each harvested batch; what lies before a cleaning that was written down falls
 * out.
 */
import type { Stand } from "../checks/stand.ts";
import { type Processing, processingOf, trustWords } from "../lots/processing.ts";
import { type DayNumber, shortDate } from "../model/day.ts";
import type { Entry, Plan } from "../model/plan.ts";
import { currentEntries } from "../record/current-entries.ts";
import { jobWords, seedJobWords as words } from "./job-words.ts";

export const processingJobNames = [
  "ferment",
  "stir ferment",
  "rinse seed",
  "clean seed",
  "dry seed",
  "store seed",
  "test seed",
] as const;
type ProcessingJobName = (typeof processingJobNames)[number];

/** A job of the season calendar, of one batch. */
interface ProcessingJob {
  readonly job: ProcessingJobName;
  readonly planting: string;
  /** The day that batch was harvested. */
  readonly batch: DayNumber;
  readonly day: DayNumber;
  readonly text: string;
  readonly caution: string | null;
}

/** Days after it is dry at which a germination test is laid. Common practice: fresh seed may sleep. */
const TEST_AFTER_DAYS = 30;

/** Jobs of every batch harvested from the stands of a layout, in no order. */
export function processingJobs(plan: Plan, stands: readonly Stand[]): readonly ProcessingJob[] {
  if (plan.entries.length === 0) return [];
  const byPlot = new Map<string, Entry[]>();
  for (const entry of currentEntries(plan.entries)) {
    if (entry.what !== "harvested" && entry.what !== "cleaned") continue;
    byPlot.set(entry.of, [...(byPlot.get(entry.of) ?? []), entry]);
  }
  return stands.flatMap((stand) => {
    const entries = byPlot.get(stand.id) ?? [];
    const batches = new Set(entries.filter(({ what }) => what === "harvested").map(({ on }) => on));
    return [...batches].flatMap((on) => {
      const cleaned = entries.find((entry) => entry.what === "cleaned" && entry.on >= on);
      return batchJobs(stand, on, cleaned?.on ?? null);
    });
  });
}

/** @param cleanedOn the day this batch was cleaned; null while nobody wrote it */
function batchJobs(
  stand: Stand,
  on: DayNumber,
  cleanedOn: DayNumber | null,
): readonly ProcessingJob[] {
  const { kind, planting, variety } = stand;
  const how = processingOf(kind);
  const name = words.batch(
    jobWords.plot(planting?.code ?? "", variety?.name ?? "", kind.name),
    shortDate(on),
  );
  const jobs: ProcessingJob[] = [];
  const add = (
    job: ProcessingJobName,
    day: DayNumber,
    text: string,
    caution: string | null = null,
  ) => jobs.push({ job, planting: stand.id, batch: on, day, text, caution });
  const [least, most] = how.wetDays ?? how.cureDays ?? [0, 0];
  if (cleanedOn === null) addCleaning(how, on, name, add);
  const clean = cleanedOn ?? on + most;
  const [dryLeast, dryMost] = how.dryDays;
  const limits = how.limits.map((said) => `${said.text} (${trustWords(said)})`).join("; ");
  const begins = cleanedOn ?? on + (how.way === "fermented" ? fermentDays(how) : least);
  add("dry seed", begins, words.dry(name, limits));
  add("store seed", clean + dryMost, words.store(name, shortDate(begins + dryLeast)));
  add("test seed", clean + dryMost + TEST_AFTER_DAYS, words.test(name));
  return jobs;
}

type AddJob = (
  job: ProcessingJobName,
  day: DayNumber,
  text: string,
  caution?: string | null,
) => void;

/** Two days as a rule, fewer where the kind allows no more. Common practice. */
function fermentDays({ wetDays }: Processing): number {
  const [least, most] = wetDays ?? [0, 0];
  return Math.max(least, Math.min(2, most));
}

/** Wet seed is washed out, fermented or not; dry stalks are cured and threshed. */
function addCleaning(how: Processing, on: DayNumber, name: string, add: AddJob): void {
  const caution = how.cautions.length === 0 ? null : how.cautions.join("; ");
  const said = how.wet ? `${how.wet.text} (${trustWords(how.wet)})` : "";
  if (how.way === "fermented" && how.wetDays) {
    const [, most] = how.wetDays;
    add("ferment", on, words.ferment(name, said), caution);
    add("stir ferment", on + 1, words.stir(name));
    add("rinse seed", on + fermentDays(how), words.rinse(name, shortDate(on + most)));
    return;
  }
  if (how.way === "wet" && how.wetDays) {
    add("rinse seed", on, words.wash(name, said), caution);
    return;
  }
  const [least, most] = how.cureDays ?? [0, 0];
  add("clean seed", on + most, words.thresh(name, least, most), caution);
}
