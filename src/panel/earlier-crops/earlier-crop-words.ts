/** Earlier crops in words, and what the form for one holds. */
import { liesOn } from "../../core/ground/earlier-grounds.ts";
import type { CropBook } from "../../core/kinds/crop-book.ts";
import type { BroughtCrops, NewEarlierCrop } from "../../core/edits/earlier-crops.ts";
import { outlineOf, shapeCentre } from "../../core/geometry/outline.ts";
import { civilFromDay } from "../../core/model/day.ts";
import { formatLength } from "../../core/model/length.ts";
import type { EarlierCrop, Layout, Plan, RectangleShape } from "../../core/model/plan.ts";
import { formOf } from "../../core/words/plurals.ts";

/** The calendar year the plan's season begins in. */
export function seasonYear({ season }: Plan): number {
  return civilFromDay(season.first).year;
}

/** `tomato Amber Lantern, 2026`. */
export function cropName({ kind, varietyName = "", year }: NewEarlierCrop, book: CropBook): string {
  const name = book.kind(kind)?.name ?? kind;
  return `${name}${varietyName === "" ? "" : ` ${varietyName}`}, ${year}`;
}

/** `beds B01, B02` of the layout on the sheet, else its middle and size. */
export function placeWords(
  { outline }: Pick<EarlierCrop, "outline">,
  layout: Layout,
  plan: Plan,
): string {
  const ground = outlineOf(outline);
  const codes = layout.beds
    .filter((bed) => liesOn(outlineOf(bed.outline), ground))
    .map(({ code }) => code);
  if (codes.length > 0)
    return `${formOf(codes.length, { one: "bed", other: "beds" })} ${codes.join(", ")}`;
  const { x, y } = shapeCentre(outline);
  const length = (metres: number) => formatLength(metres, plan.units);
  return `no bed; middle ${length(x)} right, ${length(y)} up`;
}

export type WentToSeed = NonNullable<EarlierCrop["wentToSeed"]>;

/** Unknown counts as yes: seed nobody looked for comes up as well. */
export const wentToSeedWords: Readonly<Record<WentToSeed, string>> = {
  unknown: "not known",
  yes: "yes, it bore seed",
  no: "no, it was eaten, cut or cleared before",
};

/** On which ground something is, as a form holds it. */
export interface GroundDraft {
  /** `as-is`: the ground it has; `beds`: those ticked; `rectangle`: as typed. */
  readonly where: "as-is" | "beds" | "rectangle";
  readonly beds: readonly string[];
  readonly rectangle: RectangleShape;
}

/** What the form for a crop holds. */
export interface CropDraft extends GroundDraft {
  readonly kind: string | undefined;
  readonly varietyName: string;
  readonly year: number | undefined;
  readonly wentToSeed: WentToSeed;
  readonly note: string;
}

/** The form as it begins: for a new crop, or for one that is there. */
export function cropDraft(crop: EarlierCrop | null, plan: Plan, layout: Layout): CropDraft {
  return {
    ...groundDraft(crop, layout),
    kind: crop?.kind,
    varietyName: crop?.varietyName ?? "",
    year: crop?.year ?? seasonYear(plan) - 1,
    wentToSeed: crop?.wentToSeed ?? "unknown",
    note: crop?.note ?? "",
  };
}

/** Where it is now, else the beds of the layout to tick, else a rectangle like a bed. */
export function groundDraft(
  thing: Pick<EarlierCrop, "outline"> | null,
  layout: Layout,
): GroundDraft {
  const first = layout.beds.find(({ outline }) => outline.shape === "rectangle")?.outline;
  const shape = thing?.outline ?? first;
  return {
    where: thing ? "as-is" : layout.beds.length > 0 ? "beds" : "rectangle",
    beds: [],
    rectangle:
      shape?.shape === "rectangle"
        ? shape
        : { shape: "rectangle", x: 0, y: 0, widthM: 1.2, lengthM: 10, turnDeg: 0 },
  };
}

/** Why the form cannot be kept, or null. */
export function draftProblem({ kind, year, where, beds }: CropDraft, plan: Plan): string | null {
  if (kind === undefined) return "Pick the kind that grew there";
  const latest = seasonYear(plan);
  if (year === undefined || year < 1900 || year > latest) {
    return `Type the year it was harvested or shed seed, at the latest ${latest}`;
  }
  return where === "beds" && beds.length === 0 ? "Tick the beds it grew in" : null;
}

/** One crop for each piece of ground; none while the form cannot be kept. */
export function cropsOfDraft(
  draft: CropDraft,
  before: EarlierCrop | null,
  layout: Layout,
): readonly NewEarlierCrop[] {
  const { kind, year, varietyName, wentToSeed, note } = draft;
  if (kind === undefined || year === undefined) return [];
  const name = varietyName.trim();
  const rest = {
    kind,
    year,
    wentToSeed,
    ...(before ? {} : { knownFrom: "told" as const }),
    ...(name === "" ? {} : { varietyName: name }),
    ...(note === "" ? {} : { note }),
  };
  return groundsOf(draft, before, layout).map((outline) => ({ outline, ...rest }));
}

/** The pieces of ground a form names, one for each bed. */
export function groundsOf(
  { where, beds, rectangle }: GroundDraft,
  before: Pick<EarlierCrop, "outline"> | null,
  layout: Layout,
): readonly EarlierCrop["outline"][] {
  if (where === "as-is" && before) return [before.outline];
  if (where === "rectangle") return [rectangle];
  return layout.beds.filter(({ id }) => beds.includes(id)).map(({ outline }) => outline);
}

/** What taking over a plan would do, before it is done. */
export function broughtWords(brought: BroughtCrops, fileName: string): readonly string[] {
  const { year, layoutName, crops, marks, known, away, isPlaced } = brought;
  return [
    `${fileName}: ${cropCount(crops.length)} to take, from ${layoutName} of ${year} and from what it knew of earlier years.`,
    ...(marks.length > 0 ? [`${markCount(marks.length)} on the ground to take as well.`] : []),
    ...(known > 0 ? [`${cropCount(known)} of it stand here already.`] : []),
    ...(away > 0 ? [`${cropCount(away)} lie too far from this sheet and are left out.`] : []),
    isPlaced
      ? "They are laid where they grew, by the positions of the two sites."
      : "One of the two sites has no position: both sheets are taken to begin at the same stake and to lie the same way.",
  ];
}

export function cropCount(count: number): string {
  return formOf(count, { one: "1 earlier crop", other: `${count} earlier crops` });
}

/** `1 mark`, `3 marks`: diseases marked on the ground. */
function markCount(count: number): string {
  return formOf(count, { one: "1 mark of a disease", other: `${count} marks of diseases` });
}
