/** Which published figure a seed parent is held to. */
import type { IsolationFigure, Kind, Level } from "../kinds/crop.ts";
import { levelEntry, levelOfClass, levelOrder } from "../kinds/levels.ts";
import { findSource } from "../kinds/sources.ts";

/** The rule `requiredDistance` follows, one step a line, as shown to growers. */
export const defaultRule: readonly string[] = [
  "A distance typed for the planting or the variety, or a figure picked by hand, goes before everything below; then a distance typed for the kind at this level.",
  "Figures published for the variety's flower form are taken; where there are none, those for any form. A variety without a form has the usual one.",
  "Figures for another purpose are passed over, though listed: hybrid seed and its parent lines, mother bulbs that do not flower, a distance shown to be too short.",
  "At the home level, common home practice is taken where it is listed.",
  "Otherwise seed law and certification rules go before books, papers and extension services, and these before other pages.",
  "Among figures of the best of these ranks the largest, which is the most careful, is taken.",
  "A level without a figure takes the figure of the next stricter level (home, then sale, then stock), never of a laxer one.",
  "Stock seed is never asked less than seed for sale, and seed for home never more than seed for sale (unless that is 0, which only speaks of mixing at harvest).",
  "Recalled figures are taken only where no seen figure is found by the steps above, and are labelled.",
  "Where still nothing is found the distance is unknown, and a finding says so.",
];

export interface RequiredDistance {
  readonly figure: IsolationFigure;
  /** The level asked for. */
  readonly level: Level;
  /**
   * The level whose figure is used: the one asked for; a stricter one where that has no figure;
   * `sale` where stock seed would be asked less, or seed for home more, than seed for sale.
   */
  readonly levelUsed: Level;
  /** In words: which figure, for which case, and why this one. */
  readonly why: string;
  /** Least and most metres among the figures the choice was made from, all ranks. */
  readonly range: { readonly leastM: number; readonly mostM: number };
}

/**
 * The published distance a seed parent of this kind needs at a level, by `defaultRule`; null when
 * the kind has no figure at the level or a stricter one.
 */
export function requiredDistance(
  kind: Kind,
  formId: string | undefined,
  level: Level,
): RequiredDistance | null {
  const form = formId ?? kind.forms?.[0]?.id;
  return search(kind, form, level, isSeen) ?? search(kind, form, level, isRecalled);
}

function search(
  kind: Kind,
  form: string | undefined,
  level: Level,
  isWanted: (figure: IsolationFigure) => boolean,
): RequiredDistance | null {
  const chosenAt = (at: Level) => best(figuresAt(kind, form, at).filter(isWanted));
  const levelUsed = levelOrder.slice(levelOrder.indexOf(level)).find((at) => chosenAt(at));
  const figure = levelUsed && chosenAt(levelUsed);
  if (!figure) return null;
  if (isTyped(figure) && levelUsed === level) return answer(kind, form, figure, level, levelUsed);
  const forSale = chosenAt("sale");
  if (forSale && levelUsed === "stock" && forSale.metres > figure.metres) {
    return answer(kind, form, forSale, level, "sale", `asks more than that for ${level}`);
  }
  if (forSale && levelUsed === "home" && forSale.metres > 0 && forSale.metres < figure.metres) {
    return answer(kind, form, forSale, level, "sale", `asks less than that for ${level}`);
  }
  return answer(kind, form, figure, level, levelUsed);
}

function answer(
  kind: Kind,
  form: string | undefined,
  figure: IsolationFigure,
  level: Level,
  levelUsed: Level,
  comparison?: string,
): RequiredDistance {
  const metres = figuresAt(kind, form, levelUsed).map((entry) => entry.metres);
  return {
    figure,
    level,
    levelUsed,
    why: reason(kind, figure, levelRemark(level, levelUsed, comparison)),
    range: { leastM: Math.min(...metres), mostM: Math.max(...metres) },
  };
}

function figuresAt(kind: Kind, form: string | undefined, level: Level): readonly IsolationFigure[] {
  const here = kind.isolation.filter(
    (figure) => figure.neverDefault === undefined && levelOfClass(figure.figureClass) === level,
  );
  const typed = here.filter(isTyped);
  if (typed.length > 0) return typed;
  const own = here.filter((figure) => figure.form !== undefined && figure.form === form);
  return own.length > 0 ? own : here.filter((figure) => figure.form === undefined);
}

function best(figures: readonly IsolationFigure[]): IsolationFigure | undefined {
  const practice = figures.filter((figure) => figure.figureClass === "practice home");
  const pool = practice.length > 0 ? practice : figures;
  return [...pool].sort((a, b) => rank(a) - rank(b) || b.metres - a.metres)[0];
}

const RANKS = { regulator: 0, book: 1, other: 2 } as const;

function rank(figure: IsolationFigure): number {
  return RANKS[findSource(figure.source)?.authority ?? "other"];
}

function isTyped(figure: IsolationFigure): boolean {
  return figure.figureClass.startsWith("own ");
}

function isRecalled(figure: IsolationFigure): boolean {
  return findSource(figure.source)?.trust === "from memory";
}

function isSeen(figure: IsolationFigure): boolean {
  return !isRecalled(figure);
}

function reason(kind: Kind, figure: IsolationFigure, remarks: readonly string[]): string {
  const form = kind.forms?.find((entry) => entry.id === figure.form)?.name;
  return [
    `${levelEntry(figure.figureClass).name}, ${figure.published}`,
    ...(form ? [`for ${form} plants`] : []),
    ...(figure.case ? [figure.case] : []),
    ...(isRecalled(figure) ? ["from memory, not checked"] : []),
    ...remarks,
  ].join("; ");
}

function levelRemark(level: Level, levelUsed: Level, comparison?: string): readonly string[] {
  if (levelUsed === level) return [];
  return comparison === undefined
    ? [`no figure for the ${level} level, so that for ${levelUsed}`]
    : [`the figure for ${levelUsed}, which ${comparison}`];
}
