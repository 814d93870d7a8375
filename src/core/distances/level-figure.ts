/** The figure a kind is held to at one purity level, before the levels are held against each other. */
import type { IsolationFigure, Kind, Level } from "../kinds/crop.ts";
import { levelOfClass } from "../kinds/levels.ts";
import { findSource } from "../kinds/sources.ts";

/** Figures of one level for one flower form: typed ones alone where there are any. */
export function figuresAt(
  kind: Kind,
  form: string | undefined,
  level: Level,
): readonly IsolationFigure[] {
  const here = kind.isolation.filter(
    (figure) => figure.neverDefault === undefined && levelOfClass(figure.figureClass) === level,
  );
  const typed = here.filter(isTyped);
  if (typed.length > 0) return typed;
  const own = here.filter((figure) => figure.form !== undefined && figure.form === form);
  return own.length > 0 ? own : here.filter((figure) => figure.form === undefined);
}

/** The figure taken at a level by the steps of `defaultRule`, or none. */
export function levelFigure(
  kind: Kind,
  form: string | undefined,
  level: Level,
): IsolationFigure | undefined {
  const figures = figuresAt(kind, form, level);
  const [typed] = figures.filter(isTyped);
  if (typed) return typed;
  return level === "home" ? homeFigure(kind, form, figures) : saleFigure(figures);
}

function homeFigure(
  kind: Kind,
  form: string | undefined,
  figures: readonly IsolationFigure[],
): IsolationFigure | undefined {
  const practice = figures.filter(({ figureClass }) => figureClass === "practice home");
  if (practice.length > 0) return largest(practice);
  const pools = sorted(figures);
  if (pools.named.length > 0) return aboveZero(pools.named, middle);
  const forSale = figuresAt(kind, form, "sale");
  if (forSale.some(isTyped)) return levelFigure(kind, form, "sale");
  const stretched = pools.weak.length > 0 ? [aboveZero(pools.weak, middle)] : [];
  if (stretched.length > 0) {
    return largest([...sorted(forSale).law, ...stretched].filter((figure) => figure !== undefined));
  }
  const forStock = figuresAt(kind, form, "stock");
  return (
    saleFigure(forSale) ?? saleFigure(forStock) ?? largest([...pools.doubtful, ...pools.recalled])
  );
}

function saleFigure(figures: readonly IsolationFigure[]): IsolationFigure | undefined {
  const { law, named, weak, doubtful, recalled } = sorted(figures);
  const hasLaw = law.some(({ metres }) => metres > 0);
  const book = hasLaw || named.length === 0 ? [] : [aboveZero(named, middle)];
  const strong = [...law, ...weak, ...book].filter((figure) => figure !== undefined);
  return largest(strong) ?? largest(doubtful) ?? largest(recalled);
}

interface Pools {
  /** Seed law that names the kind. */
  readonly law: readonly IsolationFigure[];
  /** Books, papers, guides and pages that name the kind, but for those set aside as outliers. */
  readonly named: readonly IsolationFigure[];
  /** What may raise a distance and never lowers one: teaching pages, readings, stretched figures. */
  readonly weak: readonly IsolationFigure[];
  readonly doubtful: readonly IsolationFigure[];
  readonly recalled: readonly IsolationFigure[];
}

function sorted(figures: readonly IsolationFigure[]): Pools {
  const pools: Record<keyof Pools, IsolationFigure[]> = {
    law: [],
    named: [],
    weak: [],
    doubtful: [],
    recalled: [],
  };
  for (const figure of figures) {
    if (figure.outlier === undefined) pools[poolOf(figure)].push(figure);
  }
  return pools;
}

function poolOf(figure: IsolationFigure): keyof Pools {
  const source = findSource(figure.source);
  if (source?.trust === "from memory") return "recalled";
  if (figure.standing === "doubtful") return "doubtful";
  if (figure.standing !== undefined || source?.authority === "teaching") return "weak";
  return source?.authority === "regulator" ? "law" : "named";
}

function largest(figures: readonly IsolationFigure[]): IsolationFigure | undefined {
  return [...figures].sort((a, b) => b.metres - a.metres)[0];
}

/** The middle one by metres; of two middles the larger. */
function middle(figures: readonly IsolationFigure[]): IsolationFigure | undefined {
  const byMetres = [...figures].sort((a, b) => a.metres - b.metres);
  return byMetres[Math.floor(byMetres.length / 2)];
}

/** A printed 0 speaks of mixing at harvest, so it has no say where there is any other figure. */
function aboveZero(
  figures: readonly IsolationFigure[],
  choose: (figures: readonly IsolationFigure[]) => IsolationFigure | undefined,
): IsolationFigure | undefined {
  return choose(figures.filter(({ metres }) => metres > 0)) ?? figures[0];
}

export function isTyped(figure: IsolationFigure): boolean {
  return figure.figureClass.startsWith("own ");
}
