/**
 * How fast seed of a kind ages under a condition: probits lost a day, as a slow and a fast edge.
 * Where constants are known the seed viability equation gives them, over the doubt about moisture;
 * in an ordinary room the years of handbooks widen the band, and their middle is what is likely: they
 * are what growers see there, where the equation alone is years off either way. Without constants handbooks stand
 * alone, stretched by the rules of thumb.
 */
import type { Kind } from "../kinds/crop.ts";
import type { StoragePlace } from "../model/plan.ts";
import { probit } from "./normal.ts";
import { HUMIDITY_RANGE, hundredRule, moistureDry, oilOf, wetFromDry } from "./seed-moisture.ts";
import { EQUATION_RANGE, TOO_DAMP_PCT, sigmaDays } from "./viability.ts";
import { constantsOf } from "./viability-sets.ts";

export type Condition = NonNullable<StoragePlace["conditions"]>[number];

/** On what an estimate rests, and where it is weak. */
export type LifeNote =
  | "equation"
  | "handbook"
  | "proxy"
  | "two sets"
  | "oil from memory"
  | "dry clamp"
  | "too damp"
  | "humidity clamp"
  | "cold clamp"
  | "room assumed"
  | "rule of thumb";

export interface Ageing {
  /** Probits a day; slow <= likely <= fast. */
  readonly slow: number;
  readonly likely: number;
  readonly fast: number;
  readonly notes: readonly LifeNote[];
}

/** What seed lies in when nobody says where: an ordinary room. No source; our choice. */
export const ORDINARY_ROOM: Condition = { fromMonth: 1, temperatureC: 20, humidityPct: 50 };

/** A moisture is known no better than this, percentage points. No source; our choice. */
const MOISTURE_DOUBT_PCT = 0.5;
/** Rooms for which handbook years are meant. No source; our choice. */
const ROOM = { celsius: [10, 25], humidityPct: [30, 60] } as const;
/** Fresh seed a handbook year starts from, and what it falls to where no standard is published. */
export const HANDBOOK_FRESH = 0.95;
export const NO_STANDARD = 0.5;
/** A single handbook year stands for a quarter less to a quarter more. No source; our choice. */
const YEARS_DOUBT = 0.25;
/** Fahrenheit and humidity of an ordinary room of 20 C and 50 %. */
const ROOM_SUM = 118;
const DAYS_A_YEAR = 365;

const known = new WeakMap<Kind, Map<string, Ageing | null>>();

/** Null where neither constants nor handbook years are known. */
export function ageingIn(kind: Kind, condition: Condition): Ageing | null {
  const { temperatureC, humidityPct, moisturePct } = condition;
  const key = `${temperatureC}|${humidityPct ?? ""}|${moisturePct ?? ""}`;
  let made = known.get(kind);
  if (!made) known.set(kind, (made = new Map()));
  const found = made.get(key);
  if (found !== undefined) return found;
  const ageing = madeAgeing(kind, condition);
  made.set(key, ageing);
  return ageing;
}

function madeAgeing(kind: Kind, condition: Condition): Ageing | null {
  const equation = byEquation(kind, condition);
  if (equation === null) return byRules(kind, condition);
  const book = isRoom(condition) ? byHandbook(kind) : null;
  if (book === null) return equation;
  return {
    slow: Math.min(equation.slow, book.slow),
    likely: book.likely,
    fast: Math.max(equation.fast, book.fast),
    notes: [...equation.notes, "handbook"],
  };
}

function isRoom({ temperatureC, humidityPct }: Condition): boolean {
  return (
    humidityPct !== undefined &&
    ROOM.celsius[0] <= temperatureC &&
    temperatureC <= ROOM.celsius[1] &&
    ROOM.humidityPct[0] <= humidityPct &&
    humidityPct <= ROOM.humidityPct[1]
  );
}

/** Moisture of the seed, [least, most] percent of fresh weight. */
export function moistureRange(
  kind: Pick<Kind, "species">,
  { temperatureC, humidityPct, moisturePct }: Condition,
): readonly [number, number] {
  if (moisturePct !== undefined) {
    return [Math.max(0, moisturePct - MOISTURE_DOUBT_PCT), moisturePct + MOISTURE_DOUBT_PCT];
  }
  const air = clamped(humidityPct ?? 50, HUMIDITY_RANGE);
  // Beyond its range the formula is no longer fitted; damper air makes damper seed all the same.
  const humidity = Math.max(air, Math.min(humidityPct ?? 50, 95));
  const [least, most] = oilOf(kind);
  const celsius = clamped(temperatureC, [0, 40]);
  const wet = (oil: number) => wetFromDry(moistureDry(oil, humidity, celsius));
  return [wet(most) - MOISTURE_DOUBT_PCT, wet(least) + MOISTURE_DOUBT_PCT];
}

function clamped(value: number, [least, most]: readonly [number, number]): number {
  return Math.min(Math.max(value, least), most);
}

function byEquation(kind: Kind, condition: Condition): Ageing | null {
  const constants = constantsOf(kind);
  if (!constants) return null;
  const [least, most] = moistureRange(kind, condition);
  const celsius = clamped(condition.temperatureC, EQUATION_RANGE.celsius);
  const rate = (moisture: number) => {
    const within = clamped(moisture, EQUATION_RANGE.moisturePct);
    // Two sets for a species: the shorter life of the two.
    return Math.max(...constants.sets.map((set) => 1 / sigmaDays(set, within, celsius)));
  };
  const { humidityPct } = condition;
  const notes: readonly (LifeNote | false)[] = [
    "equation",
    constants.proxy !== null && "proxy",
    constants.sets.length > 1 && "two sets",
    humidityPct !== undefined && "oil from memory",
    least < EQUATION_RANGE.moisturePct[0] && "dry clamp",
    most > TOO_DAMP_PCT && "too damp",
    celsius !== condition.temperatureC && "cold clamp",
    humidityPct !== undefined &&
      clamped(humidityPct, HUMIDITY_RANGE) !== humidityPct &&
      "humidity clamp",
  ];
  const [slow, fast] = [rate(least), rate(most)];
  return {
    slow,
    likely: Math.sqrt(slow * fast),
    fast,
    notes: notes.filter((note) => note !== false),
  };
}

/** Handbook years as ageing from fresh seed down to the kind's standard. */
function byHandbook(kind: Kind): Ageing | null {
  const years = kind.seedLifeYears?.value;
  if (!years) return null;
  const [least, most] = years[0] === years[1] ? widened(years[0]) : years;
  const fall = Math.max(probit(HANDBOOK_FRESH) - probit(standardOf(kind)), 0.1);
  const [slow, fast] = [fall / (most * DAYS_A_YEAR), fall / (least * DAYS_A_YEAR)];
  return {
    slow,
    likely: Math.sqrt(slow * fast),
    fast,
    notes: ["handbook"],
  };
}

function widened(years: number): readonly [number, number] {
  return [years * (1 - YEARS_DOUBT), years * (1 + YEARS_DOUBT)];
}

/**
 * Handbook years where no constants are known. Life doubles with each 10 F cooler and each percent
 * drier (teaching pages), which is near ten points of humidity: so with each ten points of the
 * hundred rule's sum, from an ordinary room's 118. A better place helps the slow edge only, at most
 * fourfold, a worse one hurts both.
 */
function byRules(kind: Kind, condition: Condition): Ageing | null {
  const book = byHandbook(kind);
  if (!book || condition.humidityPct === undefined) return book;
  const doublings =
    (hundredRule(condition.temperatureC, condition.humidityPct).sum - ROOM_SUM) / 10;
  if (Math.abs(doublings) < 1e-9) return book;
  const factor = 2 ** Math.max(doublings, -2);
  return {
    slow: book.slow * factor,
    // What a better place does is hoped for, not reckoned with.
    likely: book.likely * Math.max(factor, 1),
    fast: book.fast * Math.max(factor, 1),
    notes: ["handbook", "rule of thumb"],
  };
}

/** The published germination standard of a kind, fraction of 1; one half where there is none. */
export function standardOf(kind: Pick<Kind, "germinationPercent">): number {
  const pct = kind.germinationPercent?.value;
  return pct === undefined ? NO_STANDARD : pct / 100;
}
