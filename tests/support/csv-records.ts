/** Records of a CSV file by their headings, read by papaparse. */
import Papa from "papaparse";

/** @param text as written, with its byte order mark */
export function csvRecords(text: string): readonly Readonly<Record<string, string>>[] {
  const { data } = Papa.parse(text.replace(/^\uFEFF/, "").trimEnd(), { delimiter: "," });
  const [headings = [], ...records] = data;
  return records.map((cells) =>
    Object.fromEntries(headings.map((heading, index) => [heading, cells[index] ?? ""])),
  );
}
