/** What is done with each variety that is laid, so that none crosses: left so, later, covered, or not grown. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { choicesClash, doClash, standOf } from "../clearing/choice.ts";
import { cheapestChoices, remembered } from "../clearing/choice-search.ts";
import type { Planting } from "../model/plan.ts";
import { type GoalRule, type LayChoice, layChoices } from "./lay-out-goals.ts";
import type { Plot } from "./plots.ts";
import type { InTheWay, SeedParts } from "./seed-parts.ts";

export interface Settled {
  /** What is changed in the plots of a variety, by its id. */
  readonly changes: ReadonlyMap<string, Partial<Planting>>;
  /** Parts that are not grown this year. */
  readonly waits: ReadonlySet<number>;
  /** Who is in the way of a variety that waits, by its id. */
  readonly against: ReadonlyMap<string, InTheWay>;
}

/** Steps of settling each group of varieties tied together. */
const STEPS = 50_000;

/** @param before who was settled to wait goes on waiting */
export function settle(
  checked: CheckedLayout,
  { wanted }: SeedParts,
  plots: readonly Plot[],
  rule: GoalRule,
  before?: Settled,
): Settled {
  const clashRule = { book: checked.book, isByDistanceAlone: rule.isByDistance };
  const laid = wanted.map(({ parts }) =>
    plots.filter(({ part }) => parts.includes(part)).map(({ planting }) => planting),
  );
  const used = [...wanted.keys()].filter((index) => (laid[index]?.length ?? 0) > 0);
  const pieces = used.map((index) => {
    const [each, own] = [wanted[index], laid[index]];
    if (!each || !own) return [];
    return layChoices(checked, each, own, rule, index).filter(({ stands }) =>
      stands.every((stand) =>
        checked.result.stands.every((other) => !doClash(stand, other, clashRule)),
      ),
    );
  });
  const { taken } = cheapestChoices(
    remembered({
      pieces,
      together: (a, i, b, j) => {
        const [one, other] = [pieces[a]?.[i], pieces[b]?.[j]];
        return one && other && choicesClash(one, other, clashRule) ? Infinity : 0;
      },
    }),
    STEPS,
  );
  const settled = used.map((index, at): SettledVariety => ({
    index,
    choice: pieces[at]?.[taken?.[at] ?? 0] as LayChoice,
    laid: laid[index] ?? [],
  }));
  const waiting = settled.filter(({ choice }) => choice.change === "waits");
  return {
    changes: new Map(
      settled.flatMap(({ index, choice: { change } }) =>
        typeof change === "object" ? [[wanted[index]?.variety.id ?? "", change] as const] : [],
      ),
    ),
    waits: new Set([
      ...(before?.waits ?? []),
      ...waiting.flatMap(({ index }) => wanted[index]?.parts ?? []),
    ]),
    against: new Map([
      ...(before?.against ?? []),
      ...waiting.map(
        (each) =>
          [wanted[each.index]?.variety.id ?? "", inTheWay(checked, wanted, each, settled)] as const,
      ),
    ]),
  };
}

interface SettledVariety {
  /** Place in the list of wanted varieties. */
  readonly index: number;
  readonly choice: LayChoice;
  readonly laid: readonly Planting[];
}

/** Those that a variety would cross with where it was laid. */
function inTheWay(
  checked: CheckedLayout,
  wanted: SeedParts["wanted"],
  { index, laid }: SettledVariety,
  settled: readonly SettledVariety[],
): InTheWay {
  const rule = { book: checked.book, isByDistanceAlone: true };
  const own = laid.flatMap((planting) => standOf(checked, planting) ?? []);
  const others = [
    ...settled.flatMap((other) =>
      other.index === index
        ? []
        : other.choice.stands.map((stand) => ({
            stand,
            name: wanted[other.index]?.variety.name ?? "",
            isAround: false,
          })),
    ),
    ...checked.result.stands.map((stand) => ({
      stand,
      name: stand.variety?.name ?? stand.surrounding?.label ?? "",
      isAround: stand.planting === null,
    })),
  ];
  const near = others.filter(({ stand }) => own.some((mine) => doClash(mine, stand, rule)));
  return {
    against: [...new Set(near.map(({ name }) => name))],
    isAround: near.length > 0 && near.every(({ isAround }) => isAround),
  };
}
