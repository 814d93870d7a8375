/** Stakes: one for each planting, with what a helper must know standing before it. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { lotCodesToSow } from "../lots/lot-book.ts";
import { byCode } from "../map/plot-rows.ts";
import { currentEntries } from "../record/current-entries.ts";
import { plotRecord } from "../record/plot-record.ts";
import { plotCode } from "../lots/plot-code.ts";
import { type LabelFacts, present } from "./label-facts.ts";
import { amountWords, stakeWarning, startWords } from "./label-words.ts";
import { missingWords, packetWords } from "./packet-words.ts";

export function stakeLabels({ plan, layout, book }: CheckedLayout): readonly LabelFacts[] {
  const entries = currentEntries(plan.entries);
  return byCode(layout.plantings).map((planting) => {
    const variety = plan.varieties.find(({ id }) => id === planting.variety);
    const kind = book.kind(variety?.kind ?? "")?.name ?? "";
    const lot = lotCodesToSow(plan, planting, variety);
    const record = plotRecord(entries.filter(({ of }) => of === planting.id));
    const start = startWords(planting, record);
    return {
      headIs: "code",
      head: planting.code,
      second: `${variety?.name ?? ""}, ${kind}`.replace(/^, /, ""),
      warning: stakeWarning(planting, variety),
      lines: present([
        start === "" ? packetWords.season(plan.season.name) : start,
        present([amountWords(planting), lot === "" ? "" : packetWords.lot(lot)]).join("  ·  "),
      ]),
      machine: plotCode(planting.code, lot),
      missing: present([start === "" ? missingWords.date : "", lot === "" ? missingWords.lot : ""]),
    };
  });
}
