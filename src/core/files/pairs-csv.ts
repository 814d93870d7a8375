/** Every pair that can cross, seed parent first, as one row for a spreadsheet. */
import { describeStanding, requirementText, wordingFor } from "../checks/describe-finding.ts";
import { allIsolationPairs } from "../checks/isolation.ts";
import { type CsvValue, csvFile } from "../formats/csv-file.ts";
import type { PlotMapInput } from "../map/map-items.ts";

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
export function pairsCsv({ plan, layout, result, book }: PlotMapInput): string {
  const wording = wordingFor(plan, layout, (id) => result.standById.get(id));
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
