/** Ways out that keep pollen off: only covers that stop this kind's pollen and still give seed. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { Stand } from "../checks/stand.ts";
import { listed } from "../checks/wording.ts";
import { changePlantings } from "../edits/object-edits.ts";
import type { Cover } from "../model/plan.ts";
import { handWay } from "../practice/by-hand.ts";
import { keepsPollenOut } from "../practice/pollen-cover.ts";
import { mayOpenByTurns, underCover } from "../practice/under-cover.ts";
import { NO_COST, type Proposal } from "./remedy.ts";
import { wayWords as words } from "./way-words.ts";

/** Hours a season, roughly: put up and taken down, insects brought, flowers done one by one. Ours. */
const WORK = { bags: 20, cage: 30, hand: 45, brushed: 70, turns: 50 } as const;

/** Covers of one planting. */
export function coverProposals(context: CheckedLayout, stand: Stand): readonly Proposal[] {
  if (stand.planting === null) return [];
  return (["bags", "cage", "hand"] as const).flatMap((cover) => {
    if (stand.cover === cover || !keepsPollenOut(cover, stand.carrier)) return [];
    return coverProposal(context, stand, cover) ?? [];
  });
}

function coverProposal(
  { layout }: CheckedLayout,
  { id, planting, kind, isSeedParent }: Stand,
  cover: Exclude<Cover, "none">,
): Proposal | null {
  const rule = underCover(kind, cover);
  if (!planting || !rule) return null;
  // Grown to eat it is worth a cage only where fruit sets inside without insects, and no bags: they
  // keep pollen off its seed, which nobody wants, and leave the other flowers open.
  if (!isSeedParent && (cover !== "cage" || rule.value !== "itself")) return null;
  const title = words[cover](planting.code);
  return {
    id: `${cover}:${id}`,
    way: "cover",
    title,
    notes: [
      ...(cover === "cage" ? [words.cageNote] : []),
      ...(cover === "bags" ? [words.bagsNote] : []),
      ...coverNotes(kind, cover, rule),
    ],
    edit: changePlantings(layout.id, [id], { cover }, title),
    cost: { ...NO_COST, work: workOf(kind, cover), cages: cover === "cage" ? 1 : 0 },
    touches: [id],
  };
}

function coverNotes(
  kind: Stand["kind"],
  cover: Exclude<Cover, "none">,
  rule: NonNullable<ReturnType<typeof underCover>>,
): readonly string[] {
  if (cover === "hand") {
    const way = handWay(kind);
    return way ? [words.handNote(way)] : [];
  }
  const isShut = cover === "cage" && rule.value !== "itself";
  return [words.under(rule), ...(isShut ? [words.shut] : [])];
}

function workOf(kind: Stand["kind"], cover: Exclude<Cover, "none">): number {
  if (cover !== "hand") return WORK[cover];
  return handWay(kind)?.value === "umbels brushed" ? WORK.brushed : WORK.hand;
}

/**
 * Both of two seed parents bagged, or both pollinated by hand: either alone keeps its own seed true
 * and goes on shedding pollen on the other.
 */
export function bothCoveredProposals(
  { layout }: CheckedLayout,
  stands: readonly [Stand, Stand],
): readonly Proposal[] {
  const codes = stands.flatMap(({ planting, isSeedParent }) =>
    planting && isSeedParent ? planting.code : [],
  );
  if (codes.length < stands.length) return [];
  return (["bags", "hand"] as const).flatMap((cover): readonly Proposal[] => {
    const open = stands.filter((stand) => stand.cover !== cover);
    const rules = stands.flatMap(({ kind }) => underCover(kind, cover) ?? []);
    if (open.length < stands.length || rules.length < stands.length) return [];
    const title = words[cover](listed(codes));
    const ids = stands.map(({ id }) => id);
    const notes = stands.flatMap(({ kind }, index) => {
      const rule = rules[index];
      return rule ? coverNotes(kind, cover, rule) : [];
    });
    return [
      {
        id: `${cover}:${ids.join(":")}`,
        way: "cover",
        title,
        notes: [...new Set([...(cover === "bags" ? [words.bagsNote] : []), ...notes])],
        edit: changePlantings(layout.id, ids, { cover }, title),
        cost: { ...NO_COST, work: stands.reduce((sum, { kind }) => sum + workOf(kind, cover), 0) },
        touches: ids,
      },
    ];
  });
}

/**
 * Both of two plantings caged and opened by turns. Only where nothing else in reach sheds pollen of
 * their group: what flowers in the open would come in on the days a cage stands open.
 */
export function turnsProposal(
  { layout, result }: CheckedLayout,
  [a, b]: readonly [Stand, Stand],
): Proposal | null {
  if (!a.planting || !b.planting || a.cover !== "none" || b.cover !== "none") return null;
  const rules = [mayOpenByTurns(a.kind), mayOpenByTurns(b.kind)];
  const source = rules[0]?.source;
  if (source === undefined || !rules[1]) return null;
  const isAnotherOpen = result.pairs.some(
    ({ seedParent, pollenSource, standing }) =>
      (seedParent === a.id || seedParent === b.id) &&
      pollenSource !== a.id &&
      pollenSource !== b.id &&
      standing !== "distance" &&
      standing !== "time",
  );
  if (isAnotherOpen) return null;
  const ids = [a.id, b.id];
  const title = words.byTurns([a.planting.code, b.planting.code]);
  return {
    id: `by-turns:${a.id}:${b.id}`,
    way: "cover",
    title,
    notes: [words.cageNote, words.byTurnsNote(2, source)],
    edit: changePlantings(layout.id, ids, { cover: "cage" }, title),
    cost: { ...NO_COST, work: WORK.turns, cages: 2 },
    touches: ids,
  };
}
