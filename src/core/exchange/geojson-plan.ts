/**
 * Checked features to a plan: varieties from kind and name, one layout; beds and other ground
 * only from files that Wideberth wrote.
 */
import { varietyKey } from "../model/variety-key.ts";
import type { Kind } from "../kinds/crop.ts";
import type { LonLat } from "../geometry/local-frame.ts";
import { namedLots } from "../lots/named-lots.ts";
import { civilFromDay, dayFromCivil, isoFromDay } from "../model/day.ts";
import { emptyPlan } from "../model/empty-plan.ts";
import type { Bed, Layout, Plan, Planting, Shape, Surrounding, Variety } from "../model/plan.ts";
import type { Corner } from "../model/ring.ts";
import { LIMITS } from "../model/limits.ts";
import {
  type Feature,
  type FeatureProperties,
  type GroundFeature,
  knownProperties,
  writtenProperties,
} from "./geojson-schema.ts";
import { ownOf, ownPlantingFields, writtenHere } from "./own-feature-fields.ts";

export interface PlacedFeature {
  readonly index: number;
  readonly feature: Feature;
  readonly kind: Kind;
  /** Sheet metres; a Point is one ring of one corner. */
  readonly rings: readonly (readonly Corner[])[];
}

/** Ground on which nothing flowers, as Wideberth itself writes it. */
export interface PlacedGround {
  readonly index: number;
  readonly feature: GroundFeature;
  readonly rings: PlacedFeature["rings"];
}

/** What a plan keeps of a feature beyond its own fields. */
interface FeatureExtras {
  /** The feature's id where it is no plan id: a number, or text with other signs. */
  readonly featureId?: string | number;
  /** Properties Wideberth does not read. */
  readonly properties?: Readonly<Record<string, unknown>>;
}

const PLAN_ID = /^[A-Za-z0-9._:-]{1,64}$/;

/** @param name of the place and plan */
export function planFromFeatures(
  features: readonly PlacedFeature[],
  origin: LonLat,
  name: string,
  grounds: readonly PlacedGround[] = [],
): Plan {
  const allIds = planIds([...features, ...grounds]);
  const ids = allIds.slice(0, features.length);
  const ground = groundOf(grounds, allIds.slice(features.length));
  const varieties = varietyList();
  const lots = namedLots([]);
  const plantings: Planting[] = [];
  const surroundings: Surrounding[] = [];
  features.forEach((placed, place) => {
    const id = ids[place] as string;
    if (isSource(placed.feature)) surroundings.push(sourceOf(placed, id));
    else {
      const planting = plantingOf(placed, id, varieties.idFor(placed, id), ground.beds);
      const sown = lots.named(ownOf(placed.feature.properties).lot ?? "", planting.variety);
      plantings.push(
        sown.length === 0 ? planting : { ...planting, lots: sown.map((lot) => lot.id) },
      );
    }
  });
  const title = name.slice(0, LIMITS.name);
  const plan = emptyPlan("geojson", 2000);
  return {
    ...plan,
    title,
    season: seasonOf(features.flatMap(({ feature }) => bloomDays(feature))),
    site: { ...plan.site, name: title, position: { ...origin } },
    varieties: varieties.list,
    lots: lots.made,
    surroundings: [...surroundings, ...ground.surroundings],
    layouts: [{ ...(plan.layouts[0] as Layout), beds: ground.beds, plantings }],
  };
}

/** Whether a feature is a pollen source outside rather than a planting. */
export function isSource({ geometry, properties }: Pick<Feature, "geometry" | "properties">) {
  return geometry.type === "Point" || properties["wideberth"] === "source";
}

interface IdSource {
  readonly index: number;
  readonly feature: Pick<Feature, "id">;
}

/** The id of a feature: its own, or one made from its place in the list, counted from 1. */
export function featureId({ feature, index }: IdSource) {
  return feature.id ?? `feature-${index + 1}`;
}

/** The id a feature came with, as it came; the plan's own id for anything else. */
export function featureIds(plan: Plan, layout: Layout): (id: string) => string | number {
  const given = new Map<string, string | number>();
  for (const item of [...layout.plantings, ...plan.surroundings]) {
    const { featureId: own } = item as FeatureExtras;
    if (own !== undefined) given.set(item.id, own);
  }
  return (id) => given.get(id) ?? id;
}

/** Ids fit for a plan file; a feature's own id wherever it is one. */
function planIds(features: readonly IdSource[]): readonly string[] {
  const own = features.map((placed) => String(featureId(placed)));
  const taken = new Set(own);
  return own.map((id, place) => {
    if (PLAN_ID.test(id)) return id;
    let made = `feature-${(features[place] as IdSource).index + 1}`;
    while (taken.has(made)) made += "-x";
    taken.add(made);
    return made;
  });
}

function extrasOf(placed: PlacedFeature, id: string): FeatureExtras {
  const given = featureId(placed);
  const { properties } = placed.feature;
  const isWritten = writtenHere(properties);
  // Half a bloom window cannot be used, but is not thrown away either.
  const isHalf = (properties.bloomStart === undefined) !== (properties.bloomEnd === undefined);
  const unread = Object.entries(properties).flatMap(([key, value]) => {
    const isLoneDate = isHalf && /^bloom(Start|End)$/.test(key) && typeof value === "number";
    if (isLoneDate) return [[key, isoFromDay(value)] as const];
    const isRead = knownProperties.has(key) || (isWritten && writtenProperties.has(key));
    return isRead ? [] : [[key, value] as const];
  });
  return {
    ...(given === id ? {} : { featureId: given }),
    ...(unread.length > 0 ? { properties: Object.fromEntries(unread) } : {}),
  };
}

/** One variety per kind and name; a planting without a name is a variety of its own. */
function varietyList() {
  const list: Variety[] = [];
  const byKey = new Map<string, string>();
  const idFor = ({ feature, kind }: PlacedFeature, planting: string): string => {
    const name = (feature.properties.variety ?? "").trim();
    const isHybrid = feature.properties.hybrid === "true";
    const key = varietyKey({ kind: kind.id, name, hybrid: isHybrid }) ?? `#${planting}`;
    const known = byKey.get(key);
    if (known !== undefined) return known;
    const id = `variety-${list.length + 1}`;
    byKey.set(key, id);
    list.push({ id, name, kind: kind.id, ...(isHybrid ? { hybrid: true } : {}) });
    return id;
  };
  return { list, idFor };
}

function polygonOf(rings: PlacedFeature["rings"]) {
  const [outer = [], ...holes] = rings.map((ring) =>
    ring.map(([x, y]): [number, number] => [x, y]),
  );
  return {
    shape: "polygon" as const,
    corners: outer,
    ...(holes.length > 0 ? { holes } : {}),
  };
}

function shapeOf({
  feature,
  rings,
}: {
  readonly feature: Pick<Feature, "geometry">;
  readonly rings: PlacedFeature["rings"];
}): Shape {
  const [x, y] = rings[0]?.[0] ?? [0, 0];
  return feature.geometry.type === "Point" ? { shape: "point", x, y } : polygonOf(rings);
}

/** Beds and the surroundings that do not flower. */
function groundOf(grounds: readonly PlacedGround[], ids: readonly string[]) {
  const beds: Bed[] = [];
  const surroundings: Surrounding[] = [];
  grounds.forEach((placed, place) => {
    const id = ids[place] as string;
    const { wideberth: what, code, label, note } = placed.feature.properties;
    const rest = note === undefined ? {} : { note };
    if (what === "bed") {
      beds.push({ id, code: code ?? id, outline: polygonOf(placed.rings), ...rest });
      return;
    }
    surroundings.push({
      id,
      label: label ?? what,
      what,
      outline: shapeOf(placed),
      flowering: "yes",
      cover: "none",
      ...rest,
    });
  });
  return { beds, surroundings };
}

function plantingOf(
  placed: PlacedFeature,
  id: string,
  variety: string,
  beds: readonly Bed[],
): Planting {
  const { properties } = placed.feature;
  const planting: Planting = {
    id,
    code: String(featureId(placed)),
    variety,
    outline: polygonOf(placed.rings),
    ...ownPlantingFields(properties, beds),
    purpose: properties.purpose ?? "seed",
    ...bloomOf(properties),
    ...(properties.isolationM === undefined ? {} : { isolationM: properties.isolationM }),
    ...(properties.level === undefined ? {} : { level: properties.level }),
    flowering: properties.flowering ?? "yes",
    cover: properties.cover ?? "none",
  };
  return { ...planting, ...extrasOf(placed, id) };
}

function sourceOf(placed: PlacedFeature, id: string): Surrounding {
  const { properties } = placed.feature;
  const { label, note } = ownOf(properties);
  const name = (properties.variety ?? "").trim();
  const source: Surrounding = {
    id,
    label: (label ?? `${featureId(placed)} ${name === "" ? placed.kind.name : name}`).slice(
      0,
      LIMITS.name,
    ),
    what: "pollen",
    outline: shapeOf(placed),
    kind: placed.kind.id,
    // A hybrid is never the variety of its name: as one of no known variety it threatens all.
    ...(name === "" || properties.hybrid === "true" ? {} : { varietyName: name }),
    ...bloomOf(properties),
    flowering: properties.flowering ?? "yes",
    cover: properties.cover ?? "none",
    ...(note === undefined ? {} : { note }),
  };
  return { ...source, ...extrasOf(placed, id) };
}

/**
 * A window needs both its days; with one of them it is not known. A forecast stays one. An older
 * file of our own does not say: days beside a start may be reckoned from it, so they are taken
 * as a rule of thumb.
 */
function bloomOf(properties: FeatureProperties): Pick<Planting, "bloom"> {
  const { bloomStart: first, bloomEnd: last } = properties;
  if (first === undefined || last === undefined) return {};
  const isReckoned = ownOf(properties).startDate !== undefined;
  const basis = properties.bloomBasis ?? (isReckoned ? "rule of thumb" : "own");
  return { bloom: basis === "own" || basis === "seen" ? { first, last } : { first, last, basis } };
}

/** The days of bloom a feature names: both, one or none. */
export function bloomDays({ properties }: Pick<Feature, "properties">): readonly number[] {
  return [properties.bloomStart, properties.bloomEnd].filter((day) => day !== undefined);
}

/** The calendar years of all bloom dates. */
export function seasonOf(days: readonly number[]): Plan["season"] {
  const years = days.map((day) => civilFromDay(day).year);
  const from = years.length > 0 ? Math.min(...years) : 2000;
  const to = years.length > 0 ? Math.max(...years) : 2000;
  return {
    name: years.length === 0 ? "" : from === to ? String(from) : `${from} to ${to}`,
    first: dayFromCivil({ year: from, month: 1, day: 1 }),
    last: dayFromCivil({ year: to, month: 12, day: 31 }),
  };
}
