/** What words about findings are made with, and the few words all of them share. */
import { placeById } from "../lists/changed-list.ts";
import { type LengthUnit, formatDistance, formatMeasured } from "../model/length.ts";
import type { Layout, Plan } from "../model/plan.ts";
import type { FindingBase, Severity } from "./finding.ts";
import type { Stand } from "./stand.ts";
import * as words from "../words/finding-words.ts";
import { listOf } from "../words/plurals.ts";
import { severityNames } from "../words/deed-words.ts";

/** What words need beside the finding: names by id, stands for kinds and dates, the display unit. */
export interface Wording {
  readonly nameOf: (id: string) => string;
  readonly standOf: (id: string) => Stand | undefined;
  readonly unit: LengthUnit;
}

export interface Description {
  /** One line that names the subjects. */
  readonly title: string;
  /** Plain sentences: what was measured against what, from which source, and what it means. */
  readonly sentences: readonly string[];
}

/** A finding in a line or two of a list, beside the sign of its severity. */
export interface Brief {
  /** Who it is about. */
  readonly title: string;
  /** Its figures: `1.6 of 7.6 m, 121 days`; empty where it has none. */
  readonly figures: string;
}

/** A sign beside every severity, so that colour is never the only one. */
export const severitySign: Readonly<Record<Severity, string>> = {
  conflict: "✕",
  caution: "!",
  unknown: "?",
};

export const severityWord: Readonly<Record<Severity, string>> = {
  conflict: severityNames.conflict.one,
  caution: severityNames.caution.one,
  unknown: severityNames.unknown.one,
};

/** Wording for a plan's layout as it was checked. */
export function wordingFor(
  plan: Plan,
  layout: Layout,
  standOf: (id: string) => Stand | undefined,
): Wording {
  const nameIn = <T extends Named>(list: readonly T[], id: string, say: (item: T) => string) => {
    const place = placeById(list).get(id);
    const item = place === undefined ? undefined : list[place];
    return item && say(item);
  };
  const varietyName = (id: string) => nameIn(plan.varieties, id, ({ name }) => name) ?? "";
  // Looked up when it is asked for: of thousands few are named.
  const nameOf = (id: string) =>
    nameIn(plan.surroundings, id, ({ label }) => label) ??
    nameIn(layout.beds, id, ({ code }) => words.bed(code)) ??
    nameIn(layout.plantings, id, ({ code, variety }) => `${code} ${varietyName(variety)}`.trim());
  return {
    nameOf: (id) => nameOf(id) ?? (id === "site" ? words.site : id),
    standOf,
    unit: plan.units,
  };
}

interface Named {
  readonly id: string;
}

/** The same text with its first letter large. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "a", "a and b", "a, b and 3 more". */
export function listed(names: readonly string[]): string {
  const [one = "", other = ""] = names;
  return names.length > 3 ? words.andMore(one, other, names.length - 2) : listOf(names);
}

/** `1.6 of 7.6 m`; what was measured alone where nothing is required; empty where nothing was. */
export function measuredBrief(
  { measuredM, requiredM }: Pick<FindingBase, "measuredM" | "requiredM">,
  unit: LengthUnit,
): string {
  if (measuredM === undefined) return "";
  if (requiredM === undefined) return formatDistance(measuredM, unit);
  const isShort = measuredM < requiredM;
  const { measured, required, after } = formatMeasured(measuredM, requiredM, isShort, unit);
  return words.measuredOf(measured, `${required}${after}`);
}
