/** Titles and lines that stand on every page of a plot map. */
import { civilFromDay, longDate } from "../model/day.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { Plan } from "../model/plan.ts";
import type { CompanionId } from "./companion-ids.ts";
import { ratioText } from "../page/drawing-ratio.ts";
import { planRevision } from "../page/file-name.ts";
import type { MapSheet, SheetPlan } from "./page-plan.ts";
import type { Orientation, PaperName } from "../page/paper.ts";

export interface PlotMapSettings {
  readonly paper: PaperName;
  readonly orientation: Orientation;
  /** Ground for paper: 100 means 1:100. Kept exactly. */
  readonly ratio: number;
  /** Printed as it is; core has no clock. Best `2027-03-02 09:40`: then it also dates the file. */
  readonly printedAt: string;
  /** Map sheets it may take; absent: MAX_SHEETS. */
  readonly mostSheets?: number;
  /** Sheets that go with the map; absent: none. */
  readonly companions?: readonly CompanionId[];
  /** Bed cards on a page; absent: four. Two are read from farther off. */
  readonly cardsPerPage?: 2 | 4;
}

/** `Seed plots, Fallow End, season 2027`. */
export function mapTitle(plan: Plan): string {
  const place = plan.site.name === "" ? plan.title : plan.site.name;
  return [`Seed plots, ${place}`, plan.season.name === "" ? "" : `season ${plan.season.name}`]
    .filter((part) => part !== "")
    .join(", ");
}

/** Plan, layout, reading where it is as grown, paper and print date: the same on every page, so that two printings can be told apart. */
export function stampText(
  { plan, layout, grownOn }: Pick<CheckedLayout, "plan" | "layout" | "grownOn">,
  settings: Pick<PlotMapSettings, "ratio" | "paper" | "printedAt">,
): string {
  const ratio = `${ratioText(settings.ratio, plan.units)} on ${settings.paper}`;
  const title = plan.title === plan.site.name ? [] : [plan.title];
  const revision = `rev ${planRevision(plan, layout)}`;
  const reading = grownOn === undefined ? [] : [`as grown on ${longDate(grownOn)}`];
  return [...title, layout.name, ...reading, revision, ratio, `printed ${settings.printedAt}`]
    .filter((part) => part !== "")
    .join("  ·  ");
}

/** Dates of the season, with both years where it runs over New Year, and which sheet this is. */
export function sheetText(plan: Plan, sheets: SheetPlan, sheet: MapSheet): string {
  const { first, last } = plan.season;
  const season = `${longDate(first)} to ${longDate(last)}`;
  const isWholeYear =
    season === `1 Jan ${civilFromDay(first).year} to 31 Dec ${civilFromDay(first).year}`;
  const place = `sheet ${sheet.number} of ${sheets.rows * sheets.columns}: row ${sheet.row + 1} of ${sheets.rows}, column ${sheet.column + 1} of ${sheets.columns}`;
  const parts = [
    ...(isWholeYear ? [] : [season]),
    ...(sheets.rows * sheets.columns > 1 ? [place] : []),
    plan.site.upBearingDeg === 0 ? "north is up" : "the arrow shows true north",
  ].join("  ·  ");
  return parts.charAt(0).toUpperCase() + parts.slice(1);
}
