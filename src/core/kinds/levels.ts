/** The one table that maps every published class to a purity level, with the reason. */
import type { FigureClass, Level } from "./crop.ts";

export interface LevelEntry {
  readonly figureClass: FigureClass;
  /** As shown to growers, e.g. "US certified seed". */
  readonly name: string;
  readonly level: Level;
  readonly why: string;
}

/** From the laxest to the strictest. */
export const levelOrder: readonly Level[] = ["home", "sale", "stock"];

export const levelTable: readonly LevelEntry[] = [
  {
    figureClass: "us foundation",
    name: "US foundation seed",
    level: "stock",
    why: "Foundation seed is what all later classes of a variety are grown from.",
  },
  {
    figureClass: "us registered",
    name: "US registered seed",
    level: "stock",
    why: "Registered seed is grown on to make certified seed, so it is mother seed too.",
  },
  {
    figureClass: "us certified",
    name: "US certified seed",
    level: "sale",
    why: "Certified seed is the class growers buy to raise a crop.",
  },
  {
    figureClass: "eu basic",
    name: "EU basic seed",
    level: "stock",
    why: "Basic seed is grown to produce certified seed.",
  },
  {
    figureClass: "eu certified",
    name: "EU certified seed",
    level: "sale",
    why: "Certified seed is the class growers buy to raise a crop.",
  },
  {
    figureClass: "india foundation",
    name: "Indian foundation seed",
    level: "stock",
    why: "Foundation seed is grown to produce certified seed.",
  },
  {
    figureClass: "india certified",
    name: "Indian certified seed",
    level: "sale",
    why: "Certified seed is the class growers buy to raise a crop.",
  },
  {
    figureClass: "fao quality declared",
    name: "FAO quality declared seed",
    level: "sale",
    why: "Quality declared seed is sold in local markets on the producer's word.",
  },
  {
    figureClass: "washington rule",
    name: "Washington State rule",
    level: "sale",
    why: "The rule keeps commercial seed crops of a district apart.",
  },
  {
    figureClass: "handbook commercial",
    name: "handbook, seed for sale",
    level: "sale",
    why: "Advice of a book or guide for seed that is sold or grown on a larger scale.",
  },
  {
    figureClass: "handbook home",
    name: "handbook, home garden",
    level: "home",
    why: "Advice of a book or guide for seed kept in one's own garden.",
  },
  {
    figureClass: "practice home",
    name: "home practice",
    level: "home",
    why: "What home seed growers do, without a publication behind it.",
  },
  ...levelOrder.map((level): LevelEntry => ({
    figureClass: `own ${level}`,
    name: "own figure",
    level,
    why: "Typed by the grower for this level.",
  })),
];

const byClass = new Map(levelTable.map((entry) => [entry.figureClass, entry]));

/** The row of the level table for a class. */
export function levelEntry(figureClass: FigureClass): LevelEntry {
  const entry = byClass.get(figureClass);
  if (!entry) throw new Error(`No level for the class "${figureClass}".`);
  return entry;
}

/** Purity level a class is read as. */
export function levelOfClass(figureClass: FigureClass): Level {
  return levelEntry(figureClass).level;
}
