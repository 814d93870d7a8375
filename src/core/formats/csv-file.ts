/** Tables as CSV (RFC 4180): CRLF, quoted where needed, and nothing a spreadsheet would run. */
import Papa from "papaparse";

export type CsvValue = string | number | null | undefined;

/**
 * Text a spreadsheet would run as a formula: =, +, - or @ first, in plain or full width, with
 * spaces or apostrophes before it, or a tab or line break first. Numbers stay numbers.
 */
const FORMULA = /^(?:[' \u00A0]*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|'*[\t\r\n])/;

/** @param rows one value for each heading; null and undefined are empty cells */
export function csvFile(
  headings: readonly string[],
  rows: readonly (readonly CsvValue[])[],
): string {
  const cells = [headings, ...rows].map((row) =>
    row.map((value) => {
      if (typeof value === "number") return plainNumber(value);
      const words = value ?? "";
      return FORMULA.test(words) ? `'${words}` : words;
    }),
  );
  return `${Papa.unparse(cells, { newline: "\r\n" })}\r\n`;
}

/** Takes away the apostrophe that stands for a cell's safety, and no other. */
export function plainCell(cell: string): string {
  const rest = cell.slice(1);
  return cell.startsWith("'") && FORMULA.test(rest) ? rest : cell;
}

/** To the tenth of a millimetre, without exponent and idle zeros. */
function plainNumber(value: number): string {
  return String(Number(value.toFixed(4)));
}
