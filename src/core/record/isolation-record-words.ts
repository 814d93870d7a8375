/** A lot's frozen isolation record in words: for the window, the packet and paper alike. */
import type { Basis } from "../calendar/basis.ts";
import { longDate } from "../model/day.ts";
import {
  type LengthUnit,
  formatDistance,
  formatMeasured,
  formatRequired,
} from "../model/length.ts";
import type { IsolationRecord } from "../model/plan.ts";

type Source = IsolationRecord["sources"][number];
type Frozen = NonNullable<IsolationRecord["bloom"]>;
type Cover = NonNullable<IsolationRecord["covers"]>[number];

const BASIS: Readonly<Record<Basis, string>> = {
  seen: "seen",
  own: "own figure",
  published: "published figure",
  "planned end": "planned day of clearing",
  "rule of thumb": "rule of thumb",
};

const WEAKEST: Readonly<Record<IsolationRecord["standing"], string>> = {
  distance: "It rests on distance.",
  time: "It rests on time: without it some source would have been too close.",
  cover: "It rests on cover: without it some source would have been too close.",
  conflict: "It was not kept apart from everything that could cross with it.",
  unknown: "Whether it was kept apart cannot be told: something is not known.",
};

/** Whatever the record says of the pollen sources that were written down, there may have been others. */
export const OTHER_SOURCES =
  "It speaks of the pollen sources that are in the plan. What nobody wrote down is not in it: other gardens, wild plants and volunteers nobody saw.";

/** Level, figure, what it rests on, days and covers, in sentences. */
export function isolationSentences(record: IsolationRecord, unit: LengthUnit): readonly string[] {
  const { level, requiredM, figure, levelMet, levelMetM, standing, bloom } = record;
  const { covers = [], plants } = record;
  const needs = requiredM === undefined ? "a distance not known" : formatRequired(requiredM, unit);
  const from = figure === undefined ? "" : ` (${figure})`;
  return [
    levelMet === undefined
      ? "No level was met on what is known."
      : `Level met on what is known: ${levelMet}${levelMetM === undefined ? "" : ` (${formatRequired(levelMetM, unit)})`}.`,
    `Held to the ${level} level, which asked for ${needs}${from}.`,
    WEAKEST[standing],
    bloom
      ? `It may have taken pollen ${frozenBloomText(bloom)}.`
      : "When it flowered is not known.",
    covers.length === 0
      ? "No cover was written down."
      : `Covers that stood: ${covers.map(coverText).join("; ")}.`,
    ...(plants === undefined ? [] : [`${plants} plants stood.`]),
    `Judged on ${longDate(record.judgedOn)} by what was written down until then.`,
  ];
}

/** In one line, for a packet: the level met and what it rests on. */
export function isolationLine({ levelMet, standing, sources }: IsolationRecord): string {
  const met = levelMet === undefined ? "no level met" : `${levelMet} level met`;
  const [weakest] = sources;
  if (!weakest) return `Isolation as grown: ${met}, nothing known that could cross`;
  const by = standing === "conflict" || standing === "unknown" ? "" : ` by ${standing}`;
  return `Isolation as grown: ${met}${by}; ${weakest.name} ${weakest.because ?? ""}`.trim();
}

/** Source, distance, bloom, days together and what kept them apart: the columns of a table. */
export function isolationSourceCells(source: Source, unit: LengthUnit): readonly string[] {
  const { name, bloom, covers = [], because, standing } = source;
  const covered = covers.length === 0 ? "" : `; covered ${covers.map(coverText).join(", ")}`;
  return [
    name,
    ...distances(source, unit),
    bloom ? frozenBloomText(bloom) : "not known",
    togetherText(source),
    `${because ?? standing}${covered}`,
  ];
}

export const isolationSourceTitles = [
  "Pollen source",
  "Nearest",
  "Required",
  "Its bloom",
  "Days together",
  "What kept them apart",
] as const;

function distances({ metres, requiredM, standing }: Source, unit: LengthUnit): readonly string[] {
  if (requiredM === undefined) return [formatDistance(metres, unit), "not known"];
  const shown = formatMeasured(metres, requiredM, standing !== "distance", unit);
  return [`${shown.measured}${shown.after}`, `${shown.required}${shown.after}`];
}

function togetherText({ togetherDays, seenTogetherDays = 0 }: Source): string {
  if (togetherDays === undefined) return "not known";
  if (togetherDays === 0) return "0";
  if (seenTogetherDays >= togetherDays) return `${togetherDays}, all seen`;
  return seenTogetherDays === 0
    ? `${togetherDays}, by forecast`
    : `${togetherDays}, ${seenTogetherDays} of them seen`;
}

function frozenBloomText({ first, last, opens, closes }: Frozen): string {
  const on = opens === closes ? BASIS[opens] : `${BASIS[opens]}, ${BASIS[closes]}`;
  return `${longDate(first)} to ${longDate(last)} (${on})`;
}

function coverText({ cover, first, last }: Cover): string {
  const name = cover === "hand" ? "taped by hand" : cover;
  return last === undefined
    ? `${name} from ${longDate(first)}`
    : `${name} ${longDate(first)} to ${longDate(last)}`;
}
