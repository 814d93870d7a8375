/** Plans with a seed shelf. */
import type { Lot, Plan } from "../../src/core/model/plan.ts";

/** The plan with one lot for each variety, which it is sown from. */
export function withLots(plan: Plan, codeOf: (index: number) => string): Plan {
  const lots = plan.varieties.map((variety, index): Lot => ({
    id: `lot-${index + 1}`,
    code: codeOf(index),
    variety: variety.id,
    state: "in stock",
  }));
  const varieties = plan.varieties.map((variety, index) => ({
    ...variety,
    lots: [lots[index]?.id ?? ""],
  }));
  return { ...plan, lots, varieties };
}
