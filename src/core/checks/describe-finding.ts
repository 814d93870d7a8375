/** Findings to words: the one place that makes them, for screen, paper and command line alike. */
import { shortDate } from "../model/day.ts";
import { cautions } from "../kinds/cautions.ts";
import { levelEntry } from "../kinds/levels.ts";
import { citedAs } from "../kinds/sources.ts";
import type { LengthUnit } from "../model/length.ts";
import { formatDistance, formatLength, formatMeasured } from "../model/length.ts";
import type { Layout, Plan } from "../model/plan.ts";
import { describeCrowded, describeOutside } from "./describe-ground.ts";
import { describeVolunteers } from "./describe-volunteers.ts";
import { days, slackWords, togetherWords } from "./day-words.ts";
import type { Finding, IsolationFinding, Severity } from "./finding.ts";
import type { IsolationPair } from "./isolation-pair.ts";
import type { Stand } from "./stand.ts";

/** What words need beside the finding: names by id, stands for kinds and dates, the display unit. */
export interface Wording {
  readonly nameOf: (id: string) => string;
  readonly standOf: (id: string) => Stand | undefined;
  readonly unit: LengthUnit;
}

export interface Description {
  /** One line that names the subjects. */
  readonly title: string;
  /** Plain sentences: what was measured against what, from which source, and what it means. */
  readonly sentences: readonly string[];
}

/** A sign beside every severity, so that colour is never the only one. */
export const severitySign: Readonly<Record<Severity, string>> = {
  conflict: "✕",
  caution: "!",
  unknown: "?",
};

export const severityWord: Readonly<Record<Severity, string>> = {
  conflict: "conflict",
  caution: "caution",
  unknown: "unknown",
};

/** Wording for a plan's layout as it was checked. */
export function wordingFor(
  plan: Plan,
  layout: Layout,
  standOf: (id: string) => Stand | undefined,
): Wording {
  const varieties = new Map(plan.varieties.map((variety) => [variety.id, variety.name]));
  const names = new Map<string, string>();
  for (const planting of layout.plantings) {
    names.set(planting.id, `${planting.code} ${varieties.get(planting.variety) ?? ""}`.trim());
  }
  for (const bed of layout.beds) names.set(bed.id, `bed ${bed.code}`);
  for (const surrounding of plan.surroundings) names.set(surrounding.id, surrounding.label);
  return {
    nameOf: (id) => names.get(id) ?? (id === "site" ? "the site" : id),
    standOf,
    unit: plan.units,
  };
}

export function describeFinding(finding: Finding, wording: Wording): Description {
  const { nameOf, unit } = wording;
  switch (finding.check) {
    case "isolation":
      return describeIsolation(finding, wording);
    case "missing-bloom":
      return {
        title: `${nameOf(finding.subject)} has no bloom dates`,
        sentences: [
          `It lies ${closeness(finding, listed(finding.against.map(nameOf)), unit)}, so only time could keep them apart, and that cannot be told without dates.`,
          "Type a sowing or planting date, or its bloom dates.",
        ],
      };
    case "missing-figure":
      return {
        title: `${nameOf(finding.subject)} has no isolation distance`,
        sentences: [
          `Nothing published is known here for ${wording.standOf(finding.subject)?.kind.name ?? "this kind"} at this purity level, and ${listed(finding.against.map(nameOf))} may cross with it.`,
          "Type your own distance for the planting or its variety.",
        ],
      };
    case "outside":
      return describeOutside(finding, nameOf, unit);
    case "overlap":
      return {
        title: `${listed(finding.subjects.map(nameOf))} lie on the same ground`,
        sentences: [`They overlap by ${formatLength(finding.measuredM ?? 0, unit)}.`],
      };
    case "crowded":
      return describeCrowded(finding, nameOf(finding.subject), unit);
    case "hybrid-seed":
      return {
        title: `${nameOf(finding.subject)} is a hybrid kept for seed`,
        sentences: [
          "Seed of a hybrid does not come true: the next generation splits into many types. It is not checked as a seed parent; its pollen still counts against others.",
        ],
      };
    case "cover-care":
      return describeCover(finding.trouble, nameOf(finding.subject), wording, finding.subject);
    case "population":
      return describePopulation(finding, wording);
    case "late-seed":
      return {
        title: `Seed of ${nameOf(finding.subject)} may ripen after the first frost`,
        sentences: [
          finding.ripeLikely > finding.frost
            ? `The first seed is likely ripe on ${shortDate(finding.ripeLikely)}, the first frost is given as ${shortDate(finding.frost)}.`
            : `The first seed may take until ${shortDate(finding.ripeLatest)}, the first frost is given as ${shortDate(finding.frost)}.`,
          "Start it earlier, or be ready to finish it under cover.",
        ],
      };
    case "biennial":
      return {
        title: `${nameOf(finding.subject)} will not flower in its first year`,
        sentences: [
          `${capital(wording.standOf(finding.subject)?.kind.name ?? "This kind")} sown this season makes roots or leaves first and flowers after a winter. Set out overwintered plants for seed, or mark this planting as first-year.`,
        ],
      };
    case "volunteers":
      return describeVolunteers(finding, nameOf(finding.subject), wording.standOf(finding.subject));
    case "safety": {
      const caution = cautions.find((entry) => entry.id === finding.caution);
      return {
        title: caution?.title ?? finding.caution,
        sentences: [
          ...(caution ? [caution.text] : []),
          `It concerns ${listed(finding.subjects.map(nameOf))}.`,
        ],
      };
    }
  }
}

function describeIsolation(finding: IsolationFinding, wording: Wording): Description {
  const worst = finding.atRisk[0] as IsolationPair;
  const { nameOf } = wording;
  const isBothWays = finding.atRisk.length > 1;
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
        ? [otherWaySentence(finding.atRisk[1] as IsolationPair, worst, wording)]
        : [`Only seed of ${parent} is at risk.`]),
      ...relationSentence(worst, wording),
    ],
  };
}

function measureSentence(pair: IsolationPair, wording: Wording): string {
  const { unit } = wording;
  if (pair.requirement === null) return `${formatDistance(pair.distanceM, unit)} apart.`;
  const shown = formatMeasured(pair.distanceM, pair.requirement.metres, true, unit);
  return `${shown.measured}${shown.after} apart, needs ${shown.required}${shown.after} (${requirementText(pair, wording)}).`;
}

/** Where the required distance of a pair comes from, in a few words. */
export function requirementText(pair: IsolationPair, wording: Wording): string {
  const requirement = pair.requirement;
  if (requirement === null) return "no figure known";
  const stand = wording.standOf(pair.seedParent);
  const form = stand?.kind.forms?.find((entry) => entry.id === stand.variety?.form)?.name;
  const kind = [form, stand?.kind.name].filter((part) => part !== undefined).join(" ");
  const origin = requirement.source === null ? requirement.why : citedAs(requirement.source);
  const figure = stand?.kind.isolation.find(({ id }) => id === requirement.figure);
  const picked =
    requirement.isPicked === true && figure
      ? `${levelEntry(figure.figureClass).name} as picked for this variety, `
      : "";
  const changed = (requirement.adjustments ?? []).map((step) => `; ${step.why}`).join("");
  const from = `${picked}${origin}${changed}`;
  return kind === "" ? from : `${kind}, ${from}`;
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
  const needed = formatDistance(other.requiredM ?? 0, wording.unit);
  const { isPicked, adjustments } = other.requirement ?? {};
  // What the grower chose is named wherever it counts.
  const chosen =
    isPicked === true || adjustments !== undefined ? ` (${requirementText(other, wording)})` : "";
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

function describeCover(
  trouble: "no-pollinators" | "wind-passes",
  name: string,
  { standOf }: Wording,
  subject: string,
): Description {
  const kind = standOf(subject)?.kind.name ?? "this kind";
  return trouble === "wind-passes"
    ? {
        title: `A cage does not isolate ${name}`,
        sentences: [`Pollen of ${kind} travels on the wind and passes the mesh. Bags do stop it.`],
      }
    : {
        title: `${name} needs pollinators under its cover`,
        sentences: [
          `Insects cannot reach it, and ${kind} sets little seed alone. Introduce pollinators, pollinate by hand, or open two cages on alternate days.`,
        ],
      };
}

function describePopulation(
  finding: Extract<Finding, { check: "population" }>,
  { standOf, nameOf }: Wording,
): Description {
  const stand = standOf(finding.subjects[0] ?? "");
  const name = stand?.variety?.name ?? nameOf(finding.variety);
  const why =
    finding.floor === "viable"
      ? "below that the seed is hardly worth keeping"
      : "fewer will do for a year, but the variety narrows over the years";
  return {
    title: `${name}: ${finding.plants} of ${finding.needed} seed plants`,
    sentences: [
      `${finding.needed} plants of ${stand?.kind.name ?? "this kind"} are advised (${citedAs(finding.source)}); ${why}.`,
    ],
  };
}

/** What keeps a pair apart, in words: the answer to "on what does this rest?". */
export function describeStanding(pair: IsolationPair, wording: Wording): string {
  const { unit } = wording;
  const measured =
    pair.requiredM === null
      ? `${formatDistance(pair.distanceM, unit)} apart`
      : (() => {
          const isShort = pair.standing !== "distance";
          const shown = formatMeasured(pair.distanceM, pair.requiredM, isShort, unit);
          return `${shown.measured} of ${shown.required}${shown.after}`;
        })();
  switch (pair.standing) {
    case "distance":
      return `clear by distance: ${measured}`;
    case "time":
      return `clear by time alone: ${days(pair.gapDays ?? 0)} between blooms, ${days(pair.guardDays)} wanted, ${slackWords(pair)} (${measured})`;
    case "cover":
      return `clear by cover alone (${measured})`;
    case "conflict":
      return `not clear: ${measured}, ${togetherWords(pair)}`;
    case "unknown":
      return `cannot be told: ${pair.requiredM === null ? "no distance known" : "bloom dates missing"} (${measured})`;
  }
}

/** How far something lies from others, and how far it should: the nearest counts. */
function closeness(finding: Finding, others: string, unit: LengthUnit): string {
  const measuredM = finding.measuredM ?? 0;
  if (finding.requiredM === null) return `${formatDistance(measuredM, unit)} from ${others}`;
  const shown = formatMeasured(measuredM, finding.requiredM, true, unit);
  return `${shown.measured}${shown.after} from ${others} where ${shown.required}${shown.after} are needed`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "a", "a and b", "a, b and 3 more". */
export function listed(names: readonly string[]): string {
  if (names.length <= 1) return names[0] ?? "";
  if (names.length === 2) return `${names[0]} and ${names[1]}`;
  if (names.length === 3) return `${names[0]}, ${names[1]} and ${names[2]}`;
  return `${names[0]}, ${names[1]} and ${names.length - 2} more`;
}
