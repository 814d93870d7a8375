/** Words on stakes and packets. */
import type { IsolationPair, Standing } from "../checks/isolation-pair.ts";
import type { Kind } from "../kinds/crop.ts";
import { latestTest, testResult } from "../lots/germination.ts";
import { monthYear } from "../lots/lot-words.ts";
import { longDate } from "../model/day.ts";
import { isStanding } from "../model/layouts.ts";
import type { Lot, Planting, Variety } from "../model/plan.ts";
import type { PlotRecord } from "../record/plot-record.ts";
import { counted } from "../words/plurals.ts";
import { packetWarning as crossedWarning } from "../words/crossed-lot-words.ts";
import { BLANK } from "./packet-words.ts";

/** What must not be done, or must not be forgotten: one of them, the one that matters most. */
export function stakeWarning(planting: Planting, variety: Variety | undefined): string {
  if (planting.flowering === "cut") return "Cut before bloom";
  if (variety?.hybrid === true) return "Hybrid: keep no seed";
  return planting.purpose === "seed" ? "For seed: do not pick" : "";
}

/**
 * `Sow 25 May 2027 (planned)`, or what the field record has: `Sown 27 May 2027`. What stands over
 * winter says so: nobody is to sow it a second time.
 */
export function startWords(planting: Planting, record: PlotRecord): string {
  const { start } = planting;
  if (record.setOutOn !== null) return `Set out ${longDate(record.setOutOn)}`;
  if (record.sownOn !== null && start?.method !== "transplanted") {
    return `Sown ${longDate(record.sownOn)}`;
  }
  const done = start?.method === "sown" ? "sown" : "set out";
  if (isStanding(planting)) {
    return start ? `Stands over winter, ${done} ${longDate(start.date)}` : "Stands over winter";
  }
  if (!start) return "";
  return `${start.method === "sown" ? "Sow" : "Set out"} ${longDate(start.date)} (planned)`;
}

/** `40 plants, 2 rows`. */
export function amountWords({ plants, rows }: Planting): string {
  return [
    ...(plants === undefined ? [] : [counted(plants, { one: "plant", other: "plants" })]),
    ...(rows === undefined ? [] : [counted(rows, { one: "row", other: "rows" })]),
  ].join(", ");
}

const WEAKEST_FIRST: readonly Standing[] = ["conflict", "unknown", "cover", "time", "distance"];

/**
 * The pair that is least secure speaks for the planting, in plain words; the figures are in the
 * isolation report. A pair that rarely crosses speaks last of those that stand alike.
 */
export function isolationWords(pairs: readonly IsolationPair[], isGrown = false): string {
  const lead = isGrown ? "Isolation as grown" : "Isolation planned";
  const rank = (pair: IsolationPair) =>
    WEAKEST_FIRST.indexOf(pair.standing) + (pair.relation === "rarely" ? 0.5 : 0);
  const share = (pair: IsolationPair) => pair.distanceM / (pair.requiredM ?? Infinity);
  const [weakest] = [...pairs].sort((a, b) => rank(a) - rank(b) || share(a) - share(b));
  if (!weakest) return `${lead}: nothing known near that crosses with it`;
  return `${lead}: ${standingWords(weakest)}`;
}

function standingWords(pair: IsolationPair): string {
  switch (pair.standing) {
    case "conflict":
      return pair.relation === "rarely"
        ? "not reached from a kind that rarely crosses"
        : "not reached";
    case "unknown":
      return "not known";
    case "cover":
      return "clear under cover";
    case "time":
      return pair.time?.isSure === false
        ? "by time of bloom, dates unsure"
        : "clear by time of bloom";
    case "distance":
      return distanceWords(pair);
  }
}

/** How many times the distance wanted, rounded down; a wanted 0 is no measure. */
function distanceWords({ distanceM, requiredM }: IsolationPair): string {
  if (requiredM === null || requiredM <= 0) return "clear, no distance is asked";
  const times = Math.floor((distanceM / requiredM) * 10 + 1e-9) / 10;
  if (times >= 10) return "clear, over 10 times the distance";
  return times < 1.1 ? "clear, just the distance" : `clear, ${times} times the distance`;
}

/** Germination, hard seed apart, and the month of the test; null for a lot without a test. */
export function germinationWords(
  lot: Lot | null,
  kind: Kind | undefined,
): { readonly words: string; readonly isBelow: boolean } | null {
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

export const UNTESTED = "Germination ____ %  tested ________";

/** What a lot was treated with, or room for it where it is known to be treated. */
export function treatedWith(lot: Lot | null): string {
  if (lot?.treatedWith !== undefined && lot.treatedWith !== "") return lot.treatedWith;
  return lot?.treated === true ? BLANK : "";
}

/** The three things a packet must not say in passing. */
export function packetWarning(treatment: string, isBelow: boolean, isCrossed: boolean): string {
  return [
    treatment === "" ? "" : `TREATED SEED: ${treatment}`,
    isBelow ? "Below Standard" : "",
    isCrossed ? crossedWarning : "",
  ]
    .filter((part) => part !== "")
    .join("  ·  ");
}
