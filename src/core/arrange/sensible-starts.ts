/**
 * When a variety would start by itself: as its kind is usually raised, counted from the last spring
 * frost, and the later days on which its seed would still ripen before the first autumn frost.
 */
import { rootsOut } from "../beds/roots-out.ts";
import { usualStart } from "../beds/usual-start.ts";
import { bloomSetting } from "../calendar/growing.ts";
import { bloomForecast } from "../calendar/planting-bloom.ts";
import { autumnFrostOf } from "../calendar/season-reach.ts";
import type { Forecast } from "../calendar/bloom-parts.ts";
import { startAsOthers } from "../edits/new-planting.ts";
import type { Kind } from "../kinds/crop.ts";
import { finishOf } from "../kinds/finish-ripening.ts";
import type { DayNumber } from "../model/day.ts";
import type { Layout, Plan, Planting, Variety } from "../model/plan.ts";

type Start = NonNullable<Planting["start"]>;

export interface SensibleStarts {
  /** Undefined: nothing tells. */
  readonly usual: Start | undefined;
  /** Later days that do as well, the next first. */
  readonly later: readonly Start[];
  /** Its seed would not ripen: when it would, null where frost catches its flowers. */
  readonly tooLate: { readonly ripe: DayNumber | null; readonly frost: DayNumber } | null;
  /** Whether it is set out as a root or plant kept over winter. */
  readonly isOverwintered: boolean;
}

/** A later start is looked for week by week, so many weeks at most. No source; our choice. */
const LATER_WEEKS = 10;
/** Where nothing tells when its seed is ripe, so many. No source; our choice. */
const LATER_WEEKS_UNTOLD = 4;
const WEEK_DAYS = 7;
/** Fruits cut before frost ripen their seed lying for two to three weeks (common practice). */
const FRUIT_REST_DAYS = 21;

export function sensibleStarts(
  plan: Plan,
  layout: Layout,
  variety: Variety,
  kind: Kind,
): SensibleStarts {
  const isOverwintered = kind.lifeCycle === "biennial";
  const usual = usualOf(plan, layout, variety, kind);
  const none = { later: [], tooLate: null, isOverwintered };
  if (!usual) return { usual, ...none };
  const frost = autumnFrost(plan);
  const forecast = forecastOf(plan, variety, kind, usual);
  const tooLate = lateness(kind, forecast, frost);
  if (tooLate || isOverwintered || kind.lifeCycle === "perennial") {
    return { usual, ...none, tooLate };
  }
  const weeks = forecast.bloom?.ripe ? LATER_WEEKS : LATER_WEEKS_UNTOLD;
  const later: Start[] = [];
  for (let week = 1; week <= weeks; week += 1) {
    const start = { ...usual, date: usual.date + week * WEEK_DAYS };
    const then = forecastOf(plan, variety, kind, start);
    const ripe = then.bloom?.ripe;
    if (then.bloom === null || start.date > plan.season.last) break;
    if (ripe ? ripe.latest > frost || ripe.isBeyond === true : false) break;
    later.push(start);
  }
  return { usual, later, tooLate: null, isOverwintered };
}

/** Roots of biennials go out in spring; others by the way of their kind of which bloom is told. */
function usualOf(plan: Plan, layout: Layout, variety: Variety, kind: Kind): Start | undefined {
  const last = startAsOthers(plan, layout, variety);
  if (last && last.date >= plan.season.first) return last;
  if (kind.lifeCycle === "biennial") return rootsOut(plan) ?? frostless(plan, "transplanted");
  const usual = usualStart(plan, layout, kind) ?? frostless(plan, "sown");
  if (!usual || forecastOf(plan, variety, kind, usual).bloom) return usual;
  const other: Start = {
    ...usual,
    method: usual.method === "sown" ? "transplanted" : "sown",
  };
  return forecastOf(plan, variety, kind, other).bloom ? other : usual;
}

/** Where no month is cold, nothing waits for a frost. */
function frostless(plan: Plan, method: Start["method"]): Start | undefined {
  return bloomSetting(plan).hemisphere === "none" ? { method, date: plan.season.first } : undefined;
}

function autumnFrost({ season, site: { firstAutumnFrost } }: Plan): DayNumber {
  return firstAutumnFrost === undefined ? Infinity : autumnFrostOf(season, firstAutumnFrost);
}

/** Bloom is told without a place, so the outline does not matter. */
function forecastOf(plan: Plan, variety: Variety, kind: Kind, start: Start): Forecast {
  const planting: Planting = {
    id: "",
    code: "",
    variety: variety.id,
    outline: { shape: "rectangle", x: 0, y: 0, widthM: 1, lengthM: 1, turnDeg: 0 },
    purpose: "seed",
    flowering: "yes",
    cover: "none",
    start,
  };
  return bloomForecast(planting, variety, kind, bloomSetting(plan));
}

function lateness(
  kind: Kind,
  { bloom, why }: Forecast,
  frost: DayNumber,
): SensibleStarts["tooLate"] {
  if (frost === Infinity) return null;
  if (why === "after-frost") return { ripe: null, frost };
  const ripe = bloom?.ripe?.likely;
  const rest = finishOf(kind).by === "fruit" ? FRUIT_REST_DAYS : 0;
  return ripe !== undefined && ripe > frost + rest ? { ripe, frost } : null;
}
