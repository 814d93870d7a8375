/** A kind's isolation figures as the figure browser lists them, and which of them is the default. */
import type { IsolationFigure, Kind, Level } from "../core/crops/crop.ts";
import { levelEntry, levelOrder } from "../core/crops/levels.ts";
import { requiredDistance } from "../core/crops/required-distance.ts";
import { type LengthUnit, formatDistance } from "../core/model/length.ts";

export interface DefaultRow {
  readonly level: Level;
  /** Name of the flower form; null where the kind has none. */
  readonly form: string | null;
  /** In the plan's unit; null: nothing is known, so the checks say unknown. */
  readonly distance: string | null;
  readonly why: string;
  /** Least and most of the figures chosen from, where they differ. */
  readonly range: string | null;
}

/** The default at each level and for each flower form, with the reason. */
export function defaultRows(kind: Kind, unit: LengthUnit): readonly DefaultRow[] {
  return levelOrder.flatMap((level) =>
    (kind.forms ?? [null]).map((form): DefaultRow => {
      const found = requiredDistance(kind, form?.id, level);
      const base = { level, form: form?.name ?? null };
      if (!found) return { ...base, distance: null, why: "no figure is known", range: null };
      const { leastM, mostM } = found.range;
      return {
        ...base,
        distance: formatDistance(found.figure.metres, unit),
        why: found.why,
        range:
          leastM === mostM
            ? null
            : `${formatDistance(leastM, unit)} to ${formatDistance(mostM, unit)}`,
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
  /** Flower form and case it holds for, and remarks, each a sentence part. */
  readonly remarks: readonly string[];
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
      remarks: [form && `for ${form} plants`, figure.case, figure.note].filter(
        (part): part is string => part !== undefined,
      ),
      neverDefault: figure.neverDefault ?? null,
      defaultOf: defaults.get(figure.id) ?? [],
      source: figure.source,
    };
  });
}

function formName(kind: Kind, figure: IsolationFigure): string | undefined {
  return kind.forms?.find(({ id }) => id === figure.form)?.name;
}

/** Figure id -> where it is the default. A level counts once where all forms agree. */
function defaultsByFigure(kind: Kind): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const level of levelOrder) {
    const forms = kind.forms ?? [];
    const chosen = (forms.length > 0 ? forms : [undefined]).map((form) => ({
      name: form?.name,
      figure: requiredDistance(kind, form?.id, level)?.figure.id,
    }));
    const isShared = chosen.every(({ figure }) => figure === chosen[0]?.figure);
    for (const { name, figure } of isShared ? chosen.slice(0, 1) : chosen) {
      if (figure === undefined) continue;
      const text = isShared || name === undefined ? level : `${level}, ${name}`;
      found.set(figure, [...(found.get(figure) ?? []), text]);
    }
  }
  return found;
}

/** A figure in a list to choose from: `9.1 m: US certified seed`. */
export function figureLabel(figure: IsolationFigure, kind: Kind, unit: LengthUnit): string {
  const { name } = levelEntry(figure.figureClass);
  const what = [name, formName(kind, figure), figure.case].filter((part) => part !== undefined);
  return `${formatDistance(figure.metres, unit)}: ${what.join(", ")}`;
}
