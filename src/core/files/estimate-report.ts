/** How much would cross, as `wideberth check --estimate` prints it. */
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import type { Shares } from "../crossing-share/distance-bins.ts";
import {
  type CrossingEstimate,
  type LeftOut,
  crossingEstimates,
} from "../crossing-share/estimate.ts";
import { estimateWords, sourceWords } from "../crossing-share/estimate-words.ts";
import { PLANTS_UNSAID, offTypeWords, seeOneWords } from "../crossing-share/off-type-words.ts";
import { CROSSING_CAUTION, LEAST_SHARE } from "../crossing-share/share-words.ts";
import type { Trial } from "../crossing-share/trials.ts";

type Id = string | number;

/** Shares of all seed, 0 to 1, two significant figures; null: not told, or below one in a million. */
interface ReportShares {
  readonly lower: number | null;
  readonly upper: number | null;
}

/** One seed parent. Field names are a contract: see docs/command-line.md. */
interface ReportEstimate {
  readonly seedParent: Id;
  /** `estimate`: shares are given; `trials`: only what trials found, perhaps none. */
  readonly way: CrossingEstimate["way"];
  readonly by: "maize" | "rape" | "turnip" | null;
  readonly shares: ReportShares | null;
  readonly isBeyondTrials: boolean | null;
  /** It may be more than the upper end. */
  readonly isOpenAbove: boolean | null;
  readonly sources: readonly {
    readonly pollenSource: Id;
    readonly distanceM: number;
    readonly shares: ReportShares;
  }[];
  readonly leftOut: readonly { readonly pollenSource: Id; readonly why: LeftOut["why"] }[];
  readonly trials: readonly Trial[];
  /** The rule's verdict first. */
  readonly sentences: readonly string[];
}

export function estimateReport(
  checked: CheckedLayout,
  idOf: (id: string) => Id,
): { readonly estimates: readonly ReportEstimate[]; readonly caution: string } {
  const { result, book } = checked;
  const wording = wordingOf(checked);
  const estimates = crossingEstimates(result.stands, book).map((estimate): ReportEstimate => {
    const { verdict, headline, sentences } = estimateWords(estimate, result, wording);
    const isShared = estimate.way === "estimate";
    return {
      seedParent: idOf(estimate.seedParent),
      way: estimate.way,
      by: isShared ? estimate.by : null,
      shares: isShared ? reportShares(estimate.shares) : null,
      isBeyondTrials: isShared ? estimate.isBeyondTrials : null,
      isOpenAbove: isShared ? estimate.isOpenAbove : null,
      sources: isShared
        ? estimate.bySource.map(({ source, distanceM, shares }) => ({
            pollenSource: idOf(source),
            distanceM,
            shares: reportShares(shares),
          }))
        : [],
      leftOut: estimate.leftOut.map(({ source, why }) => ({ pollenSource: idOf(source), why })),
      trials: isShared ? [] : estimate.trials,
      sentences: [verdict, headline, ...sentences],
    };
  });
  return { estimates, caution: CROSSING_CAUTION };
}

function reportShares([lower, upper]: Shares): ReportShares {
  const told = (share: number) => (share < LEAST_SHARE ? null : Number(share.toPrecision(2)));
  return { lower: told(lower), upper: told(upper) };
}

/** The same in words, line by line. */
export function* estimateLines(checked: CheckedLayout): Generator<string> {
  const { result, book } = checked;
  const wording = wordingOf(checked);
  yield "\nHow much would cross:\n";
  yield `  ${CROSSING_CAUTION}\n`;
  for (const estimate of crossingEstimates(result.stands, book)) {
    const { verdict, headline, sentences, shares } = estimateWords(estimate, result, wording);
    const plants = wording.standOf(estimate.seedParent)?.planting?.plants ?? PLANTS_UNSAID;
    const meaning = shares === null ? [] : [offTypeWords(plants, shares), seeOneWords(shares)];
    const sources = sourceWords(estimate, result, wording);
    yield `  ${wording.nameOf(estimate.seedParent)}\n`;
    const several = sources.length > 1 ? sources : [];
    for (const sentence of [verdict, headline, ...several, ...sentences, ...meaning]) {
      yield `    ${sentence}\n`;
    }
  }
}
