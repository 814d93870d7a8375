/** A map page made longer, so that one picture holds the notes its panel speaks of. */
import { type FlowItem, type Flowed, flowInto } from "../page/flow.ts";
import { noteColumns } from "../map/list-pages.ts";
import { PAGE_MARGIN_MM } from "../page/page-frame.ts";
import { type Page, line } from "../page/scene.ts";

const STEP_MM = 2;

/** The page as it was, and under a line the notes, in columns about equally high. */
export function withNotesBelow(page: Page, notes: readonly FlowItem[]): Page {
  const top = page.heightMm + PAGE_MARGIN_MM / 2;
  const columns = noteColumns(page);
  const flowed = (height: number): Flowed =>
    flowInto(
      notes,
      columns.map((column) => ({ ...column, top, height })),
    );
  const total = notes.reduce((sum, item) => sum + item.height, 0);
  let height = total / columns.length;
  while (flowed(height).rest.length > 0) height += STEP_MM;
  const rule = line(
    [
      { x: PAGE_MARGIN_MM, y: page.heightMm },
      { x: page.widthMm - PAGE_MARGIN_MM, y: page.heightMm },
    ],
    { widthMm: 0.2 },
  );
  return {
    ...page,
    heightMm: top + height + PAGE_MARGIN_MM,
    marks: [...page.marks, rule, ...flowed(height).marks],
  };
}
