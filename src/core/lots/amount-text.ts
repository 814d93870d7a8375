/** Amounts of seed as people type them: `12.5 g`, `340 seeds`, `1.2 kg`, `1/2 oz`. */
import type { Kind } from "../kinds/crop.ts";
import { gramsText } from "./lot-words.ts";
import { inGrams, inSeeds, seedsPerGram } from "./seed-yield.ts";
import type { Lot, SeedAmount } from "../model/plan.ts";
import { counted } from "../words/plurals.ts";

export type ReadAmount =
  | { readonly ok: true; readonly amount: SeedAmount | undefined }
  | { readonly ok: false; readonly reason: string };

/** Grams of each unit of weight. The ounce is the international avoirdupois ounce. */
const GRAMS: ReadonlyMap<string, number> = new Map([
  ["g", 1],
  ["gram", 1],
  ["grams", 1],
  ["mg", 0.001],
  ["kg", 1000],
  ["oz", 28.349523125],
  ["lb", 453.59237],
]);

const MOST = 1_000_000_000;

/** Reads an amount; nothing typed is no amount. A bare number is refused: seeds or grams? */
export function readAmount(text: string): ReadAmount {
  const body = text
    .normalize("NFKC")
    .replace(/\u2212/g, "-")
    .replace(",", ".")
    .trim();
  if (body === "") return { ok: true, amount: undefined };
  const match = /^(-?)(\d+(?:\.\d+)?)\s*([a-z]*)$/i.exec(body);
  const unit = match?.[3]?.toLowerCase() ?? "";
  if (!match || (unit !== "" && unit !== "seed" && unit !== "seeds" && !GRAMS.has(unit))) {
    return { ok: false, reason: "Type grams or seeds, for example 12.5 g or 340 seeds" };
  }
  const value = Number(match[2]);
  if (match[1] === "-" && value > 0) return { ok: false, reason: "An amount is not negative" };
  if (unit === "") {
    return { ok: false, reason: `Type ${match[2]} g or ${match[2]} seeds: which is it?` };
  }
  const grams = GRAMS.get(unit);
  const amount = grams === undefined ? value : value * grams;
  if (amount > MOST) return { ok: false, reason: "That is more than a thousand tonnes" };
  if (grams === undefined && !Number.isInteger(value)) {
    return { ok: false, reason: "Type a whole number of seeds" };
  }
  return {
    ok: true,
    amount: { unit: grams === undefined ? "seeds" : "g", value: amount },
  };
}

/** As it is typed back, exactly. */
export function amountText(amount: SeedAmount | undefined): string {
  if (!amount) return "";
  return amount.unit === "g" ? `${amount.value} g` : `${amount.value} seeds`;
}

/** The other unit: `about 3,400 seeds` of a weight, `about 1.2 g` of a count. */
export function otherAmountWords(lot: Lot, kind: Kind | undefined): string {
  if (!lot.amount) return "";
  const perGram = seedsPerGram(lot, kind);
  if (perGram === undefined) return "seeds in a gram are not known";
  const by = lot.seedsPerGram === undefined ? "by the kind's seeds per gram" : "by its own count";
  if (lot.amount.unit === "g") return `about ${inSeeds(lot.amount, perGram)} seeds, ${by}`;
  return `about ${gramsText(inGrams(lot.amount, perGram) ?? 0)} g, ${by}`;
}

/** So many seeds in the unit the lot is kept in: `3.1 g`, `120 seeds`. */
export function seedsWords(seeds: number, lot: Lot, kind: Kind | undefined): string {
  const perGram = seedsPerGram(lot, kind);
  if (lot.amount?.unit === "g" && perGram !== undefined) return `${gramsText(seeds / perGram)} g`;
  return counted(seeds, { one: "seed", other: "seeds" });
}
