/** Pairs of stands in words: what keeps them apart, and where the distance they need comes from. */
import { figureWords, pickedWords, stepWords } from "../distances/distance-words.ts";
import { levelEntry } from "../kinds/levels.ts";
import { citedAs } from "../kinds/sources.ts";
import { formatDistance, formatMeasured } from "../model/length.ts";
import { days, restsWords, slackWords, togetherWords } from "./day-words.ts";
import type { FindingBase } from "./finding.ts";
import { type IsolationPair, type Requirement, lacksFigure } from "./isolation-pair.ts";
import { type Brief, type Wording, measuredBrief } from "./wording.ts";

/** In full: which figure and why this one, and what changed it. */
export function whyWords(requirement: Requirement): string {
  const { from, picked, reason, adjustments = [], increase } = requirement;
  const typed = from === "planting" ? "typed for this planting" : "typed for this variety";
  const figure = picked ? pickedWords(picked) : reason ? figureWords(reason) : typed;
  return [
    figure,
    ...adjustments.map(stepWords),
    ...(increase === undefined ? [] : [`more from this wild kind: ${increase}`]),
  ].join("; ");
}

/** Where the required distance of a pair comes from, in a few words. */
export function requirementText(pair: IsolationPair, wording: Wording): string {
  const requirement = pair.requirement;
  if (requirement === null) return "no figure known";
  const stand = wording.standOf(pair.seedParent);
  const form = stand?.kind.forms?.find((entry) => entry.id === stand.variety?.form)?.name;
  const kind = [form, stand?.kind.name].filter((part) => part !== undefined).join(" ");
  const origin = requirement.source === null ? whyWords(requirement) : citedAs(requirement.source);
  const picked = requirement.picked
    ? `${levelEntry(requirement.picked.figureClass).name} as picked for this variety, `
    : "";
  const changed = (requirement.adjustments ?? []).map((step) => `; ${stepWords(step)}`).join("");
  const more =
    requirement.increase === undefined ? "" : `; from this wild kind: ${requirement.increase}`;
  const from = `${picked}${origin}${changed}${more}`;
  return kind === "" ? from : `${kind}, ${from}`;
}

/** What keeps a pair apart, in words: the answer to "on what does this rest?". */
export function describeStanding(pair: IsolationPair, wording: Wording): string {
  const { unit } = wording;
  const measured =
    pair.requiredM === null
      ? `${formatDistance(pair.distanceM, unit)} apart`
      : (() => {
          const isShort = pair.standing !== "distance" && !lacksFigure(pair);
          const shown = formatMeasured(pair.distanceM, pair.requiredM, isShort, unit);
          return `${shown.measured} of ${shown.required}${shown.after}`;
        })();
  switch (pair.standing) {
    case "distance":
      return `clear by distance: ${measured}`;
    case "time":
      return `clear by time alone: ${days(pair.gapDays ?? 0)} between blooms, ${days(pair.guardDays)} wanted, ${slackWords(pair)}${pair.time ? `; ${restsWords(pair.time, wording.nameOf)}` : ""} (${measured})`;
    case "cover":
      return `clear by cover alone (${measured})`;
    case "conflict":
      return `not clear: ${measured}, ${togetherWords(pair)}`;
    case "unknown":
      return `cannot be told: ${whyUntold(pair)} (${measured})`;
  }
}

function whyUntold(pair: IsolationPair): string {
  if (lacksFigure(pair)) return "no distance known that is enough";
  return pair.overlapDays === null ? "bloom dates missing" : "bloom dated in another season";
}

/** Both names, and `1.6 of 7.6 m, 121 days`: open together, or said to lie between the blooms. */
export function pairBrief(
  pair: IsolationPair,
  finding: Pick<FindingBase, "measuredM" | "requiredM">,
  { nameOf, unit }: Wording,
): Brief {
  const distance = measuredBrief(finding, unit);
  const together =
    pair.overlapDays === null
      ? []
      : pair.overlapDays > 0
        ? [days(pair.overlapDays)]
        : [`${days(pair.gapDays ?? 0)} between`];
  return {
    title: `${nameOf(pair.seedParent)} and ${nameOf(pair.pollenSource)}`,
    figures: [distance, ...together].join(", "),
  };
}
