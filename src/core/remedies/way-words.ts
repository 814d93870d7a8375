/** Ways out in words: what to do, and what it entails. */
import { days } from "../checks/day-words.ts";
import { type DayNumber, shortDate } from "../model/day.ts";
import { counted } from "../words/plurals.ts";
import { ruleCited } from "../practice/practice.ts";
import { handWords, underWords } from "../practice/practice-words.ts";

/** `(common practice)`, `(The Manual of Seed Saving, Timber Press)`. */
const says = (source: string): string => `(${ruleCited(source)})`;

/** How many plants are grown of those there are. */
interface PlantsLeft {
  readonly plants: number;
  readonly of: number;
}

export const wayWords = {
  /** @param towards `8.9 m south-west` */
  move: (code: string, towards: string) => `Move ${code} ${towards}`,
  moveInto: (code: string, towards: string, bed: string) => `Move ${code} ${towards} into ${bed}`,
  heading: "Ways out, each tried; the one that leaves the least trouble first:",
  more: (count: number) => counted(count, { one: "more way out", other: "more ways out" }),
  noneAlone:
    "No single change clears it. Move what stands around it first, or widen the time between the blooms of both.",
  brought: (isWorse: boolean, severity: string, title: string) =>
    isWorse ? `Makes worse the ${severity}: ${title}` : `Brings ${severity}: ${title}`,
  alsoClears: (title: string) => `Also clears: ${title}`,

  date: (code: string, isSown: boolean, shift: number, start: DayNumber) =>
    `${isSown ? "Sow" : "Set out"} ${code} ${days(Math.abs(shift))} ${shift < 0 ? "earlier" : "later"}, on ${shortDate(start)}`,
  dateNote: (bloomShift: number, gapDays: number) =>
    `Bloom moves by ${days(Math.abs(bloomShift))} and leaves ${days(gapDays)} between the two. It rests on time alone: a late spring can undo it.`,
  largeShift: "Few seasons allow so large a shift.",
  noFrosts: "Frost dates are missing from the site, so no more than three weeks are offered.",
  mayBeLate: "Its last seed may come after the first frost.",
  hardyStart: "That is before the last spring frost given, which this kind stands when young.",

  cage: (code: string) => `Cage ${code}`,
  bags: (code: string) => `Bag the flowers of ${code}`,
  hand: (code: string) => `Pollinate ${code} by hand`,
  cageNote:
    "The mesh must stand clear of the flowers and go on before the first opens. Fix cages and stakes so that wind cannot throw them.",
  bagsNote:
    "Bag before the first flower opens, take off any flower that is open already, and mark each fruit or head that sets under the bag.",
  under: underWords,
  handNote: handWords,
  shut: "It stays shut until all flowers have set: opened while others flower in the open, it keeps nothing out.",
  byTurns: (codes: readonly string[]) => `Cage ${codes.join(" and ")} and open them by turns`,
  byTurnsNote: (count: number, source: string) =>
    `Open one cage a day, by turns, and keep the others shut: insects visit one at a time, so each is open ${count === 2 ? "every other day" : `one day in ${count}`}. Less seed sets than in the open ${says(source)}.`,

  cutOwn: (code: string) => `Cut ${code} before it flowers`,
  pullOwn: (code: string) => `Use up ${code} before it flowers`,
  cutNote: "Every plant must be cut or pulled, and cut again if it sprouts.",
  pullNote: (source: string) =>
    `It is eaten before it flowers ${says(source)}; pull what bolts, every week.`,
  noSeed: (code: string) => `Keep no seed of ${code}`,
  noSeedNote:
    "It is grown to eat, and its seed is not kept. It flowers all the same and stays a danger to others of its crossing group.",
  noSeedCut: (code: string) => `Keep no seed of ${code}, and use it up before it flowers`,
  noSeedCutNote: (source: string) =>
    `It is eaten, root, leaf or head, before it flowers ${says(source)}, so it takes no seed and sheds no pollen. Pull what bolts, every week.`,

  cutWild: (label: string) => `Cut or pull ${label} before it opens`,
  cutWildNote: (last: DayNumber, until: DayNumber) =>
    `By ${shortDate(last)}, and look again every week until ${shortDate(until)}: what was mown flowers again lower down.`,
  cutWildWalk: (metres: string) =>
    `Walk the ground within ${metres} for more of it: one plant left is enough.`,
  cutWildSource: (source: string) => `Before the buds open ${says(source)}.`,
  leave: "It stands outside the plot: ask whose ground it is first.",
  regulated:
    "Some wild plants are protected, some must be fought by law: follow what holds where you are. Wear gloves and sleeves with wild parsnip.",
  askCut: (label: string, kind: string) =>
    `Ask at ${label}: ${kind} used up or cut before it flowers`,
  askSame: (label: string, name: string) => `Ask at ${label}: ${name} grown there too`,
  askCutNote: (last: DayNumber) =>
    `Apply it once they have said yes. By ${shortDate(last)} none may flower; go and look every week, with them. Paper has a note to hand over.`,
  askSameNote:
    "Apply it once they have said yes. Give them your own seed or plants, the same lot as yours, in the place of theirs: then it is one variety and no danger to itself (common practice).",
  askedNote: (what: "cut" | "same") =>
    what === "cut"
      ? "Asked: to be cut before it flowers."
      : "Asked: grows our variety from our seed.",

  fewer: (code: string, plants: number, of: number) =>
    `Grow ${plants} of the ${of} plants of ${code}, in a smaller block`,
  /** @param towards `3 m north` */
  fewerMoved: (code: string, { plants, of }: PlantsLeft, towards: string) =>
    `Grow ${plants} of the ${of} plants of ${code}, in a smaller block, and move ${code} ${towards}`,
  fewerMovedInto: (code: string, { plants, of }: PlantsLeft, towards: string, bed: string) =>
    `Grow ${plants} of the ${of} plants of ${code}, in a smaller block, and move ${code} ${towards} into ${bed}`,
  fewerNote: (floor: number, source: string) =>
    `${floor} are enough to keep the variety ${says(source)}; there is less seed, and less to choose from.`,

  guard: (code: string, rows: number) =>
    `Plant ${rows} guard rows of the same variety around ${code}`,
  guardNote: (condition: string, place: string) =>
    `Holds where ${condition} (${place}). The rows stand on the side the other pollen comes from, flower together with it, and no seed is taken of them. They need ground that is not drawn here.`,
  barrier: (code: string) => `Say that a barrier protects ${code}`,
  barrierNote: (condition: string, place: string) =>
    `Holds only where ${condition} (${place}): a hedge, a building or a stand of tall crops that is there while it flowers.`,
} as const;
