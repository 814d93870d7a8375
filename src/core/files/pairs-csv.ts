/** Every pair that can cross, seed parent first, as one row for a spreadsheet. */
import { describeStanding, requirementText } from "../checks/pair-words.ts";
import { allIsolationPairs } from "../checks/isolation.ts";
import { type CsvValue, csvFile } from "../formats/csv-file.ts";
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";

const HEADINGS = [
  "seed parent",
  "pollen source",
  "distance m",
  "required m",
  "overlap days",
  "gap days",
  "standing",
  "cross",
  "in words",
  "required distance from",
];

/** Pairs cleared by distance as well; measures in metres and days. */
export function pairsCsv(checked: CheckedLayout): string {
  const { result, book } = checked;
  const wording = wordingOf(checked);
  const rows = allIsolationPairs(result.stands, book).map((pair): readonly CsvValue[] => [
    wording.nameOf(pair.seedParent),
    wording.nameOf(pair.pollenSource),
    pair.distanceM,
    pair.requiredM,
    pair.overlapDays,
    pair.gapDays,
    pair.standing,
    pair.relation,
    describeStanding(pair, wording),
    requirementText(pair, wording),
  ]);
  return csvFile(HEADINGS, rows);
}
