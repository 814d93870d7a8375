/** What labels are for, and what stands on those of each use. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { LabelFacts, LabelUse } from "./label-facts.ts";
import { lotLabels, packetLabels } from "./packet-facts.ts";
import { stakeLabels } from "./stake-facts.ts";

/** @param treatment what seed of this season was treated with; empty: nothing is said */
export function labelsFor(
  use: LabelUse,
  input: CheckedLayout,
  treatment: string,
): readonly LabelFacts[] {
  if (use === "stakes") return stakeLabels(input);
  return use === "packets" ? packetLabels(input, treatment) : lotLabels(input);
}
