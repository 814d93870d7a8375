/** What this browser remembers of the grower's labels and printer: they belong to the device. */
import {
  type LabelMeasures,
  measureFaults,
  measureList,
  usualMeasures,
} from "../../core/labels/label-measures.ts";
import type { PrinterOffset } from "../../core/labels/label-pages.ts";
import { labelFolds } from "../../core/labels/label-sizes.ts";
import { stored } from "./stored.ts";
import * as words from "./words.ts";

const MOST_OFFSET_MM = 20;

/** The sheet measured last; ours to begin with. */
export const storedMeasures = stored<LabelMeasures>("wideberth.label-sheet", (value) => {
  if (typeof value !== "object" || value === null) return usualMeasures;
  const held = value as Readonly<Record<string, unknown>>;
  const isNumber = measureList.every((name) => Number.isFinite(held[name]));
  const fold = labelFolds.find((each) => each === held["fold"]);
  if (!isNumber || !fold) return usualMeasures;
  const numbers = Object.fromEntries(measureList.map((name) => [name, Number(held[name])]));
  const read = { ...usualMeasures, ...numbers, fold };
  return measureFaults(read).length === 0 ? read : usualMeasures;
});

/** How far this device's printer prints beside where it should, mm. */
export const storedOffset = stored<PrinterOffset>("wideberth.printer-offset", (value) => {
  const held = (value ?? {}) as Readonly<Record<string, unknown>>;
  const [right, down] = [Number(held["right"] ?? 0), Number(held["down"] ?? 0)];
  const isSound = Math.abs(right) <= MOST_OFFSET_MM && Math.abs(down) <= MOST_OFFSET_MM;
  return isSound ? { right, down } : { right: 0, down: 0 };
});

/** Why an offset cannot be so large; null when it can. */
export function offsetProblem(mm: number): string | null {
  return Math.abs(mm) <= MOST_OFFSET_MM ? null : words.offsetTooLarge(MOST_OFFSET_MM);
}
