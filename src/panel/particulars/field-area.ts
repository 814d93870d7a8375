/** The size of a field as people type it: hectares or acres. Inside it is hectares. */
import { HECTARES_PER_ACRE } from "../../core/distances/stated-adjustments.ts";
import type { LengthUnit } from "../../core/model/length.ts";
import * as words from "./dialog-words.ts";

export type ReadArea =
  | { readonly ok: true; readonly hectares: number }
  | { readonly ok: false; readonly reason: string };

const MAX_HECTARES = 100_000;

/** A bare number is hectares in a plan of metres, acres in one of feet. */
export function readFieldArea(text: string, unit: LengthUnit): ReadArea {
  const body = text.normalize("NFKC").trim().toLowerCase().replace(",", ".");
  const match = /^(\d+(?:\.\d+)?)\s*(ha|hectares?|ac|acres?)?$/.exec(body);
  const isAcres = match?.[2] === undefined ? unit === "ft" : match[2].startsWith("a");
  const hectares = Number(match?.[1] ?? Number.NaN) * (isAcres ? HECTARES_PER_ACRE : 1);
  return hectares > 0 && hectares <= MAX_HECTARES
    ? { ok: true, hectares }
    : { ok: false, reason: words.typeArea };
}

/** `0.5 ha` or `1.24 acres`, to the hundredth. */
export function fieldAreaText(hectares: number, unit: LengthUnit): string {
  return unit === "m"
    ? words.hectaresText(Number(hectares.toFixed(2)))
    : words.acresText(Number((hectares / HECTARES_PER_ACRE).toFixed(2)));
}
