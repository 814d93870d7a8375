/** Whether the seed on the shelf does: enough of it, and alive. The part of the checks that reckons. */
import { compareText, findingId } from "../checks/finding.ts";
import type {
  OldSeedFinding,
  OtherVarietyFinding,
  ReckoningInput,
  SeedReckoning,
  ShortOfSeedFinding,
} from "../checks/seed-lots.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import { standardOf } from "../lots/ageing.ts";
import { estimateOf } from "../lots/estimate.ts";
import { type SowingRow, sowingRows } from "../lots/sowing.ts";
import { bandWords } from "../lots/band-words.ts";
import { lotsToSow } from "../lots/lot-book.ts";
import { crossedLotPart } from "./crossed-lot.ts";
import { finishWords } from "./finish-words.ts";
import { motherLotPart, populationEffect } from "./line-reckoning.ts";
import { ownDistancePart } from "./own-distance.ts";
import { populationWords } from "./population-words.ts";
import { isSameVariety, varietyIndex } from "../lots/variety-index.ts";
import { longDate } from "../model/day.ts";
import type { Layout, Plan } from "../model/plan.ts";
import * as words from "../words/sowing-words.ts";

interface Kept {
  readonly plan: Plan;
  readonly layout: Layout;
  readonly book: CropBook;
  readonly rows: readonly SowingRow[];
}

const kept = new WeakMap<Plan["lots"], Kept>();

/** What is sown, reckoned anew only when something changed that it depends on: no move does. */
function rowsOf({ plan, layout, book }: ReckoningInput) {
  if (plan.lots.length === 0) return [];
  const last = kept.get(plan.lots);
  if (last && last.book === book && isSameSowing(last, { plan, layout })) return last.rows;
  const rows = sowingRows(plan, layout, book);
  kept.set(plan.lots, { plan, layout, book, rows });
  return rows;
}

function isSameSowing(last: Kept, { plan, layout }: Pick<Kept, "plan" | "layout">): boolean {
  const [before, now] = [last.layout.plantings, layout.plantings];
  return (
    last.plan.varieties === plan.varieties &&
    last.plan.storagePlaces === plan.storagePlaces &&
    last.plan.sowing === plan.sowing &&
    last.plan.season === plan.season &&
    before.length === now.length &&
    now.every((planting, index) => {
      const other = before[index];
      return (
        other === planting ||
        (other !== undefined &&
          other.id === planting.id &&
          other.code === planting.code &&
          other.variety === planting.variety &&
          other.lots === planting.lots &&
          other.plants === planting.plants &&
          other.start === planting.start &&
          other.flowering === planting.flowering)
      );
    })
  );
}

function shortOfSeed(input: ReckoningInput): readonly ShortOfSeedFinding[] {
  const byVariety = new Map<string, SowingRow[]>();
  for (const row of rowsOf(input)) {
    const list = byVariety.get(row.variety.id);
    if (list) list.push(row);
    else byVariety.set(row.variety.id, [row]);
  }
  return [...byVariety].flatMap(([variety, rows]): readonly ShortOfSeedFinding[] => {
    const missingPlants = sumOf(rows, (row) => row.missingPlants);
    if (missingPlants === 0) return [];
    return [
      {
        id: findingId("short-of-seed", [variety], String(missingPlants)),
        check: "short-of-seed",
        severity: "caution",
        subjects: rows
          .filter((row) => row.missingPlants > 0)
          .map(({ planting }) => planting.id)
          .sort(compareText),
        variety,
        varietyName: rows[0]?.variety.name ?? "",
        missingPlants,
        missingSeeds: sumOf(rows, (row) => row.missingSeeds),
        plants: sumOf(rows, ({ planting }) => planting.plants ?? 0),
      },
    ];
  });
}

function sumOf(rows: readonly SowingRow[], of: (row: SowingRow) => number): number {
  return rows.reduce((sum, row) => sum + of(row), 0);
}

function oldSeed(input: ReckoningInput): readonly OldSeedFinding[] {
  const found = new Map<string, OldSeedFinding>();
  for (const row of rowsOf(input)) {
    const day = row.day ?? input.plan.season.first;
    const standard = standardOf(row.kind);
    for (const lot of row.lots) {
      const earlier = found.get(lot.id);
      const band = estimateOf(lot, row.kind, input.plan.storagePlaces)?.at(day);
      if (!band || band[1] >= standard) continue;
      const subjects = [...(earlier?.subjects ?? []), row.planting.id].sort(compareText);
      found.set(lot.id, {
        id: findingId("old-seed", [lot.id], String(Math.round(standard * 100))),
        check: "old-seed",
        severity: "caution",
        lot: lot.id,
        code: lot.code,
        varietyName: row.variety.name,
        day,
        band,
        standard,
        isStandardPublished: row.kind.germinationPercent !== undefined,
        ...earlier,
        subjects,
      });
    }
  }
  return [...found.values()];
}

function otherVariety({ plan, layout }: ReckoningInput): readonly OtherVarietyFinding[] {
  if (plan.lots.length === 0) return [];
  const varieties = varietyIndex(plan.varieties);
  return layout.plantings.flatMap((planting): readonly OtherVarietyFinding[] => {
    const variety = varieties.get(planting.variety);
    if (!variety || (!planting.lots && !variety.lots)) return [];
    return lotsToSow(plan, planting, variety).flatMap((lot) => {
      const other = varieties.get(lot.variety);
      if (!other || isSameVariety(other, variety)) return [];
      return [
        {
          id: findingId("lot-of-other-variety", [planting.id, lot.id]),
          check: "lot-of-other-variety",
          severity: "caution",
          subjects: [planting.id],
          subject: planting.id,
          lot: lot.id,
          code: lot.code,
          lotVariety: other.name,
          varietyName: variety.name,
        },
      ];
    });
  });
}

/** To be joined to the checks. */
export const seedReckoning: SeedReckoning = {
  mother: motherLotPart,
  ownDistance: ownDistancePart,
  crossed: crossedLotPart,
  effect: populationEffect,
  populationWords,
  finishWords,
  short: {
    run: shortOfSeed,
    describe: ({ varietyName, missingPlants, missingSeeds, plants }) => ({
      title: words.short(varietyName),
      sentences: [words.missingSeed(missingPlants, plants, missingSeeds), words.shortAdvice],
    }),
  },
  old: {
    run: oldSeed,
    describe: ({ code, varietyName, day, band, standard, isStandardPublished }) => ({
      title: words.old(code, varietyName),
      sentences: [
        (isStandardPublished ? words.underPublished : words.underHalf)(
          bandWords(band),
          longDate(day),
          Math.round(standard * 100),
        ),
        words.oldAdvice,
      ],
    }),
  },
  other: {
    run: otherVariety,
    describe: ({ subject, code, lotVariety, varietyName }, { nameOf }) => ({
      title: words.other(nameOf(subject), lotVariety),
      sentences: [words.otherAdvice(code, lotVariety, varietyName)],
    }),
  },
};
