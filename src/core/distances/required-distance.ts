/** Which published figure a seed parent is held to. */
import type { IsolationFigure, Kind, Level } from "../kinds/crop.ts";
import { levelOfClass, levelOrder } from "../kinds/levels.ts";
import { figuresAt, isTyped, levelFigure } from "./level-figure.ts";

/** Why a figure is the default. */
export interface FigureReason {
  readonly figure: IsolationFigure;
  /** Name of the flower form it is printed for; null: for any. */
  readonly form: string | null;
  /** The level asked for. */
  readonly level: Level;
  /**
   * The level it comes from where that is another: the least where nothing is published for the one
   * asked for, one that asks more, or a stricter one; null: the level's own.
   */
  readonly fills: { readonly level: Level; readonly as: "least" | "more" | "stricter" } | null;
  /** The flower form decides the distance and was not said: the longest was taken. */
  readonly isFormUnsaid: boolean;
}

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
  /** Which figure, for which case, and why this one; distance-words.ts has the words. */
  readonly reason: FigureReason;
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
  const reason = { ...longest.reason, isFormUnsaid: true };
  return { ...longest, reason, isFormUnsaid: true };
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
    reason: {
      figure,
      form: kind.forms?.find(({ id }) => id === figure.form)?.name ?? null,
      level,
      fills: filling(level, levelUsed, isFloor),
      isFormUnsaid: false,
    },
    range: { leastM: Math.min(...metres), mostM: Math.max(...metres) },
  };
}

function filling(level: Level, used: Level, isFloor: boolean): FigureReason["fills"] {
  if (used === level) return null;
  if (isFloor) return { level: used, as: "least" };
  const isLaxer = levelOrder.indexOf(used) < levelOrder.indexOf(level);
  return { level: used, as: isLaxer ? "more" : "stricter" };
}
