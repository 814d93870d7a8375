/**
 * The season's jobs, computed per planting: sow, also under glass, set out, covers on and off,
 * rogue, cut before bloom, pollination by hand, flowers, ripe seed, clearing, lifting of roots.
 * Offsets from bloom are common practice unless said otherwise.
 */
import { autumnFrostOf } from "../calendar/season-reach.ts";
import { endOf } from "../calendar/ground-time.ts";
import { isoWeek, mondayOf } from "../calendar/week.ts";
import { compareText } from "../checks/finding.ts";
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import { ifNotWords, watchWords } from "../checks/day-words.ts";
import type { Stand } from "../checks/stand.ts";
import { type DayNumber, shortDate } from "../model/day.ts";
import { isStanding } from "../model/layouts.ts";
import type { Plan } from "../model/plan.ts";
import { biennialJobs, setOutCaution } from "./biennial-jobs.ts";
import { handPollination } from "./hand-pollination.ts";
import { processingJobNames, processingJobs } from "./processing-jobs.ts";
import { seedTakingLines } from "./seed-taking-lines.ts";
import { jobWords as words } from "./job-words.ts";

export const jobNames = [
  "sow",
  "sow under glass",
  "set out",
  "rogue",
  "cover on",
  "cut before bloom",
  "tape buds",
  "hand pollinate",
  "first flower",
  "last flower",
  "cover off",
  "seed ripe",
  "clear",
  "lift roots",
  "store roots",
  "look over roots",
  "set out roots",
  "watch blooms",
  ...processingJobNames,
] as const;
export type JobName = (typeof jobNames)[number];

export interface Job {
  readonly job: JobName;
  /** Id of the planting; of what is to be cut before it flowers perhaps a neighbour's. */
  readonly planting: string;
  /** The other stand of a job that two share. */
  readonly beside?: string;
  /** Of a job after the harvest: the day that batch was harvested. */
  readonly batch?: DayNumber;
  readonly day: DayNumber;
  /** What to do or expect, with the uncertainty in words where there is one. */
  readonly text: string;
  /** Why to look at it twice, in words; null: nothing speaks against it. */
  readonly caution: string | null;
}

/** Days before the earliest first flower at which covers go on, plants are rogued or cut. Common practice. */
const BEFORE_FLOWER_DAYS = 3;

/** Every job of the checked layout in order of day, then planting. */
export function seasonJobs(checked: CheckedLayout): readonly Job[] {
  const { plan, result } = checked;
  const seedTaking = seedTakingLines(result.stands);
  return [
    ...result.stands.flatMap((stand) => (stand.planting ? standJobs(plan, stand, seedTaking) : [])),
    ...result.stands.flatMap(cutJobs),
    ...watchJobs(checked),
    ...processingJobs(plan, result.stands),
  ].sort((a, b) => a.day - b.day || compareText(a.planting, b.planting));
}

/**
 * For each two stands that only unsure dates keep apart: the last safe day, what must be over and
 * what not yet open by then, and what to do if not.
 */
function watchJobs(checked: CheckedLayout): readonly Job[] {
  const wording = wordingOf(checked);
  return checked.result.findings.flatMap((finding): Job[] => {
    if (finding.check !== "unsure-time") return [];
    const times = finding.resting.flatMap(({ time }) => time ?? []);
    const [first] = finding.resting;
    if (!first || times.length === 0) return [];
    return [
      {
        job: "watch blooms",
        planting: first.seedParent,
        beside: first.pollenSource,
        day: Math.min(...times.map(({ lastDay }) => lastDay)),
        text: watchWords(times, wording),
        caution: words.ifNot(ifNotWords(finding.resting, wording)),
      },
    ];
  });
}

function standJobs(
  plan: Plan,
  stand: Stand,
  seedTaking: ReadonlyMap<string, string>,
): readonly Job[] {
  const jobs: Job[] = [];
  const name = plotName(stand);
  const add: AddJob = (job, day, text, caution = null) =>
    jobs.push({ job, planting: stand.id, day, text, caution });
  const start = stand.planting?.start;
  if (start && stand.planting && !isStanding(stand.planting)) {
    const isSown = start.method === "sown";
    const text = isSown ? words.sow(name) : words.setOut(name);
    add(isSown ? "sow" : "set out", start.date, text, setOutCaution(plan, stand));
    const glass = isSown ? undefined : start.sownUnderGlass;
    if (glass !== undefined) {
      add("sow under glass", glass, words.underGlass(name, shortDate(start.date)));
    }
  }
  const end = stand.planting && endOf(stand.planting);
  if (end !== null) add("clear", end, words.clear(name), clearCaution(stand));
  const { firstAutumnFrost } = plan.site;
  const frost =
    firstAutumnFrost === undefined ? undefined : autumnFrostOf(plan.season, firstAutumnFrost);
  const isFirstYear = stand.planting?.flowering === "first-year" && !stand.shedsPollen;
  if (isFirstYear && frost !== undefined) {
    for (const { job, day, text, caution } of biennialJobs(plan, stand, name, frost)) {
      add(job, day, text, caution);
    }
  }
  if (stand.shedsPollen && stand.bloom) addBloomJobs(stand, name, add);
  if (stand.isSeedParent && stand.ripe) {
    const { earliest, likely, latest, isBeyond } = stand.ripe;
    const text = isBeyond
      ? words.ripeIfWarm(name, shortDate(earliest))
      : words.ripe(name, shortDate(earliest), shortDate(latest));
    const taking = seedTaking.get(stand.id);
    const said = taking === undefined ? text : `${text}. ${taking}`;
    add("seed ripe", likely, said, frostCaution(latest, frost));
  }
  return jobs;
}

function plotName({ planting, variety, kind }: Stand): string {
  return words.plot(planting?.code ?? "", variety?.name ?? "", kind.name);
}

/** What is cleared before it flowers sheds nothing only as long as none flowers sooner. */
function clearCaution({ whyNoBloom }: Stand): string | null {
  return whyNoBloom === "cleared" ? words.clearSooner : null;
}

/** What is to be cut sheds no pollen only if that is done in time, ours or a neighbour's. */
function cutJobs({ id, planting, variety, kind, surrounding, bloom }: Stand): readonly Job[] {
  const flowering = planting?.flowering ?? surrounding?.flowering;
  if (flowering !== "cut" || !bloom) return [];
  const name = planting
    ? words.plot(planting.code, variety?.name ?? "", kind.name)
    : words.stand(surrounding?.label ?? "", kind.name);
  return [
    {
      job: "cut before bloom",
      planting: id,
      day: bloom.outer.first - BEFORE_FLOWER_DAYS,
      text: words.cut(name, shortDate(bloom.outer.first), shortDate(bloom.outer.last)),
      caution: null,
    },
  ];
}

/** Seed that may not be ripe before the first autumn frost given. */
function frostCaution(latest: DayNumber, frost: DayNumber | undefined): string | null {
  if (frost === undefined || latest <= frost) return null;
  return words.afterFrost(shortDate(frost));
}

type AddJob = (job: JobName, day: DayNumber, text: string, caution?: string | null) => void;

function addBloomJobs(stand: Stand, name: string, add: AddJob): void {
  const bloom = stand.bloom;
  if (!bloom) return;
  const before = bloom.outer.first - BEFORE_FLOWER_DAYS;
  if (stand.isSeedParent) add("rogue", before, words.rogue(name));
  if (stand.cover !== "none" && stand.cover !== "hand") {
    const isCage = stand.cover === "cage";
    add("cover on", before, isCage ? words.cageOn(name) : words.bagsOn(name));
    add("cover off", bloom.outer.last + 1, isCage ? words.cageOff(name) : words.bagsOff(name));
  }
  if (stand.isSeedParent && stand.cover === "hand") {
    const { close, pollinate } = handPollination(stand.kind);
    const { first } = bloom.outer;
    const until = shortDate(bloom.outer.last);
    add("tape buds", first - 1, words.evenings(name, close, until));
    add("hand pollinate", first, words.mornings(name, pollinate, until));
  }
  add("first flower", bloom.likely.first, words.firstFlower(name, shortDate(bloom.outer.first)));
  add("last flower", bloom.likely.last, words.lastFlower(name, shortDate(bloom.outer.last)));
}

export interface JobWeek {
  readonly monday: DayNumber;
  /** ISO week, e.g. `2027-W21`. */
  readonly label: string;
  readonly jobs: readonly Job[];
}

/** Jobs grouped by ISO week, in order; weeks without jobs are left out. */
export function jobsByWeek(jobs: readonly Job[]): readonly JobWeek[] {
  const weeks = new Map<DayNumber, Job[]>();
  for (const job of jobs) {
    const monday = mondayOf(job.day);
    const week = weeks.get(monday);
    if (week) week.push(job);
    else weeks.set(monday, [job]);
  }
  return [...weeks]
    .sort(([a], [b]) => a - b)
    .map(([monday, weekJobs]) => {
      const { year, week } = isoWeek(monday);
      return { monday, label: `${year}-W${String(week).padStart(2, "0")}`, jobs: weekJobs };
    });
}
