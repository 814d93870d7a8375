/** Words for two stands that would mix, for one that may, and for what its distance lacks. */
import { noBloomWords } from "../calendar/no-bloom-words.ts";
import { shortDate } from "../model/day.ts";
import {
  type LengthUnit,
  formatDistance,
  formatMeasured,
  formatRequired,
} from "../model/length.ts";
import { days } from "./day-words.ts";
import type { FindingBase } from "./finding.ts";
import type { IsolationPair } from "./isolation-pair.ts";
import { requirementText } from "./pair-words.ts";
import type { Stand } from "./stand.ts";
import { type Description, type Wording, listed } from "./wording.ts";

/** @param atRisk the directions at risk, one or two, worst first */
export function describeIsolation(atRisk: readonly IsolationPair[], wording: Wording): Description {
  const worst = atRisk[0] as IsolationPair;
  const { nameOf } = wording;
  const isBothWays = atRisk.length > 1;
  const [parent, source] = [nameOf(worst.seedParent), nameOf(worst.pollenSource)];
  return {
    title:
      worst.distanceM === 0
        ? `${parent} has no distance from ${source}`
        : `${parent} is too close to ${source}`,
    sentences: [
      measureSentence(worst, wording),
      bloomSentence(worst, wording),
      ...(isBothWays
        ? [otherWaySentence(atRisk[1] as IsolationPair, worst, wording)]
        : [`Only seed of ${parent} is at risk.`]),
      ...relationSentence(worst, wording),
      ...leakSentences(atRisk, wording),
      ...cageSentence(worst, wording),
      ...requirementAsks(worst, wording),
    ],
  };
}

/** How far apart, and how far they should be and by whom. */
export function measureSentence(pair: IsolationPair, wording: Wording): string {
  const { unit } = wording;
  if (pair.requirement === null) return `${formatDistance(pair.distanceM, unit)} apart.`;
  const shown = formatMeasured(pair.distanceM, pair.requirement.metres, true, unit);
  return `${shown.measured}${shown.after} apart, needs ${shown.required}${shown.after} (${requirementText(pair, wording)}).`;
}

function bloomSentence(pair: IsolationPair, { standOf }: Wording): string {
  if (pair.overlapDays === null) return "Bloom dates are missing.";
  if (pair.overlapDays === 0) {
    return `In bloom ${days(pair.gapDays ?? 0)} apart, but ${days(pair.guardDays)} are wanted.`;
  }
  const parent = standOf(pair.seedParent)?.receives?.outer;
  const source = standOf(pair.pollenSource)?.sheds?.outer;
  const span =
    parent && source
      ? ` (${shortDate(Math.max(parent.first, source.first))} to ${shortDate(Math.min(parent.last, source.last))})`
      : "";
  return `Open together ${days(pair.overlapDays)}${span}.`;
}

function otherWaySentence(other: IsolationPair, worst: IsolationPair, wording: Wording): string {
  const parent = wording.nameOf(other.seedParent);
  if (other.requiredM === worst.requiredM) return `Seed of ${parent} is at risk as well.`;
  const needed = formatRequired(other.requiredM ?? 0, wording.unit);
  const { picked, adjustments } = other.requirement ?? {};
  // What the grower chose is named wherever it counts.
  const chosen =
    picked !== undefined || adjustments !== undefined
      ? ` (${requirementText(other, wording)})`
      : "";
  return `Seed of ${parent} is at risk as well; it needs ${needed}${chosen}.`;
}

function relationSentence(pair: IsolationPair, { standOf }: Wording): readonly string[] {
  if (pair.relation === "freely") return [];
  const parent = standOf(pair.seedParent);
  const source = standOf(pair.pollenSource);
  const between = `${parent?.kind.species ?? ""} and ${source?.kind.species ?? ""}`;
  const note = parent && source ? parent.book.relation(parent.kind, source.kind).note : undefined;
  return [`${between} cross ${pair.relation}${note ? `: ${note}` : ""}.`];
}

/** Why a cage does not help: there is no room for its wall. */
function cageSentence(
  { distanceM, seedParent, pollenSource }: IsolationPair,
  { standOf }: Wording,
): readonly string[] {
  const stands = [standOf(seedParent), standOf(pollenSource)];
  const isCaged = stands.some((stand) => stand?.cover === "cage" && stand.carrier === "insects");
  if (distanceM > 0 || !isCaged) return [];
  return [
    "No cage can stand between two without ground between them: insects in it carry pollen from one to the other. Draw them apart, with room for a cage over each.",
  ];
}

/** What bags and tape over a source do not do: they are on the flowers whose seed is kept. */
function leakSentences(
  atRisk: readonly IsolationPair[],
  { nameOf, standOf }: Wording,
): readonly string[] {
  return atRisk.flatMap(({ pollenSource }) => {
    const cover = standOf(pollenSource)?.cover;
    if (cover !== "bags" && cover !== "hand") return [];
    const name = nameOf(pollenSource);
    const own =
      cover === "bags"
        ? `Bags keep pollen off the flowers of ${name} that are in them`
        : `Tape keeps pollen off the flowers of ${name} that are pollinated by hand`;
    return [`${own}; its other flowers are open and shed pollen as ever.`];
  });
}

/** How far something lies from others, and how far it should: the nearest counts. */
export function nearnessWords(finding: FindingBase, others: string, unit: LengthUnit): string {
  const measuredM = finding.measuredM ?? 0;
  if (finding.requiredM === undefined) return `${formatDistance(measuredM, unit)} from ${others}`;
  const shown = formatMeasured(measuredM, finding.requiredM, true, unit);
  return `${shown.measured}${shown.after} from ${others} where ${shown.required}${shown.after} are needed`;
}

/** Why nothing is told of its bloom, and what would tell it. */
export function missingBloomAdvice(stand: Stand | undefined): string {
  const why = stand?.whyNoBloom ?? "no-start";
  if (why === "no-start") {
    return stand?.surrounding
      ? "Type its bloom dates."
      : "Type a sowing or planting date, or its bloom dates.";
  }
  return `${noBloomWords(why)} Type its bloom dates.`;
}

export function describeMissingFigure(
  subject: string,
  against: readonly string[],
  { nameOf, standOf, unit }: Wording,
): Description {
  const stand = standOf(subject);
  const kind = stand?.kind.name ?? "this kind";
  const others = listed(against.map(nameOf));
  const requirement = stand?.requirement;
  return {
    title: `${nameOf(subject)} has no isolation distance`,
    sentences: [
      requirement
        ? `Nothing published is known here for ${kind} at this purity level. What is published for a laxer one, ${formatRequired(requirement.metres, unit)}, is kept, but whether that is enough is not known, and ${others} may cross with it.`
        : `Nothing published is known here for ${kind} at this purity level, and ${others} may cross with it.`,
      "Type your own distance for the planting or its variety.",
    ],
  };
}

/** What the grower is asked, where a missing word made the distance longer. */
export function requirementAsks(
  pair: IsolationPair,
  { nameOf, standOf }: Wording,
): readonly string[] {
  if (pair.requirement?.isFormUnsaid !== true) return [];
  const forms = standOf(pair.seedParent)?.kind.forms?.map(({ name }) => name) ?? [];
  return [
    `The flower form of ${nameOf(pair.seedParent)} is not said (${listed(forms)}), so the longest distance is taken: say which it is in the seed list.`,
  ];
}
