/** What a plot map shows of a layout, before it is cut into sheets. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { LengthUnit } from "../model/length.ts";
import { type Finding, checkOf } from "../checks/all-checks.ts";
import { type Outline, outlineOf } from "../geometry/outline.ts";
import type { AreaShape, Layout, Picture } from "../model/plan.ts";
import type { Point } from "../geometry/point.ts";
import { type Hatch, hatchByGroup } from "../page/hatch.ts";
import { type StyleName, coverWords, plantingStyle, surroundingStyle } from "./map-style.ts";
import { printedPicture } from "./picture-mark.ts";
import { setOut } from "../fieldwork/set-out.ts";

export interface MapItem {
  readonly id: string;
  readonly what: "site" | "bed" | "planting" | "surrounding";
  readonly outline: Outline;
  readonly style: StyleName;
  readonly hatch: Hatch | null;
  /** Crossing group the hatch stands for. */
  readonly group: string | null;
  /** Words on the map; empty for none. */
  readonly label: string;
  /** How many rows, and the outline they run along; plantings only. */
  readonly rows?: { readonly count: number | undefined; readonly shape: AreaShape };
}

/** A finding about a pair, measured between two places, with its number in the list of findings. */
export interface NumberedFinding {
  readonly number: number;
  readonly finding: Finding;
}

export interface MapContent {
  /** In drawing order: the lowest first. */
  readonly items: readonly MapItem[];
  readonly measured: readonly NumberedFinding[];
  /** Lies under everything; null when none is to be printed. */
  readonly picture: Picture | null;
  /** Where the tapes are held, when the set-out table goes with the map. */
  readonly stakes: readonly { readonly letter: string; readonly place: Point }[];
}

export function mapContent(checked: CheckedLayout, hasStakes = false): MapContent {
  const { plan, layout, result } = checked;
  const measured = result.findings.flatMap((finding, index): readonly NumberedFinding[] =>
    checkOf(finding).pairsAtRisk ? [{ number: index + 1, finding }] : [],
  );
  const inConflict = new Set(
    measured
      .filter(({ finding }) => finding.severity === "conflict")
      .flatMap(({ finding }) => finding.subjects),
  );
  return {
    measured,
    picture: printedPicture(plan.picture),
    stakes: hasStakes ? stakesOf(layout, plan.units) : [],
    items: mapItems(checked, inConflict),
  };
}

/** @param inConflict ids of what is drawn as in conflict */
function mapItems(
  { plan, layout, book }: CheckedLayout,
  inConflict: ReadonlySet<string>,
): readonly MapItem[] {
  const hatches = hatchByGroup(plan, (kind) => book.kind(kind)?.group);
  const kinds = new Map(plan.varieties.map((variety) => [variety.id, variety.kind]));
  const hatched = (kind: string | undefined) => {
    const group = book.kind(kind ?? "")?.group ?? null;
    return { group, hatch: group === null ? null : (hatches.get(group) ?? null) };
  };
  const plain = { hatch: null, group: null };
  return [
    ...(plan.site.outline
      ? [
          {
            id: "site",
            what: "site" as const,
            outline: outlineOf(plan.site.outline),
            style: "site" as const,
            ...plain,
            label: "",
          },
        ]
      : []),
    ...plan.surroundings.map((item) => ({
      id: item.id,
      what: "surrounding" as const,
      outline: outlineOf(item.outline),
      style: surroundingStyle(item),
      ...(item.what === "pollen" ? hatched(item.kind) : plain),
      label: item.label,
    })),
    ...layout.beds.map((bed) => ({
      id: bed.id,
      what: "bed" as const,
      outline: outlineOf(bed.outline),
      style: "bed" as const,
      ...plain,
      label: bed.code,
    })),
    ...layout.plantings.map((planting) => ({
      id: planting.id,
      what: "planting" as const,
      outline: outlineOf(planting.outline),
      style: plantingStyle(planting, inConflict.has(planting.id)),
      ...hatched(kinds.get(planting.variety)),
      rows: { count: planting.rows, shape: planting.outline },
      label: [planting.code, coverWords(planting.cover)].filter((part) => part !== "").join(" "),
    })),
  ];
}

function stakesOf(layout: Layout, unit: LengthUnit): MapContent["stakes"] {
  const found = setOut(layout, unit);
  return found
    ? [
        { letter: "A", place: found.a },
        { letter: "B", place: found.b },
      ]
    : [];
}
