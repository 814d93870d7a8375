/** An estimate in words: the rule's verdict first, then a range or what trials found, then its limits. */
import { overlapDays } from "../calendar/bloom-window.ts";
import type { CheckResult } from "../checks/run-checks.ts";
import type { IsolationPair } from "../checks/isolation-pair.ts";
import { describeStanding } from "../checks/pair-words.ts";
import type { Stand } from "../checks/stand.ts";
import { type Wording, capital, listed } from "../checks/wording.ts";
import { outlineArea } from "../geometry/outline.ts";
import { formatDistance } from "../model/length.ts";
import type { Shares } from "./distance-bins.ts";
import type { CrossingEstimate, LeftOut, ShareEstimate, TrialsFound } from "./estimate.ts";
import { rarityRange, twoFigures } from "./share-words.ts";
import type { Trial } from "./trials.ts";
import { counted, formOf } from "../words/plurals.ts";

export interface EstimateWords {
  /** What the rule says. Said before anything else. */
  readonly verdict: string;
  /** The range in words, or that there is none. */
  readonly headline: string;
  /** What it rests on, what was left out, where it is rougher than elsewhere. */
  readonly sentences: readonly string[];
  /** For the bar; null where no number is given. */
  readonly shares: Shares | null;
}

const BY_WORDS: Readonly<Record<ShareEstimate["by"], string>> = {
  maize: "by trials with maize in larger fields",
  rape: "by trials with rape in fields",
  turnip: "by trials with rape and turnip rape in fields",
};

/** All sources of a seed parent together. */
export function estimateWords(
  estimate: CrossingEstimate,
  { pairs }: Pick<CheckResult, "pairs">,
  wording: Wording,
): EstimateWords {
  const verdict = ruleWords(
    pairs.filter(({ seedParent }) => seedParent === estimate.seedParent),
    wording,
  );
  if (estimate.way === "trials") {
    return { verdict, ...trialsWords(estimate, wording), shares: null };
  }
  const { shares, isBeyondTrials } = estimate;
  return {
    verdict,
    headline: headlineOf(shares, estimate, isBeyondTrials),
    sentences: [...roughWords(estimate, wording), ...leftOutWords(estimate.leftOut, wording)],
    shares,
  };
}

/** Each source by itself, the largest share first: the rule's word on it, then its range. */
export function sourceWords(
  estimate: CrossingEstimate,
  { pairs }: Pick<CheckResult, "pairs">,
  wording: Wording,
): readonly string[] {
  if (estimate.way === "trials") return [];
  const standings = new Map(
    pairs
      .filter(({ seedParent }) => seedParent === estimate.seedParent)
      .map((pair) => [pair.pollenSource, describeStanding(pair, wording)]),
  );
  return [...estimate.bySource]
    .sort((a, b) => b.shares[1] - a.shares[1])
    .map(({ source, distanceM, shares }) => {
      const rule =
        standings.get(source) ??
        `clear by distance: ${formatDistance(distanceM, wording.unit)} apart`;
      return `${wording.nameOf(source)}: ${rule}; by itself ${rarityRange(shares)}.`;
    });
}

/** What the rule says of all sources of one seed parent. */
function ruleWords(pairs: readonly IsolationPair[], wording: Wording): string {
  const [only] = pairs;
  if (only && pairs.length === 1) {
    return `The rule, of ${wording.nameOf(only.pollenSource)}: ${describeStanding(only, wording)}.`;
  }
  const count = (standing: IsolationPair["standing"]) =>
    pairs.filter((pair) => pair.standing === standing).length;
  const said = [
    [count("conflict"), "too near"],
    [count("unknown"), "not to be told"],
    [count("time"), "clear by time alone"],
    [count("cover"), "clear by cover alone"],
  ] as const;
  const parts = said.flatMap(([many, what]) =>
    many === 0 ? [] : [`${counted(many, { one: "source", other: "sources" })} ${what}`],
  );
  return parts.length === 0
    ? "The rule: no source is nearer than it should be."
    : `The rule: ${parts.join(", ")}.`;
}

function headlineOf(
  shares: Shares,
  { by, isOpenAbove }: Pick<ShareEstimate, "by" | "isOpenAbove">,
  isBeyond: boolean,
): string {
  const range = `${rarityRange(shares)} seeds${isOpenAbove ? ", perhaps more" : ""}`;
  return isBeyond
    ? `Not measured this far. Carried on beyond the trials it would be ${range}.`
    : `${capital(range)}, ${BY_WORDS[by]}.`;
}

/** Where the estimate is rougher than elsewhere. */
function roughWords({ seedParent, bySource, isOpenAbove }: ShareEstimate, wording: Wording) {
  const parent = wording.standOf(seedParent);
  const onGround = bySource.filter(({ distanceM }) => distanceM === 0);
  const apart = bySource.filter(({ source }) => {
    const sheds = wording.standOf(source)?.sheds;
    return parent?.receives && sheds && overlapDays(parent.receives.outer, sheds.outer) === 0;
  });
  const undated = bySource.filter(({ source }) => !wording.standOf(source)?.sheds);
  const noGround = [parent, ...bySource.map(({ source }) => wording.standOf(source))].filter(
    (stand) => stand !== undefined && isWithoutGround(stand),
  );
  const names = (entries: readonly { readonly source: string }[]) =>
    listed(entries.map(({ source }) => wording.nameOf(source)));
  return [
    ...(parent && !parent.receives
      ? ["When it flowers is not known: it may meet none of the pollen or all of it."]
      : []),
    ...(undated.length > 0
      ? [
          `When ${names(undated)} ${formOf(undated.length, { one: "flowers", other: "flower" })} is not known.`,
        ]
      : []),
    ...(apart.length > 0
      ? [
          `By its dates ${names(apart)} ${formOf(apart.length, { one: "misses", other: "miss" })} its bloom: the number holds as long as the dates do, and late flowers were not measured.`,
        ]
      : []),
    ...(onGround.length > 0
      ? [
          `${capital(names(onGround))} ${formOf(onGround.length, { one: "touches", other: "touch" })} it or ${formOf(onGround.length, { one: "stands", other: "stand" })} on its ground, where estimates are roughest.`,
        ]
      : []),
    ...(noGround.length > 0
      ? [
          `Counted as one plant, as no ground is drawn: ${listed(noGround.map((stand) => wording.nameOf(stand?.id ?? "")))}.`,
        ]
      : []),
    ...(isOpenAbove
      ? ["The trial behind the upper end was made farther off: this near it may be more."]
      : []),
  ];
}

function isWithoutGround({ outline }: Stand): boolean {
  return !outline.hasInside || outlineArea(outline) === 0;
}

const LEFT_OUT: Readonly<Record<LeftOut["why"], string>> = {
  cover: "Left out as long as the cover holds",
  time: "Left out as long as the blooms miss each other",
  kind: "Left out, as crossing with that kind was not measured",
};

function leftOutWords(leftOut: readonly LeftOut[], { nameOf }: Wording): readonly string[] {
  return (["cover", "time", "kind"] as const).flatMap((why) => {
    const names = leftOut.filter((left) => left.why === why).map(({ source }) => nameOf(source));
    return names.length === 0 ? [] : [`${LEFT_OUT[why]}: ${listed(names)}.`];
  });
}

function trialsWords(
  { seedParent, trials, nearest, leftOut }: TrialsFound,
  wording: Wording,
): Pick<EstimateWords, "headline" | "sentences"> {
  const kind = wording.standOf(seedParent)?.kind.name ?? "this kind";
  const limits = leftOutWords(leftOut, wording);
  if (trials.length === 0) {
    return {
      headline: `No estimate: no trial that measured ${kind.toLowerCase()} by distance is known here.`,
      sentences: limits,
    };
  }
  const from = nearest
    ? ` The nearest source, ${wording.nameOf(nearest.source)}, is ${formatDistance(nearest.distanceM, wording.unit)} off.`
    : "";
  return {
    headline: `No number of ours; what trials found.${from}`,
    sentences: [...trials.map((trial) => trialWords(trial, wording)), ...limits],
  };
}

/** `3 m to 11 m: 0.28 percent of seeds (mean over the strip beside the source; ...)`. */
function trialWords({ metres, percent, as, design, study, isBait }: Trial, { unit }: Wording) {
  const [near, far] = metres.map((each) => formatDistance(each, unit));
  const where =
    metres[1] === 0 ? "Side by side" : near === far ? `At ${near}` : `${near} to ${far}`;
  const [low, high] = percent;
  const range = low === high ? twoFigures(low) : `${twoFigures(low)} to ${twoFigures(high)}`;
  const share =
    as === "found"
      ? "crossing seen, its share not printed"
      : high === 0
        ? "none found"
        : `${as === "below" ? "under " : ""}${range} percent of seeds`;
  const bait = isBait === true ? "; plants without pollen of their own" : "";
  return `${where}: ${share} (${design}${bait}; ${study}).`;
}

/**
 * `Crossed seed: now about 1 in 60; then about 1 in 3,000.`
 * @param after null: no number can be given any more; `no source`: nothing is left to cross with
 */
export function beforeAfterWords(before: Shares, after: Shares | "no source" | null): string {
  const now = `Crossed seed: now ${rarityRange(before)}`;
  if (after === null) return `${now}; then no number, as what is left was not measured.`;
  if (after === "no source") return `${now}; then nothing in this plan that could cross with it.`;
  return `${now}; then ${rarityRange(after)}.`;
}
