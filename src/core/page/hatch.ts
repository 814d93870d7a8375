/**
 * Hatches: one per crossing group, the same on sheet, seed list, bloom strip, legend and paper,
 * so that the eye sees "these mix" before it reads. Sizes are in hatch units: CSS pixels on
 * screen, a quarter of a millimetre on paper - never metres. Angles avoid 0 and 90 degrees to the
 * page, which read as rows. Code is the first reading, hatch the second, tint the last.
 */
import type { Plan } from "../model/plan.ts";

/** Parallel lines: angle in degrees anticlockwise from the page's right, spacing across them. */
export interface HatchLines {
  readonly angleDeg: number;
  readonly spacing: number;
  /** Dash and gap along the line; absent: unbroken. */
  readonly dash?: readonly [number, number];
}

/** Marks on a staggered lattice. */
export interface HatchMarks {
  readonly mark: "dot" | "ring" | "plus";
  readonly spacing: number;
  readonly radius: number;
}

export interface Hatch {
  readonly id: string;
  readonly lines: readonly HatchLines[];
  readonly marks: HatchMarks | null;
  /** Ground tint and ink in the light and dark themes; paper uses black on white. */
  readonly tint: { readonly light: string; readonly dark: string };
  readonly ink: { readonly light: string; readonly dark: string };
}

export const hatches: readonly Hatch[] = [
  hatch("cross", [line(45, 9), line(135, 9)], null, ["#EBD9CF", "#3A2A26"], ["#A2654C", "#D39A82"]),
  hatch("rising", [line(35, 7)], null, ["#DDE7E0", "#22332C"], ["#5F8672", "#93BCA6"]),
  hatch("dots", [], marks("dot", 9, 1.3), ["#D8E3E9", "#1F313B"], ["#4A7891", "#8FBAD0"]),
  hatch("dashes", [line(20, 8, [9, 6])], null, ["#E5DFEB", "#312A3D"], ["#7A6694", "#B9A6D2"]),
  hatch("falling", [line(145, 7)], null, ["#EAE3C9", "#363019"], ["#8A7630", "#CDB968"]),
  hatch("rings", [], marks("ring", 12, 3), ["#E6E8D3", "#2C311C"], ["#75803A", "#B9C47C"]),
  hatch("pluses", [], marks("plus", 11, 3), ["#EDDCE2", "#3A252D"], ["#9A5870", "#D699AE"]),
  hatch(
    "broken-cross",
    [line(30, 10, [6, 4]), line(120, 10, [6, 4])],
    null,
    ["#D9E6E4", "#1D3331"],
    ["#3F7F78", "#84C2BB"],
  ),
  hatch("wide", [line(60, 13)], null, ["#ECE4DC", "#332B24"], ["#82684F", "#C7AC91"]),
  hatch("fine-dots", [], marks("dot", 5.5, 0.9), ["#E4E4E4", "#2C2F31"], ["#6A6F72", "#ACB2B6"]),
];

function line(angleDeg: number, spacing: number, dash?: readonly [number, number]): HatchLines {
  return dash ? { angleDeg, spacing, dash } : { angleDeg, spacing };
}

function marks(mark: HatchMarks["mark"], spacing: number, radius: number): HatchMarks {
  return { mark, spacing, radius };
}

function hatch(
  id: string,
  lines: readonly HatchLines[],
  markSet: HatchMarks | null,
  tint: readonly [string, string],
  ink: readonly [string, string],
): Hatch {
  return {
    id,
    lines,
    marks: markSet,
    tint: { light: tint[0], dark: tint[1] },
    ink: { light: ink[0], dark: ink[1] },
  };
}

/**
 * Hatch of each crossing group in a plan, in the order the seed list first names them. With more
 * groups than hatches they repeat; the code on every planting still tells them apart.
 * @param groupOf crossing group of a kind id
 */
export function hatchByGroup(
  plan: Plan,
  groupOf: (kind: string) => string | undefined,
): ReadonlyMap<string, Hatch> {
  const byGroup = new Map<string, Hatch>();
  const kinds = [
    ...plan.varieties.map((variety) => variety.kind),
    ...plan.surroundings.flatMap((entry) => (entry.kind === undefined ? [] : [entry.kind])),
  ];
  for (const kind of kinds) {
    const group = groupOf(kind);
    if (group === undefined || byGroup.has(group)) continue;
    byGroup.set(group, hatches[byGroup.size % hatches.length] as Hatch);
  }
  return byGroup;
}
