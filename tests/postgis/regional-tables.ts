/** The crop base as the two tables that docs/regional-register.sql loads. */
import { requirementOf } from "../../src/core/checks/requirement.ts";
import { DEFAULT_GUARD_DAYS } from "../../src/core/checks/stand.ts";
import type { CropBook } from "../../src/core/kinds/crop-book.ts";
import type { Kind } from "../../src/core/kinds/crop.ts";

type Cell = string | number;

function csv(rows: readonly (readonly Cell[])[]): string {
  const cell = (value: Cell) =>
    /[",\n]/.test(String(value)) ? `"${String(value).replaceAll('"', '""')}"` : String(value);
  return rows.map((row) => `${row.map(cell).join(",")}\n`).join("");
}

/** docs/regional-kinds.csv */
export function kindsTable({ kinds }: CropBook): string {
  // A distance that is only the least counts as unknown there: the register has no word for it.
  const metres = (kind: Kind, level: "home" | "sale" | "stock") => {
    const requirement = requirementOf({}, {}, kind, level);
    return requirement === null || requirement.isFloor === true ? "" : requirement.metres;
  };
  return csv([
    ["id", "name", "crossing_group", "carrier", "guard_days", "home_m", "sale_m", "stock_m"],
    ...kinds.map((kind) => [
      kind.id,
      kind.name,
      kind.group,
      kind.carrier,
      kind.guardDays?.value ?? DEFAULT_GUARD_DAYS,
      metres(kind, "home"),
      metres(kind, "sale"),
      metres(kind, "stock"),
    ]),
  ]);
}

/** docs/regional-relations.csv */
export function relationsTable(book: CropBook): string {
  const pairs = book.kinds.flatMap((a) =>
    book.kinds
      .filter((b) => b !== a && b.group === a.group)
      .map((b) => [a.id, b.id, book.relation(a, b).relation]),
  );
  return csv([
    ["seed_kind", "pollen_kind", "relation"],
    ...pairs.filter(([, , relation]) => relation !== "no"),
  ]);
}
