/** How many plants are advised for a kind, by whom, and who is named first. */
import type { Kind } from "../kinds/crop.ts";
import { citedAs, findSource } from "../kinds/sources.ts";
import { CRUCIFERS, geneBankNumber } from "./gene-banks.ts";

export type Adviser = "handbooks" | "gene banks" | "own figure" | "from memory";

export interface Advice {
  readonly by: Adviser;
  readonly plants: number;
  /** Who prints it, and what is said beside. */
  readonly source: string;
}

/**
 * What is advised to keep a variety true. Gene banks come first for what crosses, which they grow
 * in numbers for that reason; handbooks for what selfs. A number typed by the grower comes before
 * both, and one that is only recalled is left out where another was read.
 */
export function populationAdvice(
  kind: Pick<Kind, "id" | "species" | "population" | "breeding">,
): readonly Advice[] {
  const bank = bankAdvice(kind);
  const other = otherAdvice(kind);
  if (other?.by === "own figure") return [other, ...(bank ? [bank] : [])];
  const read = other?.by === "from memory" && bank ? null : other;
  const order = kind.breeding === "outcrossing" ? [bank, read] : [read, bank];
  return order.flatMap((each) => each ?? []);
}

function bankAdvice(kind: Pick<Kind, "id" | "species">): Advice | null {
  const bank = geneBankNumber(kind);
  if (!bank) return null;
  const note = bank.note === undefined ? "" : `; ${bank.note}`;
  return { by: "gene banks", plants: bank.plants, source: `${bank.source}${note}` };
}

function otherAdvice({ population }: Pick<Kind, "population">): Advice | null {
  const figure = population?.maintenance;
  // Of kinds no handbook was read for, the gene bank's number is the kind's own.
  if (!figure || figure.source === CRUCIFERS) return null;
  const trust = findSource(figure.source)?.trust;
  const by =
    trust === "own figure" ? "own figure" : trust === "from memory" ? "from memory" : "handbooks";
  return { by, plants: figure.value, source: citedAs(figure.source) };
}
