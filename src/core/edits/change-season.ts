/** Another season for a plan, and what becomes of its dates. */
import { isBloomInSeason, isFrostInSeason, isStartInSeason } from "../calendar/season-reach.ts";
import { yearsLater } from "../calendar/yearly.ts";
import { civilFromDay } from "../model/day.ts";
import type { Plan, Planting, Surrounding } from "../model/plan.ts";
import { type Edit, patched } from "./edit.ts";
import * as steps from "../words/shelf-step-words.ts";

/** `move`: by as many whole years as the season moves; `keep`: as they are; `drop`: taken out. */
export type DatesThen = "move" | "keep" | "drop";

/** Whole years from one season to the next: of its first day, else of its last. */
export function yearsBetween(from: Plan["season"], to: Plan["season"]): number {
  const years = (which: "first" | "last") =>
    civilFromDay(to[which]).year - civilFromDay(from[which]).year;
  return years("first") === 0 ? years("last") : years("first");
}

/**
 * How many dates of a plan, in all its layouts, another season would leave behind: those outside
 * it, and starts within the season now that come before the next. Plants that have overwintered
 * may keep such a start, so these alone are not told once the season is changed.
 */
export function datesLeftBehind(plan: Plan, next: Plan["season"]): number {
  const { lastSpringFrost: spring, firstAutumnFrost: autumn } = plan.site;
  const blooms = [...plan.layouts.flatMap(({ plantings }) => plantings), ...plan.surroundings];
  const starts = plan.layouts.flatMap(({ plantings }) => plantings.map(({ start }) => start?.date));
  const isLeft = (day: number) =>
    !isStartInSeason(day, next) || (day >= plan.season.first && day < next.first);
  const ends = plan.layouts.flatMap(({ plantings }) => plantings.flatMap(({ end }) => end ?? []));
  return [
    ends.filter((day) => day < next.first || !isStartInSeason(day, next)),
    blooms.filter(({ bloom }) => bloom && !isBloomInSeason(bloom, next)),
    starts.filter((day) => day !== undefined && isLeft(day)),
    spring !== undefined && !isFrostInSeason("spring", spring, next) ? [spring] : [],
    autumn !== undefined && !isFrostInSeason("autumn", autumn, next) ? [autumn] : [],
  ].reduce((sum, list) => sum + list.length, 0);
}

/** How many things of a plan, in all its layouts, have dates that hang on the season. */
export interface DatedCounts {
  /** Plantings with a day they are sown or set out, and with one they are cleared. */
  readonly starts: number;
  readonly ends: number;
  /** Plantings, and pollen sources around, with bloom dates that were typed. */
  readonly blooms: number;
  readonly neighbours: number;
  readonly frosts: number;
}

export function datedCounts({ layouts, surroundings, site }: Plan): DatedCounts {
  const plantings = layouts.flatMap((layout) => layout.plantings);
  const frosts = [site.lastSpringFrost, site.firstAutumnFrost];
  return {
    starts: plantings.filter(({ start }) => start !== undefined).length,
    ends: plantings.filter(({ end }) => end !== undefined).length,
    blooms: plantings.filter(({ bloom }) => bloom !== undefined).length,
    neighbours: surroundings.filter(({ bloom }) => bloom !== undefined).length,
    frosts: frosts.filter((day) => day !== undefined).length,
  };
}

/** Both its days moved: of setting out, and of sowing under glass. */
function startLater(
  start: NonNullable<Planting["start"]>,
  later: (day: number) => number,
): NonNullable<Planting["start"]> {
  const { date, sownUnderGlass } = start;
  return {
    ...start,
    date: later(date),
    ...(sownUnderGlass === undefined ? {} : { sownUnderGlass: later(sownUnderGlass) }),
  };
}

/** The season a number of years later; years in its name count along, `2027` and `2027/28`. */
export function seasonLater(season: Plan["season"], years: number): Plan["season"] {
  return {
    ...season,
    name: season.name.replace(
      /\b((?:19|20|21)\d\d)(?:([/-])(\d\d))?\b/g,
      (_, year: string, mark?: string, end?: string) => {
        const later = String(Number(year) + years);
        // `2027/28` is one season over New Year; `2027-05` is a month.
        const isSpan = Number(end) === (Number(year) + 1) % 100;
        if (!isSpan) return `${later}${mark ?? ""}${end ?? ""}`;
        return `${later}${mark}${String((Number(end) + years + 100) % 100).padStart(2, "0")}`;
      },
    ),
    first: yearsLater(season.first, years),
    last: yearsLater(season.last, years),
  };
}

/**
 * Changes the season, in one step with the dates of plantings in all layouts, of surroundings and
 * of frosts. What has happened stays as it was: temperatures of days, earlier crops, lots.
 */
export function changeSeason(season: Plan["season"], dates: DatesThen): Edit {
  return {
    title: steps.changeSeason,
    apply: (plan) => {
      const years = yearsBetween(plan.season, season);
      if (dates === "keep" || (dates === "move" && years === 0)) return { ...plan, season };
      const later = (day: number) => yearsLater(day, years);
      const dated = <T extends Planting | Surrounding>(item: T): T => {
        const { bloom } = item;
        const { start, end, stoodInto }: Partial<Planting> = "variety" in item ? item : {};
        if (!bloom && !start && end === undefined && stoodInto === undefined) return item;
        const isDropped = dates === "drop";
        const changes = {
          bloom:
            bloom && !isDropped
              ? { ...bloom, first: later(bloom.first), last: later(bloom.last) }
              : undefined,
          ...(start ? { start: isDropped ? undefined : startLater(start, later) } : {}),
          ...(end === undefined ? {} : { end: isDropped ? undefined : later(end) }),
          ...(stoodInto === undefined
            ? {}
            : { stoodInto: isDropped ? undefined : later(stoodInto) }),
        };
        return patched<Planting | Surrounding>(item, changes) as T;
      };
      const frost = (day: number | undefined) =>
        day === undefined || dates === "drop" ? undefined : later(day);
      const { lastSpringFrost, firstAutumnFrost } = plan.site;
      return {
        ...plan,
        season,
        site: patched(plan.site, {
          lastSpringFrost: frost(lastSpringFrost),
          firstAutumnFrost: frost(firstAutumnFrost),
        }),
        surroundings: plan.surroundings.map(dated),
        layouts: plan.layouts.map((layout) => ({
          ...layout,
          plantings: layout.plantings.map(dated),
        })),
      };
    },
  };
}
