/**
 * What can still be done about a finding as grown on a day: cover, cut, or give up the seed. No
 * plants are moved and nothing is sown anew. Each is verified by writing it into the record and
 * judging the plan again.
 */
import { isWorse } from "../checks/acceptance.ts";
import { type Finding, checkOf } from "../checks/all-checks.ts";
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import type { Stand } from "../checks/stand.ts";
import type { Edit } from "../edits/edit.ts";
import { changePlantings } from "../edits/object-edits.ts";
import type { DayNumber } from "../model/day.ts";
import type { Cover, Entry, Plan } from "../model/plan.ts";
import { handWay } from "../practice/by-hand.ts";
import { handWords, underWords } from "../practice/practice-words.ts";
import { keepsPollenOut } from "../practice/pollen-cover.ts";
import { underCover } from "../practice/under-cover.ts";
import { checkAsGrown, plotRecords, wholeOf } from "./as-grown.ts";
import { listOf } from "../words/plurals.ts";
import { fieldRemedyWords as words } from "./field-remedy-words.ts";
import type { PlotRecord } from "./plot-record.ts";

/** An entry but for what the device adds: its id, who made it and when it was written. */
export type FieldEntry = Pick<Entry, "of" | "on" | "what" | "cover" | "note">;

interface FieldProposal {
  readonly title: string;
  /** What it entails, in plain sentences. */
  readonly notes: readonly string[];
  /** What is written down once it is done; none where the plan is changed instead. */
  readonly entries: readonly FieldEntry[];
  readonly edit: Edit | null;
}

export interface FieldRemedy extends FieldProposal {
  /** Ids of conflicts it clears, the finding itself among them. */
  readonly clears: readonly string[];
  /** Cautions and unknowns that it brings or makes worse. */
  readonly brings: readonly Finding[];
}

/** Never written into a plan: the entry only as long as it is tried. */
const TRIAL_ID = "tried";

/**
 * @param plan the plan as it is kept, not as grown
 * @param grown its reading on `on`, which has the finding
 */
export function fieldRemedies(
  plan: Plan,
  grown: CheckedLayout,
  finding: Finding,
  on: DayNumber,
): readonly FieldRemedy[] {
  const records = plotRecords(plan, on);
  const stands = finding.subjects.flatMap((id) => grown.result.standById.get(id) ?? []);
  const proposals = [
    ...stands.flatMap((stand) => coverings(stand, on)),
    ...bothCovered(stands, on),
    ...stands.flatMap((stand) => cuttings(stand, records.get(stand.id), grown, on)),
    ...stands.flatMap((stand) => givingUp(stand, finding, grown)),
  ];
  return proposals.flatMap((proposal) => verified(plan, grown, finding, proposal) ?? []);
}

/** A cover counts from the day it stands; one that comes after the first flower is not verified. */
function coverings(
  { id, carrier, planting, kind, isSeedParent }: Stand,
  on: DayNumber,
): readonly FieldProposal[] {
  if (!planting) return [];
  return (["cage", "bags", "hand"] as const)
    .filter((cover) => {
      const rule = keepsPollenOut(cover, carrier) ? underCover(kind, cover) : undefined;
      return rule && (isSeedParent || rule.value === "itself");
    })
    .map((cover) => ({
      title: words.cover[cover](planting.code),
      notes: [...(cover === "hand" ? [] : [words.coverNote[cover]]), ...howItSets(kind, cover)],
      entries: [{ of: id, on, what: "covered", cover }],
      edit: null,
    }));
}

/** Bags and tape keep the seed of what has them true and no other's: of two seed parents both. */
function bothCovered(stands: readonly Stand[], on: DayNumber): readonly FieldProposal[] {
  const parents = stands.filter(({ planting, isSeedParent }) => planting && isSeedParent);
  if (parents.length < 2) return [];
  return (["bags", "hand"] as const).flatMap((cover): readonly FieldProposal[] => {
    if (!parents.every(({ kind }) => underCover(kind, cover))) return [];
    const codes = parents.flatMap(({ planting }) => planting?.code ?? []);
    const notes = parents.flatMap(({ kind }) => howItSets(kind, cover));
    return [
      {
        title: words.cover[cover](listOf(codes)),
        notes: [...new Set([...(cover === "bags" ? [words.coverNote.bags] : []), ...notes])],
        entries: parents.map(({ id }) => ({ of: id, on, what: "covered" as const, cover })),
        edit: null,
      },
    ];
  });
}

function howItSets(kind: Stand["kind"], cover: Exclude<Cover, "none">): readonly string[] {
  const hand = cover === "hand" ? handWay(kind) : undefined;
  if (hand) return [handWords(hand)];
  const rule = underCover(kind, cover);
  return rule ? [underWords(rule)] : [];
}

/** A source that is not kept for seed: before it flowers, or in flower with every flower on it. */
function cuttings(
  { id, planting, isSeedParent, bloom }: Stand,
  record: PlotRecord | undefined,
  grown: CheckedLayout,
  on: DayNumber,
): readonly FieldProposal[] {
  if (isSeedParent) return [];
  const name = planting?.code ?? wordingOf(grown).nameOf(id);
  const whole = wholeOf(bloom);
  // What may have opened unseen is cut as if it were open: it may have shed pollen before.
  const isOpen = whole === null ? record?.lookedAt !== on : whole.first <= on;
  const ours = planting !== null;
  return [
    {
      title: (isOpen ? words.cutOpen : words.cut)(name, ours),
      notes: [words.cutNote],
      entries: [
        isOpen
          ? { of: id, on, what: "last flower", note: words.cutEntryNote }
          : { of: id, on, what: "cut before bloom" },
      ],
      edit: null,
    },
  ];
}

function givingUp(
  { id, planting }: Stand,
  finding: Finding,
  { layout }: CheckedLayout,
): readonly FieldProposal[] {
  const atRisk = checkOf(finding).pairsAtRisk?.(finding) ?? [];
  if (!planting || !atRisk.some(({ seedParent }) => seedParent === id)) return [];
  const title = words.giveUp(planting.code);
  return [
    {
      title,
      notes: [words.giveUpNote],
      entries: [],
      edit: changePlantings(layout.id, [id], { purpose: "food" }, title),
    },
  ];
}

/** Null unless the finding is gone, no conflict has come and none that stays is worse. */
function verified(
  plan: Plan,
  grown: CheckedLayout,
  finding: Finding,
  proposal: FieldProposal,
): FieldRemedy | null {
  const { entries, edit } = proposal;
  const on = grown.grownOn ?? entries[0]?.on;
  if (on === undefined) return null;
  const changed = edit ? edit.apply(plan) : plan;
  const written = entries.map((entry, at) => ({ ...entry, id: `${TRIAL_ID}-${at}` }));
  const tried = { ...changed, entries: [...changed.entries, ...written] };
  const after = checkAsGrown(tried, grown.layout.id, on, grown.result).result;
  const left = new Set(after.findings.map(({ id }) => id));
  if (left.has(finding.id)) return null;
  const known = new Map(grown.result.findings.map((each) => [each.id, each]));
  const brings = after.findings.filter((each) => {
    const was = known.get(each.id);
    return was === undefined || isWorse(was, each);
  });
  if (brings.some(({ severity }) => severity === "conflict")) return null;
  const clears = grown.result.findings
    .filter(({ id, severity }) => severity === "conflict" && !left.has(id))
    .map(({ id }) => id);
  return { ...proposal, clears, brings };
}
