import type { ComponentProps, ReactNode } from "react";
import { CompareSheets } from "../canvas/compare/CompareSheets.tsx";
import { Compare } from "../panel/compare/Compare.tsx";

function drawSheets(
  panes: ComponentProps<typeof CompareSheets>["panes"],
  isOverlaid: boolean,
): ReactNode {
  return <CompareSheets panes={panes} isOverlaid={isOverlaid} />;
}

/** The region of compared layouts with its drawings. */
export function CompareView() {
  return <Compare drawing={drawSheets} />;
}
