/** What a plot map shows of a layout, before it is cut into sheets. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { markName } from "../ground/ground-diseases.ts";
import { civilFromDay } from "../model/day.ts";
import type { LengthUnit } from "../model/length.ts";
import { type Finding, checkOf } from "../checks/all-checks.ts";
import { type Outline, outlineOf } from "../geometry/outline.ts";
import type { AreaShape, GroundMark, Layout, Picture, Plan, Planting } from "../model/plan.ts";
import type { Point } from "../geometry/point.ts";
import { type Hatch, hatchByGroup, sharedHatchGroups } from "../page/hatch.ts";
import { type StyleName, plantingStyle, surroundingStyle } from "./map-style.ts";
import { printedPicture } from "./picture-mark.ts";
import { setOut } from "../fieldwork/set-out.ts";
import { coverMarks, sheetWords } from "./map-words.ts";

export interface MapItem {
  readonly id: string;
  readonly what: "site" | "bed" | "planting" | "surrounding" | "mark";
  readonly outline: Outline;
  readonly style: StyleName;
  readonly hatch: Hatch | null;
  /** Crossing group the hatch stands for. */
  readonly group: string | null;
  /** Words on the map; empty for none. */
  readonly label: string;
  /** Of a planting, beside its code where there is room. */
  readonly variety?: { readonly name: string; readonly kind: string };
  /** Another group of the plan has the same hatch: the kind must stand in words. */
  readonly isHatchShared?: boolean;
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
  const shared = sharedHatchGroups(hatches);
  const varieties = new Map(plan.varieties.map((variety) => [variety.id, variety]));
  const hatched = (kind: string | undefined) => {
    const group = book.kind(kind ?? "")?.group ?? null;
    return { group, hatch: group === null ? null : (hatches.get(group) ?? null) };
  };
  const plain = { hatch: null, group: null };
  return [
    ...siteItem(plan.site),
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
    ...layout.plantings.map((planting) => {
      const variety = varieties.get(planting.variety);
      const look = hatched(variety?.kind);
      return {
        id: planting.id,
        what: "planting" as const,
        outline: outlineOf(planting.outline),
        style: plantingStyle(planting, inConflict.has(planting.id)),
        ...look,
        rows: { count: planting.rows, shape: planting.outline },
        label: plantingLabel(planting),
        variety: { name: variety?.name ?? "", kind: book.kind(variety?.kind ?? "")?.name ?? "" },
        isHatchShared: look.group !== null && shared.has(look.group),
      };
    }),
    ...plan.groundMarks.map(markItem),
  ];
}

function siteItem({ outline }: Plan["site"]): readonly MapItem[] {
  if (outline === undefined) return [];
  const plain = { hatch: null, group: null, label: "" };
  return [{ id: "site", what: "site", outline: outlineOf(outline), style: "site", ...plain }];
}

function markItem(mark: GroundMark): MapItem {
  return {
    id: mark.id,
    what: "mark",
    outline: outlineOf(mark.outline),
    style: "disease",
    hatch: null,
    group: null,
    label: sheetWords.marked(markName(mark), civilFromDay(mark.seenOn).year),
  };
}

/** `B02-1 cage`, `A04-1 to eat`: what is no seed crop says so, to be seen at arm's length. */
function plantingLabel({ code, cover, purpose }: Planting): string {
  const use = purpose === "food" ? sheetWords.toEat : "";
  return [code, coverMarks[cover], use].filter((part) => part !== "").join(" ");
}

function stakesOf(layout: Layout, unit: LengthUnit): MapContent["stakes"] {
  const found = setOut(layout, unit);
  return found
    ? [
        { letter: "P", place: found.p },
        { letter: "Q", place: found.q },
      ]
    : [];
}
