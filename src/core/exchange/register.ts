/**
 * A register of plantings too many for one plan: features checked one by one, then areas of them
 * made into plans. What an area's plan says of its own plantings is what one plan of everything
 * would say of them.
 */
import { distanceReach, requirementOf, wildRequirements } from "../checks/requirement.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import { type LonLat, localFrame } from "../geometry/local-frame.ts";
import { emptyPlan } from "../model/empty-plan.ts";
import type { Plan } from "../model/plan.ts";
import type { Read } from "../model/problem.ts";
import { isSource, planFromFeatures } from "./geojson-plan.ts";
import {
  type ReadFeature,
  isGround,
  outlineProblems,
  placeFeature,
  placesOf,
  readFeature,
} from "./read-geojson.ts";

/** Purity level of plantings that name none. */
export const REGISTER_LEVEL = emptyPlan("register", 2000).level;

export interface RegisterPlace {
  readonly file: string;
  /** As messages name it: `line 12 "p4"`. */
  readonly object: string;
  /** Place among the features, from 0. */
  readonly index: number;
}

/** One feature, whole or with all that is wrong with it; null for ground on which nothing flowers. */
export function readRegisterFeature(
  value: unknown,
  { file, object, index }: RegisterPlace,
  book: CropBook,
): Read<ReadFeature | null> {
  if (isGround(value)) return { ok: true, value: null };
  const read = readFeature(value, index, object, file, book);
  if (!read.ok) return read;
  // About its own first corner: whether an outline is simple does not depend on the middle.
  const [first = { longitude: 0, latitude: 0 }] = placesOf(read.value.feature);
  const placed = { ...read.value, ...placeFeature(read.value.feature, localFrame(first)) };
  const problems = outlineProblems(placed, file);
  return problems.length > 0 ? { ok: false, problems } : read;
}

/**
 * Metres within which other plantings matter to this one: its required distance, infinite when
 * that is not known, 0 when no seed of it is kept.
 */
export function reachOf({ feature, kind }: Pick<ReadFeature, "feature" | "kind">): number {
  const { purpose, flowering, hybrid, isolationM, level } = feature.properties;
  const isSeedParent =
    (purpose ?? "seed") === "seed" && (flowering ?? "yes") === "yes" && hybrid !== "true";
  if (isSource(feature) || !isSeedParent) return 0;
  const typed = isolationM === undefined ? {} : { isolationM };
  const requirement = requirementOf(typed, {}, kind, level ?? REGISTER_LEVEL);
  return distanceReach(requirement, wildRequirements(kind, requirement));
}

export interface RegisterSetting {
  readonly title: string;
  readonly origin: LonLat;
  readonly season: Plan["season"];
}

/** The plan of one area, and the ids that its features have in it, in their order. */
export function areaPlan(
  features: readonly Pick<ReadFeature, "index" | "feature" | "kind">[],
  { title, origin, season }: RegisterSetting,
): { readonly plan: Plan; readonly ids: readonly string[] } {
  const frame = localFrame(origin);
  const placed = features.map((read) => ({ ...read, ...placeFeature(read.feature, frame) }));
  const plan = { ...planFromFeatures(placed, origin, title), season };
  const plantings = plan.layouts[0]?.plantings.values();
  const sources = plan.surroundings.values();
  const ids = features.map(({ feature }) => {
    const item = (isSource(feature) ? sources : plantings)?.next();
    return item?.done === false ? item.value.id : "";
  });
  return { plan, ids };
}
