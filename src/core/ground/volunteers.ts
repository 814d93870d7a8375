/**
 * Seed parents on ground where something they can cross with grew before: what it shed, or left in
 * the ground, may come up among them and flower. No distance, cover or time keeps that apart.
 */
import { findingId } from "../checks/finding.ts";
import type { CheckInput } from "../checks/check.ts";
import type { GroundCrop, SpeakingRule, VolunteersFinding } from "../checks/ground-checks.ts";
import type { Stand } from "../checks/stand.ts";
import { gapBetween } from "../geometry/gap.ts";
import type { Plan } from "../model/plan.ts";
import { varietyKey } from "../model/variety-key.ts";
import {
  type EarlierGround,
  earlierGrounds,
  liesOn,
  rememberedByStand,
  yearsSince,
} from "./earlier-grounds.ts";
import { landRules, yearsAsked } from "./land-rules.ts";
import { groundsOfThisSeason } from "./same-season.ts";

/** An earlier crop that a seed parent must not lie on, and why. */
export interface ShunnedGround {
  readonly ground: EarlierGround;
  /** The rules that count it; none: no figure is known that would clear it. */
  readonly rules: readonly SpeakingRule[];
  /** It bore no seed; roots or plants left in the ground may flower. */
  readonly isLeftPlants: boolean;
}

type Crops = Plan["earlierCrops"];

/**
 * Earlier crops that a seed parent must not lie on, wherever it lies now: able to cross with it,
 * no crop of its own variety, and counted by a rule - or by none, where no published years would
 * clear it.
 */
export function shunnedGrounds(stand: Stand, crops: Crops): readonly ShunnedGround[] {
  if (!stand.isSeedParent) return [];
  return earlierGrounds(crops, stand.book).flatMap(
    (ground) => shunnedOf(stand, ground, yearsSince(ground.crop, stand.season)) ?? [],
  );
}

/** Those of them it lies on. */
const shunnedUnder = rememberedByStand((stand, crops: Crops) =>
  shunnedGrounds(stand, crops).filter((each) => isUnder(stand, each)),
);

function isUnder({ outline }: Stand, { ground }: ShunnedGround): boolean {
  return liesOn(outline, ground.outline, ground.rimM);
}

/** @param since whole years from the crop to the season */
function shunnedOf(stand: Stand, ground: EarlierGround, since: number): ShunnedGround | null {
  const { crop, kind } = ground;
  if (kind.group !== stand.kind.group) return null;
  if (stand.book.relation(stand.kind, kind).relation === "no") return null;
  const key = varietyKey({ kind: kind.id, name: crop.varietyName });
  if (key !== null && key === stand.varietyKey && !stand.keepApart) return null;
  if (since < 0) return null;
  const wentToSeed = crop.wentToSeed ?? "unknown";
  const rules = landRules(stand.kind, stand.level);
  const speaking = rules.flatMap((rule): readonly SpeakingRule[] => {
    const years = yearsAsked(rule, stand.kind, kind, wentToSeed);
    const counts = years !== null && years > 0 && since <= years;
    const { source, column, words, note } = rule;
    return counts ? [{ source, years, column, words, note }] : [];
  });
  if (speaking.length > 0) return { ground, rules: speaking, isLeftPlants: false };
  if (wentToSeed === "no") {
    return mayBeLeft(ground, since) ? { ground, rules: [], isLeftPlants: true } : null;
  }
  // A rule printed for others of the family asks for years; that fewer do it does not say.
  const isTold = rules.some(({ isStretched }) => !isStretched);
  return isTold ? null : { ground, rules: [], isLeftPlants: false };
}

/** What was cleared this season left no roots that anybody would not have dug over. */
function shunnedThisSeason(stand: Stand, ground: EarlierGround): ShunnedGround | null {
  const found = shunnedOf(stand, ground, 0);
  return found?.isLeftPlants === true ? null : found;
}

/** Roots and bulbs of what lives longer than a year, left from last year. Common practice. */
function mayBeLeft({ kind }: EarlierGround, since: number): boolean {
  return kind.lifeCycle !== "annual" && since <= 1;
}

export function findVolunteers({
  plan: { earlierCrops },
  stands,
}: CheckInput<VolunteersFinding>): readonly VolunteersFinding[] {
  const before = groundsOfThisSeason(stands);
  return stands.flatMap((stand) => {
    if (!stand.isSeedParent) return [];
    const thisSeason = before(stand).flatMap((ground) => shunnedThisSeason(stand, ground) ?? []);
    const shunned = [
      ...shunnedUnder(stand, earlierCrops),
      ...thisSeason.filter((each) => isUnder(stand, each)),
    ];
    return shunned.length === 0 ? [] : [findingOf(stand, shunned)];
  });
}

/** As long as the id of an accepted finding may be in a plan file. */
const LONGEST_ID = 400;

function findingOf(stand: Stand, shunned: readonly ShunnedGround[]): VolunteersFinding {
  const on = [...shunned].sort(
    ({ ground: { crop: a } }, { ground: { crop: b } }) => b.year - a.year || (a.id < b.id ? -1 : 1),
  );
  const rules = longestFirst(on.flatMap((each) => each.rules));
  const [longest] = rules;
  const isUnknown = on.every((each) => each.rules.length === 0 && !each.isLeftPlants);
  return {
    // The crops are what is required to be gone: accepted, it returns when another joins them.
    id: findingId(
      "volunteers",
      [stand.id],
      on.map(({ ground: { crop } }) => `${crop.id} ${crop.kind} ${crop.year}`).join(","),
    ).slice(0, LONGEST_ID),
    check: "volunteers",
    severity: isUnknown ? "unknown" : "caution",
    subjects: [stand.id],
    subject: stand.id,
    crops: on.map(({ ground }) => cropOf(ground)),
    landYears: longest?.years ?? null,
    source: longest?.source ?? null,
    rules,
    leftPlants: on.flatMap((each) => (each.isLeftPlants ? [each.ground.crop.id] : [])),
    within: on.flatMap(({ ground }) => withinRim(stand, ground)),
  };
}

export function cropOf({ crop }: EarlierGround): GroundCrop {
  const { id, kind, year, varietyName = null, wentToSeed = "unknown" } = crop;
  return { id, kind, year, varietyName, wentToSeed };
}

function withinRim({ outline }: Stand, { crop, outline: ground, rimM }: EarlierGround) {
  const { distanceM } = gapBetween(outline, ground);
  return distanceM > 0 && rimM > 0 ? [{ id: crop.id, metres: distanceM, rimM }] : [];
}

/** Each rule once, the longest first. */
function longestFirst(rules: readonly SpeakingRule[]): readonly SpeakingRule[] {
  const once = new Map(
    rules.map((rule) => [`${rule.source} ${rule.column ?? ""} ${rule.years}`, rule]),
  );
  return [...once.values()].sort((a, b) => b.years - a.years || (a.source < b.source ? -1 : 1));
}
