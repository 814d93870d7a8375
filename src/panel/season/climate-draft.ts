/** A site's climate while it is being typed, and what it still lacks. */
import type { DailyTemperatures } from "../../core/calendar/read-daily-temperatures.ts";
import {
  type TemperatureUnit,
  readTemperature,
  temperatureText,
} from "../../core/calendar/temperature-text.ts";
import { longDate } from "../../core/model/day.ts";
import type { Climate } from "../../core/model/plan.ts";
import { fullMonths } from "../../core/words/month-words.ts";
import * as words from "./climate-words.ts";

export type End = "min" | "max";

export interface ClimateDraft {
  readonly station: string;
  readonly source: string;
  /** Twelve texts each, January first. */
  readonly min: readonly string[];
  readonly max: readonly string[];
  readonly days: DailyTemperatures | undefined;
}

/** A field that cannot be kept, and why. */
export interface CellFault {
  readonly end: End;
  readonly month: number;
  readonly reason: string;
}

const NO_CELLS = fullMonths.map(() => "");

/** The kept climate as texts in a unit. */
export function draftOf(climate: Climate | undefined, unit: TemperatureUnit): ClimateDraft {
  return {
    station: climate?.station ?? "",
    source: climate?.source ?? "",
    ...cellsOf(climate?.normals, unit),
    days: climate?.days,
  };
}

/** Normals as texts of the table. */
export function cellsOf(
  normals: Climate["normals"],
  unit: TemperatureUnit,
): Pick<ClimateDraft, End> {
  const texts = (values: readonly number[]) => values.map((value) => temperatureText(value, unit));
  return normals
    ? { min: texts(normals.minC), max: texts(normals.maxC) }
    : { min: NO_CELLS, max: NO_CELLS };
}

export function withCell(draft: ClimateDraft, end: End, month: number, text: string): ClimateDraft {
  return { ...draft, [end]: draft[end].with(month, text) };
}

export function hasCells(draft: ClimateDraft): boolean {
  return [...draft.min, ...draft.max].some((text) => text.trim() !== "");
}

/** What keeps the table from being used; nothing when it is empty or whole. */
export function cellFaults(draft: ClimateDraft, unit: TemperatureUnit): readonly CellFault[] {
  if (!hasCells(draft)) return [];
  return fullMonths.flatMap((name, month): readonly CellFault[] => {
    const [low, high] = [draft.min[month] ?? "", draft.max[month] ?? ""];
    const faults = (
      [
        ["min", low],
        ["max", high],
      ] as const
    ).flatMap(([end, text]) => {
      if (readTemperature(text, unit) !== null) return [];
      return [{ end, month, reason: words.cellFault(name, end, text.trim()) }];
    });
    if (faults.length > 0) return faults;
    const isCrossed = (readTemperature(low, unit) ?? 0) > (readTemperature(high, unit) ?? 0);
    return isCrossed ? [{ end: "min", month, reason: words.lowAboveHigh(name) }] : [];
  });
}

/**
 * The draft as a climate, or undefined when it holds no temperatures. What the kept climate has
 * unchanged stays as it is, to the last digit.
 */
export function climateOf(
  draft: ClimateDraft,
  unit: TemperatureUnit,
  kept: Climate | undefined,
): Climate | undefined {
  const read = (texts: readonly string[]) => texts.map((text) => readTemperature(text, unit) ?? 0);
  const before = draftOf(kept, unit);
  const isSame =
    [before.min.join("|"), before.max.join("|")].join() ===
    [draft.min.join("|"), draft.max.join("|")].join();
  const normals = isSame ? kept?.normals : { minC: read(draft.min), maxC: read(draft.max) };
  const hasNormals = hasCells(draft) && normals !== undefined;
  if (!hasNormals && !draft.days) return undefined;
  const {
    station: _station,
    source: _source,
    normals: _normals,
    days: _days,
    ...rest
  } = kept ?? {};
  return {
    ...rest,
    ...(draft.station === "" ? {} : { station: draft.station }),
    ...(draft.source === "" ? {} : { source: draft.source }),
    ...(hasNormals ? { normals } : {}),
    ...(draft.days ? { days: draft.days } : {}),
  };
}

/** `1 Apr 2026 to 31 Aug 2026, 150 of 153 days`. */
export function recordWords({ first, minC, maxC }: DailyTemperatures): string {
  const whole = minC.filter((low, index) => low !== null && (maxC[index] ?? null) !== null).length;
  const [from, to] = [longDate(first), longDate(first + minC.length - 1)];
  return words.recordSpan({ from, to, whole, all: minC.length });
}
