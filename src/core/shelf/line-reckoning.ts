/** The part of the checks that looks back over the line of what is sown. */
import { findingId } from "../checks/finding.ts";
import type {
  MotherLotFinding,
  PopulationEffect,
  ReckoningInput,
  SeedReckoning,
} from "../checks/seed-lots.ts";
import type { Stand } from "../checks/stand.ts";
import { plannedSize } from "../generations/growing.ts";
import { type LineBook, lineBookOfLots } from "../generations/line.ts";
import { MOST_CYCLES, motherLot } from "../generations/line-past.ts";
import { lotsToSow } from "../lots/lot-book.ts";
import { varietyIndex } from "../lots/variety-index.ts";
import type { Plan } from "../model/plan.ts";
import * as words from "../words/sowing-words.ts";

/** What the plants of one population amount to, and what their seed has behind it. */
export function populationEffect(
  input: ReckoningInput,
  stands: readonly Stand[],
): PopulationEffect {
  const plants = stands.reduce((sum, { planting }) => sum + (planting?.plants ?? 0), 0);
  const isHandPollinated = stands.some(({ cover }) => cover === "hand");
  const kind = stands[0]?.kind;
  return {
    effective: kind ? plannedSize(plants, isHandPollinated, kind).effective : null,
    line: lineOfStands(input, stands),
  };
}

/** Of several lots the worst of each. */
function lineOfStands(
  { plan, book }: ReckoningInput,
  stands: readonly Stand[],
): PopulationEffect["line"] {
  if (plan.lots.length === 0) return null;
  const lines = lineBookOfLots(plan, book);
  const sown = stands.flatMap(({ planting, variety }) =>
    planting ? lotsToSow(plan, planting, variety ?? undefined) : [],
  );
  const pasts = sown.flatMap(({ id }) => lines.lot(id)?.past ?? []);
  if (pasts.length === 0) return null;
  return {
    generations: Math.max(...pasts.map(({ generations }) => generations)),
    lost: Math.max(...pasts.map(({ lost }) => lost)),
    // Of a lot in a circle nothing can be told.
    hasUnknown: pasts.length < sown.length || pasts.some(({ hasUnknown }) => hasUnknown),
    hasCrossing: pasts.some(({ hasCrossing }) => hasCrossing),
  };
}

/** A lot further from the first of its line on the shelf than gene banks go, once grown again. */
interface WornLot {
  readonly code: string;
  readonly motherCode: string;
  readonly cycles: number;
}

const worn = new WeakMap<LineBook, ReadonlyMap<string, WornLot>>();

/** By lot id; found once for the same lines, for plans are checked while something is dragged. */
function wornLots(lines: LineBook, lots: Plan["lots"]): ReadonlyMap<string, WornLot> {
  const known = worn.get(lines);
  if (known) return known;
  const found = new Map<string, WornLot>();
  for (const { id, code } of lots) {
    const line = lines.lot(id);
    if (!line || line.past.generations < MOST_CYCLES) continue;
    const mother = motherLot(line);
    const cycles = mother ? line.past.generations - mother.past.generations + 1 : 0;
    if (mother && cycles > MOST_CYCLES) {
      found.set(id, { code, motherCode: mother.lot.code, cycles });
    }
  }
  worn.set(lines, found);
  return found;
}

/**
 * Plantings for seed whose harvest would be further from the first lot on the shelf than gene
 * banks go. Where no older seed is left there is nothing to go back to, and nothing is said.
 */
function motherLots({ plan, layout, book }: ReckoningInput): readonly MotherLotFinding[] {
  if (plan.lots.length === 0) return [];
  const found = wornLots(lineBookOfLots(plan, book), plan.lots);
  if (found.size === 0) return [];
  const varieties = varietyIndex(plan.varieties);
  return layout.plantings.flatMap((planting): readonly MotherLotFinding[] => {
    const variety = varieties.get(planting.variety);
    const isKept = planting.purpose === "seed" && planting.flowering !== "cut";
    if (!isKept || !variety || variety.hybrid === true) return [];
    // What is sown first counts: the others wait for it to run out.
    const [first] = lotsToSow(plan, planting, variety);
    const lot = first && found.get(first.id);
    if (!lot) return [];
    return [
      {
        id: findingId("mother-lot", [planting.id, first.id], String(lot.cycles)),
        check: "mother-lot",
        severity: "caution",
        subjects: [planting.id],
        subject: planting.id,
        ...lot,
      },
    ];
  });
}

export const motherLotPart: SeedReckoning["mother"] = {
  run: motherLots,
  describe: ({ subject, code, motherCode, cycles }, { nameOf }) => ({
    title: words.mother(nameOf(subject), cycles, motherCode),
    sentences: [words.motherOf(code, MOST_CYCLES), words.motherAdvice(motherCode)],
  }),
};
