/** Ways out in time: another day to sow or set out, within what the kind and the frosts allow. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { Finding } from "../checks/all-checks.ts";
import type { Stand } from "../checks/stand.ts";
import { moveStart } from "../edits/object-edits.ts";
import { NO_COST, type Proposal } from "./remedy.ts";
import {
  type StaggerOffer,
  isRipeInTime,
  staggerOffers,
  standStarting,
  startsWithin,
} from "./stagger.ts";
import { wayWords as words } from "./way-words.ts";

/** A start moved by more than this is called large. No source; our choice. */
const LARGE_SHIFT_DAYS = 42;
/** Another day in the calendar is little work; one that risks frost is more. Ours. */
const WORK = { date: 5, frost: 30 } as const;
/** Days between the starts offered where no pair tells which is wanted. */
const STEP_DAYS = 7;

/** The nearest starts that part the two stands of a finding. */
export function dateProposals(context: CheckedLayout, finding: Finding): readonly Proposal[] {
  const [first, second] = finding.subjects;
  if (first === undefined || second === undefined) return [];
  return staggerOffers(context, [first, second]).map((offer) => offerProposal(context, offer));
}

function offerProposal({ result }: CheckedLayout, offer: StaggerOffer): Proposal {
  const planting = result.standById.get(offer.planting)?.planting;
  const { startShift, start, frost } = offer;
  const isSown = planting?.start?.method !== "transplanted";
  return {
    id: `date:${offer.planting}:${start}`,
    way: "date",
    title: words.date(planting?.code ?? "", isSown, startShift, start),
    notes: [
      words.dateNote(offer.bloomShift, offer.gapDays),
      ...(Math.abs(startShift) > LARGE_SHIFT_DAYS ? [words.largeShift] : []),
      ...(offer.isBounded ? [] : [words.noFrosts]),
      ...(frost === "before last frost" ? [words.hardyStart] : []),
      ...(frost === "seed after first frost" ? [words.mayBeLate] : []),
    ],
    edit: offer.edit,
    cost: {
      ...NO_COST,
      work: frost === "seed after first frost" ? WORK.frost : WORK.date,
      days: Math.abs(startShift),
    },
    touches: [offer.planting],
  };
}

/**
 * Starts of one planting week by week, earlier and later, whatever it is to be parted from: for
 * whoever chooses among many ways at once.
 * @param mostDays furthest from the start it has now
 */
export function startProposals(
  context: CheckedLayout,
  stand: Stand,
  mostDays: number,
): readonly Proposal[] {
  const { planting } = stand;
  if (!planting?.start || planting.bloom || !stand.bloom || planting.locked === true) return [];
  const { date, method } = planting.start;
  return ([-1, 1] as const).flatMap((direction) => {
    const within = startsWithin(context.plan, stand, direction);
    if (!within) return [];
    const proposals: Proposal[] = [];
    const most = Math.min(mostDays, within.most);
    for (let shift = STEP_DAYS; shift <= most; shift += STEP_DAYS) {
      const start = date + direction * shift;
      if (start < within.first || start > within.last) continue;
      const moved = standStarting(context, planting, start);
      if (!moved?.bloom || !isRipeInTime(context.plan, moved)) continue;
      proposals.push({
        id: `date:${planting.id}:${start}`,
        way: "date",
        title: words.date(planting.code, method === "sown", direction * shift, start),
        notes: within.isBounded ? [] : [words.noFrosts],
        edit: moveStart(context.layout.id, planting, start),
        cost: { ...NO_COST, work: WORK.date, days: shift },
        touches: [planting.id],
      });
    }
    return proposals;
  });
}
