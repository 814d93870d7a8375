/**
 * What a biennial asks between its two years: lift or leave, store, look over, set out. Published
 * limits stand with their sources; four weeks are common practice.
 */
import { coldFelt, coldVerdict, coldestOnRecord } from "../calendar/cold-felt.ts";
import { yearsLater } from "../calendar/yearly.ts";
import { limitWords, rootStoreOf, storeVerdict, winterHardiness } from "../calendar/root-store.ts";
import type { Stand } from "../checks/stand.ts";
import type { Kind } from "../kinds/crop.ts";
import type { DayNumber } from "../model/day.ts";
import type { Climate, Plan } from "../model/plan.ts";
import { rootWords as words } from "./job-words.ts";

export interface BiennialJob {
  readonly job: "lift roots" | "store roots" | "look over roots" | "set out roots";
  readonly day: DayNumber;
  readonly text: string;
  readonly caution: string | null;
}

const WEEK = 7;
const FOUR_WEEKS = 28;

/** Jobs of a stand in its first year, from the first autumn frost on. */
export function biennialJobs(
  { site }: Pick<Plan, "site">,
  { kind, planting, climate, season }: Stand,
  name: string,
  frost: DayNumber,
): readonly BiennialJob[] {
  const isForSeed = planting?.purpose === "seed" && kind.lifeCycle === "biennial";
  const lift: BiennialJob = {
    job: "lift roots",
    day: frost,
    text: words.lift(name, hardinessWords(kind, climate)),
    caution: isForSeed ? warmWinter(kind, climate, season.first) : null,
  };
  if (!isForSeed) return [lift];
  const out = setOutDay(site.lastSpringFrost, frost);
  const store = rootStoreOf(kind.id);
  const stored: readonly BiennialJob[] = store
    ? [
        {
          job: "store roots",
          day: frost,
          text: words.store(
            name,
            `${store.air}${store.note === undefined ? "" : ` (${store.note})`}`,
            limitWords(store),
          ),
          caution: out === null ? null : storeCaution(kind, out - frost),
        },
        {
          job: "look over roots",
          day: frost + FOUR_WEEKS,
          text: words.lookOver(name),
          caution: null,
        },
      ]
    : [];
  const setOut: readonly BiennialJob[] =
    out === null
      ? []
      : [
          {
            job: "set out roots",
            day: out,
            text: words.setOut(name),
            caution: null,
          },
        ];
  return [lift, ...stored, ...setOut];
}

/** Four weeks before the last frost of the spring after an autumn frost; null: no spring frost is given. */
function setOutDay(lastSpringFrost: DayNumber | undefined, autumn: DayNumber): DayNumber | null {
  if (lastSpringFrost === undefined) return null;
  let spring = lastSpringFrost;
  for (let years = 1; spring <= autumn; years += 1) spring = yearsLater(lastSpringFrost, years);
  return Math.max(autumn + WEEK, spring - FOUR_WEEKS);
}

/**
 * Whether what is set out was longer in store than printed; null: not, or nobody printed it.
 * @param days from lifting to setting out
 */
export function storeCaution(kind: Pick<Kind, "id">, days: number): string | null {
  const store = rootStoreOf(kind.id);
  if (!store || days <= 0) return null;
  const weeks = Math.ceil(days / WEEK);
  switch (storeVerdict(store, weeks)) {
    case "within":
      return null;
    case "longer":
      return words.longer(weeks);
    case "longest":
      return words.longest(weeks);
  }
}

/** Whether the site's winter is too warm for it to flower after, where its need of cold was published. */
function warmWinter(
  { id }: Kind,
  climate: Climate | undefined,
  seasonFirst: DayNumber,
): string | null {
  const felt = climate ? coldFelt(id, seasonFirst, climate) : null;
  if (!felt) return null;
  switch (coldVerdict(felt)) {
    case "met":
      return null;
    case "partly":
      return words.shortOfCold;
    case "not met":
      return words.tooWarm;
  }
}

/** What cold it stands where that was printed, against the coldest day on the site's record. */
function hardinessWords({ species }: Kind, climate: Climate | undefined): string {
  const hardy = winterHardiness(species);
  if (!hardy) return "";
  const [worst, least] = hardy.coldC;
  const stands = words.stands(least, worst, hardy.source);
  const coldest = coldestOnRecord(climate);
  if (coldest === null) return stands;
  return (coldest > least ? words.mayBeLeft : words.liftIt)(stands, Math.round(coldest));
}

/**
 * Weeks in store of what is set out this season, against what is printed: lifted at the autumn
 * frost before, as its date is given for this site.
 */
export function setOutCaution(
  { site }: Pick<Plan, "site">,
  { kind, planting }: Stand,
): string | null {
  const { firstAutumnFrost } = site;
  const start = planting?.start;
  if (kind.lifeCycle !== "biennial" || start?.method !== "transplanted") return null;
  if (firstAutumnFrost === undefined || planting?.flowering !== "yes") return null;
  let lifted = firstAutumnFrost;
  for (let years = -1; lifted >= start.date; years -= 1)
    lifted = yearsLater(firstAutumnFrost, years);
  const days = start.date - lifted;
  // Set out in the autumn of its first year it was never in store.
  return days < FOUR_WEEKS ? null : storeCaution(kind, days);
}
