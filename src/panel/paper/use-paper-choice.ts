import { useMemo, useState } from "react";
import { labelFaults } from "../../core/labels/label-measures.ts";
import type { LabelChoice } from "../../core/labels/label-pages.ts";
import {
  MAX_SHEETS,
  MOST_SHEETS,
  planSheets,
  suggestRatio,
  suggestSheets,
} from "../../core/map/page-plan.ts";
import { type Orientation, type PaperName, usualPaper } from "../../core/page/paper.ts";
import { usualLabels } from "../form/make-file.ts";
import { useKept } from "../state/plan-actions.ts";
import type { PrintChoice } from "./print-choice.ts";

interface Chosen {
  readonly paper: PaperName;
  /** Null: as needs fewest sheets. */
  readonly orientation: Orientation | null;
  /** Null: as suggested. */
  readonly ratio: number | null;
  /** A map of very many sheets is wanted all the same. */
  readonly isMany: boolean;
  readonly stakes: LabelChoice;
  readonly packets: LabelChoice;
  /** Bed cards on a page. */
  readonly cardsPerPage: 2 | 4;
}

export interface PaperChoice {
  readonly chosen: Chosen;
  readonly set: (change: Partial<Chosen>) => void;
  readonly suggested: number;
  /** Sheets the map takes, empty ones too. */
  readonly sheets: number;
  /** More than are printed unasked; `too many`: more than are printed at all. */
  readonly amount: "usual" | "many" | "too many";
  /** What is wrong with the labels; undefined: nothing. */
  readonly fault: string | undefined;
  /** Whether pages can be made of it. */
  readonly canPrint: boolean;
  readonly choice: PrintChoice;
}

/** What the dialog that prints has been told, and what follows from it. */
export function usePaperChoice(): PaperChoice {
  const { plan, layout } = useKept();
  const [chosen, setChosen] = useState<Chosen>(() => ({
    paper: usualPaper(plan.units),
    orientation: null,
    ratio: null,
    isMany: false,
    stakes: usualLabels(plan.units, false),
    packets: usualLabels(plan.units, true),
    cardsPerPage: 4,
  }));
  const { paper, isMany, stakes, packets, cardsPerPage } = chosen;
  const lying = useMemo(
    () => suggestSheets(plan, layout, paper).orientation,
    [plan, layout, paper],
  );
  const orientation = chosen.orientation ?? lying;
  const suggested = useMemo(
    () => suggestRatio(plan, layout, paper, orientation),
    [plan, layout, paper, orientation],
  );
  const ratio = chosen.ratio ?? suggested;
  const sheets = useMemo(() => {
    const plans = planSheets(plan, layout, { paper, orientation }, ratio);
    const count = plans.rows * plans.columns;
    // Those with nothing of one's own on them are not printed.
    return count > MAX_SHEETS ? count : plans.sheets.length;
  }, [plan, layout, paper, orientation, ratio]);
  const mostSheets = isMany ? MOST_SHEETS : MAX_SHEETS;
  const choice = useMemo(
    () => ({ paper, orientation, ratio, mostSheets, stakes, packets, cardsPerPage }),
    [paper, orientation, ratio, mostSheets, stakes, packets, cardsPerPage],
  );
  const [fault] = [stakes, packets].flatMap(({ size, startAt }) => labelFaults(size, startAt));
  return {
    chosen,
    set: (change) => setChosen({ ...chosen, ...change }),
    suggested,
    sheets,
    amount: sheets > MOST_SHEETS ? "too many" : sheets > MAX_SHEETS ? "many" : "usual",
    fault,
    canPrint: fault === undefined && sheets <= mostSheets,
    choice,
  };
}
