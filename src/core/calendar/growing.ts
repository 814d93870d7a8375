/**
 * What ends growth on a site: winter by its half of the earth, the first autumn frost given, the
 * end of the season. The dates that bound a winter are common practice, and wide on purpose:
 * between them a prediction made for spring says nothing.
 */
import { type DayNumber, civilFromDay, dayFromCivil, daysInMonth } from "../model/day.ts";
import type { Climate, Plan, Planting } from "../model/plan.ts";
import type { DayWindow } from "./bloom-window.ts";
import { type TemperatureOn, temperatureOn } from "./climate.ts";
import { yearsLater } from "./yearly.ts";

/** Which half of the earth's winter a site has; `none`: its coldest month is as warm as the tropics. */
export type Hemisphere = "north" | "south" | "none";

/** What blooms are told with, beside the planting, its variety and its kind. */
export interface BloomSetting {
  readonly temperatures: TemperatureOn | null;
  /** What the temperatures are of. */
  readonly climate?: Climate | undefined;
  readonly season: DayWindow | null;
  readonly firstAutumnFrost: DayNumber | null;
  readonly hemisphere: Hemisphere;
}

const known = new WeakMap<Plan["site"], { season: Plan["season"]; setting: BloomSetting }>();

/** The setting of a plan; the same object for the same site and season. */
export function bloomSetting({ site, season }: Pick<Plan, "site" | "season">): BloomSetting {
  const found = known.get(site);
  if (found?.season === season) return found.setting;
  const setting: BloomSetting = {
    temperatures: site.climate ? temperatureOn(site.climate) : null,
    climate: site.climate,
    season,
    firstAutumnFrost: site.firstAutumnFrost ?? null,
    hemisphere: hemisphereOf(site),
  };
  known.set(site, { season, setting });
  return setting;
}

/** From the climate, else the latitude, else the month of a frost; north where nothing tells. */
function hemisphereOf(site: Plan["site"]): Hemisphere {
  const byClimate = site.climate ? hemisphereOfClimate(site.climate) : null;
  if (byClimate) return byClimate;
  if (site.position) return site.position.latitude < 0 ? "south" : "north";
  const autumn = site.firstAutumnFrost;
  const spring = site.lastSpringFrost;
  if (autumn !== undefined) return isFirstHalf(autumn) ? "south" : "north";
  if (spring !== undefined) return isFirstHalf(spring) ? "north" : "south";
  return "north";
}

function isFirstHalf(day: DayNumber): boolean {
  return civilFromDay(day).month <= 6;
}

/** Mean of the coldest month from which on a climate has no winter (Koeppen: tropical), C. */
const NO_WINTER_C = 18;
const ANY_YEAR = 2001;

function hemisphereOfClimate(climate: Climate): Hemisphere | null {
  const means = Array.from({ length: 12 }, (_, index) => {
    const today = temperatureOn(climate)(
      dayFromCivil({ year: ANY_YEAR, month: index + 1, day: 15 }),
    );
    return today && (today.minC + today.maxC) / 2;
  });
  if (means.some((mean) => mean === null)) return null;
  const [january, july] = [means[0] ?? 0, means[6] ?? 0];
  if (Math.min(...means.map((mean) => mean ?? 0)) >= NO_WINTER_C) return "none";
  return january <= july ? "north" : "south";
}

/** Northern dates, month and day; the south has them six months later. */
type MonthDay = readonly [month: number, day: number];
/** Nothing sown opens its first flower outdoors in these days. */
const WINTER: readonly [MonthDay, MonthDay] = [
  [11, 15],
  [1, 31],
];
/** Sowings for which days and heat of hardy annuals hold; later ones stay leafy or overwinter. */
const SPRING_SOWING: readonly [MonthDay, MonthDay] = [
  [2, 1],
  [7, 15],
];
/** Setting out of overwintered roots and plants; what is set out later is of this year. */
const SPRING_SETTING_OUT: readonly [MonthDay, MonthDay] = [
  [2, 1],
  [5, 31],
];

/** The first winter that begins after a day. */
export function winterAfter(day: DayNumber, hemisphere: Hemisphere): DayWindow | null {
  if (hemisphere === "none") return null;
  const { year } = civilFromDay(day);
  for (let each = year - 1; ; each += 1) {
    const first = dateIn(each, WINTER[0], hemisphere);
    if (first > day) return { first, last: dateIn(each + 1, WINTER[1], hemisphere) };
  }
}

/** Whether a start lies in the months for which figures of spring hold. */
export function isSpringStart(
  day: DayNumber,
  use: "sowing" | "setting out overwintered",
  hemisphere: Hemisphere,
): boolean {
  if (hemisphere === "none") return true;
  const [from, to] = use === "sowing" ? SPRING_SOWING : SPRING_SETTING_OUT;
  const { year } = civilFromDay(day);
  return [year - 1, year].some((each) => {
    return dateIn(each, from, hemisphere) <= day && day <= dateIn(each, to, hemisphere);
  });
}

function dateIn(year: number, [month, day]: MonthDay, hemisphere: Hemisphere): DayNumber {
  const turned = month + (hemisphere === "south" ? 6 : 0);
  const civil = {
    year: turned > 12 ? year + 1 : year,
    month: turned > 12 ? turned - 12 : turned,
  };
  return dayFromCivil({ ...civil, day: Math.min(day, daysInMonth(civil.year, civil.month)) });
}

/** The first autumn frost on or after a day, by the date given for one year. */
export function frostAfter(day: DayNumber, frost: DayNumber | null): DayNumber | null {
  if (frost === null) return null;
  const years = civilFromDay(day).year - civilFromDay(frost).year;
  return [years - 1, years, years + 1]
    .map((shift) => yearsLater(frost, shift))
    .find((each) => each >= day) as DayNumber;
}

type Start = NonNullable<Planting["start"]>;

/**
 * From sowing under glass to setting out of one spring at the most: onions sown after Christmas are
 * set out in April. What was sown longer before stood through a winter. No source; our choice.
 */
const LONGEST_RAISING_DAYS = 150;

/** Sown under glass for the spring it is set out in: it has seen no winter. */
export function isRaisedForThis({ method, date, sownUnderGlass }: Start): boolean {
  return (
    method === "transplanted" &&
    sownUnderGlass !== undefined &&
    date - sownUnderGlass <= LONGEST_RAISING_DAYS
  );
}

/** Sown this season, in place or under glass. */
export function isSeedlingOf(season: Plan["season"], start: Start): boolean {
  if (start.date < season.first) return false;
  return start.method === "sown" || isRaisedForThis(start);
}
