/**
 * What one variety is: a kind and a name, hybrids apart from what is open-pollinated. Two entries,
 * a neighbour's planting and an earlier crop that agree in these are one variety wherever they meet.
 */
import type { Variety } from "./plan.ts";

/** Nothing to fold but the case: most names, in a tenth of the time. */
const PLAIN = /^[!-~]+(?: [!-~]+)*$/;

/**
 * A name as names are compared: canonical composition (NFC), case folded, runs of spaces as one.
 * Folded is what Unicode's CaseFolding.txt folds in full beyond lower case and is met in names: the
 * German sharp s and the Greek final sigma. The dotless i of Turkish stays a letter of its own.
 */
function foldedName(name: string): string {
  if (PLAIN.test(name)) return name.toLowerCase();
  return name
    .normalize("NFC")
    .toLowerCase()
    .replaceAll("ß", "ss")
    .replaceAll("ς", "σ")
    .normalize("NFC")
    .replaceAll(/\s+/gu, " ")
    .trim();
}

/** What is written where nobody knows the name. */
const NO_NAME = /^(?:|\?+|-+|unknown|not known|unnamed|n\/a)$/;

/** The same text for the same variety; null for one without a name, which is like no other. */
export function varietyKey({
  kind,
  name,
  hybrid,
}: {
  readonly kind: string;
  readonly name?: string | undefined;
  readonly hybrid?: boolean | undefined;
}): string | null {
  const folded = foldedName(name ?? "");
  if (NO_NAME.test(folded)) return null;
  // Seed of a hybrid is no seed of its namesake: its pollen counts against it.
  return `${kind}|${folded}${hybrid === true ? "|hybrid" : ""}`;
}

export function isSameVariety(
  a: Pick<Variety, "kind" | "name" | "hybrid">,
  b: Pick<Variety, "kind" | "name" | "hybrid">,
): boolean {
  const key = varietyKey(a);
  return key !== null && key === varietyKey(b);
}
