/** What stands against a lay-out of the years, and what no lay-out can keep, in words. */
import { crossingGroups } from "../kinds/groups.ts";
import { type LengthUnit, formatArea, formatDistance } from "../model/length.ts";
import type { YearsFault } from "./judge-years.ts";
import { placesApart } from "./season-work.ts";
import type { PlanYears, YearsRow } from "./years-of-plan.ts";
import { counted, formOf } from "../words/plurals.ts";

/** What words need besides the years themselves. */
export interface YearsNames {
  readonly years: PlanYears;
  /** Of the seasons, the plan's own first. */
  readonly seasons: readonly string[];
  readonly units: LengthUnit;
}

/** Every name: what is to be tested or left out is never hidden behind a number. */
export function listed(names: readonly string[]): string {
  if (names.length <= 1) return names[0] ?? "";
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1) ?? ""}`;
}

/** How crossing sets are headed in tables: their groups' names, with the kinds where a group has several sets. */
export function partName(rows: readonly YearsRow[], members: readonly number[]): string {
  const own = new Set(members);
  const kinds = [...new Set(members.flatMap((index) => rows[index]?.kind ?? []))];
  const names = [...new Set(kinds.map(({ group }) => group))].map((id) => {
    const name =
      crossingGroups.find((each) => each.id === id)?.name ??
      kinds.find(({ group }) => group === id)?.name ??
      id;
    const isParted = rows.some(({ kind }, index) => kind.group === id && !own.has(index));
    const here = kinds.filter(({ group }) => group === id);
    return isParted ? `${name} (${listed(here.map((kind) => kind.name))})` : name;
  });
  return listed(names);
}

export function varietiesWords(count: number): string {
  return counted(count, { one: "variety", other: "varieties" });
}

function seasonsWords(count: number): string {
  return counted(count, { one: "season", other: "seasons" });
}

function metresWords(metres: number, units: LengthUnit): string {
  return metres === Infinity ? "no figure says how far" : formatDistance(metres, units);
}

export function faultWords(fault: YearsFault, names: YearsNames): string {
  const { years, seasons, units } = names;
  const nameOf = (item: number) => years.rows[item]?.variety.name ?? "";
  const all = (items: readonly number[]) => listed(items.map(nameOf));
  const season = seasons[fault.season] ?? "";
  switch (fault.kind) {
    case "dies":
      return diesWords(fault.item, season, names);
    case "too soon":
      return `${nameOf(fault.item)} is a biennial: for seed in ${season} it had to be sown the season before.`;
    case "together": {
      const set = years.problem.sets[fault.set];
      const needM = Math.max(0, ...fault.items.map((item) => years.rows[item]?.needM ?? 0));
      const places = set ? placesApart(set, needM) : 1;
      const room = formOf(places, { one: "only 1 place", other: `${places} places` });
      const more = `${fault.tooMany} must go`;
      return `${season}: ${all(fault.items)} cross, and the beds have ${room} that far apart (${metresWords(needM, units)}): ${more} to another season or under a cover.`;
    }
    case "exposed":
      return exposedWords(fault.item, season, names);
    case "covers": {
      const what = fault.cover === "cage" ? "a cage" : "bags or pollination by hand";
      return `${season}: ${varietiesWords(fault.items.length)} would need ${what} (${all(fault.items)}), and there is enough for ${fault.has}.`;
    }
    case "ground":
      return `${season}: ${formatArea(fault.needsM2, units)} are needed and ${formatArea(fault.hasM2, units)} are there for seed.`;
    case "rest": {
      const rest = years.problem.rests[fault.rest];
      const name = partName(years.rows, rest?.members ?? []);
      return `${season}: ground is to be free of ${name} for ${counted(rest?.years ?? 0, { one: "year", other: "years" })}. With the years before it takes ${formatArea(fault.needsM2, units)} of different ground, and there are ${formatArea(fault.hasM2, units)}.`;
    }
    case "work":
      return `${season}: ${varietiesWords(fault.varieties)} are grown for seed, and at most ${fault.most} are to be.`;
  }
}

function diesWords(item: number, season: string, { years }: YearsNames): string {
  const row = years.rows[item];
  if (!row) return "";
  const { name } = row.variety;
  const isFirst = years.problem.items[item]?.isLate === true;
  if (isFirst && row.standing !== "keeps") {
    return `${name} is not grown again in time, by ${season} at the latest: its seed may be dead.`;
  }
  const end = years.settings.end === "earliest" ? "may be" : "is likely";
  return `${name} must be grown for seed by ${season}: after it, what is left ${end} under its standard.`;
}

function exposedWords(item: number, season: string, { years, units }: YearsNames): string {
  const row = years.rows[item];
  if (!row) return "";
  const near = row.around.map(({ surrounding }) => surrounding.label || "a pollen source");
  const far = metresWords(row.needM, units);
  return `${season}: pollen of ${listed([...new Set(near)])} reaches ${row.variety.name} on every bed (${far}), in whatever year: it needs a cover, or a word with the neighbour.`;
}

/** Varieties that cannot all be kept, whatever the years. */
export function clashWords(
  items: readonly number[],
  isSmallest: boolean,
  { years: { rows, problem }, seasons }: YearsNames,
): string {
  const list = listed(items.map((item) => rows[item]?.variety.name ?? ""));
  const span = `${seasonsWords(problem.seasons)} (${seasons[0] ?? ""} to ${seasons.at(-1) ?? ""})`;
  const kinds = [...new Set(items.map((item) => rows[item]?.kind.name ?? ""))];
  const first = formOf(items.length, {
    one: `${list} cannot be kept alive in these ${span}.`,
    other: `These ${items.length} cannot all be kept alive with this garden, these covers and ${span}: ${list} (${listed(kinds)}).`,
  });
  const ways =
    "More seasons, a cover more, more ground, or one of them left out would let the rest be";
  if (items.length === 1) return `${first} More seasons may help, or seed from elsewhere.`;
  return isSmallest
    ? `${first} Any one of them left out, the others can be. ${ways}.`
    : `${first} A smaller set may already clash: time ran out. ${ways}.`;
}
