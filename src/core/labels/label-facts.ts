/** What stands on a stake and on a seed packet, and which of it is still missing. */
import { describeStanding } from "../checks/pair-words.ts";
import { allIsolationPairs } from "../checks/isolation.ts";
import type { IsolationPair, Standing } from "../checks/isolation-pair.ts";
import type { Kind } from "../kinds/crop.ts";
import { latestTest, testResult } from "../lots/germination.ts";
import { lotsFromPlot } from "../lots/harvested-lots.ts";
import { monthYear } from "../lots/lot-words.ts";
import { lotCodesToSow } from "../lots/lot-book.ts";
import { civilFromDay, longDate } from "../model/day.ts";
import type { Lot, Plan, Planting } from "../model/plan.ts";
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import { isolationLine } from "../record/isolation-record-words.ts";
import { byCode } from "../map/plot-rows.ts";

export interface LabelFacts {
  /** Largest on the label. */
  readonly head: string;
  readonly second: string;
  readonly lines: readonly string[];
  /** For a code read by machine; the same words stand on the label. */
  readonly machine: string;
  /** What the label should say and the plan does not know. */
  readonly missing: readonly string[];
}

/** One for each planting: code, kind, variety, lot, dates, and what not to do. */
export function stakeLabels({ plan, layout, book }: CheckedLayout): readonly LabelFacts[] {
  return byCode(layout.plantings).map((planting) => {
    const variety = plan.varieties.find(({ id }) => id === planting.variety);
    const kind = book.kind(variety?.kind ?? "")?.name ?? "";
    const lot = lotCodesToSow(plan, planting, variety);
    const { start, plants, rows } = planting;
    return {
      head: planting.code,
      second: `${variety?.name ?? ""}, ${kind}`.replace(/^, /, ""),
      lines: present([
        planting.purpose === "seed" ? "For seed: do not pick" : "",
        start
          ? `${start.method === "sown" ? "Sown" : "Set out"} ${longDate(start.date)}`
          : `Season ${plan.season.name}`,
        [plants === undefined ? "" : `${plants} plants`, rows === undefined ? "" : `${rows} rows`]
          .filter((part) => part !== "")
          .join(", "),
        lot === "" ? "" : `Lot ${lot}`,
      ]),
      machine: machineText(planting.code, lot),
      missing: present([start ? "" : "date", lot === "" ? "lot" : ""]),
    };
  });
}

/**
 * One for each planting kept for seed. @param treatment what the seed was treated with, printed as
 * it is; empty: nothing is said
 */
export function packetLabels(input: CheckedLayout, treatment: string): readonly LabelFacts[] {
  const { plan, layout, result, book } = input;
  const pairs = allIsolationPairs(result.stands, book);
  return byCode(layout.plantings.filter((each) => result.standById.get(each.id)?.isSeedParent)).map(
    (planting) => {
      const variety = plan.varieties.find(({ id }) => id === planting.variety);
      const kind = book.kind(variety?.kind ?? "");
      const harvested = harvestedLot(plan, planting);
      // The lot it was sown from is its parent: only seed that is on the shelf has a lot of its own.
      const lot = harvested?.code ?? "";
      const parents = lotCodesToSow(plan, planting, variety);
      const tested = germinationWords(harvested, kind);
      const treated = treatment === "" ? treatedWords(harvested) : treatment;
      const ripe = result.standById.get(planting.id)?.ripe;
      const year = civilFromDay(ripe?.likely ?? plan.season.last).year;
      // Frozen at harvest it goes before whatever is reckoned now.
      const isolation = harvested?.isolation
        ? isolationLine(harvested.isolation)
        : isolationText(
            pairs.filter(({ seedParent }) => seedParent === planting.id),
            input,
          );
      return {
        head: variety?.name ?? "",
        second: kind ? `${kind.name}, ${kind.botanicalName}` : "",
        lines: present([
          treated === "" ? "" : `TREATED SEED: ${treated}`,
          tested?.isBelow === true ? "Below Standard" : "",
          `Harvest ${year}  ·  plot ${planting.code}`,
          `Lot ${lot === "" ? "______" : lot}${parents === "" ? "" : `  ·  sown from ${parents}`}`,
          `Grown at ${plan.site.name === "" ? "______" : plan.site.name}`,
          savedFrom(planting),
          isolation,
          tested?.words ?? "Germination ____ %  tested ________",
        ]),
        machine: machineText(planting.code, lot),
        missing: present([
          lot === "" ? "lot" : "",
          plan.site.name === "" ? "where it was grown" : "",
          planting.plants === undefined ? "plants saved from" : "",
          tested ? "" : "germination and month of the test",
        ]),
      };
    },
  );
}

/** Seed of this plot that is on the shelf already: only its own test may stand on its packet. */
function harvestedLot(plan: Plan, planting: Planting): Lot | null {
  return lotsFromPlot(plan, planting).find(({ state }) => state === "in stock") ?? null;
}

function treatedWords(lot: Lot | null): string {
  if (lot?.treatedWith !== undefined && lot.treatedWith !== "") return lot.treatedWith;
  return lot?.treated === true ? "______" : "";
}

/** Germination, hard seed apart, and the month of the test; below standard is said in so many words. */
function germinationWords(lot: Lot | null, kind: Kind | undefined) {
  const test = lot && latestTest(lot);
  if (!test) return null;
  const { rate, rateWithHard } = testResult(test);
  const percent = (value: number) => Math.floor(value * 100 + 1e-9);
  const hard = test.hard === undefined ? "" : `, hard seed ${percent(test.hard / test.sown)} %`;
  const standard = kind?.germinationPercent?.value;
  return {
    words: `Germination ${percent(rate)} %${hard}  tested ${monthYear(test.date)}`,
    isBelow: standard !== undefined && rateWithHard * 100 < standard,
  };
}

function present(words: readonly string[]): readonly string[] {
  return words.filter((each) => each !== "");
}

function savedFrom({ plants }: Planting): string {
  return plants === undefined ? "Saved from ____ plants" : `Saved from ${plants} plants`;
}

const WEAKEST_FIRST: readonly Standing[] = ["conflict", "unknown", "cover", "time", "distance"];

/** The pair that is least secure, and of those the nearest, speaks for the planting. */
function isolationText(pairs: readonly IsolationPair[], checked: CheckedLayout): string {
  const rank = ({ standing }: IsolationPair) => WEAKEST_FIRST.indexOf(standing);
  const [weakest] = [...pairs].sort((a, b) => rank(a) - rank(b) || a.distanceM - b.distanceM);
  if (!weakest) return "Isolation: nothing known that could cross";
  const wording = wordingOf(checked);
  const reading = checked.grownOn === undefined ? "planned" : "as grown";
  return `Isolation ${reading}: ${describeStanding(weakest, wording)}`;
}

/** `P:B07-2 L:26-BN-014`: plain, without an address, in capitals. */
function machineText(code: string, lot: string): string {
  return `P:${code}${lot === "" ? "" : ` L:${lot}`}`.toUpperCase();
}
