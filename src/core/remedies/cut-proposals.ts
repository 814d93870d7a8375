/** Ways out that let one of two give up its flowers or its seed: cut, eaten, or not kept. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { Stand } from "../checks/stand.ts";
import { changePlantings } from "../edits/object-edits.ts";
import type { Planting } from "../model/plan.ts";
import { cutEarly } from "../practice/cut-early.ts";
import { NO_COST, type Proposal } from "./remedy.ts";
import { wayWords as words } from "./way-words.ts";

/** Hours a season, roughly; giving up seed counts as the work of a year. Ours. */
const WORK = { cut: 10, noSeed: 80, eaten: 85 } as const;

/** Of one planting: nothing where a cut would only throw the crop away. */
export function cutProposals(context: CheckedLayout, stand: Stand): readonly Proposal[] {
  const { planting } = stand;
  if (!planting || planting.flowering !== "yes") return [];
  return planting.purpose === "seed"
    ? seedGivenUp(context, stand, planting)
    : cutUnkept(context, stand, planting);
}

/** What gives no seed: eaten before it flowers, or mown, as a green manure is. */
function cutUnkept(
  { layout }: CheckedLayout,
  { kind }: Stand,
  { id, code, purpose }: Planting,
): readonly Proposal[] {
  const rule = cutEarly(kind);
  if (rule.value === "lost" && purpose === "food") return [];
  const isEaten = rule.value === "eaten before" && purpose === "food";
  const title = isEaten ? words.pullOwn(code) : words.cutOwn(code);
  return [
    {
      id: `cut:${id}`,
      way: "cut",
      title,
      notes: [isEaten ? words.pullNote(rule.source) : words.cutNote],
      edit: changePlantings(layout.id, [id], { flowering: "cut" }, title),
      cost: { ...NO_COST, work: WORK.cut },
      touches: [id],
    },
  ];
}

function seedGivenUp(
  { layout }: CheckedLayout,
  { kind, variety }: Stand,
  { id, code }: Planting,
): readonly Proposal[] {
  const cost = { ...NO_COST, seedOf: variety?.id ?? null };
  const rule = cutEarly(kind);
  const unkept: Proposal = {
    id: `no-seed:${id}`,
    way: "not for seed",
    title: words.noSeed(code),
    notes: [words.noSeedNote],
    edit: changePlantings(layout.id, [id], { purpose: "food" }, words.noSeed(code)),
    cost: { ...cost, work: WORK.noSeed },
    touches: [id],
  };
  if (rule.value !== "eaten before") return [unkept];
  const title = words.noSeedCut(code);
  return [
    unkept,
    {
      ...unkept,
      id: `no-seed-cut:${id}`,
      title,
      notes: [words.noSeedCutNote(rule.source)],
      edit: changePlantings(layout.id, [id], { purpose: "food", flowering: "cut" }, title),
      cost: { ...cost, work: WORK.eaten },
    },
  ];
}
