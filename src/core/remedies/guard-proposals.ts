/**
 * Ways out that shorten the distance asked for: guard rows of the same variety, or a barrier, and
 * only where the regulation whose figure is asked for gives a shorter one for it.
 */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { type Finding, checkOf } from "../checks/all-checks.ts";
import type { Stand } from "../checks/stand.ts";
import {
  type OfferedAdjustment,
  canActOn,
  offeredAdjustments,
} from "../distances/stated-adjustments.ts";
import { placeWords } from "../distances/distance-words.ts";
import { changePlantings } from "../edits/object-edits.ts";
import { METRES_PER_FOOT } from "../model/length.ts";
import type { StatedAdjustment } from "../model/plan.ts";
import { NO_COST, type Proposal } from "./remedy.ts";
import { wayWords as words } from "./way-words.ts";

/** Hours a season, roughly: a row is sown, weeded and looked after like the crop; a hedge is there. */
const WORK = { row: 5, barrier: 20 } as const;
/** More rows are printed by no table. */
const MOST_ROWS = 16;
/** Adjustments that speak of what stands between; the others of what the neighbour grows. */
const BARRIERS: ReadonlySet<string> = new Set(["watermelon-barriers"]);

export function guardProposals(
  { layout }: CheckedLayout,
  { planting, kind, requirement }: Stand,
  finding: Finding,
): readonly Proposal[] {
  const pair = (checkOf(finding).pairsAtRisk?.(finding) ?? []).find(
    ({ seedParent }) => seedParent === planting?.id,
  );
  if (!planting || !pair || requirement === null || requirement.isFloor === true) return [];
  return offeredAdjustments(kind.id).flatMap((offer): readonly Proposal[] => {
    if (!canActOn(offer, requirement.source)) return [];
    if (planting.adjustments?.some(({ id }) => id === offer.id)) return [];
    const stated = statedFor(offer, pair.distanceM);
    if (!stated) return [];
    const rows = stated.borderRows;
    const title =
      rows === undefined ? words.barrier(planting.code) : words.guard(planting.code, rows);
    const note = rows === undefined ? words.barrierNote : words.guardNote;
    const adjustments = [...(planting.adjustments ?? []), stated];
    return [
      {
        id: `guard:${planting.id}:${offer.id}`,
        way: "guard",
        title,
        notes: [note(offer.condition, placeWords(offer))],
        edit: changePlantings(layout.id, [planting.id], { adjustments }, title),
        cost: { ...NO_COST, work: rows === undefined ? WORK.barrier : rows * WORK.row },
        touches: [planting.id],
      },
    ];
  });
}

/** The fewest rows that make the distance enough; null where none do, or it is no guard at all. */
function statedFor(offer: OfferedAdjustment, distanceM: number): StatedAdjustment | null {
  if (offer.asks.includes("borderRows")) {
    for (let borderRows = 1; borderRows <= MOST_ROWS; borderRows += 1) {
      const effect = offer.effectOf({ id: offer.id, borderRows });
      if (effect?.kind === "at most" && effect.feet * METRES_PER_FOOT <= distanceM) {
        return { id: offer.id, borderRows };
      }
    }
    return null;
  }
  return BARRIERS.has(offer.id) ? { id: offer.id } : null;
}
