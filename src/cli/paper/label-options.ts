/** Options of the commands that print labels. */
import {
  labelFaults,
  MEASURES_EXAMPLE,
  measuredSize,
  readMeasures,
} from "../../core/labels/label-measures.ts";
import type { LabelChoice, PrinterOffset } from "../../core/labels/label-pages.ts";
import { type LabelSize, labelSizes, usualLabelSize } from "../../core/labels/label-sizes.ts";
import type { LengthUnit } from "../../core/model/length.ts";
import { usage } from "../options.ts";

export const labelOptions = {
  size: { type: "string" },
  start: { type: "string", default: "1" },
  offset: { type: "string", default: "0x0" },
  qr: { type: "boolean", default: false },
  treated: { type: "string", default: "" },
} as const;

interface LabelValues {
  readonly size?: string | undefined;
  readonly start: string;
  readonly offset: string;
  readonly qr: boolean;
  readonly treated: string;
}

export function labelChoice(
  command: string,
  { size, start, offset, qr, treated }: LabelValues,
  unit: LengthUnit,
  isPacket: boolean,
): LabelChoice {
  const sheet = size === undefined ? usualLabelSize(unit, isPacket) : sizeNamed(command, size);
  if (!/^[1-9]\d{0,3}$/.test(start)) {
    throw usage(
      command,
      `Got start "${start}", expected the number of the first label to print on`,
    );
  }
  const [fault] = labelFaults(sheet, Number(start));
  if (fault !== undefined) throw usage(command, fault);
  return {
    size: sheet,
    startAt: Number(start),
    hasQr: qr,
    treatment: treated,
    offset: offsetOf(command, offset),
  };
}

/** One of ours by name, or one measured by hand. */
function sizeNamed(command: string, text: string): LabelSize {
  const found = labelSizes.find(({ id }) => id === text.toLowerCase());
  if (found) return found;
  if (text.includes("=")) {
    const read = readMeasures(text);
    if (read.ok) return measuredSize(read.measures);
    throw usage(command, `Label size: ${read.problems.join("; ")}`);
  }
  const ids = labelSizes.map(({ id }) => id).join(", ");
  throw usage(
    command,
    `Got label size "${text}", expected ${ids}, or measures in mm as "${MEASURES_EXAMPLE}"`,
  );
}

const MOST_OFFSET_MM = 20;

/** `1.5x-2`: the printer prints 1.5 mm too far to the right and 2 mm too high. */
function offsetOf(command: string, text: string): PrinterOffset {
  const [, right, down] = /^(-?\d+(?:[.,]\d+)?)x(-?\d+(?:[.,]\d+)?)$/.exec(text.trim()) ?? [];
  const read = [right, down].map((part) => Number(part?.replace(",", ".")));
  if (!read.every((value) => Math.abs(value) <= MOST_OFFSET_MM)) {
    throw usage(
      command,
      `Got offset "${text}", expected how far the printer prints too far right and down, as 1.5x-2, at most ${MOST_OFFSET_MM} mm`,
    );
  }
  return { right: read[0] ?? 0, down: read[1] ?? 0 };
}
