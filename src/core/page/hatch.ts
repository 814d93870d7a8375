/**
 * Hatches: one per crossing group, the same in every plan, on sheet, seed list, bloom strip,
 * legend and paper, so that the eye sees "these mix" before it reads. Sizes are in hatch units: CSS pixels on
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
  hatch(
    "close-cross",
    [line(45, 5), line(135, 5)],
    null,
    ["#EFD9D3", "#3B2723"],
    ["#9C5A48", "#DB9F8C"],
  ),
  hatch(
    "short-dashes",
    [line(155, 7, [4, 5])],
    null,
    ["#DCE8DA", "#22321F"],
    ["#56805A", "#93C292"],
  ),
  hatch(
    "lined-dots",
    [line(35, 15)],
    marks("dot", 10, 1.5),
    ["#DDE2EE", "#232A3D"],
    ["#566C9B", "#9DB0DC"],
  ),
  hatch(
    "lined-rings",
    [line(145, 17)],
    marks("ring", 15, 3),
    ["#EAE0E8", "#352A34"],
    ["#82617C", "#C7A5C1"],
  ),
  hatch("steep", [line(70, 6)], null, ["#E2E9E9", "#253233"], ["#577B7C", "#95BDBE"]),
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
 * Which groups have which hatch, for ever: a grower's maps of all years and fields agree. Groups
 * often grown together have unlike ones; those of one line share theirs, so that words tell them
 * apart where a plan has two of them.
 */
const GROUPS: readonly (readonly [hatch: string, groups: string])[] = [
  ["cross", "tomato asparagus flax pearl-millet"],
  ["rising", "bean buckwheat cosmos rice quinoa"],
  ["dots", "carrot okra oat bottle-gourd"],
  ["dashes", "beet mung-bean nasturtium rye"],
  ["falling", "lettuce hyacinth-bean sesame west-india-gherkin"],
  ["rings", "onion soybean calendula bitter-gourd"],
  ["pluses", "squash celery tobacco chickpea"],
  ["broken-cross", "brassica peanut sweet-pea husk-tomato"],
  ["wide", "pea watermelon zinnia caraway"],
  ["fine-dots", "maize parsley chives luffa"],
  ["close-cross", "pepper coriander marigold wax-gourd"],
  ["short-dashes", "cucumber spinach sorghum fenugreek white-mustard"],
  ["lined-dots", "leek eggplant sunflower orach pigeon-pea"],
  ["lined-rings", "radish melon cowpea cynara safflower"],
  ["steep", "broad-bean parsnip chicory basil lima-bean amaranth corn-salad dill fennel rocket"],
];

const HATCH_OF_GROUP: ReadonlyMap<string, Hatch> = new Map(
  GROUPS.flatMap(([id, groups]) => {
    const its = hatches.find((each) => each.id === id) as Hatch;
    return groups.split(" ").map((group) => [group, its] as const);
  }),
);

/** Of a group in the table; else, of a grower's own kinds, one that follows from its id alone. */
export function hatchOfGroup(group: string): Hatch {
  const known = HATCH_OF_GROUP.get(group);
  if (known) return known;
  let sum = 0;
  for (const char of group) sum = (sum * 31 + (char.codePointAt(0) ?? 0)) % 1_000_003;
  return hatches[sum % hatches.length] as Hatch;
}

/**
 * Hatch of each crossing group in a plan, in the order the seed list first names them.
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
    if (group !== undefined) byGroup.set(group, hatchOfGroup(group));
  }
  return byGroup;
}

/** Groups of a plan that share their hatch with another: words must tell them apart. */
export function sharedHatchGroups(byGroup: ReadonlyMap<string, Hatch>): ReadonlySet<string> {
  const groups = [...byGroup];
  return new Set(
    groups.flatMap(([group, { id }]) =>
      groups.some(([other, its]) => other !== group && its.id === id) ? [group] : [],
    ),
  );
}
