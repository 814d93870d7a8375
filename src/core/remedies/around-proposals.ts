/**
 * Ways out of what flowers around the beds: cut a wild plant or volunteer before it opens, or ask
 * whoever grows the other crop. Only of what can be reached; what rests on somebody's yes says so.
 */
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import type { Stand } from "../checks/stand.ts";
import { changeSurrounding } from "../edits/object-edits.ts";
import { outlineContains, outlineOf, shapeCentre } from "../geometry/outline.ts";
import { formatDistance } from "../model/length.ts";
import type { Plan, Surrounding } from "../model/plan.ts";
import { cutEarly, wildCutSource } from "../practice/cut-early.ts";
import { NO_COST, type Proposal } from "./remedy.ts";
import { wayWords as words } from "./way-words.ts";

/** Hours a season, roughly: looking every week; a talk over the fence. Ours. */
const WORK = { cut: 12, ask: 15, askSame: 18 } as const;

/** Whether the grower can cut it: by what is said of it, else by whether it lies within the plot. */
export function reachOf(
  { site }: Pick<Plan, "site">,
  surrounding: Surrounding,
): "ours" | "ask" | "none" {
  if (surrounding.reach !== undefined) return surrounding.reach;
  const { x, y } = shapeCentre(surrounding.outline);
  const isWithin = site.outline !== undefined && outlineContains(outlineOf(site.outline), x, y);
  return isWithin ? "ours" : "ask";
}

/** @param parent the seed parent that takes its pollen, of the finding looked at */
export function aroundProposals(
  context: CheckedLayout,
  stand: Stand,
  parent: Stand | undefined,
): readonly Proposal[] {
  const { surrounding, bloom, kind } = stand;
  if (!surrounding || !bloom || surrounding.flowering !== "yes") return [];
  const reach = reachOf(context.plan, surrounding);
  if (reach === "none") return [];
  const cut = cutEarly(kind).value;
  if (cut === "weed" || reach === "ours") return [cutProposal(context, stand, surrounding, reach)];
  return [
    ...(cut === "eaten before" ? [askCut(stand, surrounding)] : []),
    ...askSame(stand, surrounding, parent),
  ];
}

function cutProposal(
  context: CheckedLayout,
  { id, kind, bloom }: Stand,
  surrounding: Surrounding,
  reach: "ours" | "ask",
): Proposal {
  const isWild = cutEarly(kind).value === "weed";
  const title = words.cutWild(surrounding.label);
  const reachM = furthestAsked(context, id);
  const { unit } = wordingOf(context);
  const outer = bloom?.outer ?? { first: 0, last: 0 };
  return {
    id: `cut:${surrounding.id}`,
    way: "cut",
    title,
    notes: [
      words.cutWildNote(outer.first - 1, outer.last),
      ...(reach === "ask" ? [words.leave] : []),
      ...(isWild && reachM !== null ? [words.cutWildWalk(formatDistance(reachM, unit))] : []),
      ...(isWild ? [words.cutWildSource(wildCutSource(kind)), words.regulated] : []),
    ],
    edit: cutEdit(surrounding, title, undefined),
    cost: { ...NO_COST, work: WORK.cut },
    touches: [id],
  };
}

/** Cut this year only: that it is the same every year would carry the cut into the next. */
function cutEdit(surrounding: Surrounding, title: string, remark: string | undefined) {
  return changeSurrounding(
    surrounding.id,
    {
      flowering: "cut",
      everyYear: undefined,
      ...(remark === undefined ? {} : noted(surrounding, remark)),
    },
    title,
  );
}

function noted({ note }: Surrounding, remark: string): Pick<Surrounding, "note"> {
  return { note: note === undefined ? remark : `${note} ${remark}` };
}

function askCut({ id, kind, bloom }: Stand, surrounding: Surrounding): Proposal {
  const title = words.askCut(surrounding.label, kind.name);
  return {
    id: `ask-cut:${surrounding.id}`,
    way: "ask",
    title,
    notes: [words.askCutNote((bloom?.outer.first ?? 0) - 1)],
    edit: cutEdit(surrounding, title, words.askedNote("cut")),
    cost: { ...NO_COST, work: WORK.ask, askedOf: id },
    touches: [id],
  };
}

/**
 * The neighbour grows our variety, from our seed. Not at stock level, where another lot of the same
 * name counts as a stranger, and not of a hybrid.
 */
function askSame(
  { id, kind }: Stand,
  surrounding: Surrounding,
  parent: Stand | undefined,
): readonly Proposal[] {
  const variety = parent?.variety;
  if (!variety || variety.hybrid === true || parent.level === "stock" || parent.keepApart)
    return [];
  // To be asked for another sort of the same crop is one thing, for another crop a different one.
  if (parent.kind.id !== kind.id) return [];
  const title = words.askSame(surrounding.label, variety.name);
  return [
    {
      id: `ask-grow:${surrounding.id}:${variety.id}`,
      way: "ask",
      title,
      notes: [words.askSameNote],
      edit: changeSurrounding(
        id,
        {
          varietyName: variety.name,
          everyYear: undefined,
          ...noted(surrounding, words.askedNote("same")),
        },
        title,
      ),
      cost: { ...NO_COST, work: WORK.askSame, askedOf: id },
      touches: [id],
    },
  ];
}

/** The furthest that any seed parent asks to be from it, metres. */
function furthestAsked({ result }: CheckedLayout, sourceId: string): number | null {
  const asked = result.pairs.flatMap(({ pollenSource, requiredM }) =>
    pollenSource === sourceId && requiredM !== null ? [requiredM] : [],
  );
  return asked.length === 0 ? null : Math.max(...asked);
}
