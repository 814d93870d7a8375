/** A kind's isolation figures as the figure browser lists them, and which of them is the default. */
import type { IsolationFigure, Kind, Level } from "../../core/kinds/crop.ts";
import { levelEntry, levelOrder } from "../../core/kinds/levels.ts";
import { requiredDistance } from "../../core/distances/required-distance.ts";
import { type LengthUnit, formatDistance } from "../../core/model/length.ts";
import { figureWords, standingWords } from "../../core/distances/distance-words.ts";
import { levelNames } from "../../core/words/level-words.ts";
import * as words from "./words.ts";

export interface DefaultRow {
  readonly level: Level;
  /** Name of the flower form; null where forms make no difference at the level. */
  readonly form: string | null;
  /** In the plan's unit; null: nothing is known, so the checks say unknown. */
  readonly distance: string | null;
  readonly why: string;
  /** Least and most of the figures chosen from, where they differ. */
  readonly range: string | null;
}

/** The default at each level, for each flower form where they differ, with the reason. */
export function defaultRows(kind: Kind, unit: LengthUnit): readonly DefaultRow[] {
  return levelOrder.flatMap((level) =>
    defaultsAt(kind, level).map(({ form, found }): DefaultRow => {
      const base = { level, form };
      if (!found) return { ...base, distance: null, why: words.noFigureKnown, range: null };
      const { leastM, mostM } = found.range;
      return {
        ...base,
        distance: formatDistance(found.figure.metres, unit),
        why: figureWords(found.reason),
        range:
          leastM === mostM
            ? null
            : words.range(formatDistance(leastM, unit), formatDistance(mostM, unit)),
      };
    }),
  );
}

export interface FigureRow {
  readonly id: string;
  /** `US certified seed`. */
  readonly className: string;
  readonly level: Level;
  /** Why the class is read as that level. */
  readonly levelWhy: string;
  /** In the plan's unit. */
  readonly distance: string;
  /** As printed. */
  readonly published: string;
  /** Flower form and case it holds for, and remarks, as a sentence; empty where there are none. */
  readonly remarks: string;
  /** Why the rule passes it over, or null. */
  readonly neverDefault: string | null;
  /** Levels (and forms) it is the default of: `home`, `stock, potato-leaf`. */
  readonly defaultOf: readonly string[];
  readonly source: string;
}

export function figureRows(kind: Kind, unit: LengthUnit): readonly FigureRow[] {
  const defaults = defaultsByFigure(kind);
  return kind.isolation.map((figure) => {
    const entry = levelEntry(figure.figureClass);
    const form = formName(kind, figure);
    return {
      id: figure.id,
      className: entry.name,
      level: entry.level,
      levelWhy: entry.why,
      distance: formatDistance(figure.metres, unit),
      published: figure.published,
      remarks: sentence([
        form && words.forForm(form),
        figure.case && words.printedFor(figure.case),
        figure.standing && standingWords[figure.standing],
        figure.outlier && words.setAside(figure.outlier),
        figure.note,
      ]),
      neverDefault: figure.neverDefault ?? null,
      defaultOf: defaults.get(figure.id) ?? [],
      source: figure.source,
    };
  });
}

function sentence(parts: readonly (string | undefined)[]): string {
  const text = parts.filter((part) => part !== undefined).join("; ");
  return text === "" ? "" : `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

function formName(kind: Kind, figure: IsolationFigure): string | undefined {
  return kind.forms?.find(({ id }) => id === figure.form)?.name;
}

/** The default of each flower form at a level; one without a form where all forms agree. */
function defaultsAt(kind: Kind, level: Level) {
  const all = (kind.forms ?? [undefined]).map((form) => ({
    form: form?.name ?? null,
    found: requiredDistance(kind, form?.id, level),
  }));
  const [first] = all;
  const isShared = all.every(({ found }) => found?.figure === first?.found?.figure);
  return first && isShared ? [{ ...first, form: null }] : all;
}

/** Figure id -> where it is the default. */
function defaultsByFigure(kind: Kind): ReadonlyMap<string, readonly string[]> {
  const places = new Map<string, string[]>();
  for (const level of levelOrder) {
    for (const { form, found } of defaultsAt(kind, level)) {
      if (!found) continue;
      const { id } = found.figure;
      const text = form === null ? levelNames[level] : `${levelNames[level]}, ${form}`;
      places.set(id, [...(places.get(id) ?? []), text]);
    }
  }
  return places;
}

/** A figure in a list to choose from: `9.1 m: US certified seed`. */
export function figureLabel(figure: IsolationFigure, kind: Kind, unit: LengthUnit): string {
  const { name } = levelEntry(figure.figureClass);
  const what = [name, formName(kind, figure), figure.case].filter((part) => part !== undefined);
  return `${formatDistance(figure.metres, unit)}: ${what.join(", ")}`;
}
