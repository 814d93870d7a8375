/** What is said of pollen around that nobody was asked about. */
import { listed } from "../checks/wording.ts";
import { type LengthUnit, formatDistance } from "../model/length.ts";
import type { UnaskedAround } from "./unasked-around.ts";

export interface UnaskedWords {
  /** What it means. */
  readonly head: string;
  /** One line for each crossing group: what to look for, how far. */
  readonly lines: readonly string[];
  /** What to do. */
  readonly advice: string;
}

/** Null where something is entered around for every group that reaches beyond the beds. */
export function unaskedWords(
  unasked: readonly UnaskedAround[],
  unit: LengthUnit,
): UnaskedWords | null {
  if (unasked.length === 0) return null;
  return {
    head: "Clear means clear of what is entered. Around the beds nothing is entered that crosses with:",
    lines: unasked.map((each) => lineOf(each, unit)),
    advice:
      "Ask the neighbours and walk round before it flowers, and enter what you find as a pollen source.",
  };
}

/** `beet and chard, within 1000 m (look for sea beet too)`. */
function lineOf({ kinds, wild, metres }: UnaskedAround, unit: LengthUnit): string {
  const names = listed(kinds.map(({ name }) => name));
  const within =
    metres === null ? "how far is not known" : `within ${formatDistance(metres, unit)}`;
  const look = wild.length === 0 ? "" : ` (look for ${listed(wild.map(({ name }) => name))} too)`;
  return `${names}, ${within}${look}`;
}
