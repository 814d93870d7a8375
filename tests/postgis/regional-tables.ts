/** The crop base as the tables that docs/regional-register.sql loads. */
import type { Requirement } from "../../src/core/checks/isolation-pair.ts";
import { requirementOf, wildRequirements } from "../../src/core/checks/requirement.ts";
import { DEFAULT_GUARD_DAYS } from "../../src/core/checks/stand.ts";
import { MIXING_STRIP } from "../../src/core/distances/mixing-strip.ts";
import { smallDistanceOf } from "../../src/core/distances/same-name.ts";
import type { CropBook } from "../../src/core/kinds/crop-book.ts";
import type { Kind } from "../../src/core/kinds/crop.ts";
import type { PurityLevel } from "../../src/core/model/plan.ts";

type Cell = string | number;

function csv(rows: readonly (readonly Cell[])[]): string {
  const cell = (value: Cell) =>
    /[",\n]/.test(String(value)) ? `"${String(value).replaceAll('"', '""')}"` : String(value);
  return rows.map((row) => `${row.map(cell).join(",")}\n`).join("");
}

/** docs/regional-kinds.csv */
export function kindsTable({ kinds }: CropBook): string {
  const distance = (kind: Kind, level: PurityLevel): readonly Cell[] => {
    const requirement = requirementOf({}, {}, kind, level);
    return [requirement?.metres ?? "", String(requirement?.isFloor === true)];
  };
  return csv([
    [
      "id",
      "name",
      "crossing_group",
      "life_cycle",
      "carrier",
      "guard_days",
      "home_m",
      "sale_m",
      "sale_is_least",
      "stock_m",
      "stock_is_least",
      "same_name_m",
      "strip_m",
    ],
    ...kinds.map((kind) => [
      kind.id,
      kind.name,
      kind.group,
      kind.lifeCycle,
      kind.carrier,
      kind.guardDays?.value ?? DEFAULT_GUARD_DAYS,
      // The laxest level has none laxer to borrow from.
      ...distance(kind, "home").slice(0, 1),
      ...distance(kind, "sale"),
      ...distance(kind, "stock"),
      smallDistanceOf(kind).metres,
      MIXING_STRIP.metres,
    ]),
  ]);
}

/** docs/regional-wild.csv: what the check asks of a seed parent without a figure short of it. */
export function wildTable({ kinds }: CropBook): string {
  const nothing: Requirement = {
    metres: 0,
    from: "figure",
    figure: null,
    source: null,
    reason: null,
  };
  return csv([
    ["seed_kind", "wild_kind", "at_least_m"],
    ...kinds.flatMap((kind) =>
      [...(wildRequirements(kind, nothing) ?? [])].map(([wild, { metres }]) => [
        kind.id,
        wild,
        metres,
      ]),
    ),
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
