/** Short ways to write down figures, so that a family's file reads like its table. */
import { METRES_PER_FOOT } from "../model/length.ts";
import type {
  FigureClass,
  IsolationFigure,
  Kind,
  Range,
  Sourced,
  Spacing,
  Timing,
} from "./crop.ts";

type Remarks = Partial<
  Pick<IsolationFigure, "form" | "case" | "neverDefault" | "outlier" | "standing" | "note">
>;

/** A figure published in feet. */
export function inFeet(
  id: string,
  figureClass: FigureClass,
  feet: number,
  source: string,
  remarks: Remarks & { readonly published?: string } = {},
): IsolationFigure {
  const metres = feet * METRES_PER_FOOT;
  return { id, figureClass, metres, published: `${feet} ft`, source, ...remarks };
}

/** A figure published in metres. */
export function inMetres(
  id: string,
  figureClass: FigureClass,
  metres: number,
  source: string,
  remarks: Remarks & { readonly published?: string } = {},
): IsolationFigure {
  return { id, figureClass, metres, published: `${metres} m`, source, ...remarks };
}

interface UsClasses {
  readonly foundation?: number;
  readonly registered?: number;
  readonly certified?: number;
}

/** Rows of 7 CFR 201.76 Table 5, feet. `suffix` tells rows of one kind apart. */
export function usTable(
  classes: UsClasses,
  remarks: Remarks = {},
  suffix = "",
): readonly IsolationFigure[] {
  const row = (name: "foundation" | "registered" | "certified") => {
    const feet = classes[name];
    return feet === undefined
      ? []
      : [inFeet(`us-${name}${suffix}`, `us ${name}`, feet, "cfr-201-76", remarks)];
  };
  return [...row("foundation"), ...row("registered"), ...row("certified")];
}

/** US rows that print 0 ft: no isolation from pollen, only from mixing at harvest. */
export function usMechanicalOnly(printedFor?: string): readonly IsolationFigure[] {
  const meaning =
    "0 ft does not mean touching: enough space to prevent mechanical mixing (footnote 23)";
  return usTable(
    { foundation: 0, registered: 0, certified: 0 },
    { note: printedFor === undefined ? meaning : `${printedFor}; ${meaning}` },
  );
}

/** European figures for basic and certified seed, metres. */
export function euRow(
  source: string,
  basic: number,
  certified: number,
  remarks: Remarks = {},
  suffix = "",
): readonly IsolationFigure[] {
  return [
    inMetres(`eu-basic${suffix}`, "eu basic", basic, source, remarks),
    inMetres(`eu-certified${suffix}`, "eu certified", certified, source, remarks),
  ];
}

/** European figure for cross-fertilising vegetables not named by themselves. */
export function euOtherVegetable(): readonly IsolationFigure[] {
  return euRow("de-saatv", 500, 300, {
    standing: "reading",
    note: 'printed for "other cross-fertilising species"',
  });
}

/** European figures for vegetable brassicas, both cases. */
export function euBrassica(): readonly IsolationFigure[] {
  return [
    ...euRow("eu-2002-55", 1000, 600, {
      case: "foreign pollen liable to cause serious deterioration",
    }),
    ...euRow("eu-2002-55", 500, 300, { case: "other foreign pollen able to cross" }, "-mild"),
  ];
}

/** Indian figures for foundation and certified seed, metres. */
export function indiaRow(
  foundation: number,
  certified: number,
  remarks: Remarks = {},
  suffix = "",
  source = "icar-ecourse",
): readonly IsolationFigure[] {
  return [
    inMetres(`india-foundation${suffix}`, "india foundation", foundation, source, remarks),
    inMetres(`india-certified${suffix}`, "india certified", certified, source, remarks),
  ];
}

/** Indian figures known only from a secondary table that disagrees with itself. */
export function indiaSecondary(foundation: number, certified: number): readonly IsolationFigure[] {
  const note = "low trust: a secondary table that is inconsistent within itself";
  return indiaRow(foundation, certified, { note, standing: "doubtful" }, "", "india-secondary");
}

/** What commercial growers keep between insect-pollinated vegetables of whatever kind. */
export function generalInsect(plant: "vegetable" | "flower" = "vegetable"): IsolationFigure {
  return inFeet("general", "handbook commercial", 1320, "isolation-methods-1978", {
    published: "1/4 mile",
    standing: "stretched",
    note: `least for insect-pollinated vegetables of commercial growers; the text names ${plant === "flower" ? "no flowers" : "no kinds"}`,
  });
}

/** Figures stretched from another kind, which may raise a distance and never lower one. */
export function stretched(
  figures: readonly IsolationFigure[],
  printedFor: string,
): readonly IsolationFigure[] {
  return figures.map((figure) => ({
    ...figure,
    standing: "stretched",
    note: [`printed for ${printedFor}`, ...(figure.note ? [figure.note] : [])].join("; "),
  }));
}

/** A figure recalled from a home seed-saving chart; the larger end of its range. */
export function recalledFeet(least: number, most: number, form?: string): IsolationFigure {
  return inFeet(form ? `recalled-${form}` : "recalled", "handbook home", most, "memory", {
    published: `${least}-${most} ft`,
    note: "recalled, not checked",
    ...(form ? { form } : {}),
  });
}

/** Any value with its source. */
export function from<T>(source: string, value: T, note?: string): Sourced<T> {
  return note === undefined ? { value, source } : { value, source, note };
}

/** A value found on a few varieties only: for another it is no more than a rule of thumb. */
export function fromFew<T>(source: string, value: T, note?: string): Sourced<T> {
  return { ...from(source, value, note), fewVarieties: true };
}

const TYPE_YOUR_OWN = "weakly sourced: type your own";

/** A recalled value; the note asks the grower for a better one. */
export function recalled<T>(value: T, note = TYPE_YOUR_OWN): Sourced<T> {
  return { value, source: "memory", note };
}

interface RecalledDays {
  readonly sown?: Range;
  readonly set?: Range;
  readonly bloom?: Range;
  readonly seed?: Range;
}

/** Recalled days: sown or set out to first flower, length of bloom, flower to ripe seed. */
export function recalledTiming({ sown, set, bloom, seed }: RecalledDays): Timing {
  return {
    ...(sown && { sownToFlower: recalled(sown) }),
    ...(set && { transplantedToFlower: recalled(set) }),
    ...(bloom && { bloomDays: recalled(bloom) }),
    ...(seed && { flowerToSeed: recalled(seed) }),
  };
}

/** Germination standard, percent, and seeds per gram, from the US tables. */
export function seedStandard(
  percent: number | null,
  seedsPerGram?: number,
  note?: string,
): Pick<Kind, "germinationPercent" | "seedsPerGram"> {
  return {
    ...(percent !== null && { germinationPercent: from("cfr-201-31", percent) }),
    ...(seedsPerGram !== undefined && { seedsPerGram: from("cfr-201-46", seedsPerGram, note) }),
  };
}

/** Years since the last stand of the kind, from 7 CFR 201.76 Table 5. */
export function usLand(years: number, note?: string): Sourced<number> {
  return from("cfr-201-76", years, note);
}

const CENTIMETRES_PER_INCH = 2.54;

function middleM(least: number, most: number, centimetresPerUnit: number): number {
  return Math.round(((least + most) / 2) * centimetresPerUnit) / 100;
}

/** Spacing published in inches as ranges; the middle is taken, to the centimetre. */
export function inchSpacing(inRow: Range, between: Range, source = "sowing-chart"): Spacing {
  const sourced = ([least, most]: Range) =>
    from(
      source,
      middleM(least, most, CENTIMETRES_PER_INCH),
      least === most ? `${least} in` : `${least}-${most} in`,
    );
  return { inRowM: sourced(inRow), betweenRowsM: sourced(between) };
}

/** Spacing published in centimetres as ranges; the middle is taken. */
export function cmSpacing(inRow: Range, between: Range, source: string, prefix = ""): Spacing {
  const sourced = ([least, most]: Range) => {
    const printed = least === most ? `${least} cm` : `${least}-${most} cm`;
    return from(source, middleM(least, most, 1), `${prefix} ${printed}`.trim());
  };
  return { inRowM: sourced(inRow), betweenRowsM: sourced(between) };
}

/** Recalled spacing, metres. */
export function recalledSpacing(inRowM: number, betweenRowsM: number): Spacing {
  return { inRowM: recalled(inRowM), betweenRowsM: recalled(betweenRowsM) };
}

/**
 * Years seed keeps, from two lists: one of about 1912 and a later one of most useful years. They
 * disagree both ways, so the range runs from the smaller to the larger.
 */
export function seedLife(of1912: number, later?: number): Sourced<Range> {
  if (later === undefined) return from("seed-longevity-1912", [of1912, of1912] as const);
  return from(
    "seed-longevity-1912",
    [Math.min(of1912, later), Math.max(of1912, later)] as const,
    `${of1912} by this list, at most ${later} by that of Urban Food Garden`,
  );
}
