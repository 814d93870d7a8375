/** In which order places are tried for the words on a map sheet, and when a hatch can be read. */
import type { LabelPlacer } from "../page/label-placer.ts";
import type { Ground } from "../page/label-places.ts";
import type { Mark, TextRuler } from "../page/scene.ts";
import type { MapItem } from "./map-items.ts";
import { TYPE_PT } from "./map-style.ts";
import {
  type ClearGround,
  type LabelRule,
  type LabelSubject,
  type LabelTry,
  type PlacedLabels,
  placeLabels,
  ringArea,
} from "./sheet-labels.ts";

const { code, small, least } = TYPE_PT;

/** So much of a hatch is seen past the words on it: more for names, which can go elsewhere. */
const PAST_NAMES: ClearGround = { alongMm: 3.5, acrossMm: 3.4 };
const PAST_CODES: ClearGround = { alongMm: 3, acrossMm: 2.3 };
/** A hatch repeats within 3 mm: in less ground than this one cannot tell it from another. */
const READABLE = { sideMm: 4, areaMm2: 40 } as const;

export function isHatchReadable(ground: Pick<Ground, "rings">): boolean {
  const [ring = []] = ground.rings;
  const area = ringArea(ground);
  const longest = Math.max(
    0,
    ...ring.map((from, index) => {
      const to = ring[(index + 1) % ring.length] ?? from;
      return Math.hypot(to.x - from.x, to.y - from.y);
    }),
  );
  // Of a long narrow shape its area by its longest edge is how wide it is.
  return area >= READABLE.areaMm2 && area / longest >= READABLE.sideMm;
}

const NAMES_IN: readonly LabelTry[] = (["inside", "turned"] as const).map((place) => ({
  place,
  sizesPt: [code, 9, small],
  words: ["in line", "stacked"],
  leastClear: PAST_NAMES,
}));
const NAMES_APART: LabelTry = { place: "apart", sizesPt: [small], words: ["stacked", "in line"] };
const CODES: readonly LabelTry[] = [
  { place: "inside", sizesPt: [code, 9, small], leastClear: PAST_CODES },
  { place: "turned", sizesPt: [code, 9, small], leastClear: PAST_CODES },
  { place: "inside", sizesPt: [least], leastClear: PAST_CODES },
  { place: "turned", sizesPt: [least], leastClear: PAST_CODES },
];
const CODES_APART: readonly LabelTry[] = [
  { place: "apart", sizesPt: [small, least] },
  { place: "inside", sizesPt: [small, least] },
  { place: "turned", sizesPt: [small, least] },
  { place: "over", sizesPt: [9, small, least] },
];

/** On maps so full that codes go before hatches. */
const CODES_ON_HATCH: readonly LabelTry[] = [
  { place: "inside", sizesPt: [code, 9, small] },
  { place: "turned", sizesPt: [code, 9, small] },
  { place: "inside", sizesPt: [least] },
  { place: "turned", sizesPt: [least] },
  { place: "over", sizesPt: [9, small, least] },
  { place: "apart", sizesPt: [small, least] },
];

/** A code is rather turned than set small, and rather set small than put elsewhere. */
export const LABEL_RULES = {
  bed: {
    isBoxed: false,
    tries: [
      { place: "beside", sizesPt: [small, least] },
      { place: "inside", sizesPt: [small, least] },
      { place: "apart", sizesPt: [small, least] },
    ],
  },
  surrounding: {
    isBoxed: false,
    tries: [
      { place: "inside", sizesPt: [small] },
      { place: "turned", sizesPt: [small] },
      { place: "beside", sizesPt: [small, least] },
      { place: "apart", sizesPt: [small, least] },
    ],
  },
  mark: {
    isBoxed: false,
    tries: [
      { place: "inside", sizesPt: [small] },
      { place: "turned", sizesPt: [small] },
      { place: "beside", sizesPt: [small, least] },
      { place: "apart", sizesPt: [small, least] },
      { place: "over", sizesPt: [small, least] },
    ],
  },
} as const satisfies Readonly<Record<string, LabelRule>>;

/**
 * Rules for plantings, the fullest first: names where they fit, those led by a line included;
 * names only where they fit inside; codes alone; codes on hatches as well. The first with which no
 * code is lost is taken.
 */
const PLANTING_RULES: readonly LabelRule[] = [
  [...NAMES_IN, { ...NAMES_APART, isForNeeded: true }, ...CODES, NAMES_APART, ...CODES_APART],
  [...NAMES_IN, ...CODES, ...CODES_APART],
  [...CODES, ...CODES_APART],
  CODES_ON_HATCH,
].map((tries) => ({ isBoxed: true, tries }));

export interface PlantingLabels {
  /** With the places taken, for what is put after. */
  readonly placer: LabelPlacer;
  readonly codes: PlacedLabels;
  /** Joins between sheets, which go before all. */
  readonly joins: readonly Mark[];
}

/** @param joinsOn puts what goes before the codes */
export function plantingLabels(
  shown: readonly { readonly item: MapItem; readonly ground: Ground }[],
  freshPlacer: () => LabelPlacer,
  joinsOn: (placer: LabelPlacer) => readonly Mark[],
  ruler: TextRuler,
): PlantingLabels {
  const subjects = shown.map(withNames);
  let best: PlantingLabels | null = null;
  for (const rule of PLANTING_RULES) {
    const placer = freshPlacer();
    const joins = joinsOn(placer);
    const codes = placeLabels(subjects, placer, ruler, rule);
    if (best === null || codes.placed.length > best.codes.placed.length) {
      best = { placer, codes, joins };
    }
    if (codes.placed.length === subjects.length) break;
  }
  return best as PlantingLabels;
}

/** The variety; and the kind where no hatch tells it. */
function withNames({
  item,
  ground,
}: {
  readonly item: MapItem;
  readonly ground: Ground;
}): LabelSubject {
  const { name = "", kind = "" } = item.variety ?? {};
  const isToldByHatch = item.hatch !== null && item.isHatchShared !== true;
  const names = [name, isToldByHatch ? "" : kind].filter((part) => part !== "").join(", ");
  return { item, ground, names, isNameNeeded: !isToldByHatch };
}
