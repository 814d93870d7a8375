/** Small pieces of Markdown for the figures page. */

/** A table; empty when it has no rows. */
export function table(
  head: readonly string[],
  rows: readonly (readonly string[])[],
): readonly string[] {
  if (rows.length === 0) return [];
  const line = (cells: readonly string[]) => `| ${cells.map(cell).join(" | ")} |`;
  return [line(head), line(head.map(() => "---")), ...rows.map(line), ""];
}

function cell(text: string): string {
  return text.replaceAll("|", "\\|").replaceAll("\n", " ");
}

/** Metres with as many places as the number needs, at most two, e.g. "201.17 m". */
export function metresText(metres: number): string {
  return `${Number(metres.toFixed(2))} m`;
}

/** First letter in capital. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "a", "a and b", "a, b and c". */
export function listed(items: readonly string[]): string {
  const last = items.at(-1);
  if (last === undefined) return "";
  return items.length === 1 ? last : `${items.slice(0, -1).join(", ")} and ${last}`;
}
