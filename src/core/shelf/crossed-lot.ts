/**
 * Plantings sown from seed that may have crossed. Off-types stand among their plants, and as
 * plantings of one variety no distance keeps them from those of clean seed.
 */
import { findingId } from "../checks/finding.ts";
import type { CrossedLotFinding, ReckoningInput, SeedReckoning } from "../checks/seed-lots.ts";
import { type Stand, isSameLot } from "../checks/stand.ts";
import { listed } from "../checks/wording.ts";
import { crossedLots } from "../generations/crossed-lots.ts";
import { lotBook, lotsToSow, mayHaveCrossed } from "../lots/lot-book.ts";
import type { Lot, Plan } from "../model/plan.ts";
import * as words from "../words/crossed-lot-words.ts";

type Input = ReckoningInput & { readonly stands: readonly Stand[] };

function crossedLotFindings({ plan, stands }: Input): readonly CrossedLotFinding[] {
  const found = crossedLots(plan.lots);
  if (found.size === 0) return [];
  const sown = new Map(stands.map((stand) => [stand, lotsOfStand(plan, stand)]));
  const isClean = (stand: Stand) => !sown.get(stand)?.some(({ id }) => found.has(id));
  return stands.flatMap((stand) => {
    const lots = (sown.get(stand) ?? []).filter(({ id }) => found.has(id));
    if (lots.length === 0) return [];
    const beside = stand.shedsPollen
      ? stands.filter(
          (other) =>
            other !== stand && other.isSeedParent && isSameLot(other, stand) && isClean(other),
        )
      : [];
    if (!isKept(stand) && beside.length === 0) return [];
    return lots.map((lot) => findingOf(plan, stand, lot, found, beside));
  });
}

function lotsOfStand(plan: Plan, { planting, variety }: Stand): readonly Lot[] {
  return planting ? lotsToSow(plan, planting, variety ?? undefined) : [];
}

/** For seed, this year or, of a biennial, the next. */
function isKept({ planting, variety }: Stand): boolean {
  return planting?.purpose === "seed" && planting.flowering !== "cut" && variety?.hybrid !== true;
}

function findingOf(
  plan: Plan,
  stand: Stand,
  lot: Lot,
  found: ReadonlyMap<string, readonly string[]>,
  beside: readonly Stand[],
): CrossedLotFinding {
  const instead = lotBook(plan.lots)
    .ofVariety(lot.variety)
    .filter((each) => each.state === "in stock" && !found.has(each.id))
    .map(({ code }) => code);
  return {
    id: findingId("crossed-lot", [stand.id, lot.id]),
    check: "crossed-lot",
    severity: "caution",
    subjects: [stand.id],
    subject: stand.id,
    lot: lot.id,
    code: lot.code,
    isOwn: mayHaveCrossed(lot),
    because: mayHaveCrossed(lot) ? becauseOf(lot) : null,
    forebears: (found.get(lot.id) ?? []).filter((code) => code !== lot.code),
    instead,
    beside: beside.map(({ id }) => id).sort(),
  };
}

/** The worst of what its record has, by name. */
function becauseOf(lot: Lot): string | null {
  const worst = lot.isolation?.sources.find(
    ({ standing, relation }) => standing === "conflict" && relation !== "rarely",
  );
  return worst ? words.nearWhat(worst.name, worst.because ?? "") : null;
}

export const crossedLotPart: SeedReckoning["crossed"] = {
  run: crossedLotFindings,
  describe: ({ subject, code, isOwn, because, forebears, instead, beside }, { nameOf }) => {
    const name = nameOf(subject);
    const own = because === null ? words.markedSo(code) : words.notKeptApart(code, because);
    return {
      title: words.title(name),
      sentences: [
        ...(isOwn ? [own] : []),
        ...(forebears.length > 0 ? [words.comesFrom(code, forebears)] : []),
        words.rogue,
        ...(instead.length > 0 ? [words.orSow(instead)] : []),
        ...(beside.length > 0 ? [words.beside(listed(beside.map(nameOf)), name)] : []),
        words.foundTrue,
      ],
    };
  },
};
