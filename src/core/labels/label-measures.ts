/** Sheets of labels the grower has bought and measured: one field for each measure. */
import { type LabelFold, type LabelSize, labelFolds, labelsOnSheet } from "./label-sizes.ts";
import { counted, formOf } from "../words/plurals.ts";

/** Millimetres, but for columns and rows. */
export interface LabelMeasures {
  readonly pageWidth: number;
  readonly pageHeight: number;
  readonly labelWidth: number;
  readonly labelHeight: number;
  readonly columns: number;
  readonly rows: number;
  /** From the edge of the page to the first label. */
  readonly leftMargin: number;
  readonly topMargin: number;
  /** From one label's edge to the same edge of the next. */
  readonly pitchAcross: number;
  readonly pitchDown: number;
  readonly fold: LabelFold;
}

export type MeasureName = Exclude<keyof LabelMeasures, "fold">;

export const measureNames: Readonly<Record<MeasureName, string>> = {
  pageWidth: "Page width",
  pageHeight: "Page height",
  labelWidth: "Label width",
  labelHeight: "Label height",
  columns: "Columns",
  rows: "Rows",
  leftMargin: "Left margin",
  topMargin: "Top margin",
  pitchAcross: "Pitch across",
  pitchDown: "Pitch down",
};

export const measureList = Object.keys(measureNames) as readonly MeasureName[];

export const usualMeasures: LabelMeasures = {
  pageWidth: 210,
  pageHeight: 297,
  labelWidth: 63.5,
  labelHeight: 38,
  columns: 3,
  rows: 7,
  leftMargin: 7,
  topMargin: 15.5,
  pitchAcross: 66,
  pitchDown: 38,
  fold: "flat",
};

export interface MeasureFault {
  readonly field: MeasureName;
  /** What is wrong with it and what would do. */
  readonly words: string;
}

/** A tenth of a millimetre is what a ruler tells apart. */
const SLACK_MM = 0.1;
const LEAST_MM: Readonly<Record<LabelFold, readonly [number, number]>> = {
  flat: [20, 10],
  over: [20, 20],
  round: [90, 10],
};

/** Everything that is wrong with the measures, each with the field to look at. */
export function measureFaults(measures: LabelMeasures): readonly MeasureFault[] {
  return [...sizeFaults(measures), ...overlapFaults(measures), ...edgeFaults(measures)];
}

function sizeFaults(measures: LabelMeasures): readonly MeasureFault[] {
  const { columns, rows, pageWidth, pageHeight, labelWidth, labelHeight, fold } = measures;
  const [leastWidth, leastHeight] = LEAST_MM[fold];
  const faults: MeasureFault[] = [];
  const within = (field: MeasureName, value: number, least: number, most: number) => {
    if (value >= least && value <= most) return;
    faults.push({ field, words: `got ${mm(value)}, expected ${least} to ${most} mm` });
  };
  const count = (field: "columns" | "rows", value: number) => {
    if (Number.isInteger(value) && value >= 1 && value <= 100) return;
    faults.push({ field, words: `got ${value}, expected a whole number from 1 to 100` });
  };
  within("pageWidth", pageWidth, 20, 1000);
  within("pageHeight", pageHeight, 10, 1000);
  within("labelWidth", labelWidth, leastWidth, 1000);
  within("labelHeight", labelHeight, leastHeight, 1000);
  count("columns", columns);
  count("rows", rows);
  within("leftMargin", measures.leftMargin, 0, 1000);
  within("topMargin", measures.topMargin, 0, 1000);
  return faults;
}

function overlapFaults(measures: LabelMeasures): readonly MeasureFault[] {
  const { columns, rows, labelWidth, labelHeight, pitchAcross, pitchDown } = measures;
  const faults: MeasureFault[] = [];
  const check = (field: MeasureName, count: number, pitch: number, size: number) => {
    if (count <= 1 || pitch >= size - SLACK_MM) return;
    faults.push({
      field,
      words: `got ${mm(pitch)}, expected at least the label's ${mm(size)}: labels would lie on each other by ${mm(size - pitch)}`,
    });
  };
  check("pitchAcross", columns, pitchAcross, labelWidth);
  check("pitchDown", rows, pitchDown, labelHeight);
  return faults;
}

function edgeFaults(measures: LabelMeasures): readonly MeasureFault[] {
  const { columns, rows, leftMargin, topMargin, pageWidth, pageHeight } = measures;
  const right = leftMargin + (columns - 1) * measures.pitchAcross + measures.labelWidth;
  const bottom = topMargin + (rows - 1) * measures.pitchDown + measures.labelHeight;
  const faults: MeasureFault[] = [];
  if (right > pageWidth + SLACK_MM) {
    faults.push({
      field: "columns",
      words: `${counted(columns, { one: "column ends", other: "columns end" })} ${mm(right)} from the left, past the page's ${mm(pageWidth)}`,
    });
  }
  if (bottom > pageHeight + SLACK_MM) {
    faults.push({
      field: "rows",
      words: `${counted(rows, { one: "row ends", other: "rows end" })} ${mm(bottom)} from the top, past the page's ${mm(pageHeight)}`,
    });
  }
  return faults;
}

function mm(value: number): string {
  return `${Math.round(value * 10) / 10} mm`;
}

/** `Pitch across: got 60 mm, expected ...`. */
export function faultText({ field, words }: MeasureFault): string {
  return `${measureNames[field]}: ${words}`;
}

/** The measures of any size. */
export function measuresOf(size: LabelSize): LabelMeasures {
  return {
    pageWidth: size.page.widthMm,
    pageHeight: size.page.heightMm,
    labelWidth: size.label.widthMm,
    labelHeight: size.label.heightMm,
    columns: size.columns,
    rows: size.rows,
    leftMargin: size.left,
    topMargin: size.top,
    pitchAcross: size.pitchX,
    pitchDown: size.pitchY,
    fold: size.fold,
  };
}

/** What is wrong with a sheet and with the label begun at, in words that name the field. */
export function labelFaults(size: LabelSize, startAt: number): readonly string[] {
  const faults = measureFaults(measuresOf(size)).map(faultText);
  const most = labelsOnSheet(size);
  if (faults.length > 0 || (startAt >= 1 && startAt <= most)) return faults;
  return [`First label: got ${startAt}, expected 1 to ${most}, as many as a sheet has`];
}

/** The measures as a size; ask `measureFaults` first. */
export function measuredSize(measures: LabelMeasures): LabelSize {
  return {
    id: "measured",
    title: "measured by hand",
    page: { widthMm: measures.pageWidth, heightMm: measures.pageHeight },
    label: { widthMm: measures.labelWidth, heightMm: measures.labelHeight },
    columns: measures.columns,
    rows: measures.rows,
    left: measures.leftMargin,
    top: measures.topMargin,
    pitchX: measures.pitchAcross,
    pitchY: measures.pitchDown,
    fold: measures.fold,
    isCut: false,
  };
}

/** As `readMeasures` takes it. */
export const MEASURES_EXAMPLE =
  "page=210x297 label=63.5x38 columns=3 rows=7 left=7 top=15.5 pitch=66x38";

export type ReadMeasures =
  | { readonly ok: true; readonly measures: LabelMeasures }
  | { readonly ok: false; readonly problems: readonly string[] };

/**
 * Measures by name in one line, as MEASURES_EXAMPLE; `fold=over` or `fold=round` may follow. A
 * decimal comma does as well; without a pitch labels stand side by side.
 */
export function readMeasures(text: string): ReadMeasures {
  const given = new Map(
    text
      .trim()
      .split(/\s+/)
      .map((part) => {
        const [name = "", value = ""] = part.split("=");
        return [name.toLowerCase(), value] as const;
      }),
  );
  const problems: string[] = [];
  const known = ["page", "label", "columns", "rows", "left", "top", "pitch", "fold"];
  for (const name of given.keys()) {
    if (!known.includes(name)) problems.push(`got "${name}", expected ${known.join(", ")}`);
  }
  const numbers = (name: string, count: number, otherwise?: readonly number[]) => {
    const read = numbersOf(given.get(name), count) ?? otherwise;
    if (!read) problems.push(`${name}: got "${given.get(name) ?? ""}", expected ${wanted(count)}`);
    return read ?? Array.from({ length: count }, () => 0);
  };
  const [pageWidth = 0, pageHeight = 0] = numbers("page", 2);
  const label = numbers("label", 2);
  const [labelWidth = 0, labelHeight = 0] = label;
  const [columns = 0] = numbers("columns", 1);
  const [rows = 0] = numbers("rows", 1);
  const [leftMargin = 0] = numbers("left", 1);
  const [topMargin = 0] = numbers("top", 1);
  const [pitchAcross = 0, pitchDown = 0] = numbers(
    "pitch",
    2,
    given.has("pitch") ? undefined : label,
  );
  const fold = labelFolds.find((each) => each === (given.get("fold") ?? "flat"));
  if (!fold) problems.push(`fold: got "${given.get("fold")}", expected ${labelFolds.join(", ")}`);
  if (!fold || problems.length > 0) return { ok: false, problems };
  const margins = { leftMargin, topMargin, pitchAcross, pitchDown };
  const measures = {
    pageWidth,
    pageHeight,
    labelWidth,
    labelHeight,
    columns,
    rows,
    ...margins,
    fold,
  };
  const faults = measureFaults(measures).map(faultText);
  return faults.length > 0 ? { ok: false, problems: faults } : { ok: true, measures };
}

function wanted(count: number): string {
  return formOf(count, { one: "a number of mm", other: "two numbers of mm with an x between" });
}

function numbersOf(text: string | undefined, count: number): readonly number[] | null {
  const parts = (text ?? "").replaceAll(",", ".").split(/[x×]/i);
  if (parts.length !== count || !parts.every((part) => /^\d+(?:\.\d+)?$/.test(part))) return null;
  return parts.map(Number);
}
