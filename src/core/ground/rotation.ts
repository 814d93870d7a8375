/**
 * Plantings that follow hosts of their diseases too soon. A matter of health, never of purity:
 * always a caution. Where no earlier crops are entered nothing is said.
 */
import type { CheckInput } from "../checks/check.ts";
import { findingId } from "../checks/finding.ts";
import type { DiseaseAsked, RotationFinding } from "../checks/ground-checks.ts";
import type { Stand } from "../checks/stand.ts";
import type { Plan } from "../model/plan.ts";
import {
  type EarlierGround,
  earlierGrounds,
  liesOn,
  rememberedByStand,
  yearsSince,
} from "./earlier-grounds.ts";
import { columnOf, ukRules, yearsAsked } from "./land-rules.ts";
import { rotationTable } from "./rotation-table.ts";
import { isAmong } from "./taxa.ts";
import { cropOf } from "./volunteers.ts";

/** An earlier crop that counts as a host for a planting, and the diseases it may have left. */
export interface HostGround {
  readonly ground: EarlierGround;
  readonly diseases: readonly Omit<DiseaseAsked, "crops">[];
}

type Crops = Plan["earlierCrops"];

/** Earlier crops a planting should not follow, wherever it lies now. */
export function hostGrounds(stand: Stand, crops: Crops): readonly HostGround[] {
  if (stand.planting === null) return [];
  return earlierGrounds(crops, stand.book).flatMap((ground): readonly HostGround[] => {
    const diseases = diseasesAfter(stand, ground);
    return diseases.length === 0 ? [] : [{ ground, diseases }];
  });
}

/** Those of them it lies on. */
const hostsUnder = rememberedByStand((stand, crops: Crops) =>
  hostGrounds(stand, crops).filter(({ ground }) => liesOn(stand.outline, ground.outline)),
);

/** Whether a source names a disease that waits in the ground for a planting of its kind. */
export function hasRotationRows({ kind, planting }: Stand): boolean {
  return rotationTable.some(
    ({ crop, isSeedOnly }) =>
      isAmong(kind, crop, kind) && (planting?.purpose === "seed" || isSeedOnly !== true),
  );
}

function diseasesAfter(stand: Stand, { crop, kind }: EarlierGround): HostGround["diseases"] {
  const since = yearsSince(crop, stand.season);
  if (since < 0) return [];
  const isSeed = stand.planting?.purpose === "seed";
  const named = rotationTable.flatMap((row): HostGround["diseases"] => {
    const isAbout = isAmong(stand.kind, row.crop, stand.kind) && (isSeed || !row.isSeedOnly);
    if (!isAbout || !isAmong(kind, row.hosts, stand.kind)) return [];
    if (row.years !== null && since > row.years[1]) return [];
    const { disease, years, source, note = null } = row;
    return [{ disease, years, source, note }];
  });
  return [...named, ...unnamedAfter(stand, { crop, kind, since })];
}

/**
 * Of the guidance on previous cropping, what cannot cross with the seed crop: the table counts it
 * and does not say for which disease.
 */
function unnamedAfter(
  stand: Stand,
  { crop, kind, since }: Pick<EarlierGround, "crop" | "kind"> & { readonly since: number },
): HostGround["diseases"] {
  const isCrossing =
    kind.group === stand.kind.group && stand.book.relation(stand.kind, kind).relation !== "no";
  if (!stand.isSeedParent || isCrossing) return [];
  return ukRules(stand.kind, columnOf(stand.level)).flatMap((rule): HostGround["diseases"] => {
    const years = yearsAsked(rule, stand.kind, kind, crop.wentToSeed ?? "unknown");
    if (years === null || since > years) return [];
    const note = [rule.words, ...(rule.note === null ? [] : [rule.note])].join("; ");
    return [{ disease: null, years: [years, years], source: rule.source, note }];
  });
}

export function findRotation({
  plan: { earlierCrops },
  stands,
}: CheckInput<RotationFinding>): readonly RotationFinding[] {
  if (earlierCrops.length === 0) return [];
  return stands.flatMap((stand) => {
    const hosts = hostsUnder(stand, earlierCrops);
    return hosts.length === 0 ? [] : [findingOf(stand, hosts)];
  });
}

/** As long as the id of an accepted finding may be in a plan file. */
const LONGEST_ID = 400;

function findingOf(stand: Stand, hosts: readonly HostGround[]): RotationFinding {
  const crops = hosts
    .map(({ ground }) => cropOf(ground))
    .sort((a, b) => b.year - a.year || (a.id < b.id ? -1 : 1));
  return {
    id: findingId(
      "rotation",
      [stand.id],
      crops.map(({ id, kind, year }) => `${id} ${kind} ${year}`).join(","),
    ).slice(0, LONGEST_ID),
    check: "rotation",
    severity: "caution",
    subjects: [stand.id],
    subject: stand.id,
    crops,
    diseases: diseasesOf(
      hosts,
      crops.map(({ id }) => id),
    ),
  };
}

/** Each disease once with the crops that count for it, the longest interval first. */
function diseasesOf(
  hosts: readonly HostGround[],
  order: readonly string[],
): readonly DiseaseAsked[] {
  const found = new Map<string, { readonly asked: Omit<DiseaseAsked, "crops">; ids: string[] }>();
  for (const { ground, diseases } of hosts) {
    for (const asked of diseases) {
      const key = `${asked.source} ${asked.disease ?? ""} ${asked.years?.[1] ?? "never"}`;
      const entry = found.get(key) ?? { asked, ids: [] };
      entry.ids.push(ground.crop.id);
      found.set(key, entry);
    }
  }
  return [...found.values()]
    .map(({ asked, ids }) => ({ ...asked, crops: order.filter((id) => ids.includes(id)) }))
    .sort((a, b) => longest(b) - longest(a) || ((a.disease ?? "") < (b.disease ?? "") ? -1 : 1));
}

function longest({ years }: Pick<DiseaseAsked, "years">): number {
  return years?.[1] ?? Infinity;
}
