/** What is printed of a plan, by name: for one button, one command, and the pages shown before. */
import type { LabelUse } from "../labels/label-facts.ts";
import { type CompanionId, companionIds } from "../map/companion-ids.ts";
import type { Layout, Plan } from "../model/plan.ts";
import { exportFileName } from "../page/file-name.ts";
import { nothingToPrint, printTitles } from "./print-words.ts";

export type PrintId =
  | "map"
  | CompanionId
  | "sowing-list"
  | "years"
  | "layouts"
  | "lot-isolation"
  | "neighbours"
  | "stakes"
  | "packets"
  | "shelf";

export interface PrintPart {
  readonly id: PrintId;
  readonly title: string;
  /** Printed on labels; absent: on plain paper. */
  readonly labels?: LabelUse;
}

export const printParts: readonly PrintPart[] = [
  { id: "map", title: printTitles.map },
  ...companionIds.map((id) => ({ id, title: printTitles[id] })),
  { id: "sowing-list", title: printTitles["sowing-list"] },
  { id: "years", title: printTitles.years },
  { id: "layouts", title: printTitles.layouts },
  { id: "lot-isolation", title: printTitles["lot-isolation"] },
  { id: "neighbours", title: printTitles.neighbours },
  { id: "stakes", title: printTitles.stakes, labels: "stakes" },
  { id: "packets", title: printTitles.packets, labels: "packets" },
  { id: "shelf", title: printTitles.shelf, labels: "lots" },
];

/** Why there is nothing to print of a part; null where there is. */
export function printHindrance(id: PrintId, plan: Plan, layout: Layout): string | null {
  const isKept = layout.plantings.some(
    ({ purpose, flowering }) => purpose === "seed" && flowering === "yes",
  );
  switch (id) {
    case "map":
      return null;
    case "bed-cards":
    case "set-out":
      return layout.beds.length === 0 ? nothingToPrint.beds : null;
    case "calendar":
    case "sowing-list":
    case "stakes":
      return layout.plantings.length === 0 ? nothingToPrint.plantings : null;
    case "isolation":
    case "harvest":
    case "packets":
      return isKept ? null : nothingToPrint.seed;
    case "neighbours":
      return isKept && plan.surroundings.some(({ what }) => what === "pollen")
        ? null
        : nothingToPrint.neighbours;
    case "shelf":
      return plan.lots.some(({ state }) => state === "in stock") ? null : nothingToPrint.lots;
    case "layouts":
      return plan.layouts.length < 2 ? nothingToPrint.layouts : null;
    case "lot-isolation":
      return plan.lots.some(({ isolation }) => isolation) ? null : nothingToPrint.lotIsolation;
    case "years":
      return plan.renewalYears?.choices.some(({ grown }) => grown) === true
        ? null
        : nothingToPrint.years;
    default:
      return null;
  }
}

/** Beds are marked out once; layouts are compared, and buyers ask how seed was isolated, now and then. */
const WHEN_ASKED: ReadonlySet<PrintId> = new Set(["set-out", "years", "layouts", "lot-isolation"]);

/** Whether a part is printed unless somebody says otherwise. */
export function isUsuallyPrinted(id: PrintId, plan: Plan, layout: Layout): boolean {
  if (WHEN_ASKED.has(id)) return false;
  // Packets come with the harvest, to those who keep a shelf.
  if (id === "packets" && plan.lots.length === 0) return false;
  return printHindrance(id, plan, layout) === null;
}

/** `fallow-end-2027-layout-1-stakes-rev-k7q2m.pdf`. */
export function printFileName(plan: Plan, layout: Layout, what: string): string {
  return exportFileName(plan, layout, what, "pdf");
}
