/** A line in words: what stands in its boxes, its table, and what is said of its past. */
import { alleleKept } from "../../core/generations/allele-kept.ts";
import {
  type Breeding,
  breedingOf,
  countsSeedPlantsAlone,
} from "../../core/generations/breeding.ts";
import { foreignAfter, harmonicMean } from "../../core/generations/effective-size.ts";
import type {
  Growing,
  GrowingSize,
  IsolationMet,
  LineLot,
} from "../../core/generations/line-lot.ts";
import {
  MOST_CYCLES,
  countedGrowings,
  isAtLeast,
  knownSizes,
  lookBack,
  motherLot,
} from "../../core/generations/line-past.ts";
import { percentText, plantsText } from "../../core/generations/loss-words.ts";
import type { PlannedGrowing } from "../../core/generations/planned-growing.ts";
import { capital, listed } from "../../core/checks/wording.ts";
import type { Kind } from "../../core/kinds/crop.ts";
import { formOf } from "../../core/words/plurals.ts";

/** What a screen reader hears of the drawing. */
export const DRAWING = "The line drawn through the years; the table below says the same";

export const isolationWords: Readonly<Record<IsolationMet, string>> = {
  met: "kept apart",
  "not met": "not kept apart",
  "not told": "unsure",
  "not recorded": "not recorded",
};

/** In a box, where no heading says what it is about. */
const boxIsolation: Readonly<Record<IsolationMet, string>> = {
  ...isolationWords,
  "not told": "isolation unsure",
  "not recorded": "isolation unknown",
};

/** Beside the words: never told by colour alone. */
export const isolationSign: Readonly<Record<IsolationMet, string>> = {
  met: "✓",
  "not met": "✕",
  "not told": "?",
  "not recorded": "–",
};

/** `in effect 24`, `in effect at least 24`, or why it is not told. */
export function sizeWords(size: GrowingSize): string {
  return size.effective === null ? sizeText(size) : `in effect ${sizeText(size)}`;
}

/** `24`, `at least 24`, or why it is not told. */
export function sizeText(size: GrowingSize): string {
  if (size.effective !== null) {
    return `${size.isAtLeast ? "at least " : ""}${plantsText(size.effective)}`;
  }
  switch (size.why) {
    case "no seed plants":
      return "plants not counted";
    case "no pollen plants":
      return "pollen plants not counted";
    case "no males":
      return "males not counted";
    case "no kind":
      return "kind not known";
  }
}

export function plantsWords(count: number | null): string {
  if (count === null) return "? plants";
  return formOf(count, { one: "1 plant", other: `${count} plants` });
}

/** How a lot came to be, for its box and its row. */
export function cameWords({ how, lot, parents }: LineLot): string {
  switch (how) {
    case "grown":
      return parents.length === 0 ? "own harvest" : "";
    case "split":
      return "split off";
    case "mixed":
      return "mixed";
    case "start":
      return lot.from?.who === undefined ? "came from elsewhere" : `from ${lot.from.who}`;
  }
}

/** The lines of one box, the code apart. */
export function boxLines(line: LineLot): readonly string[] {
  const { growing, isolation, past } = line;
  if (!growing) return [cameWords(line), past.hasCrossing ? "after a crossing" : ""];
  return [
    `${plantsWords(growing.seedPlants)}${growing.plot === null ? "" : `, ${growing.plot}`}`,
    sizeWords(growing.size),
    `${isolationSign[isolation]} ${boxIsolation[isolation]}`,
  ];
}

export function plannedLines({ plantings, plants, size }: PlannedGrowing): readonly string[] {
  const codes = plantings.map(({ code }) => code);
  return [`${plantsWords(plants)}, ${listed(codes)}`, sizeWords(size), "planned"];
}

/** Share of an allele that is followed: one gene copy in twenty of the first seed. */
const RARE = 0.05;

/** What a lot has behind it, a sentence each, the gravest first. */
export function pastSentences(line: LineLot): readonly string[] {
  const back = lookBack(line);
  const codes = (lines: readonly LineLot[]) => listed(lines.map(({ lot }) => lot.code));
  const times = back.notMet.length;
  return [
    ...(times > 0
      ? [
          `${codes(back.notMet)} ${formOf(times, { one: "was", other: "were" })} not kept apart: crosses may be in all that came of ${formOf(times, { one: "it", other: "them" })}. Were one seed in a hundred foreign each time, ${percentText(foreignAfter(0.01, times))} of the heritage would be.`,
        ]
      : []),
    ...(back.crossedBefore.length > 0
      ? [
          `${listed(back.crossedBefore)}, no longer on the shelf, ${formOf(back.crossedBefore.length, { one: "was", other: "were" })} not kept apart: crosses may be in all that came of ${formOf(back.crossedBefore.length, { one: "it", other: "them" })}.`,
        ]
      : []),
    ...(back.notTold.length > 0
      ? [`Whether ${codes(back.notTold)} was kept apart cannot be told from its record.`]
      : []),
    ...(back.strangers.length > 0 ? [strangerWords(back.strangers, codes)] : []),
    ...numberSentences(line),
    ...(back.unknown.length > 0
      ? [
          `Not counted: ${codes(back.unknown)}. What was lost there comes on top; nothing is assumed for it.`,
        ]
      : []),
    ...(back.mixed.length > 0
      ? [
          `${codes(back.mixed)} is of several lots: the one that lost most is followed, though mixing gives some of it back.`,
        ]
      : []),
    ...(back.notRecorded.length > 0
      ? [`No isolation is on record for ${codes(back.notRecorded)}.`]
      : []),
    startWords(back.starts),
    ...motherSentences(line),
  ];
}

function strangerWords(
  strangers: readonly LineLot[],
  codes: (lines: readonly LineLot[]) => string,
): string {
  const hybrids = strangers.filter(({ variety }) => variety?.hybrid === true);
  return hybrids.length > 0
    ? `${codes(hybrids)} is seed of a hybrid: what is grown from it is no variety yet, and its plants differ.`
    : `${codes(strangers)} was grown from seed of another variety.`;
}

function numberSentences(line: LineLot): readonly string[] {
  const { past } = line;
  const sizes = knownSizes(line);
  if (sizes.length === 0) return ["No growing-out with counted plants is on record."];
  const isLeast = countedGrowings(line).some(isAtLeast);
  const most = isLeast ? "at most " : "";
  const mean = plantsText(harmonicMean(sizes));
  const generations = formOf(sizes.length, {
    one: "1 generation",
    other: `${sizes.length} generations`,
  });
  return [
    `Over ${generations} that were counted ${most}${percentText(past.lost)} of its diversity is lost (inbreeding gained, F ${past.lost.toFixed(3)}).`,
    `An allele that one gene copy in twenty of the first seed had is still there with a chance of ${isLeast ? "at least " : ""}${keptText(alleleKept(RARE, sizes))}.`,
    ...(sizes.length > 1
      ? [
          `As if ${mean} ideal plants had stood in each (harmonic mean): the few of one year weigh most.`,
        ]
      : []),
  ];
}

/** Never rounded up to certainty. */
function keptText(chance: number): string {
  const percent = chance * 100;
  if (percent > 99.9) return "over 99.9 %";
  return `${percent >= 99 ? Math.floor(percent * 10) / 10 : Math.floor(percent)} %`;
}

function startWords(starts: readonly LineLot[]): string {
  const codes = listed(starts.map(({ lot }) => lot.code));
  return `The line begins with ${codes}: of what was before ${formOf(starts.length, { one: "it", other: "them" })} nothing is on record.`;
}

function motherSentences(line: LineLot): readonly string[] {
  const mother = motherLot(line);
  if (mother) {
    const cycles = line.past.generations - mother.past.generations;
    const isMost = cycles >= MOST_CYCLES;
    return [
      `${mother.lot.code} is the first lot that still has seed, ${formOf(cycles, { one: "one growing-out", other: `${cycles} growings-out` })} back.${isMost ? ` Gene banks go back to it after ${MOST_CYCLES} (Rao 2006): sow that next, if it germinates.` : ""}`,
    ];
  }
  if (line.past.generations < MOST_CYCLES) return [];
  return [
    `No older seed of the line is left. Keep a part of a good lot back as mother seed: gene banks go back to theirs after ${MOST_CYCLES} growings-out (Rao 2006).`,
  ];
}

/** What this season adds, in a sentence or two. */
export function plannedSentences(planned: PlannedGrowing): readonly string[] {
  const { plantings, plants, size, lostBefore, lostAfter, parents } = planned;
  const codes = listed(plantings.map(({ code }) => code));
  const unsown = parents.length === 0 ? " It names no lot it is sown from." : "";
  if (size.effective === null || lostAfter === null) {
    return [`${codes}, as planned: ${sizeWords(size)}, so what it adds cannot be told.${unsown}`];
  }
  const added = 1 / (2 * size.effective);
  return [
    `${codes}, as planned with ${plantsWords(plants)}: it loses ${percentText(added)} of what is there${lostBefore > 0 ? `, with all before it ${percentText(lostAfter)}` : ""}. ${plantsWords((plants ?? 0) * 2)} would lose half as much.${unsown}`,
  ];
}

/** Where seed plants alone count, nobody asks for pollen plants. */
export function pollenWords({ pollenPlants }: Growing, kind: Kind | undefined): string {
  if (pollenPlants !== null) return String(pollenPlants);
  return kind && countsSeedPlantsAlone(breedingOf(kind)) ? "" : "not counted";
}

/** On what the effective population rests for the kind: said once for the whole line. */
export function breedingWords(breeding: Breeding, kind: Pick<Kind, "name" | "breeding">): string {
  const { selfed, source, sexes } = breeding;
  const by = source === null ? "our reading of how it breeds" : source;
  if (countsSeedPlantsAlone(breeding)) {
    const mostly = selfed < 1 ? "mostly " : "";
    return `${capital(kind.name)} ${mostly}pollinates itself: seed plants alone count, n (1 - s/2) with ${percentText(selfed)} selfed (Vencovsky and Crossa 1999; ${by}). A uniform variety has little diversity to lose, a mixed one has.`;
  }
  return sexes === "one"
    ? `${capital(kind.name)} has females and males: 4 Nf Nm / (Nf + Nm) (Wright 1931). Count both.`
    : `${capital(kind.name)} crosses: plants that gave seed and plants that gave pollen both count. Few seed plants among many weigh as few.`;
}
