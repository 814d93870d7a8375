/** Edits of the years ahead, and the season's seed list made of them. */
import { type Edit, mapItems, patched } from "../edits/edit.ts";
import type { Plan, RenewalYears, Variety } from "../model/plan.ts";
import type { YearsRow } from "./years-of-plan.ts";
import { type Years, isFirstYear, isGrown, seasonsOf } from "./years-problem.ts";
import { type YearChoice, firstYear } from "./years-settings.ts";
import type { YearsNames } from "./fault-words.ts";
import { turnReason } from "./years-words.ts";

type Settings = Omit<RenewalYears, "choices">;

/** Changes what the grower says of the years; a field given as undefined is taken away. */
export function setYears(
  change: { readonly [Key in keyof Settings]?: Settings[Key] | undefined },
  title: string,
): Edit {
  return {
    title,
    apply: (plan) => ({
      ...plan,
      renewalYears: patched(keptYears(plan), change),
    }),
  };
}

function keptYears({ renewalYears }: Plan): RenewalYears {
  return renewalYears ?? { choices: [] };
}

/** One variety in one season, set by hand; a search leaves it so. */
export function setByHand(
  row: Pick<YearsRow, "variety">,
  season: number,
  grown: boolean,
  title: string,
): Edit {
  return {
    title,
    apply: (plan) => {
      const start = firstYear(plan);
      const year = start + season;
      const kept = keptYears(plan);
      // Years gone by say nothing more.
      const others = kept.choices.filter(
        (choice) =>
          choice.year >= start && (choice.variety !== row.variety.id || choice.year !== year),
      );
      const choice: YearChoice = { variety: row.variety.id, year, grown, byHand: true };
      return { ...plan, renewalYears: { ...kept, choices: [...others, choice] } };
    },
  };
}

/** The seasons an answer found; what was set by hand stays by hand. */
export function takeYears(rows: readonly YearsRow[], years: Years, title: string): Edit {
  return {
    title,
    apply: (plan) => {
      const kept = keptYears(plan);
      const start = firstYear(plan);
      const ids = new Set(rows.map(({ variety }) => variety.id));
      const byHand = kept.choices.filter(
        (choice) => choice.byHand === true && choice.year >= start,
      );
      const isSet = (variety: string, year: number) =>
        byHand.some((choice) => choice.variety === variety && choice.year === year);
      const found = rows.flatMap(({ variety: { id } }, index) =>
        seasonsOf(years[index] ?? 0).flatMap((season): readonly YearChoice[] => {
          const year = start + season;
          return isSet(id, year) ? [] : [{ variety: id, year, grown: true }];
        }),
      );
      const rest = byHand.filter(({ variety }) => ids.has(variety) || inPlan(plan, variety));
      return { ...plan, renewalYears: { ...kept, choices: [...rest, ...found] } };
    },
  };
}

function inPlan(plan: Plan, id: string): boolean {
  return plan.varieties.some((variety) => variety.id === id);
}

/** Forgets what was set by hand, or all. */
export function clearYears(isAll: boolean, title: string): Edit {
  return {
    title,
    apply: (plan) => {
      const kept = keptYears(plan);
      const choices = isAll ? [] : kept.choices.flatMap(withoutHand);
      return { ...plan, renewalYears: { ...kept, choices } };
    },
  };
}

function withoutHand(choice: YearChoice): readonly YearChoice[] {
  return choice.grown ? [patched(choice, { byHand: undefined })] : [];
}

/** What the plan's own season asks for by the years: plants, lot to sow, and why. */
export interface SeedListLine {
  readonly row: YearsRow;
  readonly plants: number;
  /** Sown this season; else roots or plants of the year before are set out. */
  readonly isSown: boolean;
  /** Bears seed this season; else it is a biennial's first year. */
  readonly bearsSeed: boolean;
}

export function seedListLines({ years }: YearsNames): readonly SeedListLine[] {
  return years.rows.flatMap((row, index): readonly SeedListLine[] => {
    const item = years.problem.items[index];
    const bits = years.years[index] ?? 0;
    if (!item) return [];
    const bearsSeed = isGrown(bits, 0);
    const isSown = item.lead === 1 ? bearsSeed : isFirstYear(item, bits, 0);
    return bearsSeed || isSown ? [{ row, plants: row.plants, isSown, bearsSeed }] : [];
  });
}

/**
 * Wants the plants of each variety whose turn the plan's season is, from its lot, with the reason;
 * more wanted already stays, and so do all other varieties.
 */
export function seasonSeedList(names: YearsNames, title: string): Edit {
  const lines = new Map(seedListLines(names).map((line) => [line.row.variety.id, line]));
  return {
    title,
    apply: (plan) => ({
      ...plan,
      varieties: mapItems(plan.varieties, (variety) => {
        const line = lines.get(variety.id);
        return line ? wanted(variety, line, names) : variety;
      }),
    }),
  };
}

function wanted(variety: Variety, line: SeedListLine, names: YearsNames): Variety {
  const { row, plants, isSown, bearsSeed } = line;
  const others = (variety.lots ?? []).filter((id) => id !== row.lot?.id);
  // A biennial that is sown now bears in the next season.
  const season = bearsSeed && !(isSown && row.kind.lifeCycle === "biennial") ? 0 : 1;
  return patched(variety, {
    wantedPlants: Math.max(plants, variety.wantedPlants ?? 0),
    reason: turnReason(row, names, season).slice(0, MOST_REASON),
    ...(isSown && row.lot ? { lots: [row.lot.id, ...others] } : {}),
  });
}

/** A reason is a note of the plan file. */
const MOST_REASON = 4000;
