/** A way out over the years: one of two varieties is grown out in another season. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { Stand } from "../checks/stand.ts";
import { changeVariety, removeObjects } from "../edits/object-edits.ts";
import { heldBack } from "../beds/held-back.ts";
import { renewals } from "../lots/renewal.ts";
import { NO_COST, type Proposal } from "./remedy.ts";
import { yearWords as words } from "./year-words.ts";

/** A year's wait counts as more than a season's work. Ours. */
const WORK = 90;

/**
 * All of a variety's seed plantings are taken out and the variety waits. Not where its last lot
 * would die of it, nor where one of them is locked.
 */
export function yearProposals(
  { plan, layout, book }: CheckedLayout,
  { variety, kind, isSeedParent }: Stand,
): readonly Proposal[] {
  if (!variety || !isSeedParent) return [];
  const plots = layout.plantings.filter(
    (planting) => planting.variety === variety.id && planting.purpose === "seed",
  );
  const ids = plots.map(({ id }) => id);
  if (heldBack(plan, layout.id, ids, false).ids.size > 0) return [];
  const due = renewals(plan, book, plan.season.first).find(
    (renewal) => renewal.variety.id === variety.id,
  );
  if (due && due.seasonsLeft < 1 && due.cause !== "short") return [];
  const codes = plots.map(({ code }) => code);
  const title = words.title(variety.name, codes);
  const hasLots = plan.lots.some((lot) => lot.variety === variety.id && lot.state === "in stock");
  return [
    {
      id: `other-year:${variety.id}`,
      way: "other year",
      title,
      notes: [words.note, words.keeps(kind, hasLots, due)],
      edit: {
        title,
        apply: (before) =>
          changeVariety(variety.id, { waits: true }, title).apply(
            removeObjects(layout.id, ids, title).apply(before),
          ),
      },
      cost: { ...NO_COST, work: WORK, seedOf: variety.id },
      touches: ids,
    },
  ];
}
