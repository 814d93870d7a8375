/** Packets: of what this season's plots will give, and of the lots on the shelf. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { allIsolationPairs } from "../checks/isolation.ts";
import type { Kind } from "../kinds/crop.ts";
import { lotsFromPlot } from "../lots/harvested-lots.ts";
import { crossedLots } from "../generations/crossed-lots.ts";
import { lotCodesToSow } from "../lots/lot-book.ts";
import { amountWords } from "../lots/lot-words.ts";
import { byCode } from "../map/plot-rows.ts";
import { civilFromDay } from "../model/day.ts";
import type { Lot, Plan, Planting } from "../model/plan.ts";
import { isolationLine } from "../record/isolation-record-words.ts";
import { plotCode } from "../lots/plot-code.ts";
import { type LabelFacts, present } from "./label-facts.ts";
import {
  UNTESTED,
  germinationWords,
  isolationWords,
  packetWarning,
  treatedWith,
} from "./label-words.ts";
import { BLANK, missingWords, packetWords as words } from "./packet-words.ts";

/**
 * One for each planting kept for seed. @param treatment what the seed was treated with, printed as
 * it is; empty: nothing is said
 */
export function packetLabels(input: CheckedLayout, treatment: string): readonly LabelFacts[] {
  const { plan, layout, result, book } = input;
  const pairs = allIsolationPairs(result.stands, book);
  const kept = layout.plantings.filter((each) => result.standById.get(each.id)?.isSeedParent);
  return byCode(kept).map((planting) => {
    const variety = plan.varieties.find(({ id }) => id === planting.variety);
    const kind = book.kind(variety?.kind ?? "");
    const harvested = harvestedLot(plan, planting);
    // The lot it was sown from is its parent: only seed that is on the shelf has a lot of its own.
    const lot = harvested?.code ?? "";
    const parents = lotCodesToSow(plan, planting, variety);
    const tested = germinationWords(harvested, kind);
    const ripe = result.standById.get(planting.id)?.ripe;
    const year = harvested?.harvestYear ?? civilFromDay(ripe?.likely ?? plan.season.last).year;
    // Plants that were harvested go before those that were to stand.
    const plants = harvested?.from?.plants ?? planting.plants;
    const own = pairs.filter(({ seedParent }) => seedParent === planting.id);
    return {
      headIs: "name",
      head: variety?.name ?? "",
      second: kindWords(kind),
      warning: packetWarning(
        treatment === "" ? treatedWith(harvested) : treatment,
        tested?.isBelow === true,
        harvested !== null && isCrossed(plan, harvested),
      ),
      lines: present([
        joined(words.harvest(year), words.plot(planting.code)),
        joined(words.lot(lot === "" ? BLANK : lot), parents === "" ? "" : words.sownFrom(parents)),
        tested?.words ?? UNTESTED,
        // Frozen at harvest it goes before whatever is reckoned now.
        harvested?.isolation
          ? isolationLine(harvested.isolation)
          : isolationWords(own, input.grownOn !== undefined),
        words.grownAt(plan.site.name === "" ? BLANK : plan.site.name),
        savedFrom(plants),
      ]),
      machine: plotCode(planting.code, lot),
      missing: present([
        lot === "" ? missingWords.lot : "",
        plan.site.name === "" ? missingWords.where : "",
        plants === undefined ? missingWords.plants : "",
        tested ? "" : missingWords.test,
      ]),
    };
  });
}

/** One for each lot in stock: only what is known of that very lot, and room for the rest. */
export function lotLabels({ plan, book }: CheckedLayout): readonly LabelFacts[] {
  const inStock = plan.lots.filter(({ state }) => state === "in stock");
  return byCode(inStock).map((lot) => {
    const variety = plan.varieties.find(({ id }) => id === lot.variety);
    const kind = book.kind(variety?.kind ?? "");
    const tested = germinationWords(lot, kind);
    const { from, harvestYear } = lot;
    const isOwn = from?.what === "own";
    return {
      headIs: "name",
      head: variety?.name ?? "",
      second: kindWords(kind),
      warning: packetWarning(treatedWith(lot), tested?.isBelow === true, isCrossed(plan, lot)),
      lines: present([
        joined(words.lot(lot.code), lot.amount ? amountWords(lot.amount) : ""),
        joined(
          words.harvest(harvestYear ?? "____"),
          isOwn && from.plot !== undefined ? words.plot(from.plot) : "",
        ),
        tested?.words ?? UNTESTED,
        lot.isolation ? isolationLine(lot.isolation) : "",
        originWords(lot, plan),
        isOwn ? savedFrom(from.plants) : "",
      ]),
      // The code alone: it is read as that of the lot.
      machine: lot.code.toUpperCase(),
      missing: present([
        harvestYear === undefined ? missingWords.year : "",
        from === undefined ? missingWords.where : "",
        tested ? "" : missingWords.test,
      ]),
    };
  });
}

/** Whether crosses may be in a lot, by itself or by what it comes from. */
function isCrossed({ lots }: Plan, lot: Lot): boolean {
  return crossedLots(lots).has(lot.id);
}

function joined(...parts: readonly string[]): string {
  return present(parts).join("  ·  ");
}

function kindWords(kind: Kind | undefined): string {
  return kind ? `${kind.name}, ${kind.botanicalName}` : "";
}

function originWords({ from }: Lot, { site }: Plan): string {
  if (from?.what === "received") return words.from(from.who ?? BLANK);
  const isHere = from?.what === "own" && site.name !== "";
  return words.grownAt(isHere ? site.name : BLANK);
}

function savedFrom(plants: number | undefined): string {
  return plants === undefined ? words.savedFromUncounted : words.savedFrom(plants);
}

/** Seed of this plot that is on the shelf already: only its own test may stand on its packet. */
function harvestedLot(plan: Plan, planting: Planting): Lot | null {
  return lotsFromPlot(plan, planting).find(({ state }) => state === "in stock") ?? null;
}
