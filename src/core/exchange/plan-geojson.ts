/**
 * A layout as GeoJSON (RFC 7946): longitude and latitude on WGS 84, outer rings anticlockwise,
 * holes clockwise. Plantings and pollen sources carry the properties `readGeojson` reads, so that
 * the file checked elsewhere gives the same findings; `wideberth` says what a feature is.
 */
import { rewind } from "@turf/turf";
import { bloomBasis } from "../calendar/bloom-window.ts";
import { type LocalFrame, localFrame } from "../geometry/local-frame.ts";
import { outlineOf } from "../geometry/outline.ts";
import { lotsToSow } from "../lots/lot-book.ts";
import { codesText } from "../lots/named-lots.ts";
import { isoFromDay } from "../model/day.ts";
import type { Plan, Planting, Shape, Surrounding, Variety } from "../model/plan.ts";
import { featureIds } from "./geojson-plan.ts";
import { OWN_KINDS_MEMBER } from "./geojson-schema.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { Stand } from "../checks/stand.ts";

type Position = number[];
type Ring = Position[];

interface GeojsonFeature {
  readonly type: "Feature";
  readonly id: string | number;
  readonly geometry:
    | { readonly type: "Polygon"; readonly coordinates: Ring[] }
    | { readonly type: "Point"; readonly coordinates: Position };
  readonly properties: Readonly<Record<string, unknown>>;
}

/** Degrees are written to ten places, a hundredth of a millimetre. */
const PLACES = 10;

/** Throws a RangeError when the site has no position. */
export function planGeojson(input: CheckedLayout): string {
  const { plan, layout } = input;
  const { position, upBearingDeg } = plan.site;
  if (!position) throw new RangeError("A site without a position has no longitude and latitude");
  const frame = localFrame(position, upBearingDeg);
  const idOf = featureIds(plan, layout);
  const feature = (
    id: string,
    shape: Shape,
    properties: Readonly<Record<string, unknown>>,
  ): GeojsonFeature => ({
    type: "Feature",
    id: idOf(id),
    geometry: geometryOf(shape, frame),
    properties: Object.fromEntries(
      Object.entries(properties).filter(([, value]) => value !== undefined && value !== ""),
    ),
  });
  const features = [
    ...layout.plantings.map((planting) =>
      feature(planting.id, planting.outline, plantingProperties(planting, input)),
    ),
    ...plan.surroundings.map((item) =>
      feature(item.id, item.outline, surroundingProperties(item, input)),
    ),
    ...layout.beds.map((bed) =>
      feature(bed.id, bed.outline, { wideberth: "bed", code: bed.code, note: bed.note }),
    ),
  ];
  const name = plan.site.name === "" ? plan.title : plan.site.name;
  const ownKinds = kindsUsed(input);
  const collection = {
    type: "FeatureCollection",
    name,
    // A foreign member, as RFC 7946 (6.1) allows: the grower's own kinds and figures.
    ...(ownKinds.length > 0 ? { [OWN_KINDS_MEMBER]: ownKinds } : {}),
    features,
  };
  return `${JSON.stringify(collection, null, 1)}\n`;
}

/** The plan's own kinds that a feature is of. */
function kindsUsed({ plan, layout }: CheckedLayout): Plan["ownKinds"] {
  const planted = new Set(layout.plantings.map(({ variety }) => variety));
  const used = new Set([
    ...plan.varieties.filter(({ id }) => planted.has(id)).map(({ kind }) => kind),
    ...plan.surroundings.map(({ kind }) => kind),
  ]);
  return plan.ownKinds.filter(({ id }) => used.has(id));
}

/**
 * The distance as a property, metres. Read back it counts as typed, and to a typed distance nothing
 * is added for wild plants: where the sources ask more from those it is left out, to be found by
 * the level again, or is the most asked where something beside the level decided it.
 */
function isolationOf(
  planting: Planting,
  variety: Variety | undefined,
  stand: Stand | undefined,
): number | undefined {
  if (!stand?.requirement) return undefined;
  const { requirement, wildRequirements } = stand;
  if (wildRequirements === null) return requirement.metres;
  const isByLevel =
    requirement.picked === undefined &&
    !planting.adjustments?.length &&
    variety?.form === undefined;
  if (isByLevel) return undefined;
  return Math.max(requirement.metres, ...[...wildRequirements.values()].map((each) => each.metres));
}

/** The days it may be in flower by every reckoning, and on what they rest; undefined: not known. */
function bloomOf({ bloom: own }: Planting, stand: Stand | undefined) {
  const bloom = stand?.bloom;
  if (bloom) return { ...(bloom.widest ?? bloom.outer), basis: bloomBasis(bloom) };
  return own && { ...own, basis: own.basis ?? ("own" as const) };
}

function plantingProperties(
  planting: Planting,
  { plan, layout, result, book }: CheckedLayout,
): Readonly<Record<string, unknown>> {
  const variety = plan.varieties.find(({ id }) => id === planting.variety);
  const stand = result.standById.get(planting.id);
  const bloom = bloomOf(planting, stand);
  const { start } = planting;
  const lots = lotsToSow(plan, planting, variety);
  return {
    ...carried(planting),
    wideberth: "planting",
    code: planting.code,
    kind: variety?.kind,
    kindName: book.kind(variety?.kind ?? "")?.name,
    variety: variety?.name,
    hybrid: variety?.hybrid === true ? true : undefined,
    purpose: planting.purpose,
    flowering: planting.flowering,
    cover: planting.cover,
    level: planting.level ?? plan.level,
    isolationM: isolationOf(planting, variety, stand),
    bloomStart: bloom && isoFromDay(bloom.first),
    bloomEnd: bloom && isoFromDay(bloom.last),
    bloomBasis: bloom?.basis,
    startMethod: start?.method,
    startDate: start && isoFromDay(start.date),
    sownUnderGlass:
      start?.sownUnderGlass === undefined ? undefined : isoFromDay(start.sownUnderGlass),
    endDate: planting.end === undefined ? undefined : isoFromDay(planting.end),
    plants: planting.plants,
    rows: planting.rows,
    lot: lots.length === 0 ? undefined : codesText(lots),
    keepApart: planting.keepApart === true ? true : undefined,
    bed: layout.beds.find(({ id }) => id === planting.bed)?.code,
    note: planting.note,
  };
}

function surroundingProperties(
  item: Surrounding,
  { book }: CheckedLayout,
): Readonly<Record<string, unknown>> {
  return {
    ...carried(item),
    wideberth: item.what === "pollen" ? "source" : item.what,
    label: item.label,
    kind: item.kind,
    kindName: book.kind(item.kind ?? "")?.name,
    variety: item.varietyName,
    flowering: item.flowering,
    cover: item.cover,
    bloomStart: item.bloom && isoFromDay(item.bloom.first),
    bloomEnd: item.bloom && isoFromDay(item.bloom.last),
    bloomBasis: item.bloom?.basis,
    note: item.note,
  };
}

/** Properties that came with the feature and that Wideberth does not read. */
function carried(item: object): Readonly<Record<string, unknown>> {
  const { properties } = item as { readonly properties?: Readonly<Record<string, unknown>> };
  return properties ?? {};
}

function geometryOf(shape: Shape, frame: LocalFrame): GeojsonFeature["geometry"] {
  const degrees = (x: number, y: number): Position => {
    const { longitude, latitude } = frame.toLonLat({ x, y });
    return [Number(longitude.toFixed(PLACES)), Number(latitude.toFixed(PLACES))];
  };
  if (shape.shape === "point") return { type: "Point", coordinates: degrees(shape.x, shape.y) };
  const rings = outlineOf(shape).rings.map((ring): Ring => {
    const open = Array.from({ length: ring.length / 2 }, (_, index) =>
      degrees(ring[index * 2] as number, ring[index * 2 + 1] as number),
    );
    return [...open, open[0] as Position];
  });
  return { type: "Polygon", coordinates: rewound(rings) };
}

function rewound(rings: Ring[]): Ring[] {
  const turned = rewind({ type: "Polygon", coordinates: rings });
  return turned.type === "Polygon" ? turned.coordinates : rings;
}
