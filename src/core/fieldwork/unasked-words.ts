/** What is said of pollen around that nobody was asked about. */
import { listed } from "../checks/wording.ts";
import { listOf } from "../words/plurals.ts";
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

/** Null where there is none. @param names of pollen sources entered as a point */
export function pointWords(names: readonly string[]): string | null {
  if (names.length === 0) return null;
  return `Measured to a single point: ${listed(names)}. Where more than one plant stands there, give it its size or outline: a field reaches nearer than its middle.`;
}

/** `beet and chard, within 1000 m (look for sea beet too)`. */
function lineOf({ kinds, wild, metres }: UnaskedAround, unit: LengthUnit): string {
  const names = listOf(kinds.map(({ name }) => name));
  const within =
    metres === null ? "how far is not known" : `within ${formatDistance(metres, unit)}`;
  const look = wild.length === 0 ? "" : ` (look for ${listOf(wild.map(({ name }) => name))} too)`;
  return `${names}, ${within}${look}`;
}
