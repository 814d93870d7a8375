/**
 * The years as a mixed-integer model. A yes or no for each set of seasons a variety can have, just
 * one yes for each variety; a yes or no for each variety under a cover in a season; and the load of
 * each season in steps that cost more and more, so that work is even.
 */
import type { ModelData } from "highs";
import { type Column, type Row, modelData } from "../solving/model-data.ts";
import {
  COVERED,
  FIRST_YEAR_LOAD,
  type ItemYears,
  SEED_LOAD,
  loadPrice,
  yearsOfItem,
} from "./item-years.ts";
import {
  type CoverHad,
  type CrossingSet,
  type Years,
  type YearsItem,
  type YearsProblem,
  canCover,
  isFirstYear,
  isGrown,
} from "./years-problem.ts";

type Terms = Row["terms"];

export interface YearsModel {
  readonly data: ModelData;
  /** The lay-out that columns of a solution stand for. */
  readonly yearsOf: (values: ArrayLike<number>) => Years;
  /** Columns of a lay-out, as a start; null where it is none of the model's. */
  readonly startOf: (
    years: Years,
  ) => { readonly indices: number[]; readonly values: number[] } | null;
}

/** Null where some variety has no way at all to be kept alive. */
export function yearsModel(problem: YearsProblem, isCosted = true): YearsModel | null {
  const ways = problem.items.map((_, index) => yearsOfItem(problem, index));
  if (ways.some((list) => list.length === 0)) return null;
  const draft = new Draft();
  const columns = ways.map((list) => list.map(({ points }) => draft.whole(isCosted ? points : 0)));
  for (const list of columns) {
    draft.row(
      list.map((column) => [column, 1]),
      1,
      1,
    );
  }
  const grownIn = (item: number, season: number): Terms =>
    (ways[item] ?? []).flatMap(({ bits }, at) =>
      isGrown(bits, season) ? [[columns[item]?.[at] as number, 1] as const] : [],
    );
  const firstYearIn = (item: number, season: number): Terms =>
    (ways[item] ?? []).flatMap(({ bits }, at) =>
      isFirstYear(problem.items[item] as YearsItem, bits, season)
        ? [[columns[item]?.[at] as number, 1] as const]
        : [],
    );
  for (let season = 0; season < problem.seasons; season += 1) {
    const inSeason = {
      grown: (item: number) => grownIn(item, season),
      first: (item: number) => firstYearIn(item, season),
    };
    addCovers(draft, problem, inSeason.grown, isCosted);
    addGround(draft, problem, inSeason);
    if (isCosted) addLoad(draft, problem, inSeason);
  }
  addRests(draft, problem, grownIn);
  return {
    data: draft.data(),
    yearsOf: (values) =>
      ways.map((list, item) => {
        const at = list.findIndex((_, way) => (values[columns[item]?.[way] ?? -1] ?? 0) > 0.5);
        return list[at]?.bits ?? 0;
      }),
    startOf: (years) => startOf(ways, columns, years),
  };
}

function startOf(
  ways: readonly (readonly ItemYears[])[],
  columns: readonly (readonly number[])[],
  years: Years,
) {
  const indices: number[] = [];
  for (const [item, list] of ways.entries()) {
    const at = list.findIndex(({ bits }) => bits === years[item]);
    const column = columns[item]?.[at];
    if (column === undefined) return null;
    indices.push(column);
  }
  return { indices, values: indices.map(() => 1) };
}

class Draft {
  private readonly rows: Row[] = [];
  private readonly columns: Column[] = [];

  whole(cost: number): number {
    return this.columns.push({ cost, most: 1, isWhole: true }) - 1;
  }

  part(cost: number): number {
    return this.columns.push({ cost, most: 1, isWhole: false }) - 1;
  }

  row(terms: Terms, lower: number, upper: number): void {
    if (terms.length > 0) this.rows.push({ terms, lower, upper });
  }

  data(): ModelData {
    return modelData(this.columns, this.rows);
  }
}

/** Sets stand apart or under covers, and there are no more covers than the grower has. */
function addCovers(
  draft: Draft,
  problem: YearsProblem,
  grown: (item: number) => Terms,
  isCosted: boolean,
): void {
  const used: Record<CoverHad, [number, number][]> = { cage: [], bag: [] };
  for (const set of problem.sets) {
    const open = set.members.map((item): Terms => {
      const one = problem.items[item] as YearsItem;
      const { cover, isExposed } = one;
      const terms = grown(item);
      // Exposed without any cover is the judge's to say: no other season would be better.
      if (cover === "none" || !canCover(problem, one) || terms.length === 0) return terms;
      const covered = draft.whole(isCosted ? COVERED : 0);
      used[cover].push([covered, 1]);
      const left = [...terms, [covered, -1] as const];
      draft.row(left, 0, isExposed ? 0 : Infinity);
      return left;
    });
    addApart(draft, problem, set, { open, grown });
  }
  for (const cover of ["cage", "bag"] as const)
    draft.row(used[cover], -Infinity, problem.covers[cover]);
}

interface InSet {
  /** Member by member, what makes it stand open. */
  readonly open: readonly Terms[];
  readonly grown: (item: number) => Terms;
}

/**
 * As many stay open as there are places for the one of them that asks most; what is bagged takes a
 * place too, for its other flowers are open, unless none of the set stays open.
 */
function addApart(
  draft: Draft,
  problem: YearsProblem,
  { members, apart }: CrossingSet,
  { open, grown }: InSet,
): void {
  const levelOf = (item: number) => {
    const needM = problem.items[item]?.needM ?? Infinity;
    const at = apart.findIndex(({ metres }) => metres >= needM);
    return at < 0 ? apart.length - 1 : at;
  };
  const [nearest] = apart;
  if (!nearest || members.length < 2) return;
  const steps: [number, number][] = [];
  for (let level = 1; level < apart.length; level += 1) {
    const fewer = (apart[level - 1]?.places ?? 1) - (apart[level]?.places ?? 1);
    if (fewer <= 0) continue;
    const isAsked = draft.whole(0);
    steps.push([isAsked, fewer]);
    for (const [at, item] of members.entries()) {
      if (levelOf(item) < level) continue;
      draft.row([...(open[at] ?? []), [isAsked, -1]], -Infinity, 0);
    }
  }
  const isBag = (item: number) => {
    const one = problem.items[item] as YearsItem;
    return one.cover === "bag" && canCover(problem, one);
  };
  const takes = members.flatMap((item, at) => (isBag(item) ? grown(item) : (open[at] ?? [])));
  const bags = members.filter(isBag).length;
  if (bags > 0) {
    const noneOpen = draft.whole(0);
    steps.push([noneOpen, -bags]);
    for (const terms of open) draft.row([...terms, [noneOpen, 1]], -Infinity, 1);
  }
  draft.row([...takes, ...steps], -Infinity, nearest.places);
}

interface InSeason {
  readonly grown: (item: number) => Terms;
  readonly first: (item: number) => Terms;
}

function addGround(draft: Draft, problem: YearsProblem, { grown, first }: InSeason): void {
  const { items, groundM2, mostVarieties } = problem;
  if (groundM2 < Infinity) {
    const terms = items.flatMap((item, index) =>
      [...grown(index), ...first(index)].map(
        ([column, factor]) => [column, factor * item.groundM2] as const,
      ),
    );
    draft.row(terms, -Infinity, groundM2);
  }
  if (mostVarieties < Infinity) {
    draft.row(
      items.flatMap((_, index) => grown(index)),
      -Infinity,
      mostVarieties,
    );
  }
}

/** Each unit of load costs more than the one before. */
function addLoad(draft: Draft, problem: YearsProblem, { grown, first }: InSeason): void {
  const { items } = problem;
  const price = loadPrice(problem);
  const scaled = (terms: Terms, by: number) =>
    terms.map(([column, factor]) => [column, factor * by] as const);
  const terms = items.flatMap((_, index) => [
    ...scaled(grown(index), SEED_LOAD),
    ...scaled(first(index), FIRST_YEAR_LOAD),
  ]);
  const most = items.reduce(
    (sum, { lead }) => sum + SEED_LOAD + (lead === 2 ? FIRST_YEAR_LOAD : 0),
    0,
  );
  const steps = Array.from(
    { length: most },
    (_, unit) => [draft.part(price * (unit + 1)), -1] as const,
  );
  draft.row([...terms, ...steps], 0, 0);
}

/** Ground of a set within its years of rest, all of it different ground. */
function addRests(
  draft: Draft,
  { items, rests, landM2, seasons }: YearsProblem,
  grownIn: (item: number, season: number) => Terms,
): void {
  if (landM2 === Infinity) return;
  for (const { members, years, before } of rests) {
    for (let season = 0; season < seasons; season += 1) {
      const from = Math.max(0, season - years);
      const terms: (readonly [number, number])[] = [];
      for (let at = from; at <= season; at += 1) {
        for (const item of members) {
          const area = items[item]?.groundM2 ?? 0;
          terms.push(...grownIn(item, at).map(([column]) => [column, area] as const));
        }
      }
      let had = 0;
      for (let back = season + 1; back <= years; back += 1) had += before[back - season - 1] ?? 0;
      // What stood before is over and done with: it binds only seasons that bear the set's seed.
      draft.row(terms, -Infinity, Math.max(landM2 - had, 0));
    }
  }
}
