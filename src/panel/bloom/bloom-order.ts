/** The lines of the bloom strip from top to bottom: rows, headings of crossing groups, undated stands. */
import { crossingGroups } from "../../core/kinds/groups.ts";
import type { BloomRow, BloomStripRows, UndatedRow } from "./bloom-rows.ts";

export const bloomOrders = ["flower", "group"] as const;
export type BloomOrder = (typeof bloomOrders)[number];

export type BloomLine =
  | { readonly kind: "row"; readonly id: string; readonly row: BloomRow }
  | { readonly kind: "undated"; readonly id: string; readonly row: UndatedRow }
  | { readonly kind: "heading"; readonly id: string; readonly text: string };

/** Lines in order of first flower, undated last; or so within each group, groups by their first flower. */
export function bloomLines(strip: BloomStripRows, order: BloomOrder): readonly BloomLine[] {
  const lines: readonly BloomLine[] = [
    ...strip.rows.map((row) => ({ kind: "row", id: row.id, row }) as const),
    ...strip.undated.map((row) => ({ kind: "undated", id: row.id, row }) as const),
  ];
  if (order === "flower") return lines;
  const groups = new Map<string, BloomLine[]>();
  for (const line of lines) {
    if (line.kind === "heading") continue;
    const group = groups.get(line.row.group);
    if (group) group.push(line);
    else groups.set(line.row.group, [line]);
  }
  return [...groups].flatMap(([group, members]): readonly BloomLine[] => [
    { kind: "heading", id: `group:${group}`, text: groupName(group) },
    ...members,
  ]);
}

/** Lines as they stood before, with what they show now; new ones go to the end. */
export function linesHeld(
  lines: readonly BloomLine[],
  order: readonly string[],
): readonly BloomLine[] {
  const rank = new Map(order.map((id, index) => [id, index]));
  const rankOf = (line: BloomLine) => rank.get(line.id) ?? order.length;
  return [...lines].sort((a, b) => rankOf(a) - rankOf(b));
}

function groupName(id: string): string {
  return crossingGroups.find((group) => group.id === id)?.name ?? id;
}
