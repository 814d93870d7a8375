/** What is known of ground, in the words of its tables. */
import type { GroundRow } from "../../core/ground/ground-history.ts";
import { markName } from "../../core/ground/ground-diseases.ts";
import { longDate } from "../../core/model/day.ts";
import type { GroundMark } from "../../core/model/plan.ts";
import { formOf } from "../../core/words/plurals.ts";

/** `yes`, `no`, `not known`. */
export function seedCellOf(wentToSeed: NonNullable<GroundRow["wentToSeed"]>): string {
  return wentToSeed === "unknown" ? "not known" : wentToSeed;
}

const KNOWN_FROM = { record: "written down", plan: "only planned", told: "remembered" } as const;

/** `yes, only planned`; of a planting `this season`. */
export function seedAndSource({ wentToSeed, knownFrom }: GroundRow): string {
  if (wentToSeed === null) return "this season";
  const from = knownFrom === undefined ? "" : `, ${KNOWN_FROM[knownFrom]}`;
  return `${seedCellOf(wentToSeed)}${from}`;
}

/** `kale Winter Lace`. */
export function grewWords({ kindName, varietyName }: GroundRow): string {
  return varietyName === "" ? kindName : `${kindName} ${varietyName}`;
}

/** `White rot, seen on 12 Jul 2024`. */
export function markWords(mark: GroundMark): string {
  const name = markName(mark);
  const note = mark.note === undefined || mark.note === "" ? "" : `; ${mark.note}`;
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}, seen on ${longDate(mark.seenOn)}${note}`;
}

/** `5 crops`. */
export function cropsOfYear(count: number): string {
  return formOf(count, { one: "1 crop", other: `${count} crops` });
}

export const NOTHING_KNOWN =
  "Nothing is entered of earlier years, so neither volunteers nor rotation can be told.";
