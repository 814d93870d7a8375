/** Words for distances that are asked for otherwise than by one plain figure. */
import { formatDistance } from "../model/length.ts";
import type { IsolationPair } from "./isolation-pair.ts";
import { type Description, type Wording, listed } from "./wording.ts";

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
        ? `Nothing published is known here for ${kind} at this purity level. What is published for a laxer one, ${formatDistance(requirement.metres, unit)}, is kept, but whether that is enough is not known, and ${others} may cross with it.`
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
