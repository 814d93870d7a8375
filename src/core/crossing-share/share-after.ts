/** What an edit would do to the share of crossed seed. */
import { type CheckedLayout, recheckLayout } from "../checks/checked-layout.ts";
import type { IsolationPair } from "../checks/isolation-pair.ts";
import type { Edit } from "../edits/edit.ts";
import type { Shares } from "./distance-bins.ts";
import { type CrossingEstimate, crossingEstimate } from "./estimate.ts";
import { beforeAfterWords } from "./estimate-words.ts";

/** The estimate of one seed parent of a checked layout; null for what keeps no seed or crosses with nothing. */
export function estimateOf({ result, book }: CheckedLayout, id: string): CrossingEstimate | null {
  const stand = result.standById.get(id);
  return stand ? crossingEstimate(stand, result.stands, book) : null;
}

/** The seed parent at most risk among some pairs, with its range; null where none has a number. */
export function mostAtRisk(
  checked: CheckedLayout,
  pairs: readonly IsolationPair[],
): { readonly id: string; readonly shares: Shares } | null {
  const parents = [...new Set(pairs.map(({ seedParent }) => seedParent))];
  const known = parents.flatMap((id) => {
    const shares = sharesOf(estimateOf(checked, id));
    return shares ? [{ id, shares }] : [];
  });
  return known.reduce<(typeof known)[number] | null>(
    (worst, each) => (worst === null || each.shares[1] > worst.shares[1] ? each : worst),
    null,
  );
}

/**
 * A seed parent's share before and after an edit, in words; null where there is no number before,
 * or where the edit ends the keeping of its seed.
 */
export function shareAfterWords(
  checked: CheckedLayout,
  { id, shares }: { readonly id: string; readonly shares: Shares },
  edit: Edit,
): string | null {
  const after = recheckLayout(checked, edit.apply(checked.plan));
  if (!after?.result.standById.get(id)?.isSeedParent) return null;
  const estimate = estimateOf(after, id);
  return beforeAfterWords(shares, estimate === null ? "no source" : sharesOf(estimate));
}

function sharesOf(estimate: CrossingEstimate | null): Shares | null {
  return estimate?.way === "estimate" ? estimate.shares : null;
}
