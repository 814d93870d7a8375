/** Which published figure a seed parent is held to. */
import type { IsolationFigure, Kind, Level } from "../kinds/crop.ts";
import { levelEntry, levelOfClass, levelOrder } from "../kinds/levels.ts";
import { findSource } from "../kinds/sources.ts";
import { figuresAt, isTyped, levelFigure } from "./level-figure.ts";

/** The rule `requiredDistance` follows, one step a line, as shown to growers. */
export const defaultRule: readonly string[] = [
  "A distance typed for the planting or the variety, or a figure picked by hand, goes before everything below; then a distance typed for the kind at this level.",
  "Figures published for the variety's flower form are taken; where there are none, those for any form. Where the form decides and is not said, the longest distance of the forms is taken, and the form is asked for.",
  "Figures for another purpose are passed over, though listed: hybrid seed and its parent lines, mother bulbs that do not flower, a rule that binds one district only, a distance shown to be too short.",
  "For seed kept at home: common home practice where it is listed; else what books, guides and pages written for gardens print for this very kind. The middle of their figures is taken, of two middles the larger; one that lies far from all others is set aside, and says so. Where gardens have no figure that names the kind, the figure of seed law for seed for sale fills in, or a garden figure stretched from another kind where that is more.",
  "For seed for sale and stock seed: the largest figure of seed law that names the kind; where no law names it, the middle of what books and pages print for seed that is sold.",
  "Teaching pages that restate a law, our readings of a law, and figures stretched from another kind may raise a distance found by law or books for sale and stock seed, or fill in where there is none. They never lower one. Figures of doubtful pages, then recalled ones, are taken only where nothing else is found, and are labelled.",
  "A published 0 speaks of mixing at harvest, not of pollen; any other figure found by these steps goes before it, and where it stands alone plantings closer than a strip of 10 ft (3 m) still get a word, see the check `mixing`.",
  "A level without a figure takes that of the next stricter level. A stricter level is never asked less than a laxer one. Where neither the level nor a stricter one has a figure, that of the laxer level is the least: anything short of it is a conflict, and beyond it the distance is unknown and a finding says so.",
  "From a wild or weedy plant the increase its sources ask for is added unasked, and named; a distance typed by hand stands as it is.",
  "Where still nothing is found the distance is unknown, and a finding says so.",
];

export interface RequiredDistance {
  readonly figure: IsolationFigure;
  /** The level asked for. */
  readonly level: Level;
  /** The level whose figure is used: a stricter one fills in, a laxer one counts if it asks more. */
  readonly levelUsed: Level;
  /** The level has no figure of its own: the distance is the least, and enough is not known. */
  readonly isFloor: boolean;
  /** The flower form decides the distance and was not said. */
  readonly isFormUnsaid: boolean;
  /** In words: which figure, for which case, and why this one. */
  readonly why: string;
  /** Least and most metres among the figures the choice was made from, all ranks. */
  readonly range: { readonly leastM: number; readonly mostM: number };
}

/**
 * The published distance a seed parent of this kind needs at a level, by `defaultRule`; null when
 * the kind has no figure at the level, nor at a laxer one (for `home`: nor for sale).
 */
export function requiredDistance(
  kind: Kind,
  formId: string | undefined,
  level: Level,
): RequiredDistance | null {
  const forms = kind.forms?.map(({ id }) => id) ?? [];
  if (forms.length === 0 || forms.includes(formId ?? "")) return found(kind, formId, level);
  const all = forms.map((form) => found(kind, form, level)).filter((entry) => entry !== null);
  const [longest] = [...all].sort((a, b) => b.figure.metres - a.figure.metres);
  if (!longest || all.every((entry) => entry.figure.metres === longest.figure.metres)) {
    return longest ?? null;
  }
  const why = `${longest.why}; the flower form is not said, so the longest distance of the forms: say which it is`;
  return { ...longest, why, isFormUnsaid: true };
}

function found(kind: Kind, form: string | undefined, level: Level): RequiredDistance | null {
  const rank = levelOrder.indexOf(level);
  const at = (one: Level) => levelFigure(kind, form, one);
  const typed = at(level);
  if (typed && isTyped(typed)) return answer(kind, form, typed, level);
  const own = levelOrder
    .slice(rank)
    .map(at)
    .find((figure) => figure !== undefined);
  const [laxer] = levelOrder
    .slice(0, rank)
    .map(at)
    .filter((figure) => figure !== undefined)
    .sort((a, b) => b.metres - a.metres);
  if (laxer && (!own || laxer.metres > own.metres)) return answer(kind, form, laxer, level, !own);
  return own ? answer(kind, form, own, level) : null;
}

function answer(
  kind: Kind,
  form: string | undefined,
  figure: IsolationFigure,
  level: Level,
  isFloor = false,
): RequiredDistance {
  const levelUsed = levelOfClass(figure.figureClass);
  const metres = figuresAt(kind, form, levelUsed).map((entry) => entry.metres);
  return {
    figure,
    level,
    levelUsed,
    isFloor,
    isFormUnsaid: false,
    why: reason(kind, figure, level, isFloor),
    range: { leastM: Math.min(...metres), mostM: Math.max(...metres) },
  };
}

function reason(kind: Kind, figure: IsolationFigure, level: Level, isFloor: boolean): string {
  const form = kind.forms?.find((entry) => entry.id === figure.form)?.name;
  return [
    `${levelEntry(figure.figureClass).name}, ${figure.published}`,
    ...(form ? [`for ${form} plants`] : []),
    ...(figure.case ? [figure.case] : []),
    ...(figure.standing === undefined ? [] : [STANDING_WORDS[figure.standing]]),
    ...(findSource(figure.source)?.trust === "from memory" ? ["from memory, not checked"] : []),
    ...levelRemark(figure, level, isFloor),
  ].join("; ");
}

/** What it says of a figure that it is not printed for the kind by name. */
export const STANDING_WORDS: Readonly<Record<NonNullable<IsolationFigure["standing"]>, string>> = {
  reading: "that it covers this kind is our reading",
  stretched: "printed for a kindred kind or more generally, and stretched to this one",
  doubtful: "from a page that is doubtful",
};

function levelRemark(
  { figureClass }: IsolationFigure,
  level: Level,
  isFloor: boolean,
): readonly string[] {
  const used = levelOfClass(figureClass);
  if (used === level) return [];
  if (isFloor) {
    return [
      `nothing is published for ${level}, so that for ${used} is the least, and what is enough is not known`,
    ];
  }
  return levelOrder.indexOf(used) < levelOrder.indexOf(level)
    ? [`the figure for ${used}, which asks more than that for ${level}`]
    : [`no figure for ${level} that names this kind, so that for ${used}`];
}
