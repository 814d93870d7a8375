/** The paper a command prints on, the ratio of a map, and how many sheets it may take. */
import {
  MAX_SHEETS,
  MOST_SHEETS,
  type SheetPaper,
  oneSheetRatio,
  planSheets,
} from "../../core/map/page-plan.ts";
import type { Layout, Plan } from "../../core/model/plan.ts";
import { type Orientation, type PaperName, paperNames } from "../../core/page/paper.ts";
import { usage } from "../options.ts";

export function paperNamed(command: string, text: string): PaperName {
  const found = paperNames.find((name) => name.toLowerCase() === text.toLowerCase());
  if (!found) throw usage(command, `Got paper "${text}", expected ${paperNames.join(", ")}`);
  return found;
}

/** Null where neither is asked for: as needs fewest sheets. */
export function orientationOf(
  command: string,
  wanted: { readonly landscape: boolean; readonly portrait: boolean },
): Orientation | null {
  if (wanted.landscape && wanted.portrait) {
    throw usage(command, "Choose --landscape or --portrait");
  }
  if (wanted.portrait) return "portrait";
  return wanted.landscape ? "landscape" : null;
}

/** Bed cards on a page. */
export function cardsNamed(command: string, text: string): 2 | 4 {
  if (text !== "2" && text !== "4") throw usage(command, `Got cards "${text}", expected 2 or 4`);
  return text === "2" ? 2 : 4;
}

/** `100` or `1:100`; the decimal mark may be a comma. */
export function ratioOf(command: string, text: string): number {
  const ratio = Number(/^(?:1:)?(\d+(?:[.,]\d+)?)$/.exec(text.trim())?.[1]?.replace(",", "."));
  if (!(ratio >= 1 && ratio <= 100_000)) {
    throw usage(command, `Got ratio "${text}", expected 1 to 100000, for example 100 for 1:100`);
  }
  return ratio;
}

/** @param isMany whether very many sheets are wanted all the same */
export function mostSheetsOf(isMany: boolean): number {
  return isMany ? MOST_SHEETS : MAX_SHEETS;
}

/** Sheets of a map; refused where they are more than may be. */
export function sheetCount(
  command: string,
  plan: Plan,
  layout: Layout,
  sheetPaper: SheetPaper & { readonly mostSheets: number },
  ratio: number,
): number {
  const { paper, orientation, mostSheets } = sheetPaper;
  const { rows, columns, sheets } = planSheets(plan, layout, sheetPaper, ratio);
  const count = rows * columns;
  // Those with nothing of one's own on them are not printed.
  if (count <= mostSheets) return sheets.length;
  const fitting = oneSheetRatio(plan, layout, paper, orientation);
  const anyway = count <= MOST_SHEETS ? "; --many-sheets prints them all" : "";
  throw usage(
    command,
    `1:${ratio} takes ${count} sheets of ${paper}, more than ${mostSheets}; 1:${fitting} would do with fewer${anyway}`,
  );
}
