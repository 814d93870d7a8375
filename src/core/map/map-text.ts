/** Titles and lines that stand on every page of a plot map. */
import { civilFromDay, dayFromCivil, longDate } from "../model/day.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { Plan } from "../model/plan.ts";
import type { CompanionId } from "./companion-ids.ts";
import { ratioText } from "../page/drawing-ratio.ts";
import { planRevision } from "../page/file-name.ts";
import type { MapSheet, SheetPlan } from "./page-plan.ts";
import type { Orientation, PaperName } from "../page/paper.ts";
import { headerWords } from "./map-words.ts";

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
  return headerWords.seedPlots(placeTitle(plan));
}

/** `Fallow End, season 2027`. */
export function placeTitle({ title, site, season }: Plan): string {
  const place = site.name === "" ? title : site.name;
  return season.name === "" ? place : headerWords.inSeason(place, season.name);
}

/** Plan, layout, reading where it is as grown, paper and print date: the same on every page, so that two printings can be told apart. */
export function stampText(
  { plan, layout, grownOn }: Pick<CheckedLayout, "plan" | "layout" | "grownOn">,
  settings: Pick<PlotMapSettings, "ratio" | "paper" | "printedAt">,
): string {
  const ratio = headerWords.onPaper(ratioText(settings.ratio, plan.units), settings.paper);
  const title = plan.title === plan.site.name ? [] : [plan.title];
  const revision = headerWords.revision(planRevision(plan, layout));
  const reading = grownOn === undefined ? [] : [headerWords.asGrown(longDate(grownOn))];
  return [
    ...title,
    layout.name,
    ...reading,
    revision,
    ratio,
    headerWords.printed(settings.printedAt),
  ]
    .filter((part) => part !== "")
    .join("  ·  ");
}

/** Dates of the season, with both years where it runs over New Year, and which sheet this is. */
export function sheetText(plan: Plan, sheets: SheetPlan, sheet: MapSheet): string {
  const { first, last } = plan.season;
  const { year } = civilFromDay(first);
  const isWholeYear =
    first === dayFromCivil({ year, month: 1, day: 1 }) &&
    last === dayFromCivil({ year, month: 12, day: 31 });
  const place = headerWords.sheetPlace(sheet, sheets);
  const parts = [
    ...(isWholeYear ? [] : [headerWords.span(longDate(first), longDate(last))]),
    ...(sheets.rows * sheets.columns > 1 ? [place] : []),
    plan.site.upBearingDeg === 0 ? headerWords.northUp : headerWords.arrow,
  ].join("  ·  ");
  return parts.charAt(0).toUpperCase() + parts.slice(1);
}
